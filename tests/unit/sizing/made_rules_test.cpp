// SPDX-License-Identifier: MIT
// What is measured of a spring made, against the table of rules with the dimensions it was made with.
#include <algorithm>
#include <array>
#include <map>
#include <string_view>
#include <vector>

#include <seatload/check/rule.hpp>
#include <seatload/sizing/made_allowance.hpp>
#include <seatload/sizing/made_quantity.hpp>
#include <seatload/sizing/space.hpp>
#include <seatload/spring/coils.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

#include "varied_requirements.hpp"

using namespace seatload;

namespace {

/// A place on the axis of mean diameters, active coils, and the free length over the seated height.
struct Shape {
    long place;
    double coils;
    double stretch;
};

/// Slim and stout, few coils and many, so that each limit is both kept and broken.
std::vector<Shape> shapes(const sizing::WireOption& option) {
    const long last = option.mean_diameters.count - 1;
    return {{0, 5.5, 1.3}, {last / 2, 5.5, 1.3}, {last, 4.5, 1.02}, {last / 2, 16.5, 1.8}, {last, 2.5, 1.6}};
}

/// Which rules a quantity stands for; what the others look at tolerances do not move, or the maker keeps.
const std::map<std::string_view, std::vector<std::string_view>> kRulesOf{
    {"seated_load", {"seated_load_least", "seated_load_most"}},
    {"full_travel_load", {"full_travel_load_least", "full_travel_load_most"}},
    {"bore_clearance", {"bore_clearance"}},
    {"rod_clearance", {"rod_clearance"}},
    {"gap_to_solid", {"gap_to_solid"}},
    {"free_length", {"free_length_shortest", "free_length_longest", "reach"}},
    {"stress", {"stress"}},
    {"lean", {"lean"}},
    {"buckling", {"buckling"}},
    {"sideways_stiffness", {"sideways_stiffness"}},
    {"fatigue", {"fatigue"}},
    {"surge", {"surge"}},
    {"mass", {"mass"}}};

/// The wire that a spring was made of.
check::WireNumbers wire_as_made(check::WireNumbers wire, const tolerance::MadeSprings& made, std::size_t i) {
    wire.d_mm = made.d[i];
    wire.d_tolerance_mm = 0.0;
    // Buckling looks at G/E, which a spread of G alone is not meant to move.
    wire.young_modulus_mpa *= made.modulus[i] / wire.shear_modulus_mpa;
    wire.shear_modulus_mpa = made.modulus[i];
    return wire;
}

/// Whether a coil passes the rules of a quantity, as far as they are in play.
bool passes_rules_of(const sizing::MadeQuantity& quantity, const check::Coil& coil, double L0) {
    const auto& ids = kRulesOf.at(quantity.id);
    return std::all_of(ids.begin(), ids.end(), [&](std::string_view id) {
        const check::Rule& rule = check::rule_named(id);
        return !rule.applies(coil.demand, coil.ends) || check::passes(rule, coil, L0);
    });
}

}  // namespace

TEST_CASE("each limit is broken by the same springs as the rules break with the dimensions made") {
    std::map<std::string_view, std::array<long, 2>> seen;  // broken, kept
    const tolerance::Tables none;                          // a spring made has no tolerance left
    for (const auto& [name, requirement] : test::varied_requirements()) {
        const sizing::Space space = sizing::search_space(requirement, test::wires());
        const check::DemandNumbers demand = check::numbers(requirement);
        for (const sizing::WireOption& option : space.wires)
            for (const spring::Ends ends : space.ends)
                for (const auto& [place, n, stretch] : shapes(option)) {
                    const double D = option.mean_diameters.at(place);
                    const double nt = spring::dead_coils(ends) + n;
                    const check::Coil nominal(demand, option.numbers, test::tolerances(), D, ends, nt);
                    const double L0 = std::max(stretch * demand.seated_height_mm, nominal.solid_length_mm + 1.0);
                    const std::array loads{nominal.cold_load_n(L0, demand.seated_height_mm),
                                           nominal.cold_load_n(L0, demand.full_travel_height_mm)};
                    if (!(loads[0] > 0.0 && loads[1] > loads[0])) continue;
                    const auto order = sizing::made_order(nominal, L0, true, loads);
                    tolerance::MadeStrays strays;
                    tolerance::MadeSprings made;
                    tolerance::MadeColumn values;
                    tolerance::draw_strays(31, static_cast<std::uint64_t>(place), strays);
                    tolerance::make_springs(
                        order, {0.01 * option.numbers.d_mm, 1500.0, 0.01 * D, 0.02 * D, 0.3, 0.03 * L0}, strays, made);
                    for (const sizing::MadeQuantity& q : sizing::made_quantities(nominal)) {
                        q.measure(nominal, made, values);
                        for (std::size_t i = 0; i < 12; ++i) {
                            // Lean goes by the turns of the tips, widening in the bore by the coils, which a rule does
                            // not part: that moves the room by less than a hundredth of a millimetre here.
                            const bool is_lean = q.id == "lean";
                            if (is_lean && std::abs(values[i]) < 0.01) continue;
                            const check::WireNumbers wire = wire_as_made(option.numbers, made, i);
                            const check::Coil coil(demand, wire, none, made.D[i], ends,
                                                   (is_lean ? made.turns[i] : made.n[i]) + spring::dead_coils(ends));
                            const bool kept = passes_rules_of(q, coil, made.L0[i]);
                            CAPTURE(name, q.id, i, values[i], q.least, q.most);
                            REQUIRE((values[i] >= q.least && values[i] <= q.most) == kept);
                            ++seen[q.id][kept ? 1 : 0];
                        }
                    }
                }
    }
    for (const auto& [id, rules] : kRulesOf) {
        INFO(id);
        CHECK(seen[id][0] > 0);
        CHECK(seen[id][1] > 0);
    }
}
