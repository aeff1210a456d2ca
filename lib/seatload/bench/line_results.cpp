// SPDX-License-Identifier: MIT
#include <seatload/bench/line_results.hpp>

#include <seatload/bench/budget.hpp>

namespace seatload::bench {

namespace {

template <class Q>
std::vector<Contribution<Q>> unsigned_contributions(const Line& line, const Gradient& gradient) {
    auto all = contributions<Q>(line, gradient);
    for (auto& c : all) c.standard = Q::from_value(std::abs(in_base_unit(c.standard)));
    return all;
}

}  // namespace

double load_on(const Line& line, double height_mm) {
    return line.centre_force_n - line.rate_n_mm * (height_mm - line.centre_mm);
}

double free_length_of(const Line& line) { return line.centre_mm + line.centre_force_n / line.rate_n_mm; }

Gradient gradient_of_rate() { return {1.0, 0.0}; }

Gradient gradient_of_load(const Line& line, double height_mm) { return {line.centre_mm - height_mm, 1.0}; }

Gradient gradient_of_free_length(const Line& line) {
    return {-line.centre_force_n / (line.rate_n_mm * line.rate_n_mm), 1.0 / line.rate_n_mm};
}

Estimate<Rate> rate_of(const Line& line, double coverage_factor) {
    return combine(line.rate_n_mm * newton_per_mm, unsigned_contributions<Rate>(line, gradient_of_rate()),
                   coverage_factor);
}

Estimate<Length> free_length_of(const Line& line, double coverage_factor) {
    return combine(free_length_of(line) * mm, unsigned_contributions<Length>(line, gradient_of_free_length(line)),
                   coverage_factor);
}

Estimate<Force> load_at(const MeasuredSpring& spring, const Stated<Length>& height) {
    const double L = in_mm(height.value);
    auto all = unsigned_contributions<Force>(spring.line, gradient_of_load(spring.line, L));
    const double set = spring.line.rate_n_mm * in_mm(rectangular(height.plus_minus));
    all.push_back({"height asked for", set * newton, 0.0, std::numeric_limits<double>::infinity(), false});
    return combine(load_on(spring.line, L) * newton, std::move(all), spring.coverage_factor);
}

}  // namespace seatload::bench
