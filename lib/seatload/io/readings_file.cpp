// SPDX-License-Identifier: MIT
#include <seatload/io/readings_file.hpp>

#include <algorithm>
#include <set>

#include <seatload/bench/measured.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/readings_bench.hpp>
#include <seatload/io/readings_fields.hpp>
#include <seatload/io/wire_choice_check.hpp>

namespace seatload::io {
namespace {

/// A readings file as it is being read: the session, and where the readings of its springs stand.
struct ReadingsDraft {
    bench::Readings session;
    std::vector<PlacedReadings> springs;
    PlacedReadings block;
    bool bench_is_sound = true;
};

void read_run(Reader& table, bench::Readings& session) {
    FieldReader fields(table);
    fields.field("title", session.title, kAny, "");
    fields.field("fixture", session.fixture, kAny, "");
    fields.field("coverage_factor", session.coverage_factor, kCoverage, "");
    if (const auto date = table.find<DateText>("date")) session.date = date->iso;
    if (const auto stated = table.find<StatedCelsius>("temperature", kDoubtfulTemperature))
        session.temperature = stated->degrees;
}

void read_load_path(Reader& table, const FileOpener& open, ReadingsDraft& draft) {
    bench::LoadPath& path = draft.session.load_path;
    path.stiffness = table.find<bench::Stated<Rate>>("stiffness", kPositive);
    draft.block = read_readings_table(table, "block", {Column::travel, Column::scale}, open);
    const bool has_block = table.has("block") || table.has("table");
    if (path.stiffness && has_block)
        table.document().contradiction(table.at("stiffness"), "given-twice"_id, "the load path is given twice",
                                       "keep the stiffness, or the run on a rigid block", draft.block.at,
                                       "the run on a rigid block");
    for (const bench::Reading& reading : draft.block.readings) {
        if (reading.travel) path.block_run.push_back({*reading.travel, reading.scale});
        if (reading.height && draft.block.is_sound) {
            table.error(table.has("block") ? "block" : "table", "travel-wanted"_id,
                        "on a rigid block, travel is read and not height",
                        "travel counts the way the gauge moves on as the load rises");
            draft.block.is_sound = false;
        }
    }
}

/// No coil of a wire can be smaller than twice its thickness across.
void expect_coil(Reader& table, const bench::Dimensions& dimensions) {
    if (!dimensions.wire_diameter || !dimensions.outside_diameter) return;
    if (dimensions.outside_diameter->value > 2.0 * dimensions.wire_diameter->value) return;
    table.document().contradiction(
        table.at("outside_diameter"), "wire-too-thick"_id, "no coil of this wire can be so small",
        "the outside diameter must be more than twice the wire", table.at("wire_diameter"), "the wire");
}

template <class Value>
void expect_doubt(Reader& table, std::string_view key, const std::optional<bench::Stated<Value>>& stated,
                  std::string_view example) {
    if (!stated || stated->plus_minus > Value{}) return;
    table.warning(key, "no-uncertainty"_id, "no ± is stated, so it is taken as exact",
                  "say what it may be off by, as in " + std::string(example) +
                      ": else the wire is told more surely than is known");
}

void expect_doubts(Reader& table, const bench::Dimensions& dimensions) {
    expect_doubt(table, "wire_diameter", dimensions.wire_diameter, "\"0.70 mm ±0.01 mm\"");
    expect_doubt(table, "outside_diameter", dimensions.outside_diameter, "\"8.40 mm ±0.03 mm\"");
    expect_doubt(table, "total_coils", dimensions.total_coils, "\"6.5 ±0.1\"");
}

void check_grade(Reader& table, bench::Dimensions& dimensions, const wire::Catalogue& catalogue) {
    if (dimensions.grade.empty()) return;
    const wire::Grade* grade = catalogue.find(dimensions.grade);
    if (grade == nullptr)
        table.error("wire", "unknown-grade"_id, "unknown wire grade \"" + dimensions.grade + "\"",
                    unknown_grade_hint(dimensions.grade, {}, catalogue) + "; leave it out when it is not known");
    else
        dimensions.grade = grade->id;
}

void read_spring(Reader& table, const wire::Catalogue& catalogue, const FileOpener& open, ReadingsDraft& draft) {
    bench::SpringRun run;
    run.name = table.need<std::string>("name", "\"ahead latch, as found\"");
    if (table.has("name") && file_stem(run.name) == file_stem(""))
        table.error("name", "bad-file-name"_id, "a name needs letters or digits", "a file is named after the spring");
    table.set("role", run.role);
    FieldReader fields(table);
    visit_dimensions(fields, run.dimensions);
    visit_preload(fields, run.preload);
    expect_coil(table, run.dimensions);
    expect_doubts(table, run.dimensions);
    check_grade(table, run.dimensions, catalogue);
    if (!table.has("readings") && !table.has("table"))
        table.missing("readings",
                      "[[\"18.00 mm\", \"0 g\"], [\"15.00 mm\", \"190 g\"], ...] (or table = \"spring.csv\")");
    draft.springs.push_back(read_readings_table(table, "readings", {Column::height, Column::scale}, open));
    if (!table.has("readings") && !table.has("table")) draft.springs.back().is_sound = false;
    run.readings = draft.springs.back().readings;
    draft.session.springs.push_back(std::move(run));
}

/// Springs of one name would be written into one file.
void expect_own_names(std::vector<Reader>& tables, const ReadingsDraft& draft) {
    for (std::size_t i = 0; i < tables.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const std::string& a = draft.session.springs[j].name;
            const std::string& b = draft.session.springs[i].name;
            if (b.empty() || file_stem(a) != file_stem(b)) continue;
            tables[i].document().contradiction(tables[i].at("name"), "name-taken"_id, "two springs have this name",
                                               "files are named after them: give each its own", tables[j].at("name"),
                                               "the first");
        }
}

/// Heights are worth nothing when nobody says how well they were set.
void expect_gauge(Reader& root, const ReadingsDraft& draft) {
    const auto has_height = [](const bench::SpringRun& run) {
        return std::any_of(run.readings.begin(), run.readings.end(),
                           [](const auto& r) { return r.height.has_value(); });
    };
    const auto& springs = draft.session.springs;
    if (root.has("gauge") || std::none_of(springs.begin(), springs.end(), has_height)) return;
    root.document().error(root.at(), "no-uncertainty"_id,
                          "there are heights among the readings, and no table [gauge] says how they were set",
                          "add it, for example: [gauge] and below it step = \"0.01 mm\" and error = \"±0.01 mm\"");
}

/// The tables on the bench itself: a fault in one of them spoils what could be said of any reading.
void read_the_bench(Reader& root, const FileOpener& open, ReadingsDraft& draft) {
    bench::Readings& session = draft.session;
    const auto visit = [](std::optional<Reader> table, const auto& visitor) {
        if (table) visitor(*table);
    };
    visit(root.table("run"), [&](Reader& table) { read_run(table, session); });
    visit(root.need_table("scale", "step = \"1 g\""), [&](Reader& table) { read_scale(table, session.scale); });
    visit(root.table("gauge"), [&](Reader& table) {
        FieldReader fields(table);
        visit_gauge(fields, session.gauge);
    });
    visit(root.table("indicator"), [&](Reader& table) { read_indicator(table, session.indicator); });
    visit(root.table("load_path"), [&](Reader& table) { read_load_path(table, open, draft); });
    visit(root.table("heights"), [&](Reader& table) { session.heights = read_heights(table); });
    draft.bench_is_sound = !root.document().has_error() && draft.block.is_sound;
}

ReadingsDraft read_readings_tables(Reader& root, const wire::Catalogue& catalogue, const FileOpener& open) {
    ReadingsDraft draft;
    if (!read_format(root, {kReadingsFormat})) {
        draft.bench_is_sound = false;
        return draft;
    }
    read_the_bench(root, open, draft);
    std::vector<Reader> springs = root.tables("spring");
    for (Reader& spring : springs) read_spring(spring, catalogue, open, draft);
    expect_own_names(springs, draft);
    expect_gauge(root, draft);
    if (!root.has("spring"))
        root.document().error(root.at(), "nothing-measured"_id, "the file holds no spring",
                              "add a line [[spring]] and below it its name and its readings");
    return draft;
}

/// Puts what is wrong with readings at the lines where they stand.
void report(Document& document, const std::string& path, const PlacedReadings& placed,
            const std::vector<bench::RunProblem>& problems) {
    for (const bench::RunProblem& problem : problems) {
        const bool has_line = problem.reading && *problem.reading < placed.places.size();
        const bool is_error = problem.severity == Severity::error;
        const Position at = has_line ? placed.places[*problem.reading] : placed.at;
        if (placed.csv != nullptr && has_line) {
            is_error ? placed.csv->error(at, problem.id, problem.message, problem.hint)
                     : placed.csv->warning(at, problem.id, problem.message, problem.hint);
            continue;
        }
        const std::string message = path + ": " + problem.message;
        is_error ? document.error(at, problem.id, message, problem.hint)
                 : document.warning(at, problem.id, message, problem.hint);
    }
}

/// Looks for faults that only the readings taken together show.
void judge_readings(Document& document, const ReadingsDraft& draft) {
    if (!draft.bench_is_sound) return;
    const auto block = bench::block_problems_of(draft.session);
    report(document, "load_path", draft.block, block);
    if (std::any_of(block.begin(), block.end(), [](const auto& p) { return p.severity == Severity::error; })) return;
    for (std::size_t i = 0; i < draft.springs.size(); ++i)
        if (draft.springs[i].is_sound)
            report(document, "spring \"" + draft.session.springs[i].name + '"', draft.springs[i],
                   bench::measure(draft.session, draft.session.springs[i]).problems);
}

/// All complaints, those of the tables behind those of the file.
Diagnostics all_complaints(const Document& document, const ReadingsDraft& draft) {
    Diagnostics all = document.diagnostics();
    std::set<const CsvText*> seen;
    const auto add = [&](const PlacedReadings& placed) {
        if (placed.csv == nullptr || !seen.insert(placed.csv.get()).second) return;
        const Diagnostics each = placed.csv->diagnostics();
        all.insert(all.end(), each.begin(), each.end());
    };
    add(draft.block);
    for (const PlacedReadings& placed : draft.springs) add(placed);
    return all;
}

}  // namespace

Result<bench::Readings> read_readings(std::string_view text, const std::string& file_name,
                                      const wire::Catalogue& catalogue, const FileOpener& open) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    ReadingsDraft draft;
    {
        Reader root(document);
        draft = read_readings_tables(root, catalogue, open);
    }
    judge_readings(document, draft);
    Diagnostics complaints = all_complaints(document, draft);
    if (has_error(complaints)) return complaints;
    return {std::move(draft.session), std::move(complaints)};
}

Result<bench::Readings> read_readings(std::string_view text, const std::string& file_name,
                                      const wire::Catalogue& catalogue) {
    return read_readings(text, file_name, catalogue, opener_beside(file_name, "the readings"));
}

}  // namespace seatload::io
