// SPDX-License-Identifier: MIT
// Tolerances of EN 15800.
#include <seatload/io/builtin.hpp>
#include <seatload/tolerance/en15800.hpp>

#include "published/inputs.hpp"
#include "support/jis_b_2707.hpp"

namespace seatload::published {
namespace {

Length d(const Inputs& in) { return in.get<Length>("wire_diameter"); }
Length D(const Inputs& in) { return in.get<Length>("mean_diameter"); }
double n(const Inputs& in) { return in.number("active_coils"); }
int grade(const Inputs& in) { return static_cast<int>(in.number("grade")); }

Force load_tolerance(const Inputs& in, const char* load) {
    return tolerance::load_tolerance(d(in), D(in), n(in), in.get<Force>(load), grade(in));
}

/// Both loads off to opposite sides, over the travel between them.
Rate rate_tolerance_from_two_loads(const Inputs& in) {
    const Length travel = (in.get<Force>("largest_load") - in.get<Force>("smallest_load")) / in.get<Rate>("rate");
    return (load_tolerance(in, "smallest_load") + load_tolerance(in, "largest_load")) / travel;
}

Length diameter_tolerance(const Inputs& in) {
    static const tolerance::Tables tables = io::builtin_tolerances().value();
    return tolerance::diameter_tolerance(tables, D(in), in.number("index"), grade(in)).value();
}

}  // namespace

Quantities tolerance_quantities() {
    return {
        {"grade", given_number()},
        {"diameter_tolerance", worked_out<Length>(diameter_tolerance)},
        {"load_tolerance", worked_out<Force>([](const Inputs& in) { return load_tolerance(in, "load"); })},
        {"free_length_tolerance", worked_out<Length>([](const Inputs& in) {
             return tolerance::free_length_tolerance(d(in), D(in), n(in), in.get<Rate>("rate"), grade(in));
         })},
        {"squareness", worked_out<Length>([](const Inputs& in) {
             return tolerance::squareness(in.get<Length>("free_length"), grade(in));
         })},
        {"parallelism", worked_out<Length>([](const Inputs& in) {
             return tolerance::parallelism(in.get<Length>("outside_diameter"), grade(in));
         })},
        {"load_tolerance_base", worked_out<Force>([](const Inputs& in) {
             return tolerance::load_tolerance_base_n(in_mm(d(in)), in_mm(D(in))) * newton;
         })},
        {"coils_factor", plain([](const Inputs& in) { return tolerance::coils_factor(n(in)); })},
        {"rate_tolerance_from_two_loads", worked_out<Rate>(rate_tolerance_from_two_loads)},
        {"jis_load_tolerance_percent",
         plain([](const Inputs& in) { return test::jis_load_tolerance_percent(n(in), grade(in)); })},
    };
}

}  // namespace seatload::published
