// SPDX-License-Identifier: MIT
#include <random>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/spring/coils.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "every_combination.hpp"
#include "varied_requirements.hpp"

// What rules claim of themselves, on coils and free lengths drawn at random: the search skips blocks of coils on their
// word. A claim holds when it does for every pair of coils; a false one is found by enough of them.

using namespace seatload;

namespace {

constexpr int kDraws = 300'000;

class TrendDraw {
  public:
    double between(double low, double high) { return std::uniform_real_distribution(low, high)(engine_); }
    std::size_t below(std::size_t count) { return std::uniform_int_distribution<std::size_t>(0, count - 1)(engine_); }
    bool chance(double share) { return between(0.0, 1.0) < share; }

  private:
    std::mt19937_64 engine_{20261126};
};

/// A requirement of the varied ones with its numbers moved, so that every bound is met at other coils.
demand::Requirement moved(demand::Requirement r, TrendDraw& draw) {
    r.space.seated_height *= draw.between(0.7, 2.0);
    r.space.full_travel_height = r.space.seated_height * draw.between(0.4, 0.95);
    for (auto* load :
         {&r.seated_load.at_least, &r.seated_load.at_most, &r.full_travel_load.at_least, &r.full_travel_load.at_most})
        if (*load) **load *= draw.chance(0.05) ? 0.0 : draw.between(0.2, 4.0);
    for (auto* fit : {&r.space.bore, &r.space.rod})
        if (*fit) {
            const double scale = draw.between(0.3, 2.0);
            *fit = demand::Fit{(*fit)->smallest * scale, (*fit)->largest * scale, (*fit)->nominal * scale};
        }
    if (draw.chance(0.3)) r.space.bore.reset();
    r.limits.growth_form = draw.chance(0.5) ? demand::GrowthForm::ends_free : demand::GrowthForm::ends_held;
    r.limits.gap_rule = draw.chance(0.5) ? demand::GapRule::en_sa : demand::GapRule::share_of_travel;
    r.limits.diameter_grade = static_cast<int>(1 + draw.below(3));
    r.limits.buckling_margin = draw.between(0.5, 2.0);
    r.limits.half_turn_slack = draw.chance(0.3) ? draw.between(0.0, 0.5) : r.limits.half_turn_slack;
    r.limits.lean_share = draw.between(0.001, 0.3);
    if (draw.chance(0.3)) r.limits.seating_coefficient = draw.between(0.4, 2.0);
    if (draw.chance(0.3)) r.limits.coil_step = draw.chance(0.5) ? 0.5 : 0.25;
    if (draw.chance(0.3)) r.space.sideways_play = draw.between(0.0, 3.0) * mm;
    return r;
}

/// A wire with coils of it, and a requirement they are held to.
struct Drawn {
    demand::Requirement requirement;
    check::DemandNumbers demand;
    check::WireNumbers wire;
    spring::Ends ends;

    check::Coil coil(double index, double active_coils) const {
        return {demand, wire, test::tolerances(), index * wire.d_mm, ends, active_coils + spring::dead_coils(ends)};
    }
};

std::optional<Drawn> drawn(TrendDraw& draw) {
    static const auto all = test::varied_requirements();
    Drawn d{moved(all[draw.below(all.size())].requirement, draw), {}, {}, spring::kAllEnds[draw.below(4)]};
    const auto& grades = d.requirement.wire.grades;
    const wire::Grade* grade = test::wires().find(grades[draw.below(grades.size())]);
    const auto& diameters = d.requirement.wire.diameters;
    const auto wire = check::numbers(*grade, diameters[draw.below(diameters.size())], d.requirement);
    if (!wire) return std::nullopt;
    d.demand = check::numbers(d.requirement);
    d.wire = *wire;
    return d;
}

double any_length(const Drawn& d, TrendDraw& draw) { return d.demand.seated_height_mm * draw.between(0.5, 4.0); }

/// Whether passing at one coil must mean passing at the other, by a rule's claim.
bool carries_over(check::Trend trend, bool is_upwards) {
    return trend == check::Trend::level || (trend == (is_upwards ? check::Trend::helps : check::Trend::hurts));
}

struct Tally {
    std::vector<unsigned> tried = std::vector<unsigned>(check::rules().size());
    std::vector<unsigned> lies = std::vector<unsigned>(check::rules().size());
};

/// Counts the pairs of coils, apart in one number, that a claim speaks of, and those that belie it.
void try_claim(const check::Rule& rule, std::size_t index, check::Trend trend, const check::Coil& less,
               const check::Coil& more, double L0, Tally& tally) {
    if (trend == check::Trend::level) {
        const check::Measure a = rule.measure(less, L0), b = rule.measure(more, L0);
        tally.lies[index] += check::passes(rule.sense, a) != check::passes(rule.sense, b) ? 1 : 0;
        ++tally.tried[index];
        return;
    }
    for (const bool is_upwards : {true, false}) {
        const check::Coil& from = is_upwards ? less : more;
        const check::Coil& to = is_upwards ? more : less;
        if (!carries_over(trend, is_upwards) || !check::passes(rule, from, L0)) continue;
        ++tally.tried[index];
        tally.lies[index] += check::passes_moved(rule.sense, rule.measure(to, L0), check::kInclusive) ? 0 : 1;
    }
}

std::string_view name(std::size_t rule) { return check::rules()[rule].id; }

}  // namespace

TEST_CASE("no rule says anything false of how it follows the mean diameter and the coils") {
    TrendDraw draw;
    Tally of_diameter, of_coils;
    const auto rules = check::rules();
    for (int i = 0; i < kDraws; ++i) {
        const auto d = drawn(draw);
        if (!d) continue;
        const double index = draw.between(1.1, 25.0), coils = draw.between(0.2, 20.0), L0 = any_length(*d, draw);
        // Close neighbours as often as far ones: where a bound is met, and where a number turns.
        const double wider = draw.chance(0.5) ? draw.between(1.0, 1.01) : draw.between(1.0, 4.0);
        const double more = draw.chance(0.5) ? draw.between(1.0, 1.01) : draw.between(1.0, 4.0);
        const check::Coil coil = d->coil(index, coils);
        const check::Coil wide = d->coil(index * wider, coils), longer = d->coil(index, coils * more);
        for (std::size_t r = 0; r < rules.size(); ++r) {
            if (!rules[r].applies(d->demand, d->ends)) continue;
            try_claim(rules[r], r, rules[r].with_diameter, coil, wide, L0, of_diameter);
            try_claim(rules[r], r, rules[r].with_coils, coil, longer, L0, of_coils);
        }
    }
    for (std::size_t r = 0; r < rules.size(); ++r) {
        CAPTURE(name(r));
        CHECK(of_diameter.lies[r] == 0);
        CHECK(of_coils.lies[r] == 0);
        CHECK((rules[r].with_diameter == check::Trend::unclear || of_diameter.tried[r] > 50));
        CHECK((rules[r].with_coils == check::Trend::unclear || of_coils.tried[r] > 50));
    }
}

TEST_CASE("the kindest and the harshest answer over a range of coils hold for every coil within it") {
    TrendDraw draw;
    const auto rules = check::rules();
    std::vector<unsigned> passed(rules.size()), failed(rules.size()), lies(rules.size()), refusals(rules.size()),
        assurances(rules.size());
    for (int i = 0; i < kDraws; ++i) {
        const auto d = drawn(draw);
        if (!d) continue;
        const double index = draw.between(1.1, 25.0), coils = draw.between(0.2, 20.0), L0 = any_length(*d, draw);
        const double wider = draw.chance(0.7) ? draw.between(1.0, 1.03) : draw.between(1.0, 2.0);
        const double more = draw.chance(0.7) ? draw.between(1.0, 1.03) : draw.between(1.0, 2.0);
        const check::Coil low = d->coil(index, coils), high = d->coil(index * wider, coils * more);
        const check::Coil between = d->coil(index * draw.between(1.0, wider), coils * draw.between(1.0, more));
        for (std::size_t r = 0; r < rules.size(); ++r) {
            const check::Rule& rule = rules[r];
            if (!rule.kindest || !rule.applies(d->demand, d->ends)) continue;
            const bool passes = check::passes(rule, between, L0);
            const bool may = check::passes_moved(rule.sense, rule.kindest(low, high, L0), check::kInclusive);
            const bool must = rule.harshest &&
                              check::passes_moved(rule.sense, rule.harshest(low, high, L0), -0.5 * check::kInclusive);
            (passes ? passed : failed)[r] += 1;
            refusals[r] += may ? 0 : 1;
            assurances[r] += must ? 1 : 0;
            lies[r] += (passes && !may) || (!passes && must) ? 1 : 0;
        }
    }
    for (std::size_t r = 0; r < rules.size(); ++r) {
        if (!rules[r].kindest) continue;
        CAPTURE(name(r));
        CHECK(lies[r] == 0);
        CHECK(passed[r] > 50);
        CHECK(failed[r] > 50);
        CHECK(refusals[r] > 50);
        CHECK((assurances[r] > 50 || !rules[r].harshest));
    }
}

TEST_CASE("what a rule says of coils agrees with whether they matter to it") {
    for (const check::Rule& rule : check::rules()) {
        CAPTURE(rule.id);
        CHECK((rule.with_coils == check::Trend::level) == (rule.coils == check::Coils::do_not_matter));
        CHECK((rule.kindest == nullptr || rule.with_diameter == check::Trend::unclear ||
               rule.with_coils == check::Trend::unclear));
    }
}
