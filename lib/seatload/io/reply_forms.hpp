// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include <seatload/io/form.hpp>
#include <seatload/record/reply.hpp>

namespace seatload::io {

/// An amount without its currency: "2.40", or 2.40 without quotes. At most four decimals, never below zero.
template <>
struct Form<record::Money> {
    static units::Parsed<record::Money> read(const Node& node);
    static std::string write(const record::Money& money) { return quoted_text(record::money_text(money)); }
    static std::vector<double> numbers(const record::Money&) { return {}; }
};

/// "4 weeks", "20 days", "15 working days".
template <>
struct Form<record::LeadTime> {
    static units::Parsed<record::LeadTime> read(const Node& node);
    static std::string write(const record::LeadTime& time);
    static std::vector<double> numbers(const record::LeadTime&) { return {}; }
};

/// A currency by its three letters.
struct Currency {
    std::string code;
};

template <>
struct Form<Currency> {
    static units::Parsed<Currency> read(const Node& node);
    static std::string write(const Currency& currency) { return quoted_text(currency.code); }
    static std::vector<double> numbers(const Currency&) { return {}; }
};

/// A line of a form to be filled in: an empty text when there is no answer yet.
template <class T>
struct Answer {
    std::optional<T> value;
};

/// True for "" and for blanks alone.
bool is_unanswered(const Node& node);
/// The node, or the number its text states: whoever fills in a form writes between the quotes that stand there.
Node without_quotes(const Node& node);
/// True for "0" and "0.00": nothing is nothing, whatever its unit.
bool is_quoted_zero(const Node& node);

template <class T>
struct Form<Answer<T>> {
    static units::Parsed<Answer<T>> read(const Node& node) {
        if (is_unanswered(node)) return {Answer<T>{}, {}};
        if constexpr (std::is_same_v<T, Share>)
            if (is_quoted_zero(node)) return {Answer<T>{Share{0.0}}, {}};
        constexpr bool is_number = std::is_same_v<T, int> || std::is_same_v<T, double>;
        units::Parsed<T> parsed = is_number ? Form<T>::read(without_quotes(node)) : Form<T>::read(node);
        if (!parsed.value) return {std::nullopt, std::move(parsed.problem)};
        return {Answer<T>{std::move(parsed.value)}, {}};
    }
    static std::string write(const Answer<T>& answer) {
        return answer.value ? Form<T>::write(*answer.value) : quoted_text("");
    }
    static std::vector<double> numbers(const Answer<T>& answer) {
        return answer.value ? Form<T>::numbers(*answer.value) : std::vector<double>{};
    }
};

}  // namespace seatload::io
