// SPDX-License-Identifier: MIT
#include <cmath>

#include <nlohmann/json.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/spring/ends.hpp>
#include <seatload/units/format.hpp>

#include <cli/specs_actions.hpp>
#include <cli/specs_json.hpp>
#include <cli/specs_shelves.hpp>
#include <cli/text_table.hpp>
#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

std::string load_words(const record::LoadAtLength& load) {
    return units::shown(load.nominal, 2) + " +" + fixed(in_newton(load.plus), 2) + " -" +
           fixed(in_newton(load.minus), 2) + " N at " + units::shown(load.length, 2);
}

std::string head(const OnShelf& on, const References& references) {
    const record::KeptRevision& revision = on.revision();
    const record::Spec& spec = revision.kept.spec;
    std::string text = on.shelf.address.text() + ", revision " + revision.index() + ": " +
                       std::string(word(revision.state)) + (&revision == on.shelf.in_force() ? ", in force" : "") +
                       '\n';
    using enum TextTable::Align;
    TextTable table({left, left});
    const auto row = [&](const std::string& name, const std::string& value) {
        if (!value.empty()) table.add({name, value});
    };
    row("engine, position", spec.identity.engine + ", " + spec.identity.position);
    row("number", spec.identity.number);
    row("wire", spec.wire_grade + ", d " + units::shown_wire(spec.spring.wire_diameter));
    row("spring", "D " + shortest(in_mm(spec.spring.mean_diameter)) + " mm, nt " + shortest(spec.spring.total_coils) +
                      ", L0 " + shortest(in_mm(spec.spring.free_length)) + " mm, " +
                      std::string(spring::word(spec.spring.ends)) + ", " + std::string(spring::word(spec.spring.hand)) +
                      " hand");
    row("seated", load_words(spec.seated));
    row("full travel", load_words(spec.full_travel));
    row("file", revision.file);
    row("SHA-256", revision.kept.sha256.substr(0, 32));
    row("", revision.kept.sha256.substr(32));
    if (revision.kept.is_altered() || revision.state == record::State::withdrawn) return text + table.text(2);
    const std::string mark = mark_on_papers(revision.kept, references);
    row("mark on sheet", mark.substr(0, mark.size() / 2));
    row("  and order", mark.substr(mark.size() / 2 + 1));
    return text + table.text(2);
}

std::string altered_words(const OnShelf& on, int width) {
    if (!on.revision().kept.is_altered()) return {};
    return "\n" + wrapped("CHANGED: ",
                          "what stands above is not what was frozen, which had SHA-256 " +
                              record::frozen_sha256(on.revision().kept.history)->substr(0, 16) +
                              "...; put the old file back, or bring the change in as a revision.",
                          width, 2);
}

/// "lot-1.toml (accept, 20 of 20 pieces inspected)", its conditions unless they were told; what cannot be read says so.
std::string lot_words(const io::SpecLibrary& library, const record::Address& address, const record::KeptFile& file,
                      const std::vector<std::string>& told) {
    const auto bytes = library.beside(address, file.name);
    const auto lot = bytes ? io::read_lot(*bytes, file.name) : Result<record::Lot>(Diagnostics{});
    if (!lot) return file.name + " (cannot be read)";
    return file.name + " (" + std::string(inspection::word(lot->verdict)) +
           (lot->conditions.empty() || lot->conditions == told
                ? ""
                : " on condition that " + join(lot->conditions, " and ")) +
           ", " + std::to_string(lot->inspected) + " of " + std::to_string(lot->pieces) + " pieces inspected)";
}

std::string step_words(const io::SpecLibrary& library, const record::Address& address, const record::Step& step) {
    std::vector<std::string> parts;
    if (!step.reason.empty())
        parts.push_back((step.kind == record::Step::Kind::approved ? "without an accepted lot: " : "") + step.reason);
    if (!step.conditions.empty()) parts.push_back("on condition that " + join(step.conditions, " and "));
    for (const record::KeptFile& lot : step.lots)
        parts.push_back("lot " + lot_words(library, address, lot, step.conditions));
    if (step.trial_hours) parts.push_back(significant(*step.trial_hours, 6) + " h in an engine");
    for (const record::KeptFile& file : step.files) parts.push_back("with " + file.name);
    if (!step.note.empty()) parts.push_back(step.note);
    return join(parts, "; ");
}

std::string history_text(const io::SpecLibrary& library, const OnShelf& on, int width) {
    std::string text = "\nWhat happened\n";
    for (const record::Step& step : on.revision().kept.history) {
        const std::string more = step_words(library, on.shelf.address, step);
        text += wrapped("  " + step.date + "  " + padded(std::string(word(step.kind)), 9) + "  ",
                        step.by + (more.empty() ? "" : ": " + more) + '.', width, 25);
    }
    if (const double hours = record::trial_hours(on.revision().kept.history); hours > 0.0)
        text += "  In engines " + significant(hours, 6) + " h in all.\n";
    return text;
}

std::string results_text(const record::Step* approval) {
    if (approval == nullptr || !approval->results) return {};
    using enum TextTable::Align;
    TextTable table({left, right});
    const auto kinds = record::result_kinds();
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (!std::isnan(approval->results->values[i]))
            table.add({std::string(kinds[i].name), record::shown(kinds[i], approval->results->values[i])});
    return "\nWorked out when it was approved, by " + approval->results->program + "\n" + table.text(2);
}

std::string revisions_text(const record::Shelf& shelf) {
    if (shelf.revisions.size() < 2) return {};
    using enum TextTable::Align;
    TextTable table({left, left, left, left});
    for (const record::KeptRevision& revision : shelf.revisions) {
        const auto& changes = revision.kept.spec.revisions;
        table.add({revision.index(), std::string(word(revision.state)), record::last_change(revision.kept.history).date,
                   changes.empty() ? "" : changes.back().change});
    }
    return "\nRevisions\n" + table.text(2);
}

std::string next_after_show(const SpecsOptions& options, const OnShelf& on) {
    const int width = options.width;
    if (on.revision().kept.is_altered())
        return "\n" +
               wrapped("Next: ", specs_command(options, "verify").name(on.shelf.address.text()).text(), width, 2);
    const std::string next = next_command(options, on.shelf, on.revision());
    if (on.revision().state == record::State::superseded)
        return "\n" +
               wrapped("Next: ",
                       on.shelf.in_force() != nullptr
                           ? "revision " + on.shelf.in_force()->index() +
                                 " is in force; this one is ordered only with --revision " + on.revision().index() + "."
                           : "a later revision took its place, and none is in force.",
                       width, 2);
    return next.empty() ? "" : "\n" + wrapped("Next: ", next, width, 2);
}

nlohmann::ordered_json show_json(const OnShelf& on) {
    nlohmann::ordered_json json = revision_json(on.shelf, on.revision());
    json["history"] = history_json(on.revision().kept.history);
    json["revisions"] = nlohmann::ordered_json::array();
    for (const record::KeptRevision& revision : on.shelf.revisions)
        json["revisions"].push_back({{"revision", revision.index()}, {"state", word(revision.state)}});
    return json;
}

}  // namespace

int run_specs_show(const SpecsOptions& options, const References& references, std::ostream& out, std::ostream& err) {
    const auto library = io::SpecLibrary::open(options.library, io::SpecLibrary::For::reading);
    if (!library) return refuse(library.error(), err);
    const auto on = find_on_shelf(*library, options, references.wires, options.specs.front(), options.revision);
    if (!on) return refuse(on.error(), err);
    if (options.json) {
        out << show_json(*on).dump(2) << '\n';
        return kDone;
    }
    out << head(*on, references) << altered_words(*on, options.width) << history_text(*library, *on, options.width)
        << results_text(record::approval_of(on->revision().kept.history)) << revisions_text(on->shelf)
        << next_after_show(options, *on) << std::flush;
    complain(on->shelf.wrong, err);
    return kDone;
}

}  // namespace seatload::cli
