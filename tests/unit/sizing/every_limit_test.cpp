// SPDX-License-Identifier: MIT
#include <string_view>
#include <vector>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/search.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>
#include <support/random_requirement.hpp>

#include "every_combination.hpp"

// The search against the plain loop on grids drawn at random, each limit switched on in some and off in the same ones.

using namespace seatload;
using demand::Requirement;

namespace {

constexpr unsigned kGrids = 200;
constexpr double kBoundless = 1e9;

/// A limit, and how a requirement is made to have it and not to have it.
struct Switch {
    std::string_view rule;
    void (*on)(Requirement&);
    void (*off)(Requirement&);
};

void still(Requirement& r) { r.duty = {}; }
void moving(Requirement& r) {
    r.duty.cycles = 1e6;
    r.limits.fatigue_factor = 1.4;
}
void on_fixed_seats(Requirement& r) { r.space.seats = demand::Seats::fixed; }
void sliding(Requirement& r) { r.space.seats = demand::Seats::slides; }
double thinnest_mm(const Requirement& r) { return in_mm(r.wire.diameters.front()); }
double middle_free_length_mm(const Requirement& r) {
    return 0.5 * (in_mm(r.grid.free_length->smallest) + in_mm(r.grid.free_length->largest));
}
void within(Requirement& r, double shortest_mm, double longest_mm) {
    r.space.free_length = demand::LengthRange{shortest_mm * mm, longest_mm * mm};
}

const std::vector<Switch>& switches() {
    static const std::vector<Switch> all{
        {"service_temperature",
         [](Requirement& r) {
             r.surroundings.temperature = {200.0};
             r.limits.load_loss = Share{0.05};
         },
         [](Requirement& r) { r.limits.heed_service_limit = false; }},
        {"static_wire",
         [](Requirement& r) {
             moving(r);
             r.wire.grades = {"EN10270-1-SH", "EN10270-1-DH"};
         },
         still},
        {"index_smallest", [](Requirement& r) { r.limits.smallest_index = 7.0; },
         [](Requirement& r) { r.limits.smallest_index = 0.0; }},
        {"index_largest", [](Requirement& r) { r.limits.largest_index = 8.0; },
         [](Requirement& r) { r.limits.largest_index = kBoundless; }},
        {"coils_fewest", [](Requirement& r) { r.limits.fewest_active_coils = 6.0; },
         [](Requirement& r) { r.limits.fewest_active_coils = 0.0; }},
        {"coils_most", [](Requirement& r) { r.limits.most_active_coils = 6.0; },
         [](Requirement& r) { r.limits.most_active_coils = kBoundless; }},
        {"half_turn",
         [](Requirement& r) {
             sliding(r);
             r.limits.half_turn_slack = 0.2;
         },
         [](Requirement& r) { r.limits.half_turn_slack = 0.5; }},
        {"ground_wire",
         [](Requirement& r) {
             r.ends = {spring::Ends::closed_ground};
             r.limits.smallest_ground_wire = 1.02 * thinnest_mm(r) * mm;
         },
         [](Requirement& r) { r.limits.smallest_ground_wire = 0.0 * mm; }},
        {"ground_index",
         [](Requirement& r) {
             r.ends = {spring::Ends::open_ground};
             r.limits.largest_ground_index = 8.0;
         },
         [](Requirement& r) { r.limits.largest_ground_index = kBoundless; }},
        {"coil_step", [](Requirement& r) { r.limits.coil_step = 1.0; },
         [](Requirement& r) { r.limits.coil_step.reset(); }},
        {"made_length", [](Requirement& r) { r.limits.longest_free_length = middle_free_length_mm(r) * mm; },
         [](Requirement& r) { r.limits.longest_free_length.reset(); }},
        {"rod_clearance",
         [](Requirement& r) {
             const Length rod = 0.98 * r.grid.mean_diameter->largest - r.wire.diameters.back();
             r.space.rod = demand::Fit{rod, rod, rod};
         },
         [](Requirement& r) { r.space.rod.reset(); }},
        {"bore_clearance", [](Requirement& r) { r.limits.bore_clearance = 0.03 * r.space.bore->smallest; },
         [](Requirement& r) { r.space.bore.reset(); }},
        {"free_length_shortest", [](Requirement& r) { within(r, middle_free_length_mm(r), kBoundless); },
         [](Requirement& r) { r.space.free_length.reset(); }},
        {"free_length_longest", [](Requirement& r) { within(r, 0.0, middle_free_length_mm(r)); },
         [](Requirement& r) { r.space.free_length.reset(); }},
        {"seated_load_least", [](Requirement&) {}, [](Requirement& r) { r.seated_load.at_least.reset(); }},
        {"seated_load_most", [](Requirement&) {}, [](Requirement& r) { r.seated_load.at_most.reset(); }},
        {"full_travel_load_least",
         [](Requirement& r) { r.full_travel_load.at_least = 0.9 * *r.full_travel_load.at_most; },
         [](Requirement& r) { r.full_travel_load.at_least.reset(); }},
        {"full_travel_load_most", [](Requirement&) {}, [](Requirement& r) { r.full_travel_load.at_most.reset(); }},
        {"gap_to_solid",
         [](Requirement& r) {
             r.limits.gap_rule = demand::GapRule::share_of_travel;
             r.limits.gap_share = 0.4;
         },
         [](Requirement& r) {
             r.limits.gap_rule = demand::GapRule::share_of_travel;
             r.limits.gap_share = -kBoundless;
         }},
        {"stress", [](Requirement& r) { r.limits.stress_share = 0.3; },
         [](Requirement& r) { r.limits.stress_share = kBoundless; }},
        {"buckling",
         [](Requirement& r) {
             on_fixed_seats(r);
             r.limits.seating_coefficient = 2.0;
             r.limits.buckling_margin = 3.0;
         },
         [](Requirement& r) { r.space.seats = demand::Seats::guided; }},
        {"sideways_stiffness",
         [](Requirement& r) {
             sliding(r);
             r.limits.seating_coefficient = 0.7;
         },
         on_fixed_seats},
        {"seats_flat",
         [](Requirement& r) {
             sliding(r);
             r.space.sideways_play = 0.5 * r.grid.mean_diameter->smallest;
         },
         on_fixed_seats},
        {"lean", sliding, on_fixed_seats},
        {"surge", [](Requirement& r) { r.duty.frequency = 25.0 * hertz; }, still},
        {"fatigue", moving, still},
        {"mass", [](Requirement& r) { r.limits.largest_mass = 0.6 * gram; },
         [](Requirement& r) { r.limits.largest_mass.reset(); }},
    };
    return all;
}

std::size_t index_of(std::string_view rule) {
    const auto rules = check::rules();
    for (std::size_t i = 0; i < rules.size(); ++i)
        if (rules[i].id == rule) return i;
    return rules.size();
}

/// No spring is without active coils or longer when solid than the space it works in, whatever is asked for.
bool stays_in_part(std::string_view rule) { return rule == "coils_fewest" || rule == "gap_to_solid"; }

/// What the search tells of a requirement, after holding it against the plain loop.
sizing::Census compared(const Requirement& requirement) {
    const sizing::Space space = sizing::search_space(requirement, test::wires());
    const sizing::Census census = sizing::search(space, test::tolerances());
    const test::PlainCount plain = test::count_every_combination(space, test::tolerances());
    CHECK(census.looked_at == plain.looked_at);
    CHECK(census.fit == plain.fit);
    for (std::size_t i = 0; i < check::rules().size(); ++i) {
        CAPTURE(check::rules()[i].id);
        CHECK(census.rejections[i].all == plain.rejections[i].all);
        CHECK(census.rejections[i].alone == plain.rejections[i].alone);
    }
    return census;
}

}  // namespace

TEST_CASE(
    "on two hundred random grids the search finds what testing every combination finds, with each limit on and off",
    "[slow]") {
    std::vector<unsigned long long> biting(switches().size(), 0);
    unsigned with_springs = 0;
    for (unsigned seed = 0; seed < kGrids; ++seed) {
        const std::size_t turn = seed % switches().size();
        const Switch& limit = switches()[turn];
        CAPTURE(seed, limit.rule);
        const std::size_t rule = index_of(limit.rule);
        REQUIRE(rule < check::rules().size());
        Requirement on = test::random_requirement(seed);
        limit.on(on);
        const sizing::Census limited = compared(on);
        biting[turn] += limited.rejections[rule].all.value();
        Requirement off = on;
        limit.off(off);
        const sizing::Census free = compared(off);
        if (!stays_in_part(limit.rule)) CHECK(free.rejections[rule].all == 0u);
        if (free.fit > 0) ++with_springs;
    }
    for (std::size_t i = 0; i < biting.size(); ++i) {
        CAPTURE(switches()[i].rule);
        CHECK(biting[i] > 0);
    }
    CHECK(with_springs > kGrids / 2);
}

TEST_CASE("every limit but those of plain geometry can be switched") {
    for (const check::Rule& rule : check::rules()) {
        if (rule.id == "reach" || rule.id == "open_coils") continue;  // a spring that does not touch, or is no spring
        CAPTURE(rule.id);
        bool switched = false;
        for (const Switch& s : switches()) switched = switched || s.rule == rule.id;
        CHECK(switched);
    }
}
