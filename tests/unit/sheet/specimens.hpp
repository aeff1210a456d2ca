// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include <seatload/io/builtin.hpp>
#include <seatload/record/spec.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/paper.hpp>
#include <seatload/spring/coils.hpp>
#include <seatload/spring/rate.hpp>
#include <seatload/tolerance/en15800.hpp>
#include <seatload/wire/strength.hpp>
#include <support/builtin.hpp>

namespace seatload::test {

/// The usual paper: English, A4, metric.
inline const sheet::Paper& paper() {
    static const sheet::Paper usual{sheet::Wording(io::builtin_wording())};
    return usual;
}

/// The same in another form.
inline sheet::Paper paper(std::string_view language, sheet::PaperSize size, bool upright, sheet::Units units) {
    return {sheet::Wording(io::builtin_wording(language)), size, upright, units};
}

/// What a specimen spring is made of, in mm.
struct Shape {
    const char* grade;
    double d;
    double D;
    double coils;
    double free_length;
    spring::Ends ends;
    double seated;
    double full_travel;
    spring::Hand hand = spring::Hand::right;
};

inline const wire::Grade& grade_of(const record::Spec& spec) {
    return spec.own_grade ? *spec.own_grade : *wires().find(spec.wire_grade);
}

/// A load of the spring at a length, ordered at about EN 15800 grade 2.
inline record::LoadAtLength ordered(const spring::Spring& s, const wire::Grade& grade, double length_mm) {
    const double n = spring::active_coils(s.ends, s.total_coils);
    const Rate rate = spring::rate(wire::moduli_at(grade, s.wire_diameter).shear, s.wire_diameter, s.mean_diameter, n);
    const double load = std::round(in_newton(rate * (s.free_length - length_mm * mm)) * 100.0) / 100.0;
    const double room = tolerance::load_tolerance_n(in_mm(s.wire_diameter), in_mm(s.mean_diameter), n, load, 2);
    record::LoadAtLength out;
    out.length = length_mm * mm;
    out.nominal = load * newton;
    out.plus = std::floor(room * 100.0) / 100.0 * newton;
    out.minus = std::floor(room * 90.0) / 100.0 * newton;
    out.grade = record::load_grade_inside(s, out.nominal, out.plus, out.minus);
    return out;
}

inline record::Spec specimen(const Shape& shape) {
    record::Spec spec;
    spec.identity = {"Ottermere M14", "ahead latch plunger",  "OT-14-0312", "A",
                     "2024-05-02",    "Harbour Engine Works", "J. Hale",    "M. Brook"};
    spec.title = "Compression spring, ahead latch plunger";
    spec.alternative = "A";
    spec.why = "softest that still holds";
    spec.wire_grade = shape.grade;
    spec.spring = {shape.d * mm, shape.D * mm, shape.coils, shape.free_length * mm, shape.ends, shape.hand};
    spec.seated = ordered(spec.spring, grade_of(spec), shape.seated);
    spec.full_travel = ordered(spec.spring, grade_of(spec), shape.full_travel);
    const Length bore = (shape.D + shape.d + 0.8) * mm;
    spec.space.bore = demand::Fit{bore, bore, bore};
    spec.space.seats = demand::Seats::slides;
    spec.surroundings = {{120.0}, "engine oil"};
    spec.quantities = {20, 50, 100};
    return spec;
}

inline Shape latch() { return {"ASTM-A313-631-CH900", 0.8, 7.4, 9.5, 19.3, spring::Ends::closed_ground, 15.0, 9.5}; }

struct Specimen {
    std::string name;
    record::Spec spec;
};

/// Springs and texts as unlike as an order may bring them.
inline std::vector<Specimen> specimens() {
    using enum spring::Ends;
    const char* sh = "EN10270-1-SH";
    std::vector<Specimen> out;
    const auto add = [&](const char* name, const Shape& shape) { out.push_back({name, specimen(shape)}); };
    add("latch", latch());
    add("fine wire, 40 coils", {sh, 0.4, 4.0, 40.0, 40.0, closed, 33.0, 26.0});
    add("finest wire, 40 coils", {"ASTM-A228", 0.2, 1.6, 40.0, 16.0, closed, 14.0, 11.0});
    add("thick wire", {sh, 8.0, 40.0, 4.5, 80.0, closed_ground, 70.0, 55.0});
    add("few thick coils", {sh, 8.0, 50.0, 4.25, 70.0, closed, 66.0, 60.0});
    add("open ends, left hand", {sh, 2.0, 16.0, 9.25, 60.0, open, 50.0, 35.0, spring::Hand::left});
    add("open and ground ends", {sh, 2.0, 16.0, 7.75, 50.0, open_ground, 40.0, 28.0});
    add("short and wide", {sh, 3.0, 30.0, 3.5, 18.0, closed_ground, 16.0, 13.5});
    add("long and slim", {sh, 1.6, 12.0, 22.0, 96.0, closed_ground, 80.0, 60.0});
    add("working lengths close together", {sh, 2.0, 16.0, 8.0, 40.0, closed_ground, 30.2, 30.0});
    add("solid before full travel", {sh, 1.0, 8.0, 10.0, 22.0, closed_ground, 12.5, 9.0});
    add("wide figure, narrow diagram", {"EN10270-2-FDSiCr", 1.7, 12.9, 15.0, 69.5, closed_ground, 42.0, 38.0});
    add("may yield when pressed solid", {sh, 8.0, 45.0, 4.5, 80.0, closed_ground, 72.0, 60.0});
    add("working next to solid", {sh, 1.0, 8.0, 10.0, 22.0, closed_ground, 12.5, 12.0});

    add("a twelfth as wide as long", {sh, 1.2, 8.0, 40.5, 96.0, closed, 88.0, 75.0});
    add("three times as wide as long", {sh, 2.0, 40.0, 3.5, 12.0, closed_ground, 11.0, 9.5});

    record::Spec wordy = specimen({sh, 1.25, 10.0, 8.0, 28.0, closed, 22.0, 16.0, spring::Hand::left});
    wordy.title = "Пружина сжатия для защёлки переднего хода реверсивного редуктора, очень длинное название";
    wordy.identity.owner = "Мастерская «Верфь» и Søren Ångström Engine and Gearbox Rebuilders of Ottermere Harbour";
    wordy.identity.number = "OT-14-0312-WWWWW";
    wordy.identity.creator = "Aleksandra Wielkopolska-Wiśniewska";
    wordy.identity.approver = "Ιωάννης Παπαδόπουλος-Χατζής";
    wordy.finish = "zinc plated 8 µm, passivated, colourless";
    wordy.duty = {2e6, 25.0 * hertz, true};
    wordy.adjustable.push_back(record::Adjustable::coils_and_diameter);
    wordy.notes.assign(5, "Sixty characters of a note that must go on to a second line.");
    wordy.notes.push_back("Пружины не должны спутываться; упаковать по двадцать штук.");
    out.push_back({"long names, many notes, Cyrillic and Greek", wordy});

    record::Spec rod = specimen({sh, 1.25, 10.0, 8.0, 28.0, closed_ground, 22.0, 16.0});
    rod.bore_rules = false;
    rod.space.bore.reset();
    rod.space.rod = demand::Fit{8.0 * mm, 8.0 * mm, 8.0 * mm};
    rod.adjustable = {record::Adjustable::free_length, record::Adjustable::coils_and_diameter};
    out.push_back({"over a rod", rod});

    record::Spec revised = specimen(latch());
    revised.identity.revision = "F";
    for (const char* index : {"A", "B", "C", "D", "E", "F"})
        revised.revisions.push_back(
            {index, "2024-05-02", "seated load raised so that the latch holds with hot oil", "Aleksandra Wiśniewska"});
    out.push_back({"six revisions", revised});

    record::Spec own = specimen(latch());
    own.own_grade = grade_of(own);
    own.own_grade->strength = wire::StrengthGiven{1900.0 * MPa, 0.7 * mm, 0.9 * mm};
    own.own_grade->moduli = {{0.9 * mm, 78000.0 * MPa, 200000.0 * MPa}};
    own.own_grade->standard = "mill certificate 2024-0417 of the bar the wire was drawn from";
    own.own_grade->designation = "nickel-cobalt-chromium-molybdenum alloy, cold drawn and aged, spring temper";
    own.identity.owner = "Warsztat Śródmieście Łódź, naprawa silników i przekładni";
    own.notes = {"Sprężyny nie mogą się plątać; pakować po dwadzieścia sztuk."};
    out.push_back({"own wire with a long name", own});

    record::Spec tight = specimen(latch());
    tight.seated.plus = tight.seated.minus = 0.05 * newton;
    tight.seated.grade.reset();
    out.push_back({"tighter than grade 1", tight});
    return out;
}

}  // namespace seatload::test
