// SPDX-License-Identifier: MIT
#include <seatload/sheet/report_step.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <utility>

#include <seatload/core/assert.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr int kStepDigits = 5;  ///< of a value worked out: more than any tolerance here, and still fit for a hand
constexpr int kStepLengthDecimals = 4;  ///< lengths in mm, so that their differences come out as printed

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> kGreek{{{"alpha", "α"},
                                                                               {"delta", "Δ"},
                                                                               {"eta", "η"},
                                                                               {"lambda", "λ"},
                                                                               {"nu", "ν"},
                                                                               {"rho", "ρ"},
                                                                               {"tau", "τ"},
                                                                               {"xi", "ξ"},
                                                                               {"phi", "φ"}}};

struct Shown {
    std::string text;
    bool is_rounded;
};

int decimals_for(double value, const std::string& unit) {
    if (unit == "mm") return kStepLengthDecimals;
    if (value == 0.0) return 0;
    const int before = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    return std::clamp(kStepDigits - before, 0, 12);
}

/// The number in full when a few digits say all of it, else rounded with its last zeros kept.
Shown shown(double value, const std::string& unit) {
    const int decimals = decimals_for(value, unit);
    std::string text = fixed(value, decimals);
    const double scale = std::pow(10.0, decimals);
    if (std::abs(std::round(value * scale) / scale - value) > 1e-10 * std::abs(value)) return {text, true};
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return {text, false};
}

/// A number that stands in a file is printed as it stands there, if that is not endless.
Shown shown_as_given(double value, const std::string& unit) {
    constexpr std::size_t kEndless = 9;
    const std::string text = shortest(value);
    const bool plain = text.find('e') == std::string::npos;
    return plain && text.size() <= kEndless ? Shown{text, false} : shown(value, unit);
}

/// A minus sign as it is printed, U+2212.
std::string typographic(const std::string& number) { return number.starts_with('-') ? "−" + number.substr(1) : number; }

/// A formula's text with each {key} replaced and the operators as they are printed.
std::string printed(std::string_view formula, const std::string& times,
                    const std::function<std::string(const std::string&)>& replace) {
    std::string out;
    for (std::size_t i = 0; i < formula.size();) {
        const char c = formula[i];
        if (c == '{') {
            const std::size_t end = formula.find('}', i);
            out += replace(std::string(formula.substr(i + 1, end - i - 1)));
            i = end + 1;
        } else if (c == '^') {
            const std::size_t end = std::min(formula.find_first_not_of("0123456789.", i + 1), formula.size());
            out += with_super("", formula.substr(i + 1, end - i - 1));
            i = end;
        } else if (formula.substr(i).starts_with("pi")) {
            out += "π";
            i += 2;
        } else if (formula.substr(i).starts_with("sqrt")) {
            out += "√";
            i += 4;
        } else {
            out += c == '*' ? times : c == '-' ? "−" : std::string(1, c);
            ++i;
        }
    }
    return out;
}

}  // namespace

std::string symbol_of_key(std::string_view key) {
    const std::size_t bar = key.find('_');
    std::string head(key.substr(0, bar));
    for (const auto& [name, letter] : kGreek)
        if (head == name) head = letter;
    return bar == std::string_view::npos ? head : with_sub(head, key.substr(bar + 1));
}

void Calculation::heading(std::string words, bool stands_in_tables) {
    groups_.push_back({std::move(words), {}, stands_in_tables});
}

const Calculation::Number& Calculation::number(const std::string& key) const {
    const auto found = numbers_.find(key);
    SEATLOAD_ASSERT(found != numbers_.end());
    return found->second;
}

void Calculation::put_down(const std::string& key, Step step) {
    SEATLOAD_ASSERT(!groups_.empty());
    numbers_[key] = {step.symbol, step.value, step.is_rounded, step.value_trust};
    groups_.back().steps.push_back(std::move(step));
}

void Calculation::given(const std::string& key, const std::string& name, double value, const std::string& unit,
                        const std::string& source, Trust trust) {
    const Shown number = shown_as_given(value, unit);
    Step step{name,  symbol_of_key(key), "", "", typographic(number.text), unit, source, trust,
              trust, number.is_rounded,  {}};
    put_down(key, std::move(step));
}

void Calculation::said(const std::string& name, const std::string& words, const std::string& source, Trust trust) {
    SEATLOAD_ASSERT(!groups_.empty());
    groups_.back().steps.push_back({name, "", "", "", words, "", source, trust, trust, false, {}});
}

void Calculation::step(const std::string& key, const std::string& name, std::string_view formula, double value,
                       const std::string& unit, const std::string& source, Trust trust) {
    SEATLOAD_ASSERT(std::isfinite(value));
    const Shown number = shown(value, unit);
    Step step{name,  symbol_of_key(key), "", "", typographic(number.text), unit, source, trust,
              trust, number.is_rounded,  {}};
    step.formula = printed(formula, "\u00a0", [&](const std::string& k) { return this->number(k).symbol; });
    step.numbers = printed(formula, " · ", [&](const std::string& k) {
        const Number& put_in = this->number(k);
        step.value_trust = weaker(step.value_trust, put_in.trust);
        if (put_in.is_rounded) step.rounded_numbers.push_back(put_in.text);
        return put_in.text.starts_with("−") ? "(" + put_in.text + ")" : put_in.text;
    });
    put_down(key, std::move(step));
}

}  // namespace seatload::sheet
