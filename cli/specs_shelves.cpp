// SPDX-License-Identifier: MIT
#include <cli/specs_shelves.hpp>

#include <algorithm>
#include <array>

#include <seatload/core/append.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/lean_told.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/tamper_mark.hpp>

namespace seatload::cli {
namespace {

using record::Address;
using record::State;

constexpr std::array kStates{State::draft, State::trial, State::approved, State::superseded, State::withdrawn};
constexpr std::size_t kMostNamed = 5;

bool has_part(const std::string& text, const std::string& part) {
    return part.empty() || lower(text).find(lower(part)) != std::string::npos;
}

/// "engine/position" out of what may be a path of the library, with its ending.
std::string bare(const io::SpecLibrary& library, std::string word) {
    const std::string folder = library.path().lexically_normal().string();
    const std::string path = std::filesystem::path(word).lexically_normal().string();
    const std::string before = folder.ends_with('/') ? folder : folder + '/';
    if (path.starts_with(before)) word = path.substr(before.size());
    if (word.ends_with(".toml")) word.resize(word.size() - 5);
    return word;
}

/// A kept spec and its part number.
struct Numbered {
    Address address;
    std::string number;
};

std::vector<Numbered> part_numbers(const io::SpecLibrary& library, const std::vector<Address>& all,
                                   const wire::Catalogue& wires) {
    std::vector<Numbered> numbers;
    for (const record::Shelf& shelf : library.shelves(all, wires, false, 0))
        if (shelf.latest() != nullptr) numbers.push_back({shelf.address, shelf.latest()->kept.spec.identity.number});
    return numbers;
}

Diagnostic not_kept(const io::SpecLibrary& library, const SpecsOptions& options, const std::string& word,
                    const std::vector<Address>& all, const std::vector<Numbered>& numbers) {
    std::vector<std::string> names;
    for (const Address& address : all) names.insert(names.end(), {address.text(), address.position});
    for (const Numbered& each : numbers) names.push_back(each.number);
    const std::string meant = did_you_mean(word, names);
    return error_in(library.path().string(), "not-in-library"_id, "no spec \"" + word + "\" is kept here",
                    meant.empty() ? specs_command(options, "list").text() + " shows those that are" : meant);
}

Diagnostic not_one(const io::SpecLibrary& library, const std::string& word, const std::vector<Address>& found) {
    std::vector<std::string> names;
    for (const Address& address : found) names.push_back(address.text());
    if (names.size() > kMostNamed) names.resize(kMostNamed);
    return error_in(library.path().string(), "ambiguous-name"_id, "more than one spec is called \"" + word + "\"",
                    "name it in full: " + join(names, ", "));
}

/// Whether the record of an accepted lot lies with the spec as the last one, so that an approval need not be given one.
bool keeps_a_good_lot(const SpecsOptions& options, const Address& address, const record::History& history) {
    bool is_good = false;
    for (const record::Step& step : history)
        for (const record::KeptFile& file : step.lots) {
            const auto path = std::filesystem::path(options.library) / address.text() / file.name;
            const auto bytes = read_text_file(path);
            const auto lot = bytes ? io::read_lot(*bytes, path.string()) : Result<record::Lot>(Diagnostics{});
            is_good = lot && lot->verdict == inspection::Verdict::accept;
        }
    return is_good;
}

}  // namespace

std::string program_name() { return "seatload " SEATLOAD_VERSION; }

TypedCommand specs_command(const SpecsOptions& options, const std::string& action) {
    TypedCommand command("specs");
    if (options.library != SpecsOptions().library) command.option("--library", options.library);
    return command.option("--wire-file", options.wire_file).open(action);
}

Result<Address> resolve(const io::SpecLibrary& library, const SpecsOptions& options, const wire::Catalogue& wires,
                        const std::string& word) {
    const auto all = library.addresses();
    if (!all) return Diagnostics(all.error());
    const std::string name = bare(library, word);
    std::vector<Address> found;
    for (const Address& address : *all)
        if (address.text() == name || address.position == name) found.push_back(address);
    if (found.empty()) {
        const std::vector<Numbered> numbers = part_numbers(library, *all, wires);
        for (const Numbered& each : numbers)
            if (lower(each.number) == lower(word)) found.push_back(each.address);
        if (found.empty()) return not_kept(library, options, word, *all, numbers);
    }
    if (found.size() == 1) return found.front();
    return not_one(library, word, found);
}

Result<OnShelf> find_on_shelf(const io::SpecLibrary& library, const SpecsOptions& options, const wire::Catalogue& wires,
                              const std::string& word, const std::string& index) {
    const auto address = resolve(library, options, wires, word);
    if (!address) return Diagnostics(address.error());
    OnShelf found{library.shelf(*address, wires), 0};
    if (has_error(found.shelf.wrong)) return found.shelf.wrong;
    const auto& revisions = found.shelf.revisions;
    SEATLOAD_ASSERT(!revisions.empty());
    found.at = revisions.size() - 1;
    if (index.empty()) return found;
    std::vector<std::string> known;
    for (std::size_t i = 0; i < revisions.size(); ++i) {
        known.push_back(revisions[i].index());
        if (revisions[i].index() == index) found.at = i;
    }
    if (revisions[found.at].index() != index)
        return error_in(address->text(), "not-in-library"_id, "no revision \"" + index + "\" is kept",
                        "kept of it: " + join(known, ", "));
    return found;
}

const wire::Grade& grade_of(const record::Spec& spec, const wire::Catalogue& wires) {
    return spec.own_grade ? *spec.own_grade : *wires.find(spec.wire_grade);
}

record::Spec spec_for_papers(const record::KeptSpec& kept, const References& references) {
    record::Spec spec = kept.spec;
    if (const record::Step* approval = record::approval_of(kept.history)) spec.identity.approver = approval->by;
    spec.alternative.clear();
    return record::with_tips_ordered(spec, grade_of(kept.spec, references.wires), references.tolerances);
}

std::string mark_on_papers(const record::KeptSpec& kept, const References& references) {
    return sheet::tamper_mark(io::write_spec(record::makers_copy(spec_for_papers(kept, references))));
}

Diagnostics doubts_on_lean(const record::KeptRevision& revision, const References& references) {
    const record::Spec& spec = revision.kept.spec;
    const record::LeanTold told = record::lean_told(spec, grade_of(spec, references.wires), references.tolerances);
    if (!told.may_rub) return {};
    return placed({complaint(Severity::warning, "may-rub"_id,
                             "this spring may lean further than there is room, and rub", told.words)},
                  revision.file);
}

Result<std::optional<State>> state_of(const SpecsFilter& filter) {
    if (filter.state.empty()) return std::optional<State>{};
    std::vector<std::string> words;
    for (const State state : kStates) {
        if (word(state) == filter.state) return std::optional<State>{state};
        words.emplace_back(word(state));
    }
    const std::string meant = did_you_mean(filter.state, words);
    return error("not-a-choice"_id, "--state: no state is called \"" + filter.state + '"',
                 meant.empty() ? "there are " + join(words, ", ") : meant);
}

bool is_meant(const record::Shelf& shelf, const SpecsFilter& filter) {
    const record::KeptRevision* latest = shelf.latest();
    const std::string engine = latest != nullptr ? latest->kept.spec.identity.engine : "";
    const std::string position = latest != nullptr ? latest->kept.spec.identity.position : "";
    return (has_part(shelf.address.engine, filter.engine) ||
            (!filter.engine.empty() && has_part(engine, filter.engine))) &&
           (has_part(shelf.address.position, filter.position) || has_part(position, filter.position));
}

bool is_meant(const record::Shelf& shelf, const record::KeptRevision& revision, const SpecsFilter& filter,
              const std::optional<State>& state) {
    if (state) return revision.state == *state;
    if (filter.all) return true;
    return &revision == shelf.latest() || &revision == shelf.in_force();
}

Result<std::vector<record::Shelf>> load_shelves(const io::SpecLibrary& library, const SpecsOptions& options,
                                                const wire::Catalogue& wires, bool earlier, Diagnostics& said) {
    std::vector<Address> meant;
    if (options.specs.empty()) {
        const auto all = library.addresses();
        if (!all) return Diagnostics(all.error());
        append(said, all.error());
        meant = *all;
    }
    for (const std::string& word : options.specs) {
        const auto address = resolve(library, options, wires, word);
        if (!address) return Diagnostics(address.error());
        meant.push_back(*address);
    }
    std::vector<record::Shelf> shelves = library.shelves(meant, wires, earlier, options.threads);
    for (const record::Shelf& shelf : shelves) said.insert(said.end(), shelf.wrong.begin(), shelf.wrong.end());
    std::erase_if(shelves, [&](const record::Shelf& shelf) { return !is_meant(shelf, options.filter); });
    return shelves;
}

std::string next_command(const SpecsOptions& options, const record::Shelf& shelf,
                         const record::KeptRevision& revision) {
    const std::string address = shelf.address.text();
    switch (revision.state) {
        case State::draft:
            return specs_command(options, "trial").name(address).open("--by NAME --date DATE").text();
        case State::trial:
            return specs_command(options, "approve")
                .name(address)
                .open(keeps_a_good_lot(options, shelf.address, revision.kept.history)
                          ? "--by NAME --date DATE"
                          : "--lot FILE --by NAME --date DATE")
                .text();
        case State::approved:
            return order_command(options, shelf, revision);
        case State::withdrawn:
            return specs_command(options, "revise")
                .name(address)
                .open("--with FILE --reason WORDS --by NAME --date DATE")
                .text();
        case State::superseded:
            break;
    }
    return {};
}

std::string order_command(const SpecsOptions& options, const record::Shelf& shelf,
                          const record::KeptRevision& revision) {
    const record::KeptRevision* usual = shelf.in_force() != nullptr ? shelf.in_force() : shelf.latest();
    return specs_command(options, "order")
        .name(shelf.address.text())
        .option("--revision", usual == &revision ? "" : revision.index())
        .open("--quantity PIECES")
        .text();
}

}  // namespace seatload::cli
