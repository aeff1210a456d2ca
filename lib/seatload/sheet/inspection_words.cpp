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
    const bool is_of_tips = j.characteristic.whole_turns_free;
    std::string title = kind_words(j.characteristic.kind) +
                        (is_of_tips ? ", end tips " + limits_words(j.characteristic) : "") + ": " +
                        count(j.measured(), "piece", "pieces");
    if (j.characteristic.limits.is_open()) return title + ", no limits";
    title += ", " + count(j.inside, "conforms", "conform");
    if (j.unproven > 0) title += ", " + std::to_string(j.unproven) + " not proven";
    if (j.outside > 0) title += ", " + count(j.outside, "fails", "fail");
    return title;
}

std::string limits_words(const inspection::Characteristic& c) {
    if (c.whole_turns_free) return "180° ± " + significant(c.ordered_tip_degrees(), 3) + "°";
    const auto number = [&](double value) { return inspection::limit_text(c.limits, value); };
    std::string words = "none";
    if (c.limits.least && c.limits.most) words = number(*c.limits.least) + " to " + number(*c.limits.most);
    if (c.limits.least && !c.limits.most) words = "at least " + number(*c.limits.least);
    if (!c.limits.least && c.limits.most) words = "at most " + number(*c.limits.most);
    if (c.further_by_tips) words += " (" + number(c.further_by_tips->most) + " by tips)";
    return words;
}

std::string characteristic_words(const inspection::Characteristic& c) {
    return c.whole_turns_free ? "end tips apart" : kind_words(c.kind);
}

std::string doubt_words(const inspection::Judged& j) {
    if (!(j.expanded > 0.0)) return "–";
    return "± " + (j.characteristic.whole_turns_free ? inspection::doubt_text(360.0 * j.expanded) + "°"
                                                     : inspection::doubt_text(j.expanded));
}

}  // namespace seatload::sheet
