// SPDX-License-Identifier: MIT
// Decision by guard bands, sampling, tolerance intervals and capability.
#include <seatload/inspection/guard_band.hpp>
#include <seatload/inspection/protection.hpp>
#include <seatload/inspection/summary.hpp>
#include <seatload/inspection/tolerance_factor.hpp>

#include "published/inputs.hpp"

namespace seatload::published {
namespace {

int whole(const Inputs& in, const char* name) { return static_cast<int>(in.number(name)); }

inspection::Limits limits(const Inputs& in) { return {in.number("lower_limit"), in.number("upper_limit")}; }

/// The guard band [N]: U, or the one-sided factor times u.
double guard_band(const Inputs& in) {
    if (in.has("expanded_uncertainty")) return in.number("expanded_uncertainty");
    return inspection::guard_factor(in.number("confidence")) * in.number("standard_uncertainty");
}

inspection::Limits zone(const Inputs& in) { return inspection::acceptance_zone(limits(in), guard_band(in)); }

double chance_of_conforming(const Inputs& in) {
    return inspection::chance_of_conforming(in.number("reading"), limits(in), in.number("standard_uncertainty"));
}

}  // namespace

Quantities inspection_quantities() {
    return {
        {"reading", given<Force>()},
        {"lower_limit", given<Force>()},
        {"upper_limit", given<Force>()},
        {"standard_uncertainty", given<Force>()},
        {"expanded_uncertainty", given<Force>()},
        {"confidence", given_number()},
        {"content", given_number()},
        {"guard_band_factor", given_number()},
        {"lot_size", given_number()},
        {"bad_pieces", given_number()},
        {"sample_size", given_number()},
        {"acceptance_number", given_number()},
        {"acceptance_chance", given_number()},
        {"capability_estimate", given_number()},
        {"probability_of_conformity", plain(chance_of_conforming)},
        {"one_sided_guard_factor",
         plain([](const Inputs& in) { return inspection::guard_factor(in.number("confidence")); })},
        {"false_accept_at_limit", plain([](const Inputs& in) {
             return inspection::chance_of_false_acceptance(in.number("guard_band_factor"));
         })},
        {"least_accepted", worked_out<Force>([](const Inputs& in) { return *zone(in).least * newton; })},
        {"most_accepted", worked_out<Force>([](const Inputs& in) { return *zone(in).most * newton; })},
        {"bad_share_at_acceptance_chance", plain([](const Inputs& in) {
             return inspection::bad_share_at(in.number("acceptance_chance"), whole(in, "sample_size"),
                                             whole(in, "acceptance_number"));
         })},
        {"chance_that_lot_passes", plain([](const Inputs& in) {
             return inspection::chance_of_acceptance(whole(in, "lot_size"), whole(in, "bad_pieces"),
                                                     whole(in, "sample_size"), whole(in, "acceptance_number"));
         })},
        {"one_sided_tolerance_factor", plain([](const Inputs& in) {
             return inspection::one_sided_tolerance_factor(whole(in, "sample_size"), in.number("content"),
                                                           in.number("confidence"));
         })},
        {"capability_at_least", plain([](const Inputs& in) {
             return inspection::capability_at_least(in.number("capability_estimate"), whole(in, "sample_size"),
                                                    in.number("confidence"));
         })},
    };
}

}  // namespace seatload::published
