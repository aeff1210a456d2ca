// SPDX-License-Identifier: MIT
#include <cli/kept_place.hpp>

#include <filesystem>

#include <seatload/core/append.hpp>
#include <seatload/core/file.hpp>
#include <seatload/io/kept_spec_file.hpp>

#include <cli/specs_evidence.hpp>

namespace seatload::cli {
namespace {

using record::State;

/// The library a file would lie in: as a revision last made, two folders down, or as an earlier one, three.
std::string library_above(const std::string& path, const char* up) {
    std::string folder = (std::filesystem::path(path).parent_path() / up).lexically_normal().string();
    while (folder.size() > 1 && folder.back() == '/') folder.pop_back();
    return folder.empty() ? "." : folder;
}

bool is_same_file(const std::string& a, const std::string& b) {
    std::error_code missing;
    return std::filesystem::equivalent(a, b, missing);
}

std::optional<KeptPlace> place_in(const std::string& folder, const std::string& path, const record::Address& address,
                                  const std::string& wire_file, const References& references) {
    const auto library = io::SpecLibrary::open(folder, io::SpecLibrary::For::reading);
    if (!library || !library->has(address)) return std::nullopt;
    KeptPlace place;
    place.options.library = folder;
    place.options.wire_file = wire_file;
    place.on.shelf = library->shelf(address, references.wires);
    for (std::size_t i = 0; i < place.on.shelf.revisions.size(); ++i) {
        place.on.at = i;
        if (is_same_file(place.on.shelf.revisions[i].file, path)) return place;
    }
    return std::nullopt;
}

Diagnostic kept_doubt(const KeptPlace& place, DiagnosticId id, std::string message, std::string hint) {
    Diagnostic d = complaint(Severity::warning, id, std::move(message), std::move(hint));
    d.place.file = place.on.revision().file;
    return d;
}

/// The revision to be used in place of one that was superseded; none where the last approved one was withdrawn.
std::string in_place_of_it(const KeptPlace& place) {
    const record::KeptRevision* in_force = place.on.shelf.in_force();
    if (in_force != nullptr) return "revision " + in_force->index() + " is in force: " + in_force->file;
    return specs_command(place.options, "show").name(place.on.shelf.address.text()).text() +
           " tells what came after it";
}

}  // namespace

std::optional<KeptPlace> kept_place(const std::string& path, const std::string& wire_file,
                                    const References& references) {
    const auto text = read_text_file(path);
    if (!text || io::spec_content(*text).size() == text->size()) return std::nullopt;
    const auto kept = io::read_kept_spec(*text, path, references.wires);
    if (!kept) return std::nullopt;
    const record::Address address = record::address_of(kept->spec.identity);
    for (const char* up : {"..", "../.."})
        if (auto place = place_in(library_above(path, up), path, address, wire_file, references)) return place;
    return std::nullopt;
}

Diagnostics doubts_on_kept(const KeptPlace& place) {
    const record::KeptRevision& revision = place.on.revision();
    Diagnostics doubts;
    if (revision.kept.is_altered())
        doubts.push_back(kept_doubt(
            place, "changed-since-frozen"_id, "this spec was changed after it was frozen",
            specs_command(place.options, "verify").name(place.on.shelf.address.text()).text() + " tells more"));
    if (revision.state == State::withdrawn) {
        const record::Step& last = record::last_change(revision.kept.history);
        doubts.push_back(kept_doubt(place, "withdrawn"_id,
                                    "this spec was withdrawn on " + last.date + ": " + last.reason,
                                    specs_command(place.options, "find").text() + " looks for another"));
    }
    if (revision.state == State::superseded)
        doubts.push_back(kept_doubt(place, "superseded"_id, "this revision was superseded", in_place_of_it(place)));
    if (const auto library = io::SpecLibrary::open(place.options.library, io::SpecLibrary::For::reading))
        append(doubts, open_conditions(place.on, *library));
    return doubts;
}

Diagnostics doubts_on_kept(const std::vector<std::string>& paths, const std::string& wire_file,
                           const References& references) {
    Diagnostics doubts;
    for (const std::string& path : paths)
        if (const auto place = kept_place(path, wire_file, references)) append(doubts, doubts_on_kept(*place));
    return doubts;
}

std::string kept_next(const KeptPlace& place) {
    const record::KeptRevision& revision = place.on.revision();
    const std::string command = next_command(place.options, place.on.shelf, revision);
    const std::string is = "this is revision " + revision.index() + " of " + place.on.shelf.address.text() + ", ";
    switch (revision.state) {
        case State::draft:
            return is + "a draft that may still be changed; " + command + " freezes it, for springs to be tried.";
        case State::trial:
            return is + "on trial; " + order_command(place.options, place.on.shelf, revision) +
                   " writes the papers of springs to be tried, and once a lot was inspected, " + command +
                   " puts it in force.";
        case State::approved:
            return is + "approved; " + command + " writes the papers to order it with, its approver named on them.";
        case State::superseded:
            return is + "superseded; " + in_place_of_it(place) + '.';
        case State::withdrawn:
            break;
    }
    return is + "withdrawn; " + specs_command(place.options, "find").text() + " looks for another, " + command +
           " makes a draft to follow it.";
}

}  // namespace seatload::cli
