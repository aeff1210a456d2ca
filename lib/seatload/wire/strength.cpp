// SPDX-License-Identifier: MIT
#include <seatload/wire/strength.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/core/assert.hpp>

namespace seatload::wire {
namespace {

constexpr Length kSlack = 1e-9 * mm;  // rounding of a converted unit, far below any wire tolerance

bool is_inside(Length diameter, Length smallest, Length largest) {
    return diameter >= smallest - kSlack && diameter <= largest + kSlack;
}

StrengthAt at_row(const StrengthRow& row) { return {row.minimum, row.maximum, row.evidence}; }

Stress between(Stress low, Stress high, double part) { return low + part * (high - low); }

StrengthAt between_rows(const StrengthRow& below, const StrengthRow& above, Length diameter) {
    const double part = (diameter - below.diameter) / (above.diameter - below.diameter);
    StrengthAt result{between(below.minimum, above.minimum, part), {}, weaker(below.evidence, above.evidence)};
    if (below.maximum && above.maximum) result.maximum = between(*below.maximum, *above.maximum, part);
    return result;
}

std::optional<StrengthAt> read(const StrengthTable& table, Length diameter) {
    const auto row = std::find_if(table.rows.begin(), table.rows.end(),
                                  [&](const StrengthRow& r) { return diameter <= r.diameter + kSlack; });
    if (row == table.rows.end() || diameter < table.smallest - kSlack) return std::nullopt;
    const bool on_the_row = diameter >= row->diameter - kSlack;
    if (table.lookup != StrengthLookup::interpolate || on_the_row || row == table.rows.begin()) return at_row(*row);
    return between_rows(*(row - 1), *row, diameter);
}

std::optional<StrengthAt> read(const StrengthLaw& law, Length diameter) {
    if (!is_inside(diameter, law.smallest, law.largest)) return std::nullopt;
    return StrengthAt{law.a_mpa / std::pow(in_mm(diameter), law.exponent) * MPa, {}, Evidence::given};
}

std::optional<StrengthAt> read(const StrengthGiven& given, Length diameter) {
    if (!is_inside(diameter, given.smallest, given.largest)) return std::nullopt;
    return StrengthAt{given.minimum, {}, Evidence::given};
}

DiameterRange range_of(const StrengthTable& table) { return {table.smallest, table.rows.back().diameter}; }
DiameterRange range_of(const StrengthLaw& law) { return {law.smallest, law.largest}; }
DiameterRange range_of(const StrengthGiven& given) { return {given.smallest, given.largest}; }

/// The first row that reaches up to the diameter, or null.
template <class Row>
const Row* reaching(const std::vector<Row>& rows, Length diameter) {
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return diameter <= r.up_to + kSlack; });
    return row == rows.end() ? nullptr : &*row;
}

}  // namespace

std::optional<StrengthAt> strength_at(const Grade& grade, Length diameter) {
    return std::visit([&](const auto& strength) { return read(strength, diameter); }, grade.strength);
}

DiameterRange strength_range(const Grade& grade) {
    return std::visit([](const auto& strength) { return range_of(strength); }, grade.strength);
}

Evidence strength_evidence(const Grade& grade) {
    Evidence weakest = Evidence::given;
    if (const auto* table = std::get_if<StrengthTable>(&grade.strength))
        for (const StrengthRow& row : table->rows) weakest = weaker(weakest, row.evidence);
    return weakest;
}

Moduli moduli_at(const Grade& grade, Length diameter) {
    SEATLOAD_ASSERT(!grade.moduli.empty());
    const ModuliRow* row = reaching(grade.moduli, diameter);
    if (row == nullptr) row = &grade.moduli.back();
    return {row->shear, row->young};
}

std::optional<Length> diameter_tolerance_at(const Grade& grade, Length diameter) {
    const ToleranceRow* row = reaching(grade.diameter_tolerance, diameter);
    return row == nullptr ? std::nullopt : std::optional(row->plus_minus);
}

std::optional<Share> load_loss_at(const Grade& grade, Celsius temperature) {
    if (!grade.load_loss) return std::nullopt;
    double from_degrees = 20.0;
    double from_share = 0.0;
    if (temperature.degrees <= from_degrees) return Share{0.0};
    for (const auto& [at, loss] : grade.load_loss->points) {
        if (!loss) continue;
        if (temperature.degrees <= at.degrees) {
            const double part = (temperature.degrees - from_degrees) / (at.degrees - from_degrees);
            return Share{from_share + part * (loss->value - from_share)};
        }
        from_degrees = at.degrees;
        from_share = loss->value;
    }
    return std::nullopt;
}

TorsionalYield torsional_yield(Family family) {
    switch (family) {
        case Family::cold_drawn_carbon:
            return {{0.45}, Evidence::standard};
        case Family::oil_tempered:
            return {{0.50}, Evidence::memory};
        case Family::austenitic_stainless:
            return {{0.35}, Evidence::memory};
        case Family::precipitation_stainless:
            return {{0.45}, Evidence::estimate};
        case Family::copper_alloy:
            return {{0.35}, Evidence::memory};
        case Family::nickel_alloy:
            return {{0.35}, Evidence::memory};
    }
    throw InternalError("a wire family without a torsional yield");
}

}  // namespace seatload::wire
