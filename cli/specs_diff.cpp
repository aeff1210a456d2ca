// SPDX-License-Identifier: MIT
#include <array>
#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/spec_difference.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/key_results.hpp>
#include <seatload/record/specify.hpp>

#include <cli/doubt_text.hpp>
#include <cli/specs_actions.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

/// One of the two specs compared.
struct Side {
    std::string name;
    record::Spec spec;
};

struct Pair {
    Side before;
    Side after;
};

Side side_of(const OnShelf& on, std::size_t at) {
    const record::KeptRevision& revision = on.shelf.revisions[at];
    return {on.shelf.address.text() + " revision " + revision.index(), revision.kept.spec};
}

/// The spec to compare with: a file when there is one of that name, else another spec of the library.
Result<Side> other_side(const io::SpecLibrary& library, const SpecsOptions& options, const References& references) {
    const std::string& word = options.with;
    std::error_code none;
    if (!std::filesystem::is_regular_file(word, none)) {
        const auto on = find_on_shelf(library, options, references.wires, word, {});
        if (!on) return Diagnostics(on.error());
        return side_of(*on, on->at);
    }
    auto spec = read_file(word, [&](std::string_view text, const std::string& name) {
        return io::read_spec(io::spec_content(text), name, references.wires);
    });
    if (!spec) return Diagnostics(spec.error());
    return Side{word, std::move(spec).value()};
}

/// A revision and the one before it; or the other one named.
Result<Pair> pair_of(const SpecsOptions& options, const References& references) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return Diagnostics(library.error());
    const auto on = find_on_shelf(*library, options, references.wires, options.specs.front(), options.revision);
    if (!on) return Diagnostics(on.error());
    if (!options.with.empty()) {
        auto other = other_side(*library, options, references);
        if (!other) return Diagnostics(other.error());
        return Pair{side_of(*on, on->at), std::move(other).value()};
    }
    if (on->at == 0)
        return error_in(on->revision().file, "no-revision-before"_id,
                        "there is no revision before " + on->revision().index(),
                        "compare it with another spec or a file: --with SPEC");
    return Pair{side_of(*on, on->at - 1), side_of(*on, on->at)};
}

std::optional<record::KeyResults> results_of(const Side& side, const References& references) {
    const wire::Grade& grade = grade_of(side.spec, references.wires);
    const auto evaluation =
        check::evaluate(side.spec.spring, grade, record::requirement_of(side.spec), references.tolerances);
    if (!evaluation) return std::nullopt;
    return record::key_results({*evaluation, side.spec, grade, references.tolerances}, program_name());
}

std::vector<record::Moved> moved(const Pair& pair, const References& references) {
    const auto before = results_of(pair.before, references), after = results_of(pair.after, references);
    return before && after ? record::moved(*before, *after) : std::vector<record::Moved>{};
}

std::string or_none(const std::string& value) { return value.empty() ? "(not stated)" : value; }

std::string differences_text(const std::vector<io::SpecDifference>& all, int width) {
    std::string text;
    for (const io::SpecDifference& d : all)
        text += wrapped("  " + d.key + ": ", or_none(d.before) + " -> " + or_none(d.after), width, 4);
    return text;
}

/// A value before and after, in as many digits as it takes to tell them apart.
std::array<std::string, 2> told_apart(double before, double after) {
    constexpr int kUsual = 4, kMost = 6;
    const auto number = [](double value, int digits) {
        return std::isnan(value) ? std::string("-") : significant(value, digits);
    };
    int digits = kUsual;
    while (digits < kMost && number(before, digits) == number(after, digits)) ++digits;
    return {number(before, digits), number(after, digits)};
}

std::string change_in_percent(double before, double after) {
    if (before == 0.0 || std::isnan(before) || std::isnan(after)) return {};
    return signed_text(100.0 * (after / before - 1.0), 1) + " %";
}

std::string results_text(const std::vector<record::Moved>& all) {
    if (all.empty()) return {};
    using enum TextTable::Align;
    TextTable table({left, right, right, left, right});
    table.add({"", "before", "after"});
    for (const record::Moved& m : all) {
        const auto [before, after] = told_apart(m.before, m.now);
        table.add(
            {std::string(m.kind->name), before, after, std::string(m.kind->unit), change_in_percent(m.before, m.now)});
    }
    return "\nWhat it brings\n" + table.text(2);
}

nlohmann::ordered_json pair_json(const Pair& pair, const std::vector<io::SpecDifference>& stated,
                                 const std::vector<record::Moved>& results) {
    nlohmann::ordered_json json{{"before", pair.before.name}, {"after", pair.after.name}};
    json["stated"] = nlohmann::ordered_json::array();
    for (const io::SpecDifference& d : stated)
        json["stated"].push_back({{"key", d.key}, {"before", d.before}, {"after", d.after}});
    json["results"] = nlohmann::ordered_json::array();
    for (const record::Moved& m : results)
        json["results"].push_back(
            {{"key", m.kind->key}, {"unit", m.kind->unit}, {"before", m.before}, {"after", m.now}});
    return json;
}

}  // namespace

int run_specs_diff(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto pair = pair_of(options, references);
    if (!pair) return refuse(pair.error(), err);
    const auto stated = io::spec_differences(pair->before.spec, pair->after.spec);
    const auto results = moved(*pair, references);
    if (options.json) {
        out << pair_json(*pair, stated, results).dump(2) << '\n';
        return kDone;
    }
    out << wrapped("", pair->before.name + " -> " + pair->after.name, options.width, 2);
    out << (stated.empty() ? "  They state the same.\n" : differences_text(stated, options.width))
        << results_text(results);
    return kDone;
}

}  // namespace seatload::cli
