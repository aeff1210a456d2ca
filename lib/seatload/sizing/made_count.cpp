// SPDX-License-Identifier: MIT
#include <seatload/sizing/made_count.hpp>

#include <algorithm>

namespace seatload::sizing {
namespace {

using tolerance::kMadeChunk;
using tolerance::MadeColumn;
using tolerance::MadeSprings;
using tolerance::MadeStrays;

/// 1 for each spring that has kept its bounds so far, else 0.
using Kept = std::array<std::int64_t, kMadeChunk>;

void add_sums(MadeCount& count, const MadeColumn& values, double about, std::size_t springs) {
    const std::size_t whole = springs - springs % MadeCount::kLanes;
    for (std::size_t i = 0; i < whole; i += MadeCount::kLanes)
        for (std::size_t lane = 0; lane < MadeCount::kLanes; ++lane) {
            const double x = values[i + lane] - about;
            count.sums[lane] += x;
            count.squares[lane] += x * x;
        }
    for (std::size_t i = whole; i < springs; ++i) {
        const double x = values[i] - about;
        count.sums[0] += x;
        count.squares[0] += x * x;
    }
}

void add_broken(MadeCount& count, const MadeQuantity& quantity, const MadeColumn& values, std::size_t springs,
                Kept& kept) {
    const double least = quantity.least;
    const double most = quantity.most;
    std::int64_t inside = 0;
    for (std::size_t i = 0; i < springs; ++i) {
        const std::int64_t is_kept = (values[i] >= least ? 1 : 0) & (values[i] <= most ? 1 : 0);
        inside += is_kept;
        kept[i] &= is_kept;
    }
    count.broken += static_cast<long>(springs) - static_cast<long>(inside);
}

void add_bins(MadeCount& count, const MadeColumn& values, const MadeRange& range, std::size_t springs) {
    if (!(range.most > range.least)) return;
    const double scale = static_cast<double>(kMadeBins) / (range.most - range.least);
    constexpr double kLast = static_cast<double>(kMadeBins - 1);
    for (std::size_t i = 0; i < springs; ++i) {
        const double bin = std::min(std::max((values[i] - range.least) * scale, 0.0), kLast);
        ++count.bins[static_cast<std::size_t>(static_cast<std::int32_t>(bin))];
    }
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
    Kept kept;
    kept.fill(1);
    tolerance::make_springs(order_, allowance_, strays, made);
    for (std::size_t q = 0; q < quantities_.size(); ++q) {
        MadeCount& count = tally.counts[q];
        quantities_[q].measure(nominal_, made, values);
        add_sums(count, values, middles_[q], springs);
        if (quantities_[q].is_bounded()) add_broken(count, quantities_[q], values, springs, kept);
        add_bins(count, values, corners_[q], springs);
    }
    std::int64_t good = 0;
    for (std::size_t i = 0; i < springs; ++i) good += kept[i];
    tally.good += static_cast<long>(good);
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
