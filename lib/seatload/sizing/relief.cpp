// SPDX-License-Identifier: MIT
#include <seatload/sizing/relief.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/sizing/any_fit.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;

/// A wire and ends with which some spring fits.
struct Place {
    std::string grade;
    Length diameter;
    spring::Ends ends;
};

std::optional<Place> any_place(const Requirement& changed, const Setting& setting) {
    const Space space = search_space(changed, setting.catalogue);
    const auto spring = any_fit(space, setting.tables, setting.options);
    if (!spring) return std::nullopt;
    const WireOption& wire = space.wires[spring->wire];
    return Place{space.grades[wire.grade].id, wire.size.diameter, spring->ends};
}

Space space_at(const Place& place, const Requirement& changed, const Setting& setting) {
    return only(search_space(changed, setting.catalogue), place.grade, place.diameter, place.ends);
}

Proof proof_at(const Place& place, const Requirement& changed, const Setting& setting) {
    const Space space = space_at(place, changed, setting);
    SearchOptions how = setting.options;
    how.counts_rejections = false;
    const Census census = search(space, setting.tables, how);
    const auto best = std::find_if(census.best.begin(), census.best.end(), [](const auto& b) { return b.has_value(); });
    SEATLOAD_ASSERT(best != census.best.end());
    const Candidate& c = **best;
    const spring::Spring s{place.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm, c.ends,
                           changed.hand};
    const auto evaluation = check::evaluate(s, space.grades[space.wires[c.wire].grade], changed, setting.tables);
    // The search and the evaluation run the same rules on the same numbers; a difference would be a fault of ours.
    SEATLOAD_ASSERT(evaluation.has_value() && evaluation->fits());
    return {place.grade, s};
}

/// Looks for the least share by which some numbers must give way together.
class Bisection {
  public:
    Bisection(const Requirement& requirement, std::span<const Easing* const> easings, const Setting& setting)
        : requirement_(requirement), easings_(easings), setting_(setting) {}

    std::optional<Relief> least() {
        if (!bracket()) return std::nullopt;
        narrow();
        return relief();
    }

  private:
    Requirement at(double share) const {
        Requirement changed = requirement_;
        for (const Easing* easing : easings_) easing->set(changed, eased(*easing, requirement_, share));
        return changed;
    }

    double tolerance() const { return std::min(1e-3, 5e-3 * high_); }

    /// Whether a spring fits at a share; takes it as the new upper end, or as the lower one.
    bool ask(double share) {
        const auto place = any_place(at(share), setting_);
        if (!place) {
            low_ = share;
            return false;
        }
        high_ = share;
        place_ = *place;
        return true;
    }

    bool bracket() {
        constexpr double kFirst = 0.01;
        double most = 0.0;
        for (const Easing* easing : easings_) most = std::max(most, farthest_share(*easing, requirement_));
        if (most <= 0.0) return false;
        const bool is_steady =
            std::all_of(easings_.begin(), easings_.end(), [](const Easing* e) { return e->is_steady; });
        // A change that can also do harm has to be followed from small to large.
        for (double share = is_steady ? most : kFirst; share < most; share *= 2.0)
            if (ask(share)) return true;
        return ask(most);
    }

    /// Springs just found show how far the change can be taken back with their wire, which is quick to ask; then the
    /// whole grid is asked just below, and halfway.
    void narrow() {
        while (true) {
            take_back_with_same_wire();
            if (high_ - low_ <= tolerance()) return;
            if (!ask(high_ - 0.9 * tolerance())) return;
            ask(0.5 * (low_ + high_));
        }
    }

    void take_back_with_same_wire() {
        double low = low_;
        while (high_ - low > tolerance() / 8.0) {
            const double middle = 0.5 * (low + high_);
            const bool fits =
                any_fit(space_at(place_, at(middle), setting_), setting_.tables, setting_.options).has_value();
            (fits ? high_ : low) = middle;
        }
    }

    Relief relief() const {
        constexpr int kFinest = 3;
        for (int finer = 0; finer <= kFinest; ++finer) {
            Relief found = rounded_relief(finer);
            const Requirement changed = with(requirement_, found);
            if (auto spring = proof(changed, setting_)) {
                found.proof = *spring;
                return found;
            }
        }
        // Rounding does harm here: the number stands as found.
        Relief found = rounded_relief(0);
        for (EasedNumber& number : found.numbers) number.needed = number.edge;
        found.change = high_;
        found.proof = proof_at(place_, with(requirement_, found), setting_);
        return found;
    }

    Relief rounded_relief(int finer) const {
        Relief found;
        for (const Easing* easing : easings_) {
            const double now = *easing->now(requirement_);
            const double edge = eased(*easing, requirement_, high_);
            const double needed = rounded(*easing, requirement_, edge, finer);
            found.numbers.push_back({easing, now, edge, needed});
            const double whole = now != 0.0 ? std::abs(now) : std::abs(easing->farthest(requirement_));
            found.change = std::max(found.change, std::abs(needed - now) / whole);
        }
        return found;
    }

    const Requirement& requirement_;
    std::span<const Easing* const> easings_;
    const Setting& setting_;
    double low_ = 0.0;   ///< nothing fits
    double high_ = 0.0;  ///< something fits, at place_
    Place place_{};
};

}  // namespace

std::optional<Proof> proof(const Requirement& changed, const Setting& setting) {
    const auto place = any_place(changed, setting);
    if (!place) return std::nullopt;
    return proof_at(*place, changed, setting);
}

Requirement with(const Requirement& requirement, const Relief& relief) {
    Requirement changed = requirement;
    for (const EasedNumber& number : relief.numbers) number.easing->set(changed, number.needed);
    return changed;
}

std::optional<Relief> least_relief(const Requirement& requirement, std::span<const Easing* const> easings,
                                   const Setting& setting) {
    return Bisection(requirement, easings, setting).least();
}

}  // namespace seatload::sizing
