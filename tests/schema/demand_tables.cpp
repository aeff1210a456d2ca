// SPDX-License-Identifier: MIT
#include <seatload/io/demand_fields.hpp>
#include <seatload/io/wire_words.hpp>

#include "kinds.hpp"

namespace seatload::test {
namespace {

using demand::Interval;

SchemaTable gap_table(bool needs_viscosity) {
    SchemaTable t;
    t.must<Interval<Length>>("diameter", "Diameter the gap lies around.", io::kPositive);
    t.must<Interval<Length>>("clearance", "Radial width of the gap: half the play on the diameter.", io::kPositive);
    t.must<Interval<Length>>("length", "Length of the gap along the axis.", io::kPositive);
    t.may<Interval<double>>("eccentricity",
                            "0: the plunger in the middle of its bore; 1: touching it. \"0 .. 1\" "
                            "when it may lie anywhere.",
                            io::kShare);
    t.may<Interval<Viscosity>>("viscosity",
                               needs_viscosity ? "Dynamic viscosity of the coldest oil."
                                               : "Dynamic viscosity of the oil in this gap; left out in "
                                                 "both gaps, the oil is the same and does not matter.",
                               io::kPositive);
    if (needs_viscosity) t.need("viscosity");
    return t;
}

SchemaTable leak_table() {
    SchemaTable t;
    t.must<io::PressureRange>("supply", "Pressure of the oil before the leak.", io::kNotNegative);
    t.may<Interval<Length>>("inlet_orifice", "Diameter of the orifice the oil leaks in by.", io::kPositive);
    t.may<Interval<Length>>("outlet_orifice", "Diameter of the orifice it leaks away by.", io::kPositive);
    t.table("inlet", gap_table(false), "The gap the oil leaks in by, in place of an orifice.");
    t.table("outlet", gap_table(false), "The gap it leaks away by.");
    t.one_set_of({{"inlet_orifice", "outlet_orifice"}, {"inlet", "outlet"}});
    const auto any_of = [](std::string_view a, std::string_view b) {
        return Json{{"anyOf", {{{"required", {a}}}, {{"required", {b}}}}}};
    };
    t.also({{"not", {{"allOf", {any_of("inlet_orifice", "outlet_orifice"), any_of("inlet", "outlet")}}}}});
    return t;
}

SchemaTable side_load_table() {
    SchemaTable t;
    t.may<Interval<Force>>("force", "Force across the plunger while it is parked.", io::kNotNegative);
    t.may<Interval<Torque>>("torque", "Torque that bears on the plunger while it is parked; needs radius.",
                            io::kNotNegative);
    t.may<Interval<Length>>("radius", "Radius at which the torque bears on the plunger.", io::kPositive);
    t.may<Interval<Force>>("release_force",
                           "Force across the plunger that is still there when the oil must let it "
                           "go.",
                           io::kNotNegative);
    t.may<Interval<Torque>>("release_torque", "Torque still there when the oil must let it go; needs radius.",
                            io::kNotNegative);
    t.may<bool>("clear_at_full_travel", "true: the side load is gone once the plunger is fully back.");
    t.must<Interval<Angle>>("half_angle", "Angle of the taper to the axis; \"0 deg\" is a cylinder.", io::kNotNegative);
    t.must<Interval<double>>("flank_friction", "Coefficient of friction on the taper.", {0.0, 2.0, false, ""});
    t.may<Interval<double>>("bore_friction", "Coefficient of friction in the bore.", {0.0, 2.0, false, ""});
    t.may<bool>("acts_with_leak_pressure", "false: the side load and the leak pressure never come together.");
    t.one_of({"force", "torque"});
    t.also({{"dependencies", {{"torque", {"radius"}}, {"release_torque", {"radius"}}}}});
    return t;
}

SchemaTable pressures_table() {
    SchemaTable t;
    t.must<io::PressureRange>("release", "The least pressure there is: the plunger must let go and open fully by it.",
                              io::kNotNegative);
    t.may<io::PressureRange>("hold_open", "The least pressure once it is open: it must stay open.", io::kNotNegative);
    t.may<io::PressureRange>("leak", "What may get past while it is parked: it must stay shut.", io::kNotNegative);
    t.may<io::PressureRange>("mechanism", "Pressure at which what lies behind begins to move: it must be open before.",
                             io::kNotNegative);
    t.may<io::PressureRange>("residual", "What is left while it returns.", io::kNotNegative);
    return t;
}

SchemaTable back_table() {
    SchemaTable t;
    t.may<bool>("vented", "true: no pressure stands behind the plunger; then give nothing else here.");
    t.may<io::PressureRange>("pressure", "Pressure behind the plunger, on the side of the spring.", io::kAny);
    t.may<Interval<Length>>("diameter", "Diameter of the face it bears on; or give area.", io::kPositive);
    t.may<Interval<Area>>("area", "Area of the face it bears on; or give diameter.", io::kPositive);
    t.one_set_of({{"vented"}, {"pressure", "diameter"}, {"pressure", "area"}});
    return t;
}

SchemaTable trust_table() {
    SchemaTable t;
    for (const auto& [key, words] : KeyWords{{"areas", "How far the areas can be trusted."},
                                             {"friction", "How far the friction of guide and seal can be trusted."},
                                             {"pressures", "How far the pressures can be trusted."},
                                             {"leak", "How far the numbers of the leak can be trusted."},
                                             {"side_load", "How far the side load and its friction can be trusted."},
                                             {"back", "How far the pressure behind the plunger can be trusted."},
                                             {"drain", "How far the numbers of the drain can be trusted."}})
        t.may<wire::Evidence>(key, words);
    return t;
}

const io::Span kUnderOne{0.0, 0.99, false, ""};

}  // namespace

SchemaTable identity_table() {
    const KeyWords words{{"engine", "Engine or gearbox the spring belongs to."},
                         {"position", "Where in it the spring sits."},
                         {"number", "Part number, at most 16 characters (ISO 7200)."},
                         {"revision", "Revision index, at most 2 characters (ISO 7200)."},
                         {"owner", "Legal owner of the papers: the workshop."},
                         {"creator", "Who made the papers."},
                         {"approver", "Who approved them."}};
    SchemaTable t;
    demand::Identity identity;
    t.visited(words, [&](auto& f) { io::visit_identity(f, identity); });
    t.put("number", {{"type", "string"}, {"maxLength", 16}}, words.at("number"));
    t.put("revision", {{"type", "string"}, {"maxLength", 2}}, words.at("revision"));
    t.may<io::DateText>("date", "Date of issue. It is printed as given here, and never taken from the clock.");
    return t;
}

SchemaTable space_table(bool) {
    SchemaTable t;
    demand::Space space;
    t.visited({{"bore", "Bore the spring works in: its size, or its smallest and largest."},
               {"rod", "Rod or stem the spring stands over: its size, or its smallest and largest."},
               {"seated_height", "L1: height of the spring with the mechanism at rest on its seat."},
               {"full_travel_height", "L2: height with the mechanism pushed right back."},
               {"free_length", "Room for the free spring: what can be got in by hand."},
               {"seats",
                "How the ends are held, which decides whether the spring buckles. \"slides\": the far plate can "
                "move sideways. \"fixed\" is taken when nothing is said."},
               {"sideways_play", "How far a sliding seat can go sideways."}},
              [&](auto& f) { io::visit_space(f, space); });
    return t;
}

SchemaTable surroundings_table() {
    SchemaTable t;
    demand::Surroundings surroundings;
    t.visited({{"temperature", "The hottest in service: strength, stiffness and load loss are judged there."},
               {"medium", "What surrounds the spring, for the maker to know: engine oil, air."}},
              [&](auto& f) { io::visit_surroundings(f, surroundings); });
    return t;
}

SchemaTable plunger_table(bool needs_stroke) {
    SchemaTable t;
    t.may<Interval<Length>>("seat_diameter", "Diameter of the seat line, measured on the blued seat; or seat_area.",
                            io::kPositive);
    t.may<Interval<Area>>("seat_area", "Area inside the seat line; or seat_diameter.", io::kPositive);
    t.may<Interval<Length>>("full_diameter", "What the oil bears on once the plunger is cracked; or full_area.",
                            io::kPositive);
    t.may<Interval<Area>>("full_area", "Area the oil bears on once it is cracked; or full_diameter.", io::kPositive);
    t.one_of({"seat_diameter", "seat_area"}).one_of({"full_diameter", "full_area"});
    t.may<Length>("stroke", "Full stroke; left out where the heights of the spring state it.", io::kPositive);
    if (needs_stroke) t.need("stroke");
    t.may<Interval<double>>("annulus_share",
                            "Share of the pressure that reaches the ring outside the seat line while "
                            "it opens.",
                            io::kShare);
    t.must<Interval<Force>>("friction", "Friction of guide and seal, whichever way it moves.", io::kNotNegative);
    t.table("pressures", pressures_table(), "Pressures of the oil, above that around it.").need("pressures");
    t.table("leak", leak_table(),
            "In place of pressures.leak: the leak pressure worked out from two orifices or gaps.");
    t.table("side_load", side_load_table(), "What could push the plunger out across its axis.");
    t.table("back", back_table(), "The side of the spring: vented, or under a pressure.");
    SchemaTable drain = gap_table(true);
    drain.must<Time>("longest_time", "How long the plunger may take to return, cold.", io::kPositive);
    t.table("drain", drain, "The way out of the oil, cold and thick, when the plunger returns.");
    SchemaTable margins;
    margins.may<Share>("hold", "What pushes it off its seat is taken so much larger.", io::kShare);
    margins.may<Share>("release", "What the oil pushes with is taken so much smaller.", kUnderOne);
    t.table("margins", margins, "Margins on what is pushed and what pushes.");
    t.table("trust", trust_table(), "How far the numbers can be trusted; printed beside each result.");
    return t;
}

SchemaTable own_wire_table() {
    SchemaTable t;
    t.must<std::string>("id", "What the wire is called: its coil or certificate.");
    t.may<std::string>("designation", "Designation by its standard.");
    t.may<std::string>("standard", "Standard it is made to.");
    t.may<wire::Family>("family", "Kind of wire; cold-drawn carbon is taken when nothing is said.");
    t.must<Stress>("shear_modulus", "G at 20 °C.", io::kPositive);
    t.must<Stress>("young_modulus", "E at 20 °C.", io::kPositive);
    t.must<Density>("density", "Density of the wire.", io::kPositive);
    t.must<demand::LengthRange>("diameters", "Diameters for which the strength holds.", io::kPositive);
    t.may<Stress>("tensile_strength", "Rm, the least on the certificate; or a law by the two keys below.",
                  io::kPositive);
    t.may<Stress>("strength_at_1_mm", "A in Rm = A / d^m, d in mm.", io::kPositive);
    t.may<double>("strength_exponent", "m in Rm = A / d^m.", io::kNotNegative);
    t.may<Length>("diameter_tolerance", "Tolerance of the diameter, plus and minus.", io::kNotNegative);
    t.must<Celsius>("service_limit", "The hottest service.", io::kTemperature);
    t.may<Share>("shear_modulus_loss_per_100_kelvin", "Share of G that is lost with each 100 K.", io::kShare);
    t.may<double>("relative_cost", "Cost by mass; hard-drawn wire is 1.", io::kPositive);
    t.may<std::string>("note", "Anything else worth knowing of it.");
    t.one_of({"tensile_strength", "strength_at_1_mm"});
    return t;
}

}  // namespace seatload::test
