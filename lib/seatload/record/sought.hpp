// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <seatload/check/evaluation.hpp>
#include <seatload/record/spec.hpp>

namespace seatload::record {

/// Bounds of a length; either may be absent.
struct LengthBand {
    std::optional<Length> at_least;
    std::optional<Length> at_most;

    bool has(Length length) const;
};

/// A load wanted at a length.
struct WantedLoad {
    Length at;
    demand::LoadBand load;
};

/// What a spring is looked for with; what is absent does not matter.
struct Sought {
    std::optional<demand::Requirement> requirement;  ///< alone counts, when it is there
    std::vector<WantedLoad> loads;                   ///< the longest length first; at most two
    std::optional<demand::Fit> bore;
    std::optional<demand::Fit> rod;
    std::optional<Celsius> temperature;  ///< of the loads asked for; absent: cold and new
    std::string wire;                    ///< part of the name of its grade
    LengthBand wire_diameter;
    LengthBand outside_diameter;
    LengthBand free_length;

    /// Whether limits are to be judged at all, or only words and dimensions compared.
    bool judges() const { return requirement || !loads.empty() || bore || rod; }
};

/// A stored spring held against what is looked for.
struct FoundSpring {
    bool fits = false;
    std::vector<std::string> misses;   ///< the limits it breaks, a sentence each
    double shortfall = 0.0;            ///< how far the worst lies beyond its limit, as a share
    std::vector<std::string> remarks;  ///< what a requirement asks for besides and the spring has not
    std::optional<check::Evaluation> evaluation;
};

/// The requirement a spring is judged by: the one given; or its own limits, with the loads, lengths, bore and rod asked
/// for in place of its own.
demand::Requirement asked_of(const Spec& spec, const Sought& sought);

/// Whether the plain words and dimensions asked for are those of the spring.
bool has_dimensions(const Spec& spec, const Sought& sought);

/// The spring judged by all limits of the requirement.
FoundSpring judged(const Spec& spec, const wire::Grade& grade, const Sought& sought, const tolerance::Tables& tables);

}  // namespace seatload::record
