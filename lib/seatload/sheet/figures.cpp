// SPDX-License-Identifier: MIT
#include <seatload/sheet/figures.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>

namespace seatload::sheet {
namespace {

/// Decimals needed to write the number exactly, at most three.
int decimals_of(double value) {
    const std::string text = trimmed(value, 3);
    const auto point = text.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

int load_decimals(const record::LoadAtLength& load) {
    return std::max(
        {decimals_of(in_newton(load.nominal)), decimals_of(in_newton(load.plus)), decimals_of(in_newton(load.minus))});
}

}  // namespace

std::string trimmed(double value, int most_decimals) {
    std::string text = fixed(value, most_decimals);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string wire_number(Length diameter) {
    const std::string text = trimmed(in_mm(diameter), 3);
    const std::string two = fixed(in_mm(diameter), 2);
    return text.size() > two.size() ? text : two;
}

std::string with_tolerance(Length nominal, Length plus_minus, int least_decimals) {
    const int decimals = std::max({decimals_of(in_mm(nominal)), decimals_of(in_mm(plus_minus)), least_decimals});
    return fixed(in_mm(nominal), decimals) + " ± " + fixed(in_mm(plus_minus), decimals);
}

LoadLimits limits(const record::LoadAtLength& load) {
    const double nominal = in_newton(load.nominal);
    const double plus = in_newton(load.plus);
    const double minus = in_newton(load.minus);
    const int decimals = load_decimals(load);
    return {fixed(nominal - minus, decimals), fixed(nominal, decimals), fixed(nominal + plus, decimals)};
}

std::string toleranced(const record::LoadAtLength& load) {
    const double nominal = in_newton(load.nominal);
    const double plus = in_newton(load.plus);
    const double minus = in_newton(load.minus);
    const int decimals = load_decimals(load);
    if (fixed(plus, decimals) == fixed(minus, decimals))
        return fixed(nominal, decimals) + " ± " + fixed(plus, decimals);
    return fixed(nominal, decimals) + " +" + fixed(plus, decimals) + "/−" + fixed(minus, decimals);
}

}  // namespace seatload::sheet
