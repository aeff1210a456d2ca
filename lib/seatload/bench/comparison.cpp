// SPDX-License-Identifier: MIT
#include <seatload/bench/comparison.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/bench/budget.hpp>
#include <seatload/bench/line_results.hpp>

namespace seatload::bench {

namespace {

template <class Q>
std::string of(const MeasuredSpring& spring, const Contribution<Q>& c) {
    return spring.name + ": " + c.name;
}

// Errors of the bench shift both results: what is left is the difference of the shifts. All else adds up.
template <class Q>
std::vector<Contribution<Q>> of_difference(const MeasuredSpring& first, const Gradient& by_first,
                                           const MeasuredSpring& second, const Gradient& by_second, bool one_session) {
    std::vector<Contribution<Q>> result;
    auto others = contributions<Q>(second.line, by_second);
    for (auto c : contributions<Q>(first.line, by_first)) {
        const auto same = std::find_if(others.begin(), others.end(),
                                       [&](const auto& o) { return o.common && c.common && o.name == c.name; });
        if (c.common && one_session && same != others.end()) {
            c.standard -= same->standard;
            others.erase(same);
        } else {
            c.name = of(first, c);
        }
        result.push_back(std::move(c));
    }
    for (auto& c : others) {
        c.name = of(second, c);
        result.push_back(std::move(c));
    }
    for (auto& c : result) c.standard = Q::from_value(std::abs(in_base_unit(c.standard)));
    return result;
}

template <class Q>
Difference<Q> difference(const Q& value, std::vector<Contribution<Q>> doubt, double coverage_factor) {
    Difference<Q> d{combine(value, std::move(doubt), coverage_factor), false};
    d.significant = std::abs(in_base_unit(value)) > in_base_unit(d.estimate.expanded);
    return d;
}

LoadDifference load_difference(const MeasuredSpring& first, const MeasuredSpring& second, const AskedHeight& asked,
                               bool one_session) {
    const double L = in_mm(asked.height.value);
    const Line &a = first.line, &b = second.line;
    auto doubt = of_difference<Force>(first, gradient_of_load(a, L), second, gradient_of_load(b, L), one_session);
    // Both are asked for at the same height, wherever exactly that is.
    const double set = std::abs(a.rate_n_mm - b.rate_n_mm) * in_mm(rectangular(asked.height.plus_minus));
    doubt.push_back({"height asked for", set * newton, 0.0, std::numeric_limits<double>::infinity(), true});
    const Force value = (load_on(a, L) - load_on(b, L)) * newton;
    // F = R (L0 - L): the differences times the means of the other factor add up to the whole exactly.
    const double mean_travel = 0.5 * (free_length_of(a) + free_length_of(b)) - L;
    const double mean_rate = 0.5 * (a.rate_n_mm + b.rate_n_mm);
    return {asked, difference(value, std::move(doubt), first.coverage_factor),
            (a.rate_n_mm - b.rate_n_mm) * mean_travel * newton,
            mean_rate * (free_length_of(a) - free_length_of(b)) * newton};
}

}  // namespace

Comparison compare(const MeasuredSpring& first, const MeasuredSpring& second, bool one_session) {
    Comparison c{first.name, second.name, {}, {}, {}};
    const Line &a = first.line, &b = second.line;
    c.rate = difference((a.rate_n_mm - b.rate_n_mm) * newton_per_mm,
                        of_difference<Rate>(first, gradient_of_rate(), second, gradient_of_rate(), one_session),
                        first.coverage_factor);
    c.free_length = difference(
        (free_length_of(a) - free_length_of(b)) * mm,
        of_difference<Length>(first, gradient_of_free_length(a), second, gradient_of_free_length(b), one_session),
        first.coverage_factor);
    for (const LoadAtHeight& load : first.loads)
        c.loads.push_back(load_difference(first, second, load.asked, one_session));
    return c;
}

}  // namespace seatload::bench
