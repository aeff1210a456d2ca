// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <string>

#include <seatload/sheet/report_steps.hpp>
#include <seatload/tolerance/made_influence.hpp>
#include <seatload/tolerance/modulus_spread.hpp>

namespace seatload::sheet {
namespace {

using tolerance::Influence;
using tolerance::MadeColumn;
using tolerance::MadeSprings;
using Deviations = std::array<double, tolerance::kInfluences>;

constexpr std::array<const char*, 3> kFactors{"0.63", "1", "1.6"};
constexpr const char* kSlope = "slope of F";
constexpr const char* kCorner = "worst corner";

double part(const Deviations& d, Influence i) { return d[static_cast<std::size_t>(i)]; }

std::string grade_in_words(const ReportSubject& s) {
    return "loads, free length and coils grade " + std::to_string(s.made_to.load) + ", coil diameter grade " +
           std::to_string(s.made_to.diameter);
}

/// What each number may stray by: in all, and from piece to piece once a lot is brought in.
void add_allowances(Calculation& c, const ReportSubject& s) {
    const tolerance::MadeAllowance& a = s.allowance;
    const std::string Q = kFactors[static_cast<std::size_t>(s.made_to.load - 1)];
    const double n = s.values.active_coils;
    const double coils = sizing::coils_tolerance(n, s.made_to.load);
    c.said("grades looked at", grade_in_words(s), "what the tolerances ordered amount to, in EN 15800", Trust::memory);
    c.given("b_G", "spread of G between coils of wire, plus-minus", tolerance::modulus_spread(s.grade.family), "",
            "half the range of the values published for its kind", Trust::estimate);
    c.step("A_G", "the same in MPa", "{b_G}*{G}", a.shear_modulus, "MPa", "definition", Trust::derived);
    c.given("A_D", "tolerance of De or Di, plus-minus", a.lot_coil_diameter + a.coil_diameter, "mm",
            "EN 15800 grade " + std::to_string(s.made_to.diameter), s.coil_tolerance_trust);
    c.step("A_Dp", "of it, from piece to piece", "0.5*{A_D}", a.coil_diameter, "mm", "half of it", Trust::estimate);
    c.step("A_n", "tolerance of the coils, plus-minus", coils < 0.5 * n ? "0.25*" + Q : "0.5*{n}", coils, "",
           "JIS B 2707 where no load is ordered; other grades by Q", Trust::estimate);
    c.step("A_np", "of it, from piece to piece", "0.5*{A_n}", a.active_coils, "", "half of it", Trust::estimate);
    c.step("A_L", "tolerance of L0, plus-minus, all from piece to piece", "{a_F}*{k_F}*" + Q + "/{R}", a.free_length,
           "mm", "EN 15800; size confirmed by JIS B 2707", Trust::memory);
}

/// Standard deviations of a load, and their shares, once the lot is brought in.
void add_adjusted(Calculation& c, const std::string& i, const Deviations& u) {
    c.heading("What moves F" + i + " once the lot is brought in, standard deviations", true);
    const double whole = tolerance::together_n(u);
    const auto add = [&](const std::string& key, const std::string& name, const std::string& formula, Influence which) {
        c.step("u_" + i + key, name, formula, part(u, which), "N", kSlope, Trust::derived);
    };
    add("D", "by coil diameter", "3*{F_" + i + "}/{D}*{A_Dp}/3", Influence::coil_diameter);
    add("n", "by coils", "{F_" + i + "}/{n}*{A_np}/3", Influence::active_coils);
    add("L", "by free length", "{R}*{A_L}/3", Influence::free_length);
    c.step("u_" + i, "together", "sqrt({u_" + i + "D}^2 + {u_" + i + "n}^2 + {u_" + i + "L}^2)", whole, "N",
           "independence", Trust::derived);
    const auto share = [&](const std::string& key, const std::string& name, Influence which) {
        const double x = part(u, which) / whole;
        c.step("p_" + i + key, "variance, share " + name, "({u_" + i + key + "}/{u_" + i + "})^2", x * x, "",
               "definition", Trust::derived);
    };
    share("D", "of coil diameter", Influence::coil_diameter);
    share("n", "of coils", Influence::active_coils);
    share("L", "of free length", Influence::free_length);
}

/// Standard deviations of a load when nobody brings a lot in.
void add_as_made(Calculation& c, const ReportSubject& s, const std::string& i, const Deviations& v) {
    c.heading("What moves F" + i + " when nobody brings the lot in, standard deviations", true);
    const std::string sign = s.order.outside_rules ? " + " : " - ";
    const auto add = [&](const std::string& key, const std::string& name, const std::string& formula, Influence which) {
        c.step("v_" + i + key, name, formula, part(v, which), "N", kSlope, Trust::derived);
    };
    add("d", "by wire", "{F_" + i + "}*(4/{d}" + sign + "3/{D})*{T_d}/3", Influence::wire_diameter);
    add("D", "by coil diameter", "3*{F_" + i + "}/{D}*{A_D}/3", Influence::coil_diameter);
    add("n", "by coils", "{F_" + i + "}/{n}*{A_n}/3", Influence::active_coils);
    add("G", "by modulus", "{F_" + i + "}/{G}*{A_G}/3", Influence::shear_modulus);
    c.step("v_" + i, "together, with free length",
           "sqrt({v_" + i + "d}^2 + {v_" + i + "D}^2 + {v_" + i + "n}^2 + {v_" + i + "G}^2 + {u_" + i + "L}^2)",
           tolerance::together_n(v), "N", "independence", Trust::derived);
}

/// The corners of the tolerances, each put down once and called by a letter.
class Corners {
  public:
    Corners(Calculation& c, const ReportSubject& s) : c_(c) {
        tolerance::MadeStrays strays;
        count_ = static_cast<std::ptrdiff_t>(tolerance::corner_strays(strays));
        tolerance::make_springs(s.order, s.allowance, strays, made_);
    }

    /// The least or the most of a load, in numbers of the spring that gives it.
    void add(const std::string& i, const MadeColumn& load, bool least) {
        const auto end = load.begin() + count_;
        const auto found = least ? std::min_element(load.begin(), end) : std::max_element(load.begin(), end);
        const std::string at = letter(static_cast<std::size_t>(found - load.begin()));
        c_.step("F_" + i + at, std::string(least ? "least" : "largest") + " F" + i,
                "{G_" + at + "}*{d_" + at + "}^4/(8*{D_" + at + "}^3*{n_" + at + "})*({L_0" + at + "} - {L_" + i + "})",
                *found, "N", "EN 13906-1 cl. 9.2, 9.4", Trust::derived);
    }
    const MadeSprings& made() const { return made_; }

  private:
    std::string letter(std::size_t corner) {
        const auto seen = std::find(seen_.begin(), seen_.end(), corner);
        std::string at(1, static_cast<char>('a' + (seen - seen_.begin())));
        if (seen != seen_.end()) return at;
        seen_.push_back(corner);
        const auto put = [&](const std::string& key, const std::string& name, const MadeColumn& column,
                             const std::string& unit) {
            c_.given(key + at, name + ", spring " + at, column[corner], unit, kCorner, Trust::estimate);
        };
        put("d_", "wire diameter", made_.d, "mm");
        put("G_", "shear modulus", made_.modulus, "MPa");
        put("D_", "mean diameter", made_.D, "mm");
        put("n_", "active coils", made_.n, "");
        put("L_0", "free length", made_.L0, "mm");
        return at;
    }

    Calculation& c_;
    MadeSprings made_;
    std::ptrdiff_t count_ = 0;
    std::vector<std::size_t> seen_;
};

void add_worst_loads(Calculation& c, const ReportSubject& s) {
    c.heading("Worst case of the loads, lot brought in, by the grades ordered (loads grade " +
                  std::to_string(s.made_to.load) + ", coil diameter grade " + std::to_string(s.made_to.diameter) + ")",
              true);
    Corners corners(c, s);
    for (const bool least : {true, false}) {
        corners.add("1", corners.made().seated, least);
        corners.add("2", corners.made().full, least);
    }
}

}  // namespace

void add_made(Calculation& c, const ReportSubject& s) {
    c.heading("Springs as they come");
    add_allowances(c, s);
    const auto loose = sizing::unadjusted_allowance(s.values.active_coils, s.allowance, s.made_to);
    const auto left = tolerance::left_after_adjusting(s.allowance);
    for (std::size_t i = 0; i < 2; ++i) {
        const auto deviations = [&](const tolerance::InfluenceAllowance& allowance) {
            return tolerance::load_deviations_n(s.order, s.values.active_coils, in_mm(s.spec.spring.free_length),
                                                s.order.lengths[i], allowance);
        };
        add_adjusted(c, std::to_string(i + 1), deviations(left));
        add_as_made(c, s, std::to_string(i + 1), deviations(loose));
    }
    add_worst_loads(c, s);
}

}  // namespace seatload::sheet
