// SPDX-License-Identifier: MIT
#include <seatload/sizing/space.hpp>

#include <algorithm>

#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::sizing {
namespace {

// Outside these no coil is wound cold; EN 15800 has tolerances for mean diameters of 0.63 to 200 mm.
constexpr double kThinnestIndex = 3.0;
constexpr double kWidestIndex = 25.0;
constexpr double kSmallestCoil = 0.63;
constexpr double kLargestCoil = 200.0;

std::vector<wire::Grade> allowed_grades(const demand::WireChoice& choice, const wire::Catalogue& catalogue) {
    std::vector<wire::Grade> grades;
    for (const wire::Grade& grade : catalogue.grades) {
        const bool named = std::any_of(choice.grades.begin(), choice.grades.end(),
                                       [&](const std::string& id) { return catalogue.find(id) == &grade; });
        if (named || (choice.grades.empty() && choice.own_grades.empty())) grades.push_back(grade);
    }
    grades.insert(grades.end(), choice.own_grades.begin(), choice.own_grades.end());
    return grades;
}

/// What is held in stock says nothing of a wire the requirement brings along: it comes in every size of the series.
std::vector<wire::StockSize> own_sizes(const demand::WireChoice& choice, const wire::Catalogue& catalogue,
                                       const wire::Grade& grade) {
    std::vector<wire::StockSize> sizes;
    if (const wire::StockSeries* series = catalogue.find_series(choice.series))
        for (const wire::StockSize& size : series->sizes)
            if (wire::strength_at(grade, size.diameter)) sizes.push_back(size);
    return sizes;
}

std::vector<wire::StockSize> allowed_sizes(const demand::WireChoice& choice, const wire::Catalogue& catalogue,
                                           const wire::Grade& grade) {
    const bool own = std::any_of(choice.own_grades.begin(), choice.own_grades.end(),
                                 [&](const wire::Grade& g) { return g.id == grade.id; });
    if (choice.diameters.empty())
        return own ? own_sizes(choice, catalogue, grade) : wire::stock_sizes(catalogue, grade, choice.series);
    std::vector<wire::StockSize> sizes;
    for (const Length& diameter : choice.diameters) sizes.push_back({diameter, units::shown_wire(diameter)});
    std::sort(sizes.begin(), sizes.end(), [](const auto& a, const auto& b) { return a.diameter < b.diameter; });
    return sizes;
}

Axis mean_diameters(const demand::Requirement& requirement, double d) {
    const demand::Grid& grid = requirement.grid;
    const double step = in_mm(grid.mean_diameter_step);
    if (grid.mean_diameter)
        return axis_between(in_mm(grid.mean_diameter->smallest), in_mm(grid.mean_diameter->largest), step);
    double smallest = std::max(kSmallestCoil, kThinnestIndex * d);
    double largest = std::min(kLargestCoil, kWidestIndex * d);
    if (requirement.space.bore) largest = std::min(largest, in_mm(requirement.space.bore->nominal) - d);
    if (requirement.space.rod) smallest = std::max(smallest, in_mm(requirement.space.rod->nominal) + d);
    return axis_between(smallest, largest, step);
}

Axis free_lengths(const demand::Requirement& requirement) {
    const demand::Grid& grid = requirement.grid;
    const double step = in_mm(grid.free_length_step);
    if (grid.free_length)
        return axis_between(in_mm(grid.free_length->smallest), in_mm(grid.free_length->largest), step);
    double smallest = in_mm(requirement.space.seated_height);
    double largest = 3.0 * smallest;
    if (const auto& envelope = requirement.space.free_length) {
        smallest = std::max(smallest, in_mm(envelope->smallest));
        largest = std::min(largest, in_mm(envelope->largest));
    }
    return axis_between(smallest, largest, step);
}

void add_grade(Space& space, const demand::Requirement& requirement, const wire::Catalogue& catalogue,
               std::size_t index) {
    const wire::Grade& grade = space.grades[index];
    const std::size_t before = space.wires.size();
    const auto sizes = allowed_sizes(requirement.wire, catalogue, grade);
    bool has_strength = false, has_coil = false;
    for (const wire::StockSize& size : sizes) {
        const bool strong = wire::strength_at(grade, size.diameter).has_value();
        const Axis diameters = mean_diameters(requirement, in_mm(size.diameter));
        has_strength = has_strength || strong;
        has_coil = has_coil || (strong && diameters.count > 0);
        const auto numbers = check::numbers(grade, size.diameter, requirement);
        if (numbers && diameters.count > 0) space.wires.push_back({index, size, *numbers, diameters});
    }
    if (space.wires.size() > before) return;
    const std::string at = units::shown(requirement.surroundings.temperature);
    space.left_out.push_back(
        {grade.id, sizes.empty()   ? (catalogue.holdings.empty() ? "no stock size in its range" : "not held in stock")
                   : !has_strength ? "none of the wire sizes is in its range"
                   : !has_coil     ? "no size leaves room for a coil"
                                   : "its load loss at " + at + " is not known; state limits.load_loss"});
}

}  // namespace

unsigned long long Space::lines() const {
    unsigned long long diameters = 0;
    for (const WireOption& wire : wires) diameters += static_cast<unsigned long long>(wire.mean_diameters.count);
    return diameters * ends.size() * static_cast<unsigned long long>(total_coils.count);
}

unsigned long long Space::size() const { return lines() * static_cast<unsigned long long>(free_lengths.count); }

Space search_space(const demand::Requirement& requirement, const wire::Catalogue& catalogue) {
    Space space;
    space.demand = check::numbers(requirement);
    space.grades = allowed_grades(requirement.wire, catalogue);
    space.ends = requirement.ends;
    space.total_coils = axis_between(requirement.grid.total_coils.smallest, requirement.grid.total_coils.largest,
                                     requirement.grid.total_coils_step);
    space.free_lengths = free_lengths(requirement);
    for (std::size_t i = 0; i < space.grades.size(); ++i) add_grade(space, requirement, catalogue, i);
    return space;
}

}  // namespace seatload::sizing
