// SPDX-License-Identifier: MIT
#include <seatload/sheet/inspection_words.hpp>

#include <seatload/core/text.hpp>
#include <seatload/inspection/sentences.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {

std::string kind_symbol(inspection::Kind kind) {
    const std::string plain(symbol(kind));
    return plain.size() == 1 ? plain : with_sub(plain.substr(0, 1), plain.substr(1));
}

std::string kind_words(inspection::Kind kind) { return std::string(words(kind)) + ' ' + kind_symbol(kind); }

std::string axis_name(inspection::Kind kind) {
    const std::string in(unit(kind));
    return kind_symbol(kind) + (in.empty() ? "" : " [" + in + ']');
}

std::string plot_title(const inspection::Judged& j) {
    const auto count = [](int number, const char* one, const char* many) {
        return std::to_string(number) + ' ' + (number == 1 ? one : many);
    };
    std::string title = kind_words(j.characteristic.kind) + ": " + count(j.measured(), "piece", "pieces");
    if (j.characteristic.limits.is_open()) return title + ", no limits";
    title += ", " + count(j.inside, "conforms", "conform");
    if (j.unproven > 0) title += ", " + std::to_string(j.unproven) + " not proven";
    if (j.outside > 0) title += ", " + count(j.outside, "fails", "fail");
    return title;
}

std::string limits_words(const inspection::Characteristic& c) {
    const auto number = [&](double value) { return inspection::limit_text(c.limits, value); };
    std::string words = "none";
    if (c.limits.least && c.limits.most) words = number(*c.limits.least) + " to " + number(*c.limits.most);
    if (c.limits.least && !c.limits.most) words = "at least " + number(*c.limits.least);
    if (!c.limits.least && c.limits.most) words = "at most " + number(*c.limits.most);
    if (c.further_by_tips) words += " (" + number(c.further_by_tips->most) + " by tips)";
    return c.whole_turns_free ? words + ", or whole turns off" : words;
}

}  // namespace seatload::sheet
