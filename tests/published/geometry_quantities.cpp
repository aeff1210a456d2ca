// SPDX-License-Identifier: MIT
// Coils, lengths and wire, as a source states them or as lib/seatload/spring works them out.
#include <numbers>
#include <stdexcept>

#include <seatload/spring/coils.hpp>
#include <seatload/spring/gap.hpp>
#include <seatload/spring/growth.hpp>
#include <seatload/spring/helix.hpp>
#include <seatload/spring/spring.hpp>

#include "published/inputs.hpp"

namespace seatload::published {
namespace {

Length d(const Inputs& in) { return in.get<Length>("wire_diameter"); }
Length D(const Inputs& in) { return in.get<Length>("mean_diameter"); }
double n(const Inputs& in) { return in.number("active_coils"); }
double nt(const Inputs& in) { return in.number("total_coils"); }

spring::Ends ends(const Inputs& in) {
    const std::string wanted = in.word("ends");
    for (const spring::Ends kind : spring::kAllEnds)
        if (spring::word(kind) == wanted) return kind;
    throw std::runtime_error("no ends are called \"" + wanted + "\"");
}

spring::Spring spring_of(const Inputs& in) {
    return {.wire_diameter = d(in), .mean_diameter = D(in), .total_coils = 0.0, .free_length = 0.0 * mm};
}

Length mean_diameter(const Inputs& in) {
    if (in.has("outside_diameter")) return in.get<Length>("outside_diameter") - d(in);
    if (in.has("index")) return in.number("index") * d(in);
    if (in.word("index_from", "") == "stress") return in.number("index_for_stress") * d(in);
    throw std::runtime_error("neither mean nor outside diameter nor index is stated");
}

double active_coils(const Inputs& in) {
    if (in.word("coils_from", "") == "rate") return in.number("coils_for_rate");
    return spring::active_coils(ends(in), nt(in));
}
double total_coils(const Inputs& in) {
    if (in.word("total_coils_from", "") == "mass") return in.number("coils_for_mass");
    return n(in) + spring::dead_coils(ends(in));
}

Length solid_length(const Inputs& in) {
    if (in.word("solid_form", "textbook") == "textbook") return d(in) * spring::textbook_solid_wires(ends(in), nt(in));
    return in.get<Length>("largest_wire_diameter") * spring::en_solid_wires(ends(in), nt(in));
}
Length hot_coiled_solid_length(const Inputs& in) {
    const bool ground = in.word("ends") == "ground";
    return in.get<Length>("largest_wire_diameter") * spring::hot_coiled_solid_wires(ground, nt(in));
}

Length free_pitch(const Inputs& in) { return spring::pitch(ends(in), in.get<Length>("free_length"), d(in), n(in)); }

/// Every coil a flat ring: pi D a coil.
Length flat_wire_length(const Inputs& in, double coils) {
    return spring::wire_length(0.0 * mm, 0.0 * mm, D(in), coils, coils);
}

/// Volume as the mass at density one, in the number of the unit asked for.
double flat_wire_volume_mm3(const Inputs& in) {
    return spring::wire_mass(1.0, in_mm(d(in)), in_mm(flat_wire_length(in, nt(in))));
}

Length coiled_wire_length(const Inputs& in) {
    return spring::wire_length(in.get<Length>("free_pitch"), d(in), D(in), n(in), nt(in));
}

Mass mass(const Inputs& in) { return spring::wire_mass(in.get<Density>("density"), d(in), coiled_wire_length(in)); }
Mass active_mass(const Inputs& in) {
    return spring::wire_mass(in.get<Density>("density"), d(in), flat_wire_length(in, n(in)));
}
double coils_for_mass(const Inputs& in) {
    const Mass one_coil = spring::wire_mass(in.get<Density>("density"), d(in), flat_wire_length(in, 1.0));
    return in.get<Mass>("mass") / one_coil;
}

/// Density from a weight per volume and the gravity a source reckons with [in/s2].
Density density(const Inputs& in) {
    constexpr double kStandardGravity = 9.80665 / 0.0254;
    return in.get<Density>("weight_density") * (kStandardGravity / in.number("gravity_in_per_s2"));
}

constexpr double kCubicInch = 25.4 * 25.4 * 25.4;

}  // namespace

Quantities geometry_quantities() {
    return {
        {"ends", given_word()},
        {"solid_form", given_word()},
        {"index_from", given_word()},        // "stress": the index is a result of the design
        {"coils_from", given_word()},        // "rate": so are the active coils
        {"total_coils_from", given_word()},  // "mass": total coils are found from the weight of a spring
        {"wire_from", given_word()},         // the quantity that is the wire diameter, a result of the design
        {"wire_diameter", worked_out<Length>([](const Inputs& in) { return in.get<Length>(in.word("wire_from")); })},
        {"largest_wire_diameter", given<Length>()},
        {"weight_density", given<Density>()},
        {"gravity_in_per_s2", given_number()},
        {"clash_share", given_number()},
        {"gap_between_coils", given<Length>()},
        {"relative_cost", given_number()},
        {"mean_diameter", worked_out<Length>(mean_diameter)},
        {"outside_diameter", worked_out<Length>([](const Inputs& in) { return spring_of(in).outside_diameter(); })},
        {"inside_diameter", worked_out<Length>([](const Inputs& in) { return spring_of(in).inside_diameter(); })},
        {"index", plain([](const Inputs& in) { return spring_of(in).index(); })},
        {"active_coils", plain(active_coils)},
        {"total_coils", plain(total_coils)},
        {"solid_length", worked_out<Length>(solid_length)},
        {"hot_coiled_solid_length", worked_out<Length>(hot_coiled_solid_length)},
        {"smallest_gaps",
         worked_out<Length>([](const Inputs& in) { return spring::smallest_gaps(d(in), D(in), n(in)); })},
        {"smallest_gaps_dynamic", worked_out<Length>([](const Inputs& in) {
             return spring::kDynamicGapFactor * in.get<Length>("smallest_gaps");
         })},
        {"smallest_gaps_hot_coiled",
         worked_out<Length>([](const Inputs& in) { return spring::smallest_gaps_hot_coiled(d(in), D(in), n(in)); })},
        {"smallest_permissible_length", worked_out<Length>([](const Inputs& in) {
             return in.get<Length>("solid_length") + in.get<Length>("smallest_gaps");
         })},
        {"free_length", given<Length>()},
        {"free_pitch", worked_out<Length>(free_pitch)},
        {"pitch_between_end_coils",  // a convention of some textbooks
         worked_out<Length>([](const Inputs& in) { return in.get<Length>("free_length") / (nt(in) - 1.0); })},
        {"helix_angle", worked_out<Angle>([](const Inputs& in) {
             return spring::helix_angle(in.get<Length>("free_pitch"), D(in)) * radian;
         })},
        {"wire_length", worked_out<Length>(coiled_wire_length)},
        {"flat_wire_length", worked_out<Length>([](const Inputs& in) { return flat_wire_length(in, nt(in)); })},
        {"wire_volume_in3", plain([](const Inputs& in) { return flat_wire_volume_mm3(in) / kCubicInch; })},
        {"volume_over_pi_in3", plain([](const Inputs& in) { return in.number("wire_volume_in3") / std::numbers::pi; })},
        {"volume_without_pi_in3",  // (N + 2) D d^2, the objective of a well-known test problem
         plain([](const Inputs& in) {
             return in.number("wire_volume_in3") * 4.0 / (std::numbers::pi * std::numbers::pi);
         })},
        {"figure_of_merit",
         plain([](const Inputs& in) { return -in.number("relative_cost") * in.number("wire_volume_in3"); })},
        {"density", worked_out<Density>(density)},
        {"mass", worked_out<Mass>(mass)},
        {"coils_touching", plain([](const Inputs& in) -> double { return in.get<Length>("solid_length") / d(in); })},
        {"nesting_play", worked_out<Length>([](const Inputs& in) {  // between the coil and one inside it
             const spring::Spring inner{.wire_diameter = in.get<Length>("other_wire_diameter"),
                                        .mean_diameter = in.get<Length>("other_mean_diameter"),
                                        .total_coils = 0.0,
                                        .free_length = 0.0 * mm};
             return spring_of(in).inside_diameter() - inner.outside_diameter();
         })},
        {"active_mass", worked_out<Mass>(active_mass)},
        {"coils_for_mass", plain(coils_for_mass)},
        {"growth_ends_free", worked_out<Length>([](const Inputs& in) {
             return spring::growth_ends_free(in.get<Length>("free_pitch"), d(in), D(in));
         })},
        {"growth_ends_held", worked_out<Length>([](const Inputs& in) {
             return spring::growth_ends_held(in.get<Length>("free_pitch"), d(in), D(in));
         })},
        {"slenderness", plain([](const Inputs& in) -> double { return in.get<Length>("free_length") / D(in); })},
    };
}

}  // namespace seatload::published
