// SPDX-License-Identifier: MIT
#include <cli/inspect_command.hpp>

#include <filesystem>

#include <nlohmann/json.hpp>
#include <seatload/core/append.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/inspection/bench_load.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/lot_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/inspection_forecast.hpp>
#include <seatload/sheet/inspection_limits.hpp>
#include <seatload/sheet/inspection_report.hpp>
#include <seatload/sheet/tamper_mark.hpp>

#include <cli/graded_spec.hpp>
#include <cli/inspect_next.hpp>
#include <cli/inspect_view.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/spec_seal.hpp>
#include <cli/specs_shelves.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;
using inspection::Kind;

constexpr const char* kCommand = "inspect";

inspection::AskedLoad asked(const sheet::Facts& facts, const record::LoadAtLength& load) {
    return {in_mm(load.length), in_newton(load.nominal), in_newton_per_mm(facts.values.rate)};
}

/// The loads that a scale showed, worked out, and the uncertainty of such a reading where none is stated.
Diagnostics use_bench(io::SamplesFile& file, const sheet::Facts& facts, const std::string& path) {
    if (!file.bench) return {};
    for (const auto& [kind, load] : {std::pair(Kind::seated_load, &facts.spec.seated),
                                     std::pair(Kind::full_travel_load, &facts.spec.full_travel)}) {
        const inspection::AskedLoad at = asked(facts, *load);
        if (!file.samples.expanded.contains(kind)) {
            const auto expanded = inspection::expanded_of_one_reading(*file.bench, at);
            if (!expanded)
                return {error_in(path, "bench-cannot-tell"_id,
                                 "the bench of \"" + file.bench_file + "\" does not tell what a load at " +
                                     significant(at.height_mm, 6) + " mm is known by",
                                 "state the uncertainty under [uncertainty] instead")};
            file.samples.expanded[kind] = *expanded;
            file.samples.basis[kind] = "that of one reading on the bench of " + file.bench_file;
        }
        for (inspection::Piece& piece : file.samples.pieces)
            if (const auto shown = piece.shown.find(kind); shown != piece.shown.end()) {
                const auto found = inspection::load_from_scale(*file.bench, shown->second, at);
                if (!found)
                    return {error_in(
                        path, "bench-cannot-tell"_id,
                        "the bench of \"" + file.bench_file + "\" does not tell the load of piece " + piece.name,
                        "give loads in place of what the scale showed")};
                piece.values[kind] = *found;
            }
    }
    return {};
}

/// A load measured less well than the sheet wants is complained of; its verdict stands, with more left open.
Diagnostics doubts_on(const inspection::Samples& samples, const sheet::Facts& facts, const std::string& path) {
    Diagnostics said;
    for (const auto& [kind, load] : {std::pair(Kind::seated_load, &facts.spec.seated),
                                     std::pair(Kind::full_travel_load, &facts.spec.full_travel)}) {
        const auto u = samples.expanded.find(kind);
        if (u == samples.expanded.end()) continue;
        const double wanted = 0.1 * in_newton(load->plus + load->minus);
        if (u->second <= wanted * (1.0 + 1e-9)) continue;
        Diagnostic d = complaint(Severity::warning, "too-coarse"_id,
                                 "U of the " + std::string(words(kind)) + " is " + significant(u->second, 2) +
                                     " N, and the sheet wants at most " +
                                     sheet::with_unit(sheet::allowed_uncertainty(facts, *load)),
                                 "values near their limits stay open: measure better, or read more often");
        d.place.file = path;
        said.push_back(d);
    }
    return said;
}

/// Samples of another part, or of another revision of it.
Diagnostics other_part(const inspection::Samples& samples, const record::Spec& spec, const std::string& path) {
    Diagnostics wrong;
    const auto hold = [&](const std::string& said, const std::string& wanted, const std::string& what) {
        if (!said.empty() && said != wanted)
            wrong.push_back(
                error_in(path, "wrong-spring"_id,
                         "these samples are of " + what + " \"" + said + "\", the spec is of \"" + wanted + '"',
                         "inspect a lot by the spec it was ordered by"));
    };
    hold(samples.number, spec.identity.number, "number");
    hold(samples.revision, spec.identity.revision, "revision");
    return wrong;
}

struct Inspected {
    io::SamplesFile file;
    inspection::LotInspection lot;
    std::optional<inspection::Forecast> forecast;
    Diagnostics said;
};

Result<Inspected> judged(const InspectOptions& options, const GradedSpec& graded, const References& refs) {
    const auto tables = io::builtin_sampling();
    SEATLOAD_ASSERT(tables.has_value());
    auto facts = sheet::facts(graded.spec, graded.grade, refs.tolerances, refs.paper);
    Diagnostics said = placed(facts.error(), options.spec);
    auto samples = read_file(options.samples, [&](std::string_view text, const std::string& name) {
        return io::read_samples(text, name, *tables, refs.wires);
    });
    append(said, samples.error());
    if (!facts || !samples) return said;
    io::SamplesFile file = std::move(samples).value();
    append(said, other_part(file.samples, graded.spec, options.samples));
    append(said, use_bench(file, *facts, options.samples));
    if (has_error(said)) return said;
    append(said, doubts_on(file.samples, *facts, options.samples));
    const inspection::PlanChoice choice =
        file.samples.plan.value_or(sheet::usual_plan(graded.spec, file.samples.lot_size));
    const auto plan = inspection::lot_plan(choice, file.samples.lot_size, *tables);
    SEATLOAD_ASSERT(plan.has_value());
    auto forecast = sheet::forecast(graded.spec, graded.grade, refs.tolerances);
    inspection::LotInspection lot = inspection::inspect(file.samples, sheet::inspected(*facts), *plan);
    Inspected out{std::move(file), std::move(lot), std::nullopt, std::move(said)};
    if (forecast) out.forecast = std::move(forecast).value();
    return out;
}

/// The mark on the sheet that is ordered by a spec: that of its maker's copy, in a library with the name of who
/// approved it.
Result<std::string> sheet_mark(const std::string& path, const GradedSpec& graded, const References& refs) {
    const auto bytes = read_text_file(path);
    if (!bytes) return bytes.error();
    const record::Spec spec = record::with_tips_ordered(graded.spec, graded.grade, refs.tolerances);
    if (io::spec_content(*bytes).size() != bytes->size()) {
        const auto kept = io::read_kept_spec(*bytes, path, refs.wires);
        if (!kept) return kept.error();
        return mark_on_papers(*kept, refs);
    }
    return sheet::tamper_mark(io::write_spec(record::makers_copy(spec)));
}

/// "of 2027-01-05 from Maker C, 20 of 20 pieces measured, accept".
std::string record_words(const record::Lot& lot) {
    return (lot.date.empty() ? "" : "of " + lot.date + ' ') + (lot.maker.empty() ? "" : "from " + lot.maker + ", ") +
           std::to_string(lot.inspected) + " of " + std::to_string(lot.pieces) + " pieces measured, " +
           std::string(inspection::word(lot.verdict));
}

/// A warning that the record which lies there says otherwise: two lots of one name, or one that was measured anew.
Diagnostics replaced_record(const fs::path& path, const std::string& bytes) {
    std::error_code unreadable;
    if (!fs::exists(path, unreadable)) return {};
    const auto old = read_text_file(path);
    if (!old || *old == bytes) return {};
    const auto lot = io::read_lot(*old, path.string());
    Diagnostic d =
        complaint(Severity::warning, "record-replaced"_id,
                  "replaces another record of a lot of this name" + (lot ? ": " + record_words(*lot) : std::string()),
                  "if that was another lot, give each its own name under [lot] and inspect both again");
    d.place.file = path.string();
    return {d};
}

/// The record of the lot and the report, named after part and lot.
Result<std::vector<Paper>> papers_of(const InspectOptions& options, const Inspected& inspected,
                                     const GradedSpec& graded, const std::string& sha256, const References& refs) {
    const record::Spec& spec = graded.spec;
    const std::string stem = file_stem(spec.identity.number + " " + inspected.lot.samples.name);
    const fs::path record_path = fs::path(options.output) / (stem + ".toml");
    if (!options.overwrite)
        if (Diagnostics wrong = edits_in_the_way(record_path, "record of a lot", kCommand); !wrong.empty())
            return wrong;
    const auto mark = sheet_mark(options.spec, graded, refs);
    if (!mark) return mark.error();
    auto pdf = sheet::inspection_report_pdf(
        {inspected.lot, spec, *mark, inspected.forecast, refs.english, sheet::PaperSize::a4});
    Diagnostics said = placed(pdf.error(), options.samples);
    if (!pdf) return said;
    const std::string text = sealed(io::write_lot(record::lot_of(inspected.lot, spec, sha256)), kCommand);
    if (!options.overwrite) append(said, replaced_record(record_path, text));
    return {{{fs::path(options.output) / (stem + ".pdf"), std::move(pdf).value()}, {record_path, text}}, said};
}

}  // namespace

int run_inspect(const InspectOptions& options, std::ostream& out, std::ostream& err) {
    const auto references = load_references(options.wire_file);
    if (!references) return refuse(references.error(), err);
    const auto graded = read_graded_spec(options.spec, references->wires);
    if (!graded) return refuse(graded.error(), err);
    const auto bytes = read_text_file(options.spec);
    if (!bytes) return refuse(bytes.error(), err);
    const std::string sha256 = sha256_hex(io::spec_content(*bytes));  // the same whatever states a library adds
    const auto inspected = judged(options, *graded, *references);
    if (!inspected) return refuse(inspected.error(), err);
    Diagnostics said = inspected->said;
    std::vector<Paper> papers;
    if (options.papers) {
        auto made = papers_of(options, *inspected, *graded, sha256, *references);
        append(said, made.error());
        if (!made) return refuse(said, err);
        papers = std::move(made).value();
    }
    complain(said, err);
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);
    const InspectView view{options.samples, graded->spec, sha256, inspected->lot, inspected->forecast};
    out << (options.json ? inspect_json(view).dump(2) + '\n' : inspect_text(view, options.width));
    if (!options.json && !papers.empty())
        out << written_text(papers)
            << next_text(inspect_next(options, graded->spec,
                                      {papers.back().path.string(), papers.front().path.string(), sha256,
                                       inspected->lot.verdict},
                                      *references),
                         options.width);
    return inspected->lot.verdict == inspection::Verdict::accept ? kDone : kNothingFits;
}

}  // namespace seatload::cli
