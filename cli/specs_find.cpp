// SPDX-License-Identifier: MIT
#include <algorithm>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sizing/workers.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_json.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/specs_sought.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

constexpr int kWideEnough = 100;     // columns, for sizes beside the loads
constexpr std::size_t kNearest = 3;  // shown when nothing fits

/// A stored spring held against what is looked for.
struct JudgedSpec {
    const record::Shelf* shelf;
    const record::KeptRevision* revision;
    record::FoundSpring found;
};

/// Those the plain words leave, judged, in the order of the library.
std::vector<JudgedSpec> judge_all(const std::vector<record::Shelf>& shelves, const record::Sought& sought,
                                  const SpecsFilter& filter, const std::optional<record::State>& state,
                                  const References& references, unsigned threads) {
    std::vector<JudgedSpec> all;
    for (const record::Shelf& shelf : shelves)
        for (const record::KeptRevision& revision : shelf.revisions) {
            const bool withdrawn = revision.state == record::State::withdrawn && !filter.all && !state;
            if (!withdrawn && is_meant(shelf, revision, filter, state) && has_dimensions(revision.kept.spec, sought))
                all.push_back({&shelf, &revision, {}});
        }
    sizing::share_out(all.size(), sizing::worker_count(threads, all.size()), [&](std::size_t i, std::size_t) {
        const record::Spec& spec = all[i].revision->kept.spec;
        if (sought.judges())
            all[i].found = record::judged(spec, grade_of(spec, references.wires), sought, references.tolerances);
        else
            all[i].found.fits = true;
        if (all[i].found.evaluation) all[i].found.evaluation->verdicts.clear();  // told by now, and ten thousand weigh
    });
    return all;
}

std::string table_text(const std::vector<JudgedSpec>& fitting, const record::Sought& sought, int width) {
    using enum TextTable::Align;
    const std::size_t loads = sought.requirement ? 2 : sought.loads.size();
    const bool wide = width >= kWideEnough || loads == 0;
    std::vector<TextTable::Align> columns{left, left, left, right};
    std::vector<std::string> head{"spec", "rev", "state", "d mm"};
    if (wide) {
        columns.insert(columns.end(), {right, right});
        head.insert(head.end(), {"De mm", "L0 mm"});
    }
    for (std::size_t i = 0; i < loads; ++i) {
        columns.push_back(right);
        const Length at = sought.requirement ? (i == 0 ? sought.requirement->space.seated_height
                                                       : sought.requirement->space.full_travel_height)
                                             : sought.loads[i].at;
        head.push_back("N at " + shortest(in_mm(at)));
    }
    TextTable table(columns);
    table.add(head);
    for (const JudgedSpec& j : fitting) {
        const record::Spec& spec = j.revision->kept.spec;
        std::vector<std::string> row{j.shelf->address.text(), j.revision->index(), std::string(word(j.revision->state)),
                                     fixed(in_mm(spec.spring.wire_diameter), 2)};
        if (wide) {
            row.push_back(fixed(in_mm(spec.spring.mean_diameter + spec.spring.wire_diameter), 2));
            row.push_back(fixed(in_mm(spec.spring.free_length), 1));
        }
        if (loads > 0) row.push_back(fixed(in_newton(j.found.evaluation->seated->load), 2));
        if (loads > 1) row.push_back(fixed(in_newton(j.found.evaluation->full_travel->load), 2));
        table.add(row);
    }
    return table.text(2);
}

/// The springs that miss by least, with what they miss by.
std::string nearest_text(std::vector<JudgedSpec> missing, int width) {
    std::stable_sort(missing.begin(), missing.end(), [](const JudgedSpec& a, const JudgedSpec& b) {
        if (a.found.misses.size() != b.found.misses.size()) return a.found.misses.size() < b.found.misses.size();
        return a.found.shortfall < b.found.shortfall;
    });
    if (missing.size() > kNearest) missing.erase(missing.begin() + kNearest, missing.end());
    std::string text = "The nearest miss it by\n";
    for (const JudgedSpec& j : missing) {
        text += "  " + j.shelf->address.text() + ", revision " + j.revision->index() + '\n';
        for (const std::string& miss : j.found.misses) text += wrapped("    - ", miss, width, 6);
        for (const std::string& remark : j.found.remarks) text += wrapped("    - ", remark, width, 6);
    }
    return text;
}

std::string show_command(const SpecsOptions& options, const JudgedSpec& found) {
    const bool is_latest = found.revision == found.shelf->latest();
    return specs_command(options, "show")
        .name(found.shelf->address.text())
        .option("--revision", is_latest ? "" : found.revision->index())
        .text();
}

std::string size_command(const SpecsOptions& options) {
    TypedCommand size("size");
    if (options.find.requirement.empty())
        size.open("REQUIREMENT");
    else
        size.name(options.find.requirement);
    return size.option("--wire-file", options.wire_file).text();
}

std::string result_text(const std::vector<JudgedSpec>& all, const std::vector<JudgedSpec>& fitting,
                        const record::Sought& sought, const SpecsOptions& options) {
    std::string wanted = sought_words(options.find);
    if (wanted.starts_with("in ") || wanted.starts_with("over ")) wanted.front() -= 'a' - 'A';
    std::string text = wrapped("",
                               (wanted.empty() ? "" : wanted + ": ") + grouped(fitting.size()) + " of " +
                                   grouped(all.size()) + " kept springs serve.",
                               options.width, 2);
    if (!fitting.empty()) {
        text += table_text(fitting, sought, options.width);
        return text + wrapped("Next: ", show_command(options, fitting.front()), options.width, 2);
    }
    if (!all.empty()) text += nearest_text(all, options.width);
    return text + wrapped("Next: ", size_command(options) + " finds one to be wound.", options.width, 2);
}

nlohmann::ordered_json judged_json(const std::vector<JudgedSpec>& all) {
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (const JudgedSpec& j : all) {
        nlohmann::ordered_json json = revision_json(*j.shelf, *j.revision);
        json["fits"] = j.found.fits;
        json["misses"] = j.found.misses;
        json["remarks"] = j.found.remarks;
        array.push_back(std::move(json));
    }
    return array;
}

}  // namespace

int run_specs_find(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto sought = read_sought(options.find, references.wires);
    if (!sought) return refuse(sought.error(), err);
    const auto state = state_of(options.filter);
    if (!state) return refuse(state.error(), err);
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return refuse(library.error(), err);
    Diagnostics said;
    const auto shelves = load_shelves(*library, options, references.wires, true, said);
    if (!shelves) return refuse(shelves.error(), err);
    const std::vector<JudgedSpec> all =
        judge_all(*shelves, *sought, options.filter, *state, references, options.threads);
    std::vector<JudgedSpec> fitting;
    for (const JudgedSpec& j : all)
        if (j.found.fits) fitting.push_back(j);
    if (options.json)
        out << judged_json(all).dump(2) << '\n';
    else
        out << result_text(all, fitting, *sought, options);
    out << std::flush;
    complain(said, err);
    if (has_error(said)) return kBadInput;
    return fitting.empty() ? kNothingFits : kDone;
}

}  // namespace seatload::cli
