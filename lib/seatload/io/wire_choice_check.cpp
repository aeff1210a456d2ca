// SPDX-License-Identifier: MIT
#include <seatload/io/wire_choice_check.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/form.hpp>
#include <seatload/units/format.hpp>
#include <seatload/wire/strength.hpp>

namespace seatload::io {
namespace {

/// The members of a list in the file; none when there is no such list.
List members(const Document& document, std::string_view path) {
    const Node* node = document.find(path);
    const List* list = node != nullptr ? std::get_if<List>(&node->value) : nullptr;
    return list != nullptr ? *list : List{};
}

const wire::Grade* find_grade(const demand::WireChoice& choice, const wire::Catalogue& catalogue, std::string_view id) {
    for (const wire::Grade& own : choice.own_grades)
        if (lower(own.id) == lower(id)) return &own;
    return catalogue.find(id);
}

std::vector<const wire::Grade*> allowed_grades(const demand::WireChoice& choice, const wire::Catalogue& catalogue) {
    std::vector<const wire::Grade*> grades;
    for (const std::string& id : choice.grades)
        if (const wire::Grade* grade = find_grade(choice, catalogue, id)) grades.push_back(grade);
    if (choice.grades.empty())
        for (const wire::Grade& grade : catalogue.grades) grades.push_back(&grade);
    return grades;
}

std::string range_text(const wire::Grade& grade) {
    const wire::DiameterRange range = wire::strength_range(grade);
    return grade.id + " " + units::shown_wire(range.smallest) + " to " + units::shown_wire(range.largest);
}

/// The ranges of the first few grades.
std::string ranges_hint(const std::vector<const wire::Grade*>& grades) {
    constexpr std::size_t kNamed = 4;
    std::vector<std::string> texts;
    for (std::size_t i = 0; i < std::min(kNamed, grades.size()); ++i) texts.push_back(range_text(*grades[i]));
    std::string hint = "strengths are known for " + join(texts, ", ");
    if (grades.size() > kNamed) hint += " and " + std::to_string(grades.size() - kNamed) + " more grades";
    return hint + "; they are never extrapolated";
}

void check_grades(Document& document, const demand::WireChoice& choice, const wire::Catalogue& catalogue) {
    std::vector<std::string> own_ids;
    for (const wire::Grade& own : choice.own_grades) own_ids.push_back(own.id);
    for (const Node& member : members(document, "wire.grades")) {
        const auto* id = std::get_if<std::string>(&member.value);
        if (id != nullptr && find_grade(choice, catalogue, *id) == nullptr)
            document.error(member.at, "unknown-grade"_id, "unknown wire grade \"" + *id + "\"",
                           unknown_grade_hint(*id, own_ids, catalogue));
    }
}

void check_own(Document& document, const demand::WireChoice& choice, const wire::Catalogue& catalogue) {
    const List tables = members(document, "own_wire");
    std::vector<std::string> taken;
    for (std::size_t i = 0; i < std::min(tables.size(), choice.own_grades.size()); ++i) {
        const std::string& id = choice.own_grades[i].id;
        if (catalogue.find(id) != nullptr || std::find(taken.begin(), taken.end(), lower(id)) != taken.end())
            document.error(tables[i].at, "name-taken"_id, "the wire id \"" + id + "\" is taken",
                           "give your own wire another id");
        taken.push_back(lower(id));
    }
}

void check_series(Document& document, const demand::WireChoice& choice, const wire::Catalogue& catalogue) {
    if (catalogue.find_series(choice.series) != nullptr || document.find("wire.series") == nullptr) return;
    const std::vector<std::string> ids = catalogue.series_ids();
    document.error(document.at("wire.series"), "unknown-series"_id,
                   "unknown series of stock sizes \"" + choice.series + "\"",
                   did_you_mean(choice.series, ids) + " known: " + join(ids, ", "));
}

void check_diameters(Document& document, const std::vector<const wire::Grade*>& grades) {
    if (grades.empty()) return;
    for (const Node& member : members(document, "wire.diameters")) {
        const std::optional<Length> diameter = Form<Length>::read(member).value;
        if (!diameter || *diameter <= 0.0 * mm) continue;
        const bool has_strength = std::any_of(grades.begin(), grades.end(), [&](const wire::Grade* grade) {
            return wire::strength_at(*grade, *diameter).has_value();
        });
        if (!has_strength)
            document.error(member.at, "no-strength"_id,
                           "no allowed grade has a strength for wire of " + units::shown_wire(*diameter),
                           ranges_hint(grades));
    }
}

std::optional<Length> thinnest(const demand::WireChoice& choice, const std::vector<const wire::Grade*>& grades) {
    std::optional<Length> least;
    const auto take = [&](Length diameter) {
        if (!least || diameter < *least) least = diameter;
    };
    for (const Length& diameter : choice.diameters) take(diameter);
    if (choice.diameters.empty())
        for (const wire::Grade* grade : grades) take(wire::strength_range(*grade).smallest);
    return least;
}

void check_bore(Document& document, const demand::Requirement& requirement,
                const std::vector<const wire::Grade*>& grades) {
    const auto wire = thinnest(requirement.wire, grades);
    if (!requirement.space.bore || !wire || requirement.space.bore->smallest > 2.0 * *wire) return;
    const std::string message = "no allowed wire can be coiled into the bore: the thinnest, " +
                                units::shown_wire(*wire) + ", already takes " + units::shown_wire(2.0 * *wire) +
                                " side by side";
    const std::string hint = "is the bore right? allow thinner wire otherwise";
    if (document.find("wire.diameters") != nullptr)
        document.contradiction(document.at("space.bore"), "wire-too-thick"_id, message, hint,
                               document.at("wire.diameters"), "the wire allowed");
    else
        document.error(document.at("space.bore"), "wire-too-thick"_id, message, hint);
}

}  // namespace

std::string unknown_grade_hint(std::string_view id, const std::vector<std::string>& own_ids,
                               const wire::Catalogue& catalogue) {
    std::string near = did_you_mean(id, own_ids);
    if (near.empty()) near = catalogue.suggestion(id);
    return near.empty() ? "`seatload wire` lists the grades" : near + " (`seatload wire` lists the grades)";
}

void check_wire_choice(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue) {
    const std::vector<const wire::Grade*> grades = allowed_grades(requirement.wire, catalogue);
    check_grades(document, requirement.wire, catalogue);
    check_own(document, requirement.wire, catalogue);
    check_series(document, requirement.wire, catalogue);
    check_diameters(document, grades);
    check_bore(document, requirement, grades);
}

}  // namespace seatload::io
