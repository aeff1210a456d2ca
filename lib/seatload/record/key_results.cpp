// SPDX-License-Identifier: MIT
#include <seatload/record/key_results.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <seatload/core/text.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::record {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kAlike = 6e-6;  // files keep six digits, the last of which is off by half of itself at most
constexpr int kDigits = 6;
constexpr int kUsualResultsGrade = 2;  // EN 15800, taken when none is stated

double wire_tolerance(const Worked& w) {
    const auto found = wire::diameter_tolerance_at(w.grade, w.spec.spring.wire_diameter);
    return found ? in_mm(*found) : kNone;
}

double coil_tolerance(const Worked& w) {
    const auto found =
        tolerance::diameter_tolerance(w.tables, w.spec.spring.mean_diameter, w.e.index, w.spec.diameter_grade);
    return found ? in_mm(*found) : kNone;
}

double load_tolerance(const Worked& w) {
    const check::Evaluation& e = w.e;
    return in_newton(tolerance::load_tolerance(e.spring.wire_diameter, e.spring.mean_diameter, e.active_coils,
                                               e.seated->load, kUsualResultsGrade));
}

constexpr std::array kKinds{
    ResultKind{"tensile_strength", "least tensile strength Rm", "MPa", ResultGroup::wire,
               [](const Worked& w) { return in_mpa(w.e.strength.minimum); }},
    ResultKind{"shear_modulus", "shear modulus G", "MPa", ResultGroup::wire,
               [](const Worked& w) { return in_mpa(w.e.moduli.shear); }},
    ResultKind{"young_modulus", "modulus E", "MPa", ResultGroup::wire,
               [](const Worked& w) { return in_mpa(w.e.moduli.young); }},
    ResultKind{"density", "density", "kg/m3", ResultGroup::wire,
               [](const Worked& w) { return in_kg_per_m3(w.grade.density); }},
    ResultKind{"hot_share", "share of G left in the heat", "%", ResultGroup::wire,
               [](const Worked& w) { return 100.0 * in_newton_per_mm(w.e.rate_hot) / in_newton_per_mm(w.e.rate); }},
    ResultKind{"load_loss", "load loss counted on", "%", ResultGroup::wire,
               [](const Worked& w) { return 100.0 * w.e.load_loss; }},
    ResultKind{"wire_tolerance", "tolerance of the wire, plus-minus", "mm", ResultGroup::wire, wire_tolerance},
    ResultKind{"diameter_tolerance", "tolerance of the coil, plus-minus", "mm", ResultGroup::tolerance, coil_tolerance},
    ResultKind{"load_tolerance", "load tolerance of grade 2 seated, plus-minus", "N", ResultGroup::tolerance,
               load_tolerance},
    ResultKind{"rate", "rate R", "N/mm", ResultGroup::spring,
               [](const Worked& w) { return in_newton_per_mm(w.e.rate); }},
    ResultKind{"seated_load", "load seated F1, cold and new", "N", ResultGroup::spring,
               [](const Worked& w) { return in_newton(w.e.seated->load); }},
    ResultKind{"seated_load_in_service", "load seated, hot and after load loss", "N", ResultGroup::spring,
               [](const Worked& w) { return in_newton(w.e.seated->load_in_service); }},
    ResultKind{"full_travel_load", "load at full travel F2, cold and new", "N", ResultGroup::spring,
               [](const Worked& w) { return in_newton(w.e.full_travel->load); }},
    ResultKind{"solid_length", "solid length Lc, thickest wire", "mm", ResultGroup::spring,
               [](const Worked& w) { return in_mm(w.e.solid_length); }},
    ResultKind{"smallest_length", "smallest working length Ln", "mm", ResultGroup::spring,
               [](const Worked& w) { return in_mm(w.e.smallest_length); }},
    ResultKind{"solid_stress", "stress at solid length, uncorrected", "MPa", ResultGroup::spring,
               [](const Worked& w) { return in_mpa(w.e.at_solid.stress); }},
    ResultKind{"natural_frequency", "natural frequency", "Hz", ResultGroup::spring,
               [](const Worked& w) { return in_hertz(w.e.natural_frequency); }},
    ResultKind{"mass", "mass", "g", ResultGroup::spring, [](const Worked& w) { return in_gram(w.e.mass); }},
};

}  // namespace

std::span<const ResultKind> result_kinds() { return kKinds; }

KeyResults key_results(const Worked& worked, std::string program) {
    KeyResults results;
    results.program = std::move(program);
    for (const ResultKind& kind : kKinds) results.values.push_back(kind.value(worked));
    return results;
}

std::vector<Moved> moved(const KeyResults& before, const KeyResults& now) {
    std::vector<Moved> out;
    for (std::size_t i = 0; i < kKinds.size(); ++i) {
        const double was = before.values[i], is = now.values[i];
        if (std::isnan(was)) continue;
        const bool alike = !std::isnan(is) && std::abs(is - was) <= kAlike * std::max(std::abs(is), std::abs(was));
        if (!alike) out.push_back({&kKinds[i], was, is});
    }
    return out;
}

std::string shown(const ResultKind& kind, double value) {
    if (std::isnan(value)) return "not known";
    return significant(value, kDigits) + ' ' + std::string(kind.unit);
}

wire::Grade as_then(wire::Grade grade, const Spec& spec, const KeyResults& before) {
    const auto then = [&](std::string_view key) {
        for (std::size_t i = 0; i < kKinds.size(); ++i)
            if (kKinds[i].key == key) return before.values[i];
        return kNone;
    };
    const Length d = spec.spring.wire_diameter;
    const wire::Moduli moduli = wire::moduli_at(grade, d);
    const auto or_now = [](double was, double is) { return std::isnan(was) ? is : was; };
    if (!std::isnan(then("tensile_strength")))
        grade.strength = wire::StrengthGiven{then("tensile_strength") * MPa, d, d};
    grade.moduli = {{d, or_now(then("shear_modulus"), in_mpa(moduli.shear)) * MPa,
                     or_now(then("young_modulus"), in_mpa(moduli.young)) * MPa}};
    grade.density = or_now(then("density"), in_kg_per_m3(grade.density)) * kg_per_m3;
    if (!std::isnan(then("wire_tolerance")))
        grade.diameter_tolerance = {{d, then("wire_tolerance") * mm, wire::Evidence::given}};
    const double rise = spec.surroundings.temperature.degrees - 20.0;
    if (!std::isnan(then("hot_share")) && rise > 0.0)
        grade.shear_modulus_loss_per_kelvin = (1.0 - then("hot_share") / 100.0) / rise;
    if (!std::isnan(then("load_loss")) && !spec.limits.load_loss && rise > 0.0) {
        wire::LoadLossGuide guide;
        guide.points = {{spec.surroundings.temperature, Share{then("load_loss") / 100.0}}};
        grade.load_loss = guide;
    }
    return grade;
}

}  // namespace seatload::record
