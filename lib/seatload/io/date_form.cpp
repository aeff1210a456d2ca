// SPDX-License-Identifier: MIT
#include <seatload/io/date_form.hpp>

#include <charconv>
#include <chrono>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

std::optional<unsigned> whole(std::string_view text, std::size_t digits) {
    unsigned value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.size() != digits || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::optional<Date> date_of(std::string_view text) {
    const auto parts = split(text, '-');
    if (parts.size() != 3) return std::nullopt;
    const auto year = whole(parts[0], 4);
    const auto month = whole(parts[1], 2);
    const auto day = whole(parts[2], 2);
    if (!year || !month || !day) return std::nullopt;
    return Date{*year, *month, *day};
}

bool is_in_calendar(const Date& date) {
    using namespace std::chrono;
    return year_month_day(year(static_cast<int>(date.year)), month(date.month), day(date.day)).ok();
}

std::string padded(unsigned number, std::size_t digits) {
    const std::string text = std::to_string(number);
    return std::string(text.size() < digits ? digits - text.size() : 0, '0') + text;
}

}  // namespace

units::Parsed<DateText> Form<DateText>::read(const Node& node) {
    std::optional<Date> date;
    if (const auto* own = std::get_if<Date>(&node.value)) date = *own;
    const auto* text = std::get_if<std::string>(&node.value);
    if (text != nullptr) date = date_of(*text);
    if (!date && text == nullptr) return {std::nullopt, wrong_kind(node, "a date", "\"2026-11-25\"")};
    if (!date)
        return {std::nullopt,
                {"bad-date"_id, "\"" + *text + "\" is not a date", "write year, month and day: \"2026-11-25\"", 0}};
    if (!is_in_calendar(*date)) return {std::nullopt, {"bad-date"_id, "there is no such day in the calendar", "", 0}};
    return {DateText{padded(date->year, 4) + '-' + padded(date->month, 2) + '-' + padded(date->day, 2)}, {}};
}

}  // namespace seatload::io
