// SPDX-License-Identifier: MIT
#include <map>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_json.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/text_table.hpp>

namespace seatload::cli {
namespace {

using record::State;

constexpr int kWideList = 100;  // columns, for numbers and dates too

/// A line of the list.
struct Listed {
    const record::Shelf* shelf;
    const record::KeptRevision* revision;
};

std::vector<Listed> listed(const std::vector<record::Shelf>& shelves, const SpecsFilter& filter,
                           const std::optional<State>& state) {
    std::vector<Listed> out;
    for (const record::Shelf& shelf : shelves)
        for (const record::KeptRevision& revision : shelf.revisions)
            if (is_meant(shelf, revision, filter, state)) out.push_back({&shelf, &revision});
    return out;
}

std::vector<std::string> cells(const Listed& line, bool wide) {
    const record::Spec& spec = line.revision->kept.spec;
    std::vector<std::string> cells{line.shelf->address.position};
    if (wide) cells.push_back(spec.identity.number);
    cells.push_back(line.revision->index());
    cells.push_back(std::string(word(line.revision->state)) + (line.revision->kept.is_altered() ? " !" : ""));
    if (wide) cells.push_back(record::last_change(line.revision->kept.history).date);
    cells.push_back(fixed(in_mm(spec.spring.wire_diameter), 2));
    if (wide) cells.push_back(fixed(in_mm(spec.spring.mean_diameter + spec.spring.wire_diameter), 2));
    cells.push_back(fixed(in_mm(spec.spring.free_length), 1));
    cells.push_back(fixed(in_newton(spec.seated.nominal), 2));
    cells.push_back(fixed(in_newton(spec.full_travel.nominal), 2));
    return cells;
}

TextTable empty_table(bool wide) {
    using enum TextTable::Align;
    TextTable table(wide ? std::vector{left, left, left, left, left, right, right, right, right, right}
                         : std::vector{left, left, left, right, right, right, right});
    if (wide) {
        table.add({"position", "number", "rev", "state", "since", "d mm", "De mm", "L0 mm", "F1 N", "F2 N"});
    } else {
        table.add({"position", "rev", "state", "d mm", "L0 mm", "F1 N", "F2 N"});
    }
    return table;
}

/// The lines, one table for all engines so that their columns stand below each other.
std::string table_text(const std::vector<Listed>& lines, bool wide) {
    TextTable table = empty_table(wide);
    for (const Listed& line : lines) table.add(cells(line, wide));
    const std::string text = table.text(2);
    const auto rows = split(text, '\n');
    std::string out;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::string& engine = lines[i].shelf->address.engine;
        if (i == 0) out += std::string(rows[0]) + '\n';
        if (i == 0 || lines[i - 1].shelf->address.engine != engine) out += engine + '\n';
        out += std::string(rows[i + 1]) + '\n';
    }
    return out;
}

/// How many there are of each state, and what may be done with the first of those that wait for something.
std::string summary(const std::vector<Listed>& lines, const SpecsOptions& options) {
    const int width = options.width;
    std::map<State, std::size_t> counts;
    std::map<State, const Listed*> firsts;
    bool altered = false;
    for (const Listed& line : lines) {
        ++counts[line.revision->state];
        firsts.try_emplace(line.revision->state, &line);
        altered = altered || line.revision->kept.is_altered();
    }
    std::vector<std::string> parts;
    for (const auto& [state, count] : counts) parts.push_back(std::to_string(count) + ' ' + std::string(word(state)));
    std::string out = "\n" + wrapped("", grouped(lines.size()) + " listed: " + join(parts, ", ") + ".", width, 2);
    if (altered)
        out += wrapped("! ", "changed since it was frozen: " + specs_command(options, "verify").text() + " tells more.",
                       width, 2);
    for (const State state : {State::draft, State::trial})
        if (const auto first = firsts.find(state); first != firsts.end())
            out += wrapped("Next for a " + std::string(word(state)) + ": ",
                           next_command(options, *first->second->shelf, *first->second->revision), width, 2);
    return out;
}

std::string nothing_listed(const SpecsOptions& options) {
    const bool filtered =
        !options.filter.engine.empty() || !options.filter.position.empty() || !options.filter.state.empty();
    return wrapped("",
                   filtered ? "No spec in " + options.library +
                                  " is such a one; without --engine, --position and "
                                  "--state all are listed."
                            : "No spec is kept in " + options.library + " yet; " +
                                  specs_command(options, "add").open("FILE --by NAME --date DATE").text() +
                                  " takes one in, as `seatload size` writes it.",
                   options.width, 2);
}

}  // namespace

int run_specs_list(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto state = state_of(options.filter);
    if (!state) return refuse(state.error(), err);
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return refuse(library.error(), err);
    Diagnostics said;
    const auto shelves = load_shelves(*library, options, references.wires, true, said);
    if (!shelves) return refuse(shelves.error(), err);
    const std::vector<Listed> lines = listed(*shelves, options.filter, *state);
    if (options.json) {
        nlohmann::ordered_json array = nlohmann::ordered_json::array();
        for (const Listed& line : lines) array.push_back(revision_json(*line.shelf, *line.revision));
        out << array.dump(2) << '\n';
    } else if (lines.empty()) {
        out << nothing_listed(options);
    } else {
        out << table_text(lines, options.width >= kWideList) << summary(lines, options);
    }
    out << std::flush;
    complain(said, err);
    return has_error(said) ? kBadInput : kDone;
}

}  // namespace seatload::cli
