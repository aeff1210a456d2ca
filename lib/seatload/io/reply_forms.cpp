// SPDX-License-Identifier: MIT
#include <seatload/io/reply_forms.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include <seatload/core/text.hpp>
#include <seatload/io/refused.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kDigits = "0123456789";
constexpr std::size_t kMostDecimals = 4;
constexpr std::size_t kMostDigits = 9;  ///< before the point: no lot of springs costs a thousand million

bool is_digits(std::string_view text) {
    return !text.empty() && text.find_first_not_of(kDigits) == std::string_view::npos;
}

/// The amount as a person wrote it, or as the shortest text of a plain number; nothing for other kinds of value.
std::optional<std::string> amount_text(const Node& node) {
    if (const auto* text = std::get_if<std::string>(&node.value)) return std::string(trim(*text));
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&node.value); number != nullptr && std::isfinite(*number))
        return shortest(*number);
    return std::nullopt;
}

/// What to write in place of an amount that is none.
std::string amount_hint(std::string_view text) {
    const bool has_letter = std::any_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
    });
    if (text.find('/') != std::string_view::npos) return "the price of one piece is wanted: write for example \"2.40\"";
    if (has_letter) return "the currency stands once, under [maker]: write for example \"2.40\"";
    if (std::count(text.begin(), text.end(), ',') == 1 && text.find('.') == std::string_view::npos) {
        std::string with_point(text);
        std::replace(with_point.begin(), with_point.end(), ',', '.');
        return "write the decimal point: \"" + with_point + '"';
    }
    return "write digits and a decimal point alone, for example \"2.40\"";
}

std::int64_t ten_thousandths(std::string_view whole, std::string_view decimals) {
    std::string digits = std::string(whole) + std::string(decimals);
    digits.append(kMostDecimals - decimals.size(), '0');
    std::int64_t value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

struct LeadWord {
    std::string_view one;
    std::string_view many;
    record::LeadUnit unit;
};

constexpr std::array<LeadWord, 3> kLeadWords{{{"day", "days", record::LeadUnit::days},
                                              {"working day", "working days", record::LeadUnit::working_days},
                                              {"week", "weeks", record::LeadUnit::weeks}}};
constexpr std::size_t kMostLeadDigits = 3;

/// The last number of "4-5 weeks".
std::string longest_number(std::string_view text) {
    const std::size_t last = text.find_last_of(kDigits);
    const std::size_t before = text.find_last_not_of(kDigits, last);
    const std::size_t first = before == std::string_view::npos ? 0 : before + 1;
    return std::string(text.substr(first, last + 1 - first));
}

const LeadWord* find_lead_word(std::string_view words) {
    for (const LeadWord& word : kLeadWords)
        if (lower(words) == word.one || lower(words) == word.many) return &word;
    return nullptr;
}

}  // namespace

units::Parsed<record::Money> Form<record::Money>::read(const Node& node) {
    const auto text = amount_text(node);
    if (!text) return {std::nullopt, wrong_kind(node, "an amount of money", "\"2.40\"")};
    if (text->starts_with('-')) return refused<record::Money>("out-of-span"_id, "an amount below zero");
    const std::size_t point = text->find('.');
    const std::string_view whole = std::string_view(*text).substr(0, point);
    const std::string_view decimals =
        point == std::string::npos ? std::string_view{} : std::string_view(*text).substr(point + 1);
    if (!is_digits(whole) || (point != std::string::npos && !is_digits(decimals)))
        return refused<record::Money>("not-an-amount"_id, '"' + *text + "\" is not an amount", amount_hint(*text));
    if (decimals.size() > kMostDecimals)
        return refused<record::Money>("not-an-amount"_id, "an amount has at most four decimals");
    if (whole.size() > kMostDigits)
        return refused<record::Money>("number-too-large"_id, "the amount is too large to be held");
    return {record::Money{ten_thousandths(whole, decimals)}, {}};
}

units::Parsed<record::LeadTime> Form<record::LeadTime>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, wrong_kind(node, "a lead time", "\"4 weeks\"")};
    const std::string_view body = trim(*text);
    const std::size_t end = std::min(body.find_first_not_of(kDigits), body.size());
    const LeadWord* word = find_lead_word(trim(body.substr(end)));
    const std::string wrong = '"' + *text + "\" is not a lead time";
    if (end == 0)
        return refused<record::LeadTime>("not-a-lead-time"_id, wrong,
                                         "write for example \"4 weeks\" or \"15 working days\"");
    if (word == nullptr)
        return refused<record::LeadTime>(
            "not-a-lead-time"_id, wrong,
            "write one whole number, the longest it may take, and days, working days or weeks: \"" +
                longest_number(body) + " weeks\"");
    if (end > kMostLeadDigits) return refused<record::LeadTime>("not-a-lead-time"_id, "the lead time is too long");
    record::LeadTime time{0, word->unit};
    std::from_chars(body.data(), body.data() + end, time.count);
    return {time, {}};
}

std::string Form<record::LeadTime>::write(const record::LeadTime& time) {
    const auto* word = std::find_if(kLeadWords.begin(), kLeadWords.end(),
                                    [&](const LeadWord& candidate) { return candidate.unit == time.unit; });
    return quoted_text(std::to_string(time.count) + ' ' + std::string(time.count == 1 ? word->one : word->many));
}

units::Parsed<Currency> Form<Currency>::read(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return {std::nullopt, wrong_kind(node, "a currency", "\"EUR\"")};
    std::string code(trim(*text));
    for (char& c : code)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    const bool is_code =
        code.size() == 3 && std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (!is_code)
        return refused<Currency>("unknown-currency"_id, '"' + *text + "\" is not a currency",
                                 "write its three letters by ISO 4217, for example \"EUR\"");
    return {Currency{code}, {}};
}

bool is_unanswered(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    return text != nullptr && trim(*text).empty();
}

bool is_quoted_zero(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return false;
    const std::string_view body = trim(*text);
    return body == "0" ||
           (body.starts_with("0.") && body.size() > 2 && body.find_first_not_of('0', 2) == std::string_view::npos);
}

Node without_quotes(const Node& node) {
    const auto* text = std::get_if<std::string>(&node.value);
    if (text == nullptr) return node;
    const std::string_view body = trim(*text);
    std::int64_t whole = 0;
    if (const auto [end, error] = std::from_chars(body.data(), body.data() + body.size(), whole);
        error == std::errc{} && end == body.data() + body.size())
        return {node.at, whole};
    double number = 0.0;
    if (const auto [end, error] = std::from_chars(body.data(), body.data() + body.size(), number);
        error == std::errc{} && end == body.data() + body.size())
        return {node.at, number};
    return node;
}

}  // namespace seatload::io
