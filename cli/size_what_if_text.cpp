// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/units/format.hpp>

#include <cli/size_what_if.hpp>
#include <cli/size_words.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using Align = TextTable::Align;

constexpr int kWhatIfDigits = 7;  // more than a person states
constexpr std::size_t kNarrowestBar = 6, kWidestBar = 40;

std::string what_if_title(const WhatIfView& v) {
    std::vector<std::string> names;
    for (const std::string& name : {v.requirement.identity.engine, v.requirement.identity.position})
        if (!name.empty()) names.push_back(name);
    return names.empty() ? v.file : join(names, ", ") + " (" + v.file + ")";
}

std::string question(const WhatIfView& v) {
    const sizing::WhatIfNumber& n = *v.question.number;
    const auto now = sizing::stated(n, v.requirement);
    return "What if: " + n.name + " from " + with_unit(v.question.from, n.easing->unit, kWhatIfDigits) + " to " +
           with_unit(v.question.to, n.easing->unit, kWhatIfDigits) + ", all else as stated" +
           (now ? "; * marks " + with_unit(*now, n.easing->unit, kWhatIfDigits) + ", the stated value."
                : ". The requirement states no value for it.");
}

/// As many decimals as the finest of the values needs, so that points stand below each other.
int decimals(const std::vector<sizing::WhatIfRow>& rows) {
    int most = 0;
    for (const sizing::WhatIfRow& row : rows) {
        const std::string digits = significant(row.value, kWhatIfDigits);
        const auto point = digits.find('.');
        if (point != std::string::npos) most = std::max(most, static_cast<int>(digits.size() - point) - 1);
    }
    return most;
}

std::string bar(unsigned long long count, unsigned long long most, std::size_t longest) {
    if (count == 0) return {};
    const double share = static_cast<double>(count) / static_cast<double>(most);
    return std::string(
        std::max<std::size_t>(1, static_cast<std::size_t>(std::lround(share * static_cast<double>(longest)))), '#');
}

bool is_doubtful(const sizing::BestSpring& best) {
    return best.strength_evidence == wire::Evidence::memory || best.strength_evidence == wire::Evidence::estimate;
}

std::string table(const WhatIfView& v, std::size_t longest_bar) {
    const auto& rows = v.rows;
    unsigned long long most = 1;
    for (const sizing::WhatIfRow& row : rows) most = std::max(most, row.fit);
    const std::string_view unit = v.question.number->easing->unit;
    TextTable t(
        {Align::left, Align::right, Align::right, Align::left, Align::right, Align::right, Align::right, Align::left});
    t.add({"", "value", "springs", "", "room", "stress", "d", "wire"});
    t.add({"", std::string(unit), "that fit", "", "", "used", "mm", "of the best spring"});
    for (const sizing::WhatIfRow& row : rows) {
        std::vector<std::string> cells{row.is_stated ? "*" : "", fixed(row.value, decimals(rows)), grouped(row.fit),
                                       bar(row.fit, most, longest_bar)};
        if (row.best) {
            std::string wire = units::shown_wire(row.best->spring.wire_diameter);
            wire.erase(wire.size() - 3);
            cells.insert(cells.end(), {room_words(row.best->merit.tolerance_room),
                                       fixed(100.0 * (1.0 - row.best->merit.stress_margin), 0) + " %", wire,
                                       row.best->grade + (is_doubtful(*row.best) ? " ~" : "") +
                                           (row.best->merit.leans_too_far ? " !" : "")});
        }
        t.add(std::move(cells));
    }
    return t.text(0);
}

/// The table with bars as long as the width allows.
std::string fitted_table(const WhatIfView& v, int width) {
    std::size_t bare = 0;
    const std::string without = table(v, 1);
    for (const std::string_view line : split(without, '\n')) bare = std::max(bare, length_in_code_points(line));
    const auto columns = static_cast<std::size_t>(std::max(width, 1));
    const std::size_t room = columns > bare ? columns - bare + 1 : 1;
    return table(v, std::clamp(room, kNarrowestBar, kWidestBar));
}

/// What stands in the file as a size with two limits is moved as a whole.
std::string moved(const WhatIfView& v) {
    const std::string& key = v.question.number->key;
    if (key == "space.bore") return "The value is the smallest size of the bore; its tolerance stays as wide. ";
    if (key == "space.rod") return "The value is the largest size of the rod; its tolerance stays as wide. ";
    if (v.requirement.plunger && key.starts_with("space."))
        return "The loads stay those its plunger asks for at the stated heights. ";
    return {};
}

std::string notes(const WhatIfView& v, int width) {
    const auto any = [&](const auto& holds) {
        return std::any_of(v.rows.begin(), v.rows.end(), [&](const auto& row) { return row.best && holds(*row.best); });
    };
    const bool any_doubt = any(is_doubtful);
    const bool any_leans = any([](const sizing::BestSpring& best) { return best.merit.leans_too_far; });
    return wrapped("",
                   moved(v) +
                       "Each value has been searched in full. Room, stress and wire are those of the best spring, "
                       "which \"size\" would offer first: room is how many times what the maker's tolerances (EN 15800 "
                       "grade " +
                       std::to_string(v.requirement.load_grade) +
                       ", from memory) do to it fits before the nearest limit, in whole tenths." +
                       (any_leans ? " ! marks one that leans further than its room, however close its end tips are "
                                    "held; it is best only where none does not."
                                  : "") +
                       (any_doubt ? " ~ marks wire whose strength is from memory or an estimate." : ""),
                   width, 2);
}

}  // namespace

std::string what_if_text(const WhatIfView& v, int width) {
    const std::string head = wrapped("", what_if_title(v), width, 2) + wrapped("", question(v), width, 2) + '\n' +
                             fitted_table(v, width) + '\n';
    if (sizing::lets_in_any(v.rows)) return head + notes(v, width);
    const bool stated = std::any_of(v.rows.begin(), v.rows.end(), [](const auto& row) { return row.is_stated; });
    return head + wrapped("",
                          moved(v) + "No spring fits at any of these values." +
                              (stated ? " \"seatload size " + v.file + "\" tells what would let one in." : ""),
                          width, 2);
}

}  // namespace seatload::cli
