// SPDX-License-Identifier: MIT
#include <seatload/sizing/what_if.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/wire/strength.hpp>

namespace seatload::sizing {
namespace {

using demand::Requirement;

/// The number cleared of the noise in its last digits.
double cleared(double value) { return std::round(value * 1e9) / 1e9; }

struct Value {
    double number;
    bool is_stated;
};

std::vector<Value> values(const Requirement& requirement, const WhatIf& question) {
    const std::optional<double> now = stated(*question.number, requirement);
    std::vector<Value> all;
    for (int i = 0; i < kWhatIfValues; ++i) {
        const double share = static_cast<double>(i) / (kWhatIfValues - 1);
        all.push_back({cleared(question.from + share * (question.to - question.from)), false});
    }
    if (!now) return all;
    const auto next = std::find_if(all.begin(), all.end(), [&](const Value& v) { return v.number >= cleared(*now); });
    if (next != all.end() && next->number == cleared(*now))
        *next = {*now, true};
    else
        all.insert(next, {*now, true});
    return all;
}

BestSpring described(const Candidate& c, const Space& space, spring::Hand hand) {
    const WireOption& wire = space.wires[c.wire];
    const wire::Grade& grade = space.grades[wire.grade];
    return {grade.id,
            wire::strength_at(grade, wire.size.diameter)->evidence,
            {wire.size.diameter, c.mean_diameter_mm * mm, c.total_coils, c.free_length_mm * mm, c.ends, hand},
            c.merit};
}

WhatIfRow row(const Requirement& requirement, const WhatIfNumber& number, const Value& value, const Setting& setting) {
    Requirement changed = requirement;
    if (!value.is_stated) number.easing->set(changed, value.number);
    const Space space = search_space(changed, setting.catalogue);
    const Census census = search(space, setting.tables, setting.options);
    WhatIfRow found{value.number, value.is_stated, census.looked_at, census.fit, {}};
    if (const Candidate* best = first_ranked(census, requirement.preference.order))
        found.best = described(*best, space, requirement.hand);
    return found;
}

}  // namespace

std::vector<WhatIfRow> what_if(const Requirement& requirement, const WhatIf& question, const Setting& setting) {
    const std::vector<Value> tried = values(requirement, question);
    std::vector<WhatIfRow> rows;
    for (std::size_t i = 0; i < tried.size(); ++i) {
        Setting one = setting;
        one.options.counts_rejections = false;
        const auto whole = static_cast<double>(tried.size());
        if (setting.options.progress)
            one.options.progress = [&, i](double share) {
                setting.options.progress((static_cast<double>(i) + share) / whole);
            };
        rows.push_back(row(requirement, *question.number, tried[i], one));
    }
    return rows;
}

bool lets_in_any(const std::vector<WhatIfRow>& rows) {
    return std::any_of(rows.begin(), rows.end(), [](const WhatIfRow& row) { return row.fit > 0; });
}

}  // namespace seatload::sizing
