// SPDX-License-Identifier: MIT
#include <algorithm>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/record/drift.hpp>
#include <seatload/sizing/workers.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_shelves.hpp>

namespace seatload::cli {
namespace {

using record::State;

/// What is wrong with a revision, or worth knowing.
struct Found {
    std::string spec;  ///< "ottermere-m14/ahead-latch-plunger, revision A, approved"
    std::string file;
    std::vector<std::string> faults;   ///< the check failed
    std::vector<std::string> remarks;  ///< it did not
    bool was_approved = false;         ///< and what was worked out then is held against now
};

std::string shown_change(const record::Moved& m) {
    return std::string(m.kind->name) + ": " + record::shown(*m.kind, m.before) + " when approved, " +
           record::shown(*m.kind, m.now) + " now";
}

/// Whether the file holds the bytes that were frozen, and below them nothing but what this program wrote.
void look_at_bytes(const record::KeptSpec& kept, Found& found) {
    if (kept.is_altered())
        found.faults.push_back("it was changed after it was frozen: its contents have SHA-256 " +
                               kept.sha256.substr(0, 16) + "..., and had " +
                               record::frozen_sha256(kept.history)->substr(0, 16) + "... on " +
                               record::last_change(kept.history).date);
    if (kept.has_foreign_states)
        found.faults.emplace_back(
            "below its line of ==== stands what `seatload specs` did not write, a remark or a change by hand: take it "
            "out; a remark is kept with `seatload specs evidence --note`");
}

/// Whether a revision lies where its contents say.
void look_at_place(const record::Shelf& shelf, const record::KeptRevision& revision, Found& found) {
    const record::KeptSpec& kept = revision.kept;
    if (record::address_of(kept.spec.identity) != shelf.address)
        found.faults.push_back("its engine and position, " + kept.spec.identity.engine + " and " +
                               kept.spec.identity.position + ", belong at " +
                               record::address_of(kept.spec.identity).text());
    const std::string earlier = "/revision-" + revision.index() + ".toml";
    if (&revision != shelf.latest() && !revision.file.ends_with(earlier))
        found.faults.push_back("its revision is " + revision.index() + ", which its file name does not say");
}

/// Whether the evidence is what it was.
void look_at_evidence(const io::SpecLibrary& library, const record::Shelf& shelf, const record::KeptSpec& kept,
                      Found& found) {
    for (const record::Step& step : kept.history)
        for (const auto* files : {&step.lots, &step.files})
            for (const record::KeptFile& file : *files) {
                const auto bytes = library.beside(shelf.address, file.name);
                if (!bytes)
                    found.faults.push_back("evidence " + file.name + " is gone or cannot be read");
                else if (sha256_hex(*bytes) != file.sha256)
                    found.faults.push_back("evidence " + file.name + " was changed since it was kept");
            }
}

/// Whether the spring still comes out as it did.
void look_at_results(const record::KeptRevision& revision, const References& references, Found& found) {
    if (revision.state == State::superseded || revision.state == State::withdrawn) return;
    const record::Step* const approval = record::approval_of(revision.kept.history);
    found.was_approved = approval != nullptr && approval->results;
    const wire::Grade& grade = grade_of(revision.kept.spec, references.wires);
    const record::Drift drift = record::drift_of(revision.kept, grade, references.tolerances, program_name());
    const auto add = [](std::vector<std::string>& to, const std::vector<std::string>& from, const std::string& before) {
        for (const std::string& words : from) to.push_back(before + words);
    };
    for (const record::Moved& m : drift.moved) found.faults.push_back(shown_change(m));
    add(found.faults, drift.causes, "why: ");
    // A draft may be wrong as long as it is one.
    auto& broken = revision.state == State::draft ? found.remarks : found.faults;
    add(broken, drift.broken, "it breaks a limit of its own: ");
    add(broken, drift.unusable, "it cannot be worked out: ");
}

std::vector<Found> look_at(const io::SpecLibrary& library, const record::Shelf& shelf, const References& references) {
    std::vector<Found> all;
    for (const record::KeptRevision& revision : shelf.revisions) {
        Found found;
        found.spec = shelf.address.text() + ", revision " + revision.index() + ", " + std::string(word(revision.state));
        found.file = revision.file;
        look_at_bytes(revision.kept, found);
        // What follows of an edit is no news beside it.
        if (!revision.kept.is_altered()) {
            look_at_place(shelf, revision, found);
            look_at_results(revision, references, found);
        }
        look_at_evidence(library, shelf, revision.kept, found);
        all.push_back(std::move(found));
    }
    return all;
}

/// Everything found, in the order of the shelves whatever the number of threads.
std::vector<Found> look_at_all(const io::SpecLibrary& library, const std::vector<record::Shelf>& shelves,
                               const References& references, unsigned threads) {
    std::vector<std::vector<Found>> parts(shelves.size());
    sizing::share_out(shelves.size(), sizing::worker_count(threads, shelves.size()),
                      [&](std::size_t i, std::size_t) { parts[i] = look_at(library, shelves[i], references); });
    std::vector<Found> all;
    for (std::vector<Found>& part : parts)
        for (Found& found : part) all.push_back(std::move(found));
    return all;
}

std::string found_text(const Found& found, int width) {
    if (found.faults.empty() && found.remarks.empty()) return {};
    std::string text = wrapped("", found.spec + (found.faults.empty() ? ": worth knowing" : ": FAILS"), width, 2);
    for (const std::string& fault : found.faults) text += wrapped("  - ", fault + ".", width, 4);
    for (const std::string& remark : found.remarks) text += wrapped("  - ", remark + ".", width, 4);
    return text;
}

std::string looked_at(const std::vector<Found>& all, std::size_t failed) {
    const std::size_t count = all.size();
    const bool is_recomputed = std::any_of(all.begin(), all.end(), [](const Found& f) { return f.was_approved; });
    if (count == 0) return "Nothing could be looked at.";
    return grouped(count) + (count == 1 ? " revision" : " revisions") + " looked at: " +
           (failed != 0     ? grouped(failed) + " failed."
            : is_recomputed ? "all as they were, and worked out as when they were approved."
                            : "all as they were; none was approved with results to compare with.");
}

/// What may be done where all is as it was.
std::string next_when_sound(const SpecsOptions& options) {
    TypedCommand order = specs_command(options, "order");
    if (options.specs.size() == 1)
        order.name(options.specs.front());
    else
        order.open("SPEC");
    return wrapped("Next: ",
                   order.open("--quantity PIECES").text() + " writes the papers of a spec anew; " +
                       specs_command(options, "list").text() + " shows which are approved.",
                   options.width, 2);
}

std::string summary(const SpecsOptions& options, const std::vector<Found>& all, std::size_t failed,
                    std::size_t unread) {
    const int width = options.width;
    if (all.empty() && unread == 0)
        return "Nothing to verify.\n" +
               wrapped("Next: ",
                       specs_command(options, "add").open("FILE --by NAME --date DATE").text() +
                           " takes a spec in, as `seatload size` writes it.",
                       width, 2);
    std::string words = looked_at(all, failed);
    if (unread != 0) words += " " + grouped(unread) + (unread == 1 ? " file" : " files") + " could not be read.";
    std::string text = wrapped("", words, width, 2);
    if (failed != 0 || unread != 0)
        text += wrapped("Next: ",
                        "a changed or torn file is put back as it was, or its change brought in with " +
                            specs_command(options, "revise").text() +
                            "; where results moved, look whether the spring still serves before it is ordered again.",
                        width, 2);
    else
        text += next_when_sound(options);
    return text;
}

nlohmann::ordered_json found_json(const std::vector<Found>& all) {
    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (const Found& found : all)
        array.push_back({{"spec", found.spec},
                         {"file", found.file},
                         {"passed", found.faults.empty()},
                         {"faults", found.faults},
                         {"remarks", found.remarks}});
    return array;
}

}  // namespace

int run_specs_verify(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return refuse(library.error(), err);
    Diagnostics said;
    const auto shelves = load_shelves(*library, options, references.wires, true, said);
    if (!shelves) return refuse(shelves.error(), err);
    const std::vector<Found> all = look_at_all(*library, *shelves, references, options.threads);
    std::size_t failed = 0, unread = 0;
    for (const Found& found : all) failed += found.faults.empty() ? 0 : 1;
    for (const record::Shelf& shelf : *shelves) unread += has_error(shelf.wrong) ? 1 : 0;
    if (options.json) {
        out << found_json(all).dump(2) << '\n';
    } else {
        for (const Found& found : all) out << found_text(found, options.width);
        out << summary(options, all, failed, unread);
    }
    out << std::flush;
    complain(said, err);
    if (has_error(said)) return kBadInput;
    return failed == 0 ? kDone : kNothingFits;
}

}  // namespace seatload::cli
