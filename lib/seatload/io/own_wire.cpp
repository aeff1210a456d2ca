// SPDX-License-Identifier: MIT
#include <seatload/io/own_wire.hpp>

#include <cmath>

#include <seatload/io/demand_forms.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/wire_words.hpp>

namespace seatload::io {
namespace {

/// What the keys of the table state, before it becomes a grade.
struct OwnWire {
    std::string id;
    std::string designation;
    std::string standard;
    wire::Family family = wire::Family::cold_drawn_carbon;
    Stress shear_modulus;
    Stress young_modulus;
    Density density;
    demand::LengthRange diameters{};
    std::optional<Stress> tensile_strength;
    std::optional<Stress> strength_at_1_mm;
    std::optional<double> strength_exponent;
    std::optional<Length> diameter_tolerance;
    Celsius service_limit{};
    double shear_modulus_loss_per_kelvin = 0.0;
    std::optional<double> relative_cost;
    std::string note;
};

/// The share per 100 K whose hundredth is the loss per kelvin.
Share per_100_kelvin(double loss_per_kelvin) {
    const double guess = 100.0 * loss_per_kelvin;
    for (const double share : {guess, std::nextafter(guess, 0.0), std::nextafter(guess, 1.0)})
        if (share / 100.0 == loss_per_kelvin) return Share{share};
    return Share{guess};
}

template <class Fields, class Own>
void visit_own_wire(Fields& f, Own& own) {
    f.needed("id", "\"certificate 4711\"", own.id, kAny, "");
    f.field("designation", own.designation, kAny, "");
    f.field("standard", own.standard, kAny, "");
    f.field("family", own.family, kAny, "");
    f.needed("shear_modulus", "\"81500 MPa\"", own.shear_modulus, kPositive, "G at 20 °C");
    f.needed("young_modulus", "\"206000 MPa\"", own.young_modulus, kPositive, "E at 20 °C");
    f.needed("density", "\"7850 kg/m3\"", own.density, kPositive, "");
    f.needed("diameters", "\"0.20 mm .. 4.00 mm\"", own.diameters, kPositive, "for which the strength holds");
    f.field("tensile_strength", own.tensile_strength, kPositive, "Rm, the least");
    f.field("strength_at_1_mm", own.strength_at_1_mm, kPositive, "A in Rm = A / d^m");
    f.field("strength_exponent", own.strength_exponent, kNotNegative, "m");
    f.field("diameter_tolerance", own.diameter_tolerance, kNotNegative, "plus and minus");
    f.needed("service_limit", "\"120 °C\"", own.service_limit, kTemperature, "hottest service");
    Share loss = per_100_kelvin(own.shear_modulus_loss_per_kelvin);
    f.field("shear_modulus_loss_per_100_kelvin", loss, kShare, "");
    if constexpr (!std::is_const_v<Own>) own.shear_modulus_loss_per_kelvin = loss.value / 100.0;
    f.field("relative_cost", own.relative_cost, kPositive, "by mass, hard-drawn wire = 1");
    f.field("note", own.note, kAny, "");
}

void expect_one_strength(Reader& reader, const OwnWire& own) {
    const bool has_law = reader.has("strength_at_1_mm") || reader.has("strength_exponent");
    if (reader.has("tensile_strength") && has_law)
        reader.error("tensile_strength", "given-twice"_id, "the strength is given twice, as a value and as a law",
                     "keep tensile_strength, or strength_at_1_mm with strength_exponent");
    else if (!reader.has("tensile_strength") && !has_law)
        reader.missing("tensile_strength", "\"1900 MPa\"");
    else if (has_law && !own.strength_at_1_mm && !reader.has("strength_at_1_mm"))
        reader.missing("strength_at_1_mm", "\"2211 MPa\"");
    else if (has_law && !own.strength_exponent && !reader.has("strength_exponent"))
        reader.missing("strength_exponent", "0.145");
}

wire::Strength strength_of(const OwnWire& own) {
    if (own.tensile_strength)
        return wire::StrengthGiven{*own.tensile_strength, own.diameters.smallest, own.diameters.largest};
    return wire::StrengthLaw{in_mpa(own.strength_at_1_mm.value_or(Stress{})), own.strength_exponent.value_or(0.0),
                             own.diameters.smallest, own.diameters.largest};
}

wire::Grade grade_of(const OwnWire& own) {
    wire::Grade grade;
    grade.id = own.id;
    grade.designation = own.designation;
    grade.standard = own.standard;
    grade.family = own.family;
    grade.family_text = std::string(Form<wire::Family>::text(own.family));
    grade.strength = strength_of(own);
    grade.moduli = {{own.diameters.largest, own.shear_modulus, own.young_modulus}};
    grade.density = own.density;
    grade.shear_modulus_loss_per_kelvin = own.shear_modulus_loss_per_kelvin;
    grade.service_limit = own.service_limit;
    if (own.diameter_tolerance)
        grade.diameter_tolerance = {{own.diameters.largest, *own.diameter_tolerance, wire::Evidence::given}};
    grade.relative_cost = own.relative_cost;
    grade.provenance = {{"all values", "stated by the user", wire::Evidence::given}};
    grade.note = own.note;
    return grade;
}

OwnWire own_of(const wire::Grade& grade) {
    SEATLOAD_ASSERT(grade.moduli.size() == 1 && !std::holds_alternative<wire::StrengthTable>(grade.strength));
    OwnWire own;
    own.id = grade.id;
    own.designation = grade.designation;
    own.standard = grade.standard;
    own.family = grade.family;
    own.shear_modulus = grade.moduli.front().shear;
    own.young_modulus = grade.moduli.front().young;
    own.density = grade.density;
    if (const auto* given = std::get_if<wire::StrengthGiven>(&grade.strength)) {
        own.diameters = {given->smallest, given->largest};
        own.tensile_strength = given->minimum;
    } else if (const auto* law = std::get_if<wire::StrengthLaw>(&grade.strength)) {
        own.diameters = {law->smallest, law->largest};
        own.strength_at_1_mm = law->a_mpa * MPa;
        own.strength_exponent = law->exponent;
    }
    if (!grade.diameter_tolerance.empty()) own.diameter_tolerance = grade.diameter_tolerance.front().plus_minus;
    own.service_limit = grade.service_limit;
    own.shear_modulus_loss_per_kelvin = grade.shear_modulus_loss_per_kelvin;
    own.relative_cost = grade.relative_cost;
    own.note = grade.note;
    return own;
}

}  // namespace

wire::Grade read_own_wire(Reader& reader) {
    OwnWire own;
    FieldReader fields(reader);
    visit_own_wire(fields, own);
    expect_one_strength(reader, own);
    return grade_of(own);
}

void write_own_wire(TomlWriter& writer, const wire::Grade& grade) {
    const OwnWire own = own_of(grade);
    FieldWriter fields(writer);
    visit_own_wire(fields, own);
}

}  // namespace seatload::io
