// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <span>
#include <utility>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/grid_values.hpp>
#include <seatload/sizing/space.hpp>
#include <seatload/tolerance/tables.hpp>

namespace seatload::sizing {

/// A rectangle of lines: indices of mean diameters and of total coils, the `_to` ones not with it.
struct Block {
    long D_from = 0, D_to = 0;
    long nt_from = 0, nt_to = 0;

    bool is_one_diameter() const { return D_to - D_from == 1; }
    bool is_one_coil_count() const { return nt_to - nt_from == 1; }
    long lines() const { return (D_to - D_from) * (nt_to - nt_from); }
};

/// The coils at the corners of a block, made when they are asked for.
class Corners {
  public:
    Corners(const Space& space, const WireOption& wire, const tolerance::Tables& tables, spring::Ends ends,
            std::span<const check::Turns> turns, const Block& block)
        : space_(space), wire_(wire), tables_(tables), ends_(ends), turns_(turns), block_(block) {}

    /// The coil of the block likeliest to pass a rule that states how it follows both numbers.
    const check::Coil& best_for(const check::Rule& rule) {
        return at(rule.with_diameter == check::Trend::helps, rule.with_coils == check::Trend::helps);
    }
    /// The coil of the block likeliest to fail it.
    const check::Coil& worst_for(const check::Rule& rule) {
        return at(rule.with_diameter == check::Trend::hurts, rule.with_coils == check::Trend::hurts);
    }
    /// The coils with the least and with the most of both numbers.
    const check::Coil& low() { return at(false, false); }
    const check::Coil& high() { return at(true, true); }

  private:
    const check::Coil& at(bool is_wide, bool is_long) {
        auto& coil = coils_[(is_wide && !block_.is_one_diameter() ? 2u : 0u) +
                            (is_long && !block_.is_one_coil_count() ? 1u : 0u)];
        if (!coil)
            coil.emplace(space_.demand, wire_.numbers, tables_,
                         wire_.mean_diameters.at(is_wide ? block_.D_to - 1 : block_.D_from), ends_,
                         turns_[static_cast<std::size_t>(is_long ? block_.nt_to - 1 : block_.nt_from)]);
        return *coil;
    }

    const Space& space_;
    const WireOption& wire_;
    const tolerance::Tables& tables_;
    spring::Ends ends_;
    std::span<const check::Turns> turns_;
    const Block& block_;
    std::array<std::optional<check::Coil>, 4> coils_;
};

enum class Across { mean_diameters, total_coils };

/// The two halves of a block: the narrow diameters, or few coils, first.
inline std::pair<Block, Block> halves(const Block& block, Across across) {
    Block first = block, second = block;
    if (across == Across::mean_diameters)
        first.D_to = second.D_from = block.D_from + (block.D_to - block.D_from) / 2;
    else
        first.nt_to = second.nt_from = block.nt_from + (block.nt_to - block.nt_from) / 2;
    return {first, second};
}

}  // namespace seatload::sizing
