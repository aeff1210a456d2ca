// SPDX-License-Identifier: MIT
#include <cli/bench_spring_file.hpp>

#include <cmath>

#include <seatload/io/spring_file.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

#include <cli/doubt_text.hpp>

namespace seatload::cli {
namespace {

/// The wire most springs of machines are wound from (common practice, no source).
constexpr std::string_view kCommonest = "EN10270-1-SH";

/// The grade taken for a spring, and why it is this one.
struct TakenGrade {
    std::string id;
    std::string remark;
    bool is_guessed = false;
};

bool is_drawn_at(const wire::Grade& grade, Length d) { return wire::strength_at(grade, d).has_value(); }

/// The stated grade; else the commonest of those the stiffness fits, else the nearest of them; empty when none is drawn
/// in this thickness.
TakenGrade taken_grade(const BenchedSpring& spring, Length d, const wire::Catalogue& catalogue) {
    if (!spring.run.dimensions.grade.empty()) {
        const wire::Grade* grade = catalogue.find(spring.run.dimensions.grade);
        return {grade != nullptr && is_drawn_at(*grade, d) ? grade->id : "", "The wire is as the readings state it.",
                false};
    }
    const wire::Grade* commonest = catalogue.find(kCommonest);
    TakenGrade nearest;
    if (spring.wire.wire)
        for (const bench::GradeMatch& match : spring.wire.wire->matches) {
            const wire::Grade* grade = catalogue.find(match.grade);
            if (grade == nullptr || !is_drawn_at(*grade, d)) continue;
            if (match.consistent && grade == commonest)
                return {grade->id, "The wire is not known: of those its stiffness fits, this is the commonest.", true};
            if (nearest.id.empty())
                nearest = {grade->id, "The wire is not known: this comes nearest by its stiffness.", true};
        }
    return nearest;
}

/// Differences of decimal lengths carry a last bit too much: 6.90 - 0.65.
Length to_the_micrometre(Length length) { return std::round(in_mm(length) * 1000.0) / 1000.0 * mm; }

template <class Q>
bench::Stated<Q> rounded(const bench::Estimate<Q>& estimate) {
    const double doubt = in_base_unit(estimate.expanded);
    return {Q::from_value(rounded_as(in_base_unit(estimate.value), doubt)), Q::from_value(rounded_as(doubt, doubt))};
}

record::Measured measured_of(const bench::Readings& session, const bench::MeasuredSpring& m,
                             const std::string& readings) {
    record::Measured measured{session.date, readings, rounded(m.rate), {}, false};
    for (const bench::LoadAtHeight& load : m.loads)
        if (const auto value = rounded(load.force); value.value >= 0.0 * newton)
            measured.loads.push_back({load.asked.height.value, value});
    return measured;
}

std::optional<Length> height_named(const bench::Readings& session, std::string_view name, Length free_length) {
    for (const bench::AskedHeight& asked : session.heights)
        if (asked.name == name && asked.height.value < free_length) return asked.height.value;
    return std::nullopt;
}

/// What stands at the head of the file.
std::vector<std::string> remarks_on(const BenchedSpring& spring, const TakenGrade& grade) {
    std::vector<std::string> remarks{"A spring as the bench found it. `seatload check` shows the loads measured beside",
                                     "those that its dimensions give.", grade.remark};
    if (spring.run.dimensions.free_length)
        remarks.push_back("The free length is that of the loose spring; the line of its loads meets no load at " +
                          units::exact(rounded(spring.measured.free_length).value) + '.');
    remarks.push_back("The bench does not know how hot the spring gets in service; `check` heeds it once it");
    remarks.push_back("stands under [surroundings], as temperature = \"80 °C\".");
    return remarks;
}

}  // namespace

std::optional<std::string> bench_spring_file(const bench::Readings& session, const BenchedSpring& spring,
                                             const std::string& readings, const wire::Catalogue& catalogue) {
    const bench::Dimensions& stated = spring.run.dimensions;
    if (!stated.wire_diameter || !stated.outside_diameter || !stated.total_coils || !stated.ends) return std::nullopt;
    const Length d = stated.wire_diameter->value;
    const TakenGrade grade = taken_grade(spring, d, catalogue);
    if (grade.id.empty()) return std::nullopt;
    record::SpringFile file;
    file.name = spring.run.name;
    file.wire_grade = grade.id;
    file.spring.wire_diameter = d;
    file.spring.mean_diameter = to_the_micrometre(stated.outside_diameter->value - d);
    file.spring.total_coils = stated.total_coils->value;
    file.spring.ends = *stated.ends;
    file.spring.free_length =
        stated.free_length ? stated.free_length->value : to_the_micrometre(spring.measured.free_length.value);
    file.seated_height = height_named(session, "seated", file.spring.free_length);
    file.full_travel_height = height_named(session, "full travel", file.spring.free_length);
    file.is_temperature_stated = false;
    file.measured = measured_of(session, spring.measured, readings);
    file.measured->wire_is_guessed = grade.is_guessed;
    return io::write_spring(file, remarks_on(spring, grade));
}

}  // namespace seatload::cli
