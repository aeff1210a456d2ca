// SPDX-License-Identifier: MIT
#include <seatload/io/preference_table.hpp>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/spring_forms.hpp>
#include <seatload/io/wire_choice_check.hpp>
#include <seatload/io/words.hpp>
#include <seatload/units/format.hpp>

namespace seatload::io {

template <>
struct Form<demand::Criterion> : WordForm<demand::Criterion, Form<demand::Criterion>> {
    static constexpr Word<demand::Criterion> kWords[] = {
        {"tolerance room", demand::Criterion::tolerance_room},
        {"stress margin", demand::Criterion::stress_margin},
        {"cost", demand::Criterion::cost},
        {"release force", demand::Criterion::release},
    };
};

namespace {

const List* list_at(const Document& document, std::string_view path) {
    const Node* node = document.find(path);
    return node != nullptr ? std::get_if<List>(&node->value) : nullptr;
}

/// Calls `look` with each member that reads as a T, and its node.
template <class T, class Look>
void each(const Document& document, std::string_view path, const Look& look) {
    const List* list = list_at(document, path);
    if (list == nullptr) return;
    for (const Node& member : *list)
        if (const auto read = Form<T>::read(member).value) look(*read, member);
}

/// Complains of an empty list, and of members that stand in it before.
template <class T>
void check_list(Document& document, const std::string& key) {
    const std::string path = "prefer." + key;
    const List* list = list_at(document, path);
    if (list != nullptr && list->empty())
        document.error(document.at(path), "empty"_id, path + " is empty",
                       "name what is preferred, or leave the key out");
    std::vector<T> seen;
    each<T>(document, path, [&](const T& value, const Node& member) {
        if (std::find(seen.begin(), seen.end(), value) != seen.end())
            document.error(member.at, "named-twice"_id, path + " names this twice", "leave one out");
        seen.push_back(value);
    });
}

void not_allowed(Document& document, const Node& wish, const std::string& message, const std::string& path,
                 const std::string& what) {
    document.contradiction(wish.at, "wish-not-allowed"_id, message, "a wish cannot let in what is not allowed",
                           document.at(path), what);
}

bool names_grade(const demand::WireChoice& choice, const std::string& id) {
    return std::any_of(choice.grades.begin(), choice.grades.end(),
                       [&](const std::string& allowed) { return lower(allowed) == lower(id); });
}

void check_grade(Document& document, const demand::WireChoice& choice, const wire::Catalogue& catalogue,
                 const std::string& id, const Node& wish) {
    const wire::Grade* known = catalogue.find(id);
    std::vector<std::string> own_ids;
    for (const wire::Grade& own : choice.own_grades) own_ids.push_back(own.id);
    const bool is_own =
        std::any_of(own_ids.begin(), own_ids.end(), [&](const std::string& own) { return lower(own) == lower(id); });
    if (known == nullptr && !is_own)
        return document.error(wish.at, "unknown-grade"_id, "unknown wire grade \"" + id + "\"",
                              unknown_grade_hint(id, own_ids, catalogue));
    if (document.find("wire.grades") != nullptr && !names_grade(choice, id) &&
        (known == nullptr || !names_grade(choice, known->id)))
        not_allowed(document, wish, "the preferred grade \"" + id + "\" is not among those allowed", "wire.grades",
                    "the grades allowed");
}

void check_wishes(Document& document, const demand::Requirement& r, const wire::Catalogue& catalogue) {
    each<std::string>(document, "prefer.grades", [&](const std::string& id, const Node& wish) {
        check_grade(document, r.wire, catalogue, id, wish);
    });
    each<Length>(document, "prefer.diameters", [&](const Length& diameter, const Node& wish) {
        const auto& allowed = r.wire.diameters;
        if (!allowed.empty() && std::find(allowed.begin(), allowed.end(), diameter) == allowed.end())
            not_allowed(document, wish,
                        "the preferred wire of " + units::shown_wire(diameter) + " is not among those allowed",
                        "wire.diameters", "the wire allowed");
    });
    each<spring::Ends>(document, "prefer.ends", [&](const spring::Ends& ends, const Node& wish) {
        if (std::find(r.ends.begin(), r.ends.end(), ends) != r.ends.end()) return;
        const std::string message =
            "the preferred ends, " + std::string(spring::word(ends)) + ", are not among those allowed";
        if (document.find("coil.ends") != nullptr)
            not_allowed(document, wish, message, "coil.ends", "the ends allowed");
        else
            document.error(wish.at, "wish-not-allowed"_id, message,
                           "only closed and ground ends are, when nothing is said: name both in [coil] ends");
    });
}

/// A spring is no better for being easy to push back where nothing has to push it back.
void check_release(Document& document, const demand::Requirement& r) {
    if (r.full_travel_load.at_most || r.plunger) return;
    each<demand::Criterion>(document, "prefer.order", [&](demand::Criterion criterion, const Node& wish) {
        if (criterion == demand::Criterion::release)
            document.error(wish.at, "wish-without-limit"_id,
                           "the load at full travel has no upper limit, so springs are not compared by it",
                           "state one: [load] full_travel = \"at most 13.5 N\"");
    });
}

}  // namespace

demand::Preference read_preference(Reader& table) {
    demand::Preference preference;
    preference.order = demand::order_led_by(table.list<demand::Criterion>("order", kAny));
    preference.grades = table.list<std::string>("grades", kAny);
    preference.diameters = table.list<Length>("diameters", kSize);
    preference.ends = table.list<spring::Ends>("ends", kAny);
    return preference;
}

void check_preference(Document& document, const demand::Requirement& requirement, const wire::Catalogue& catalogue) {
    check_list<demand::Criterion>(document, "order");
    check_list<std::string>(document, "grades");
    check_list<Length>(document, "diameters");
    check_list<spring::Ends>(document, "ends");
    check_wishes(document, requirement, catalogue);
    check_release(document, requirement);
}

}  // namespace seatload::io
