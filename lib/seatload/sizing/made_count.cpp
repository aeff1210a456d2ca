// SPDX-License-Identifier: MIT
#include <seatload/sizing/made_count.hpp>

#include <algorithm>
#include <cstring>

#include <seatload/core/wide.hpp>

namespace seatload::sizing {
namespace {

using tolerance::kMadeChunk;
using tolerance::MadeColumn;
using tolerance::MadeSprings;
using tolerance::MadeStrays;

/// Two lanes reckoned at once: written out, as a compiler may not put sums into another order.
using Pair [[gnu::vector_size(2 * sizeof(double))]] = double;
static_assert(MadeCount::kLanes == 4);

Pair pair_at(const double* numbers) {
    Pair two;
    std::memcpy(&two, numbers, sizeof two);
    return two;
}
void put(const Pair& two, double* numbers) { std::memcpy(numbers, &two, sizeof two); }

/// 1 for each spring that has kept its bounds so far, else 0: as wide as what is compared, so that several are at once.
using Kept = MadeColumn;

void add_sums(MadeCount& count, const MadeColumn& values, double about, std::size_t springs) {
    Pair sums[] = {pair_at(&count.sums[0]), pair_at(&count.sums[2])};
    Pair squares[] = {pair_at(&count.squares[0]), pair_at(&count.squares[2])};
    const std::size_t whole = springs - springs % MadeCount::kLanes;
    for (std::size_t i = 0; i < whole; i += MadeCount::kLanes) {
        const Pair x = pair_at(&values[i]) - about, y = pair_at(&values[i + 2]) - about;
        sums[0] += x, sums[1] += y;
        squares[0] += x * x, squares[1] += y * y;
    }
    for (std::size_t k = 0; k < 2; ++k) put(sums[k], &count.sums[2 * k]), put(squares[k], &count.squares[2 * k]);
    for (std::size_t i = whole; i < springs; ++i) {
        const double x = values[i] - about;
        count.sums[0] += x;
        count.squares[0] += x * x;
    }
}

/// How many of the first are 1: a sum of so few ones is exact in any order.
long number_kept(const Kept& kept, std::size_t springs) {
    Pair first{}, second{};
    const std::size_t whole = springs - springs % MadeCount::kLanes;
    for (std::size_t i = 0; i < whole; i += MadeCount::kLanes)
        first += pair_at(&kept[i]), second += pair_at(&kept[i + 2]);
    for (std::size_t i = whole; i < springs; ++i) first[0] += kept[i];
    return static_cast<long>(first[0] + first[1] + second[0] + second[1]);
}

SEATLOAD_WIDE void keep_bounds(const MadeQuantity& quantity, const MadeColumn& values, Kept& keeps, Kept& kept) {
    const double least = quantity.least;
    const double most = quantity.most;
    for (std::size_t i = 0; i < kMadeChunk; ++i) {
        const double x = values[i];
        const double is_kept = x >= least ? 1.0 : 0.0;
        keeps[i] = x <= most ? is_kept : 0.0;
    }
    for (std::size_t i = 0; i < kMadeChunk; ++i) kept[i] *= keeps[i];
}

SEATLOAD_WIDE void add_bins(MadeCount& count, const MadeColumn& values, const MadeRange& range, std::size_t springs) {
    if (!(range.most > range.least)) return;
    const double least = range.least;
    const double scale = static_cast<double>(kMadeBins) / (range.most - least);
    constexpr double kLast = static_cast<double>(kMadeBins - 1);
    MadeColumn held;
    std::array<std::int32_t, kMadeChunk> places;
    for (std::size_t i = 0; i < kMadeChunk; ++i) {
        const double above = (values[i] - least) * scale;
        const double from_first = above < 0.0 ? 0.0 : above;
        held[i] = kLast < from_first ? kLast : from_first;
    }
    for (std::size_t i = 0; i < kMadeChunk; ++i) places[i] = static_cast<std::int32_t>(held[i]);
    for (std::size_t i = 0; i < springs; ++i) ++count.bins[static_cast<std::uint32_t>(places[i])];
}

}  // namespace

void MadeCount::add(const MadeCount& other) {
    for (std::size_t i = 0; i < kLanes; ++i) sums[i] += other.sums[i], squares[i] += other.squares[i];
    broken += other.broken;
    for (std::size_t i = 0; i < kMadeBins; ++i) bins[i] += other.bins[i];
}

void MadeTally::add(const MadeTally& other) {
    springs += other.springs;
    good += other.good;
    for (std::size_t i = 0; i < counts.size(); ++i) counts[i].add(other.counts[i]);
}

MadeCounter::MadeCounter(const check::Coil& nominal, const tolerance::MadeOrder& order,
                         const tolerance::MadeAllowance& allowance, const std::vector<MadeQuantity>& quantities)
    : nominal_(nominal), order_(order), allowance_(allowance), quantities_(quantities) {
    MadeStrays strays;
    MadeSprings springs;
    MadeColumn values;
    const std::size_t corners = tolerance::corner_strays(strays);
    tolerance::make_springs(order, allowance, strays, springs);
    for (const MadeQuantity& quantity : quantities) {
        quantity.measure(nominal, springs, values);
        const auto [least, most] = std::minmax_element(values.begin(), values.begin() + corners);
        corners_.push_back({*least, *most});
    }
    for (auto& column : strays) column.fill(0.0);
    tolerance::make_springs(order, allowance, strays, springs);
    for (const MadeQuantity& quantity : quantities) {
        quantity.measure(nominal, springs, values);
        middles_.push_back(values[0]);
    }
}

void MadeCounter::count(const MadeStrays& strays, std::size_t springs, MadeTally& tally) const {
    MadeSprings made;
    MadeColumn values;
    Kept keeps, kept;
    kept.fill(1.0);
    tolerance::make_springs(order_, allowance_, strays, made);
    for (std::size_t q = 0; q < quantities_.size(); ++q) {
        MadeCount& count = tally.counts[q];
        quantities_[q].measure(nominal_, made, values);
        add_sums(count, values, middles_[q], springs);
        if (quantities_[q].is_bounded()) {
            keep_bounds(quantities_[q], values, keeps, kept);
            count.broken += static_cast<long>(springs) - number_kept(keeps, springs);
        }
        add_bins(count, values, corners_[q], springs);
    }
    tally.good += number_kept(kept, springs);
    tally.springs += static_cast<long>(springs);
}

double value_at_share(const MadeCount& count, const MadeRange& range, long springs, double share) {
    const double wanted = share * static_cast<double>(springs);
    const double width = (range.most - range.least) / static_cast<double>(kMadeBins);
    double below = 0.0;
    for (std::size_t bin = 0; bin < kMadeBins; ++bin) {
        const double in_bin = count.bins[bin];
        if (in_bin > 0.0 && below + in_bin >= wanted)
            return range.least + width * (static_cast<double>(bin) + (wanted - below) / in_bin);
        below += in_bin;
    }
    return range.most;
}

}  // namespace seatload::sizing
