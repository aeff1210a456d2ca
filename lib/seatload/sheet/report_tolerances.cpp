// SPDX-License-Identifier: MIT
#include <array>

#include <seatload/sheet/report_steps.hpp>
#include <seatload/tolerance/en15800.hpp>

namespace seatload::sheet {
namespace {

constexpr const char* kFormSource = "EN 15800; size confirmed by JIS B 2707";
constexpr std::array<const char*, 3> kToleranceFactors{"0.63", "1", "1.6"};

void add_ordered(Calculation& c, const record::LoadAtLength& load, const std::string& i, const char* table) {
    const std::string where = std::string("spec, [") + table + "]";
    c.given("F_" + i + "o", "load ordered at L" + i, in_newton(load.nominal), "N", where, Trust::given);
    c.given("F_" + i + "+", "upper deviation ordered", in_newton(load.plus), "N", where, Trust::given);
    c.given("F_" + i + "−", "lower deviation ordered", in_newton(load.minus), "N", where, Trust::given);
}

/// Plus-minus load tolerance of each grade.
void add_grades(Calculation& c, const ReportSubject& s, const std::string& i, double load_n) {
    for (int grade = 1; grade <= 3; ++grade) {
        const double tolerance = tolerance::load_tolerance_n(s.wire.d_mm, in_mm(s.spec.spring.mean_diameter),
                                                             s.values.active_coils, load_n, grade);
        c.step("A_F" + i + "," + std::to_string(grade),
               "load tolerance at L" + i + ", grade " + std::to_string(grade) + ", plus-minus",
               "({a_F}*{k_F} + 1.5*{F_" + i + "}/100)*" + kToleranceFactors[static_cast<std::size_t>(grade - 1)],
               tolerance, "N", kFormSource, Trust::memory);
    }
}

/// How often the load tolerance fits between the load and the need, cold: what the search ranks by.
void add_room_to_need(Calculation& c, const ReportSubject& s, const std::string& i, double load_n,
                      const std::optional<double>& least, const std::optional<double>& most) {
    const int grade = s.demand.load_grade;
    const std::string tolerance = "{A_F" + i + "," + std::to_string(grade) + "}";
    const double value = tolerance::load_tolerance_n(s.wire.d_mm, in_mm(s.spec.spring.mean_diameter),
                                                     s.values.active_coils, load_n, grade);
    if (least)
        c.step("x_" + i + "a", "tolerance room at L" + i + ", downwards",
               "({F_" + i + "} - {F_" + i + ",min}/{q})/" + tolerance, (load_n - *least / s.kept_share()) / value, "",
               "the need raised to what must be there cold", Trust::derived);
    if (most)
        c.step("x_" + i + "b", "tolerance room at L" + i + ", upwards",
               "({F_" + i + ",max} - {F_" + i + "})/" + tolerance, (*most - load_n) / value, "", "as it stands",
               Trust::derived);
}

}  // namespace

void add_tolerances(Calculation& c, const ReportSubject& s) {
    const double d = s.wire.d_mm, D = in_mm(s.spec.spring.mean_diameter), n = s.values.active_coils;
    const double F1 = in_newton(s.seated().load), F2 = in_newton(s.full_travel().load);
    c.heading("Tolerances");
    add_ordered(c, s.spec.seated, "1", "seated_load");
    add_ordered(c, s.spec.full_travel, "2", "full_travel_load");
    c.step("a_F", "base of the load tolerance",
           "65.92*{d}^3.3/{D}^1.6*(2.274 - 4.244*({w}/10) + 3.781*({w}/10)^2 - 0.84*({w}/10)^3)",
           tolerance::load_tolerance_base_n(d, D), "N", kFormSource, Trust::memory);
    c.step("k_F", "influence of the coils", "0.803 + 8/(5*{n}) - 1/(3*{n}^2)", tolerance::coils_factor(n), "",
           kFormSource, Trust::memory);
    add_grades(c, s, "1", F1);
    add_grades(c, s, "2", F2);
    add_room_to_need(c, s, "1", F1, s.demand.seated_at_least_n, s.demand.seated_at_most_n);
    add_room_to_need(c, s, "2", F2, s.demand.full_at_least_n, s.demand.full_at_most_n);
    c.step("A_L0", "tolerance of L0, grade 2, were it a requirement", "{a_F}*{k_F}/{R}",
           tolerance::free_length_tolerance_mm(d, D, n, in_newton_per_mm(s.values.rate), 2), "mm", kFormSource,
           Trust::memory);
    if (!spring::are_ground(s.spec.spring.ends)) return;
    constexpr std::array<const char*, 3> kSquareness{"0.03*{L_0}", "0.05*{L_0}", "0.08*{L_0}"};
    constexpr std::array<const char*, 3> kParallelism{"0.015*{D_e}", "0.03*{D_e}", "0.06*{D_e}"};
    const int grade = s.spec.squareness_grade;
    const auto row = static_cast<std::size_t>(grade - 1);
    const std::string source = "EN 15800 grade " + std::to_string(grade);
    c.step("e_1", "squareness of the ends", kSquareness[row],
           in_mm(tolerance::squareness(s.spec.spring.free_length, grade)), "mm", source, Trust::memory);
    c.step("e_2", "parallelism of the ends", kParallelism[row],
           in_mm(tolerance::parallelism(s.spec.spring.outside_diameter(), grade)), "mm", source, Trust::memory);
}

}  // namespace seatload::sheet
