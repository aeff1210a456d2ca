// SPDX-License-Identifier: MIT
// The search on drawn requirements: a tighter limit never lets more fit, a wider grid never fewer.
#include <seatload/sizing/search.hpp>

#include "property/property.hpp"
#include "support/builtin.hpp"
#include "support/random_requirement.hpp"

using namespace seatload;
using namespace seatload::property;

namespace {

using demand::Requirement;

unsigned long long fitting(const Requirement& requirement) {
    sizing::SearchOptions options;
    options.threads = 1;
    return sizing::search(sizing::search_space(requirement, test::wires()), test::tolerances(), options).fit;
}

/// A way to ask for more.
struct Tightening {
    const char* name;
    void (*apply)(Requirement&, double share);
};

const std::vector<Tightening>& tightenings() {
    static const std::vector<Tightening> all{
        {"seated load at least", [](Requirement& r, double s) { *r.seated_load.at_least *= 1.0 + 0.2 * s; }},
        {"seated load at most", [](Requirement& r, double s) { *r.seated_load.at_most *= 1.0 - 0.1 * s; }},
        {"full-travel load", [](Requirement& r, double s) { *r.full_travel_load.at_most *= 1.0 - 0.1 * s; }},
        {"bore",
         [](Requirement& r, double s) {
             r.space.bore->smallest *= 1.0 - 0.05 * s;
             r.space.bore->largest *= 1.0 - 0.05 * s;
         }},
        {"stress", [](Requirement& r, double s) { r.limits.stress_safety *= 1.0 + 0.3 * s; }},
        {"buckling", [](Requirement& r, double s) { r.limits.buckling_margin *= 1.0 + s; }},
        {"clearance", [](Requirement& r, double s) { r.limits.bore_clearance += 0.3 * s * mm; }},
        {"index", [](Requirement& r, double s) { r.limits.largest_index *= 1.0 - 0.4 * s; }},
        {"coils", [](Requirement& r, double s) { r.limits.fewest_active_coils *= 1.0 + 3.0 * s; }},
        {"mass", [](Requirement& r, double s) { r.limits.largest_mass = (1.001 - s) * 100.0 * gram; }},
    };
    return all;
}

}  // namespace

TEST_CASE("A tighter limit never lets more springs fit") {
    holds("tighter", [] {
        const Requirement wide = test::random_requirement(static_cast<unsigned>(whole(0, 1000)));
        const auto& tightening = one_of(tightenings());
        // The mean diameters looked at must not move with the bore.
        Requirement tight = wide;
        tightening.apply(tight, number(0.0, 1.0));
        const unsigned long long before = fitting(wide);
        const unsigned long long after = fitting(tight);
        RC_TAG(std::string(tightening.name));
        if (after > before) RC_FAIL(std::string(tightening.name));
    });
}

TEST_CASE("More combinations to look at never let fewer springs fit") {
    holds("wider", [] {
        const Requirement narrow = test::random_requirement(static_cast<unsigned>(whole(0, 1000)));
        Requirement wide = narrow;
        wide.grid.total_coils.largest += 1.0;
        wide.grid.free_length->largest += number(0.0, 5.0) * mm;
        wide.grid.mean_diameter_step *= 0.5;
        wide.ends = {spring::Ends::closed_ground, spring::Ends::closed, spring::Ends::open, spring::Ends::open_ground};
        RC_ASSERT(fitting(wide) >= fitting(narrow));
    });
}
