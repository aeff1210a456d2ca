// SPDX-License-Identifier: MIT
#include <cli/specs_evidence.hpp>

#include <algorithm>
#include <filesystem>

#include <seatload/core/append.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/facts.hpp>

#include <cli/specs_shelves.hpp>

namespace seatload::cli {
namespace {

std::vector<EvidenceFile> read_all(const std::vector<std::string>& paths, Diagnostics& wrong) {
    std::vector<EvidenceFile> files;
    for (const std::string& path : paths) {
        auto bytes = read_text_file(path);
        if (bytes)
            files.push_back({path, std::move(bytes).value()});
        else
            append(wrong, bytes.error());
    }
    return files;
}

/// The record with these bytes among those before one, or null.
const EvidenceFile* same_before(const std::vector<EvidenceFile>& lots, std::size_t at) {
    const auto end = lots.begin() + static_cast<long>(at);
    const auto same =
        std::find_if(lots.begin(), end, [&](const EvidenceFile& each) { return each.bytes == lots[at].bytes; });
    return same == end ? nullptr : &*same;
}

/// Complains of one lot given as two.
Diagnostics given_twice(const std::vector<EvidenceFile>& lots) {
    Diagnostics wrong;
    for (std::size_t i = 0; i < lots.size(); ++i)
        if (const EvidenceFile* const same = same_before(lots, i))
            wrong.push_back(error_in(lots[i].path, "lot-twice"_id, "this lot is given twice, as " + same->path + " too",
                                     "name it once; a further lot has a record of its own"));
    return wrong;
}

Diagnostics wrong_words(const StepOptions& o) {
    for (const std::string* words : {&o.by, &o.reason, &o.without_inspection, &o.note})
        if (first_invalid_utf8(*words))
            return {error("not-utf8"_id, "the words given are not UTF-8", "write them in UTF-8")};
    return {};
}

/// Lays files beside a spec and returns them by their names there.
Result<std::vector<record::KeptFile>> kept(const io::SpecLibrary& library, const record::Address& address,
                                           const std::vector<EvidenceFile>& files) {
    std::vector<record::KeptFile> out;
    for (const EvidenceFile& file : files) {
        auto name = library.put_beside(address, file.path, file.bytes);
        if (!name) return Diagnostics(name.error());
        out.push_back({std::move(name).value(), sha256_hex(file.bytes)});
    }
    return out;
}

/// Whether the record of a lot that lies with a spec accepts it without a condition.
bool is_accepted_whole(const io::SpecLibrary& library, const record::Address& address, const record::KeptFile& file) {
    const auto bytes = library.beside(address, file.name);
    const auto lot = bytes ? io::read_lot(*bytes, file.name) : Result<record::Lot>(Diagnostics{});
    return lot && lot->verdict == inspection::Verdict::accept && lot->conditions.empty();
}

}  // namespace

Result<Evidence> read_evidence(const StepOptions& options) {
    Evidence evidence;
    Diagnostics wrong;
    evidence.lots = read_all(options.lots, wrong);
    evidence.files = read_all(options.files, wrong);
    for (const EvidenceFile& lot : evidence.lots) append(wrong, io::read_lot(lot.bytes, lot.path).error());
    append(wrong, given_twice(evidence.lots));
    if (has_error(wrong)) return wrong;
    return evidence;
}

Diagnostics lots_kept_before(const SpecsOptions& options, const record::Address& address,
                             const record::History& history, const Evidence& evidence) {
    Diagnostics wrong;
    for (const EvidenceFile& lot : evidence.lots) {
        const std::string sum = sha256_hex(lot.bytes);
        for (const record::Step& step : history)
            for (const record::KeptFile& kept : step.lots)
                if (kept.sha256 == sum)
                    wrong.push_back(
                        error_in(lot.path, "lot-twice"_id,
                                 "this lot is kept already, since " + step.date + ": " +
                                     (std::filesystem::path(options.library) / address.text() / kept.name).string(),
                                 "leave it out, it counts as it lies there; a further lot has a record of its own"));
    }
    return wrong;
}

Result<record::Step> told_step(const StepOptions& o, record::Step::Kind kind, const record::History& history) {
    if (Diagnostics wrong = wrong_words(o); !wrong.empty()) return wrong;
    Diagnostics wrong;
    if (trim(o.by).empty())
        wrong.push_back(error("not-said-who"_id, "it is not said who answers for it", "name him with --by NAME"));
    if (o.date.empty())
        wrong.push_back(error("not-said-when"_id, "it is not said when this is",
                              "say it with --date 2026-11-25; the clock is not asked"));
    const auto date = io::Form<io::DateText>::read(io::Node{{}, o.date});
    if (!o.date.empty() && !date.value)
        wrong.push_back(error(date.problem.id, "--date: " + date.problem.message, date.problem.hint));
    if (date.value && !history.empty() && date.value->iso < history.back().date)
        wrong.push_back(
            error("date-out-of-order"_id,
                  "--date: " + date.value->iso + " is before what was written last, on " + history.back().date,
                  "what happens to a spec is written in the order it happens; is the year right?"));
    if (!wrong.empty()) return wrong;
    record::Step step;
    step.kind = kind;
    step.date = date.value->iso;
    step.by = std::string(trim(o.by));
    step.reason = o.reason.empty() ? o.without_inspection : o.reason;
    step.note = o.note;
    step.trial_hours = o.hours;
    return step;
}

Diagnostics keep_evidence(const io::SpecLibrary& library, const record::Address& address, const Evidence& evidence,
                          record::Step& step) {
    auto lots = kept(library, address, evidence.lots);
    if (!lots) return lots.error();
    auto files = kept(library, address, evidence.files);
    if (!files) return files.error();
    step.lots = std::move(lots).value();
    step.files = std::move(files).value();
    return {};
}

Result<std::vector<record::LotEvidence>> all_lots(const io::SpecLibrary& library, const SpecsOptions& options,
                                                  const record::Address& address, const record::History& history,
                                                  const Evidence& evidence) {
    std::vector<record::LotEvidence> lots;
    Diagnostics wrong;
    const auto take = [&](const std::string& file, std::string_view bytes, std::size_t step) {
        auto lot = io::read_lot(bytes, file);
        if (lot)
            lots.push_back({file, std::move(lot).value(), step});
        else
            append(wrong, lot.error());
    };
    for (const EvidenceFile& lot : evidence.lots) take(lot.path, lot.bytes, history.size());
    for (std::size_t step = 0; step < history.size(); ++step)
        for (const record::KeptFile& file : history[step].lots) {
            const auto bytes = library.beside(address, file.name);
            if (!bytes)
                append(wrong, bytes.error());
            else if (sha256_hex(*bytes) != file.sha256)
                wrong.push_back(error_in(address.text() + '/' + file.name, "changed-evidence"_id,
                                         "this evidence was changed since it was kept",
                                         "put back the file that was kept; " +
                                             specs_command(options, "verify").name(address.text()).text() +
                                             " tells more"));
            else
                take(address.text() + '/' + file.name, *bytes, step);
        }
    if (has_error(wrong)) return wrong;
    return lots;
}

Diagnostics foreign_line(const record::KeptRevision& revision, Severity severity) {
    if (!revision.kept.has_foreign_states) return {};
    const auto text = read_text_file(revision.file);
    if (!text) return text.error();
    const std::string written = io::write_kept_spec(revision.kept.content, revision.kept.history);
    if (trim(*text) == trim(written)) return {};
    const std::vector<std::string_view> lines = split(*text, '\n'), ours = split(written, '\n');
    std::size_t at = 0;
    while (at + 1 < lines.size() && at < ours.size() && lines[at] == ours[at]) ++at;
    Diagnostic d = complaint(severity, "foreign-line"_id,
                             "below its line of ==== stands what `seatload specs` did not write, and writing the file "
                             "anew would lose it",
                             "take it out, or put back what stood there; a remark is kept with `seatload specs "
                             "evidence --note WORDS`");
    d.place = {revision.file, static_cast<unsigned>(at + 1), 1};
    d.source_line = lines[at];
    return {d};
}

Diagnostics not_to_be_drawn(const record::Spec& spec, const std::string& file, const References& references) {
    const wire::Grade& grade = grade_of(spec, references.wires);
    const auto facts = sheet::facts(record::with_tips_ordered(spec, grade, references.tolerances), grade,
                                    references.tolerances, references.paper);
    return facts ? Diagnostics{} : placed(facts.error(), file);
}

Diagnostics open_conditions(const OnShelf& on, const io::SpecLibrary& library) {
    const record::KeptRevision& revision = on.revision();
    const record::Step* approval = record::approval_of(revision.kept.history);
    if (approval == nullptr || approval->conditions.empty() || revision.state != record::State::approved) return {};
    for (const record::Step& step : revision.kept.history)
        for (const record::KeptFile& file : step.lots)
            if (is_accepted_whole(library, on.shelf.address, file)) return {};
    return placed({complaint(Severity::warning, "conditional-approval"_id,
                             "this spec was approved on condition that " + join(approval->conditions, " and ") +
                                 ", and no lot kept since shows it",
                             "have it measured on five pieces of the lot to come, and keep the record of that lot")},
                  revision.file);
}

}  // namespace seatload::cli
