// SPDX-License-Identifier: MIT
// A plunger between a spring and oil: flanks, pressures, orifices and gaps.
#include <numbers>

#include <seatload/demand/hydraulics.hpp>
#include <seatload/demand/plunger_statics.hpp>
#include <seatload/demand/ramp.hpp>

#include "published/inputs.hpp"

namespace seatload::published {
namespace {

double flank(const Inputs& in) { return in.number("flank_angle"); }
double flank_friction(const Inputs& in) { return in.number("flank_friction"); }
double guide_friction(const Inputs& in) { return in.number("guide_friction"); }
double bore_friction(const Inputs& in) { return in.number("bore_friction"); }
Force side_force(const Inputs& in) { return in.get<Force>("side_force"); }
Force F1(const Inputs& in) { return in.get<Force>("plunger_seated_load"); }
Force F2(const Inputs& in) { return F1(in) + in.get<Rate>("plunger_spring_rate") * in.get<Length>("plunger_stroke"); }
Force friction(const Inputs& in) { return in.get<Force>("plunger_friction"); }
Area seat(const Inputs& in) { return demand::circle_area(in.get<Length>("seat_diameter")); }
Area full(const Inputs& in) { return demand::circle_area(in.get<Length>("full_diameter")); }

Stress crack(const Inputs& in) { return demand::crack_pressure(F1(in), friction(in), seat(in)); }
Stress returns_from(const Inputs& in, Force load) {
    return demand::return_pressure(load, friction(in), Force{}, full(in));
}
double snap_ratio(const Inputs& in) { return demand::snap_ratio(F1(in), F2(in), friction(in)); }
double least_share(const Inputs& in) { return demand::least_annulus_share(snap_ratio(in), seat(in), full(in)); }

double conductance(const Inputs& in) {
    return in_base_unit(demand::annular_conductance(in.get<Length>("gap_diameter"), in.get<Length>("gap_clearance"),
                                                    in.get<Length>("gap_length"), 0.0, in.get<Viscosity>("viscosity")));
}

Quantities flanks() {
    return {
        {"side_force", given<Force>()},
        {"flank_angle", given<Angle>()},
        {"flank_friction", given_number()},
        {"guide_friction", given_number()},
        {"bore_friction", given_number()},
        {"ejecting_force", worked_out<Force>([](const Inputs& in) {
             return side_force(in) * demand::ejecting_share(flank(in), flank_friction(in));
         })},
        {"ejecting_force_guided", worked_out<Force>([](const Inputs& in) {
             return side_force(in) * demand::ejecting_share(flank(in), flank_friction(in), guide_friction(in));
         })},
        {"ejecting_force_net", worked_out<Force>([](const Inputs& in) {
             return side_force(in) *
                    demand::net_ejecting_share(flank(in), flank_friction(in), guide_friction(in), bore_friction(in));
         })},
        {"holding_force", worked_out<Force>([](const Inputs& in) {
             return side_force(in) * demand::holding_share(flank(in), flank_friction(in));
         })},
        {"holding_force_guided", worked_out<Force>([](const Inputs& in) {
             return side_force(in) * demand::holding_share(flank(in), flank_friction(in), guide_friction(in));
         })},
        {"self_holding_angle", worked_out<Angle>([](const Inputs& in) {
             return demand::self_holding_angle(flank_friction(in), bore_friction(in)) * radian;
         })},
        {"self_locking_angle", worked_out<Angle>([](const Inputs& in) {
             return demand::self_locking_angle(flank_friction(in), guide_friction(in)) * radian;
         })},
    };
}

Quantities pressures() {
    return {
        {"plunger_seated_load", given<Force>()},
        {"plunger_spring_rate", given<Rate>()},
        {"plunger_stroke", given<Length>()},
        {"plunger_friction", given<Force>()},
        {"seat_diameter", given<Length>()},
        {"full_diameter", given<Length>()},
        {"crack_pressure", worked_out<Stress>(crack)},
        {"full_stroke_margin", worked_out<Force>([](const Inputs& in) {
             return demand::full_stroke_margin(crack(in), full(in), F2(in), friction(in));
         })},
        {"snap_ratio", plain(snap_ratio)},
        {"return_start_pressure", worked_out<Stress>([](const Inputs& in) { return returns_from(in, F2(in)); })},
        {"reseat_pressure", worked_out<Stress>([](const Inputs& in) { return returns_from(in, F1(in)); })},
        {"blowdown", plain([](const Inputs& in) { return demand::blowdown(crack(in), returns_from(in, F1(in))); })},
        {"least_annulus_share", plain(least_share)},
        {"orifice_ratio_for_snap",
         plain([](const Inputs& in) { return demand::orifice_ratio_for_share(least_share(in)); })},
    };
}

Quantities leaks() {
    return {
        {"supply_pressure", given<Stress>()},
        {"orifice_ratio", given_number()},
        {"gap_diameter", given<Length>()},
        {"gap_clearance", given<Length>()},
        {"gap_length", given<Length>()},
        {"viscosity", given<Viscosity>()},
        {"eccentricity", given_number()},
        {"chamber_pressure", worked_out<Stress>([](const Inputs& in) {
             return demand::share_between_orifices(in.number("orifice_ratio")) * in.get<Stress>("supply_pressure");
         })},
        {"gap_conductance", plain(conductance)},
        {"eccentric_flow_factor",
         plain([](const Inputs& in) { return demand::eccentric_flow_factor(in.number("eccentricity")); })},
    };
}

}  // namespace

Quantities plunger_quantities() {
    Quantities all = flanks();
    all.merge(pressures());
    all.merge(leaks());
    return all;
}

}  // namespace seatload::published
