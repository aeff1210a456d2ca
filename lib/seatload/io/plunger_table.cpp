// SPDX-License-Identifier: MIT
#include <seatload/io/plunger_table.hpp>

#include <cmath>

#include <seatload/demand/hydraulics.hpp>
#include <seatload/io/plunger_forms.hpp>
#include <seatload/io/wire_words.hpp>
#include <seatload/units/format.hpp>

namespace seatload::io {
namespace {

using demand::Interval;

// Wide enough for any plunger, and narrow enough that no product of them overflows.
constexpr Span kPlungerLength{1e-4, 1e4, false, "0.0001 mm or more, and at most 10 m"};
constexpr Span kFaceArea{1e-3, 1e8, false, "0.001 mm2 or more, and at most 100 m2"};
constexpr Span kOilPressure{0.0, 1000.0, false, "0 or more, and at most 10000 bar"};
constexpr Span kWorkingPressure{0.0, 1000.0, true, "more than 0 and at most 10000 bar"};
constexpr Span kPlungerForce{0.0, 1e6, false, "0 or more, and at most 1000 kN"};
constexpr Span kSideTorque{0.0, 1e9, false, "0 or more, and at most 1000000 N m"};
constexpr Span kOilViscosity{1e-12, 1e-2, false, "0.001 mPa s or more, and at most 10000 Pa s"};
constexpr Span kReturnTime{1e-3, 1e6, false, "1 ms or more, and at most 1000000 s"};
constexpr Span kFriction{0.0, 2.0, false, "0 or more, and at most 2"};
constexpr Span kEccentricity{0.0, 1.0, false, "0 (in the middle) to 1 (touching)"};
constexpr Span kFlankAngle{0.0, 1.3962634015954636, false, "0 to 80 deg"};
constexpr Span kBackPressure{-0.1, 1000.0, false, "-1 bar (a vacuum) or more, and at most 10000 bar"};

template <class Q>
Interval<Q> need(Reader& table, std::string_view key, std::string_view example, const Span& span) {
    return table.need<Interval<Q>>(key, example, span);
}

Interval<Stress> need_pressure(Reader& table, std::string_view key, std::string_view example, const Span& span) {
    return table.need<PressureRange>(key, example, span).ends;
}

template <class Target>
void set_pressure(Reader& table, std::string_view key, Target& target, const Span& span) {
    if (const auto range = table.find<PressureRange>(key, span)) target = range->ends;
}

/// A face by its diameter or by its area, exactly one of the two.
demand::Face read_face(Reader& table, const std::string& name, std::string_view example) {
    const std::string diameter_key = name.empty() ? "diameter" : name + "_diameter";
    const std::string area_key = name.empty() ? "area" : name + "_area";
    demand::Face face;
    const auto diameter = table.find<Interval<Length>>(diameter_key, kPlungerLength);
    const auto area = table.find<Interval<Area>>(area_key, kFaceArea);
    if (!table.has(diameter_key) && !table.has(area_key)) table.missing(diameter_key, example);
    if (table.has(diameter_key) && table.has(area_key))
        table.document().contradiction(table.at(area_key), "given-twice"_id, "the same face is given twice",
                                       "keep one of the two", table.at(diameter_key), diameter_key + " stands here");
    if (area) face.area = *area;
    if (diameter) {
        face.diameter = diameter;
        face.area = {demand::circle_area(diameter->low), demand::circle_area(diameter->high)};
    }
    return face;
}

void read_gap(Reader& table, demand::AnnularGap& gap, bool needs_viscosity) {
    gap.diameter = need<Length>(table, "diameter", "\"11.98 mm\"", kPlungerLength);
    gap.clearance = need<Length>(table, "clearance", "\"0.02 mm .. 0.03 mm\"  # radial", kPlungerLength);
    gap.length = need<Length>(table, "length", "\"8 mm\"", kPlungerLength);
    table.set("eccentricity", gap.eccentricity, kEccentricity);
    if (needs_viscosity)
        gap.viscosity = need<Viscosity>(table, "viscosity", "\"900 mPa s\"", kOilViscosity);
    else
        table.set("viscosity", gap.viscosity, kOilViscosity);
}

demand::LeakGaps read_leak_gaps(Reader& table) {
    demand::LeakGaps gaps;
    for (const auto& [key, gap] : {std::pair{"inlet", &gaps.inlet}, std::pair{"outlet", &gaps.outlet}})
        if (auto inside = table.need_table(key, "clearance = \"0.02 mm\"")) read_gap(*inside, *gap, false);
    if (gaps.inlet.viscosity.has_value() != gaps.outlet.viscosity.has_value())
        table.document().error(table.at(), "one-of-a-pair"_id,
                               "one gap of the leak has a viscosity, the other has none",
                               "give both, or neither when the same oil is in both: it then does not matter");
    return gaps;
}

demand::Leakage read_leakage(Reader& table) {
    demand::Leakage leakage;
    leakage.supply = need_pressure(table, "supply", "\"3 bar\"", kOilPressure);
    const bool has_orifices = table.has("inlet_orifice") || table.has("outlet_orifice");
    const bool has_gaps = table.has("inlet") || table.has("outlet");
    if (has_orifices && has_gaps)
        table.document().error(table.at(), "given-twice"_id, "the way of the leak is given twice",
                               "two orifices (inlet_orifice, outlet_orifice) or two gaps ([plunger.leak.inlet], "
                               "[plunger.leak.outlet])");
    if (has_gaps) {
        leakage.way = read_leak_gaps(table);
        table.allow("inlet_orifice");
        table.allow("outlet_orifice");
        return leakage;
    }
    demand::LeakOrifices orifices;
    orifices.inlet = need<Length>(table, "inlet_orifice", "\"0.4 mm\"  # its diameter", kPlungerLength);
    orifices.outlet = need<Length>(table, "outlet_orifice", "\"0.8 mm\"  # its diameter", kPlungerLength);
    leakage.way = orifices;
    table.allow("inlet");
    table.allow("outlet");
    return leakage;
}

void read_pressures(Reader& plunger, demand::PlungerPressures& pressures) {
    if (auto table = plunger.need_table("pressures", "release = \"1.6 bar\"")) {
        pressures.release = need_pressure(*table, "release", "\"1.6 bar\"", kWorkingPressure);
        set_pressure(*table, "hold_open", pressures.hold_open, kWorkingPressure);
        set_pressure(*table, "leak", pressures.leak, kOilPressure);
        set_pressure(*table, "mechanism", pressures.mechanism, kWorkingPressure);
        set_pressure(*table, "residual", pressures.residual, kOilPressure);
    }
    auto leak = plunger.table("leak");
    if (!leak) return;
    if (pressures.leak)
        plunger.document().contradiction(leak->at(), "given-twice"_id,
                                         "the leak pressure is given and to be worked out as well",
                                         "keep pressures.leak or the table [plunger.leak]",
                                         plunger.document().at("plunger.pressures.leak"), "the leak pressure");
    pressures.leakage = read_leakage(*leak);
}

/// A side load as a force, or as a torque at a radius.
std::optional<Interval<Force>> read_side_force(Reader& table, const std::string& before,
                                               const std::optional<Interval<Length>>& radius) {
    const std::string force_key = before + "force";
    const std::string torque_key = before + "torque";
    auto force = table.find<Interval<Force>>(force_key, kPlungerForce);
    const auto torque = table.find<Interval<Torque>>(torque_key, kSideTorque);
    if (table.has(force_key) && table.has(torque_key))
        table.document().contradiction(table.at(torque_key), "given-twice"_id, "the side load is given twice",
                                       "keep one of the two", table.at(force_key), force_key + " stands here");
    if (force) return force;
    if (!torque) return std::nullopt;
    if (!table.has("radius")) table.missing("radius", "\"40 mm\"  # at which the torque bears on the plunger");
    if (!radius) return std::nullopt;
    return Interval<Force>{torque->low / radius->high, torque->high / radius->low};
}

demand::SideLoad read_side_load(Reader& table) {
    demand::SideLoad side;
    const auto radius = table.find<Interval<Length>>("radius", kPlungerLength);
    if (!table.has("force") && !table.has("torque")) table.missing("torque", "\"0 N m .. 2 N m\"  # or force");
    side.parked = read_side_force(table, "", radius).value_or(Interval<Force>{});
    side.released = read_side_force(table, "release_", radius).value_or(Interval<Force>{});
    table.set("clear_at_full_travel", side.clear_at_full_travel);
    side.half_angle = need<Angle>(table, "half_angle", "\"12 deg\"  # 0 deg: a cylinder", kFlankAngle);
    side.flank_friction = need<double>(table, "flank_friction", "\"0.08 .. 0.15\"", kFriction);
    table.set("bore_friction", side.bore_friction, kFriction);
    table.set("acts_with_leak_pressure", side.acts_with_leak_pressure);
    return side;
}

std::optional<demand::BackPressure> read_back(Reader& table) {
    const bool is_vented = table.find<bool>("vented").value_or(false);
    if (is_vented && table.has("pressure"))
        table.document().contradiction(table.at("pressure"), "contradiction"_id, "a vented back has no pressure",
                                       "keep one of the two", table.at("vented"), "vented stands here");
    if (is_vented) {
        for (const char* key : {"pressure", "diameter", "area"}) table.allow(key);
        return std::nullopt;
    }
    demand::BackPressure back;
    back.pressure = need_pressure(table, "pressure", "\"0 bar .. 0.1 bar\"  # or vented = true", kBackPressure);
    back.face = read_face(table, "", "\"12 mm\"  # of the face it bears on");
    return back;
}

void read_trust(Reader& table, demand::PlungerTrust& trust) {
    using Trust = demand::PlungerTrust;
    constexpr std::pair<std::string_view, wire::Evidence Trust::*> kGroups[] = {
        {"areas", &Trust::areas},  {"friction", &Trust::friction},   {"pressures", &Trust::pressures},
        {"leak", &Trust::leakage}, {"side_load", &Trust::side_load}, {"back", &Trust::back},
        {"drain", &Trust::drain},
    };
    for (const auto& [key, member] : kGroups) table.set(key, trust.*member);
}

/// The stroke, which the spring's heights state too.
Length read_stroke(Reader& table, const std::optional<Length>& travel) {
    const auto stroke = table.find<Length>("stroke", kPlungerLength);
    if (!table.has("stroke") && !travel) table.missing("stroke", "\"6 mm\"");
    constexpr double kSame = 0.005;  // mm; heights are stated to a hundredth
    if (stroke && travel && std::abs(in_mm(*stroke - *travel)) > kSame)
        table.document().contradiction(table.at("stroke"), "contradiction"_id,
                                       "the stroke is not what the heights of the spring differ by",
                                       "they differ by " + units::exact(*travel) + "; leave the stroke out",
                                       table.document().at("space.full_travel_height"), "the full-travel height");
    if (stroke) return *stroke;
    return travel.value_or(Length{});
}

void check_areas(Reader& table, const demand::Plunger& plunger) {
    const Area none{};
    if (plunger.seat.area.high <= none || plunger.full.area.low <= none ||
        plunger.seat.area.high < plunger.full.area.low)
        return;
    const auto key = [&](const char* diameter, const char* area) { return table.has(diameter) ? diameter : area; };
    table.document().contradiction(table.at(key("seat_diameter", "seat_area")), "contradiction"_id,
                                   "the area inside the seat line is not smaller than the full area",
                                   "parked, the oil sees less of the plunger than once it is cracked",
                                   table.at(key("full_diameter", "full_area")), "the full area");
}

}  // namespace

demand::Plunger read_plunger_table(Reader& table, const std::optional<Length>& travel) {
    demand::Plunger plunger;
    plunger.seat = read_face(table, "seat", "\"7.9 mm\"");
    plunger.full = read_face(table, "full", "\"12 mm\"");
    check_areas(table, plunger);
    plunger.stroke = read_stroke(table, travel);
    table.set("annulus_share", plunger.annulus_share, kPositiveShare);
    plunger.friction = need<Force>(table, "friction", "\"0.2 N .. 0.5 N\"", kPlungerForce);
    read_pressures(table, plunger.pressures);
    if (auto side = table.table("side_load")) plunger.side_load = read_side_load(*side);
    if (auto back = table.table("back")) plunger.back = read_back(*back);
    if (auto drain = table.table("drain")) {
        plunger.drain.emplace();
        read_gap(*drain, plunger.drain->gap, true);
        plunger.drain->longest_time = drain->need<Time>("longest_time", "\"3 s\"", kReturnTime);
    }
    if (auto margins = table.table("margins")) {
        margins->set("hold", plunger.margins.hold, kShare);
        margins->set("release", plunger.margins.release, Span{0.0, 0.99, false, "0 or more, and under 1"});
    }
    if (auto trust = table.table("trust")) read_trust(*trust, plunger.trust);
    return plunger;
}

}  // namespace seatload::io
