// SPDX-License-Identifier: MIT
#include <seatload/io/samples_file.hpp>

#include <algorithm>
#include <cmath>
#include <memory>
#include <set>

#include <seatload/core/text.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/inspection_forms.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/io/readings_forms.hpp>
#include <seatload/io/samples_rows.hpp>

namespace seatload::io {
namespace {

using inspection::Kind;

constexpr Span kSampledPieces{1.0, 1'000'000.0, false, "1 to 1000000"};
constexpr std::size_t kMostRows = 10'000;

/// Samples as they are being read, and where they stand.
struct SamplesDraft {
    SamplesFile file;
    std::vector<SampleColumn> columns;
    std::vector<Position> places;  ///< of the pieces
    std::shared_ptr<CsvText> csv;  ///< the table they stand in; null: the TOML file
    Diagnostics of_readings;
    bool is_sound = true;

    inspection::Samples& samples() { return file.samples; }
};

enum class Pieces { every, sampled };

}  // namespace

template <>
struct Form<Pieces> : WordForm<Pieces, Form<Pieces>> {
    static constexpr Word<Pieces> kWords[] = {{"every piece", Pieces::every}, {"by sampling", Pieces::sampled}};
};

namespace {

void read_lot(Reader& table, inspection::Samples& samples) {
    samples.name = table.need<std::string>("name", "\"first delivery\"");
    samples.lot_size = table.need<int>("pieces", "20", kSampledPieces);
    table.set("maker", samples.maker);
    table.set("number", samples.number);
    table.set("revision", samples.revision);
    table.set("fixture", samples.fixture);
    if (const auto date = table.find<DateText>("date")) samples.date = date->iso;
}

std::string listed(const std::vector<double>& aql) {
    std::string list;
    for (const double limit : aql) list += (list.empty() ? "" : ", ") + significant(limit, 4);
    return list;
}

void read_plan(Reader& table, const inspection::SamplingTables& tables, inspection::Samples& samples) {
    inspection::PlanChoice choice;
    choice.every_piece = table.need<Pieces>("inspect", "\"every piece\"") == Pieces::every;
    table.set("level", choice.level);
    table.set("severity", choice.severity);
    table.set("aql", choice.aql, kPositive);
    const bool is_known = std::any_of(tables.aql.begin(), tables.aql.end(),
                                      [&](double limit) { return std::abs(limit - choice.aql) < 1e-9; });
    if (!is_known && table.has("aql"))
        table.error("aql", "not-a-choice"_id, "no plan has this AQL",
                    "those of ISO 2859-1 are, in per cent: " + listed(tables.aql));
    for (const std::string_view key : {"level", "severity", "aql"})
        if (choice.every_piece && table.has(key))
            table.error(key, "no-effect"_id, "this is for sampling, and every piece is inspected", "take it out");
    samples.plan = choice;
}

template <class Q>
std::optional<double> find_doubt(Reader& table, Kind kind) {
    const auto doubt = table.find<PlusMinus<Q>>(key(kind), kPositive);
    if (!doubt) return std::nullopt;
    return Form<Q>::numbers(doubt->width).front();
}

void read_readings_of_bench(Reader& table, const wire::Catalogue& catalogue, const FileOpener& open,
                            SamplesDraft& draft) {
    const auto file = find_file_beside(table, "readings", open, "the readings lie", "write the name alone");
    if (!file) return;
    auto session = read_readings(file->text, file->path, catalogue, open);
    draft.of_readings = session.error();
    if (!session) return;
    draft.file.bench = std::move(session).value();
    draft.file.bench_file = file->name;
}

void read_uncertainty(Reader& table, const wire::Catalogue& catalogue, const FileOpener& open, SamplesDraft& draft) {
    for (const Kind kind : inspection::kKinds) {
        const auto doubt = inspection::measure(kind) == inspection::Measure::force ? find_doubt<Force>(table, kind)
                           : inspection::measure(kind) == inspection::Measure::length
                               ? find_doubt<Length>(table, kind)
                               : table.find<double>(key(kind), kPositive);
        if (doubt) draft.samples().expanded[kind] = *doubt;
    }
    read_readings_of_bench(table, catalogue, open, draft);
}

/// Where a member of a list stands.
Position place_in(const Node* list, std::size_t index, Position otherwise) {
    const auto* const members = list == nullptr ? nullptr : std::get_if<List>(&list->value);
    return members != nullptr && index < members->size() ? (*members)[index].at : otherwise;
}

void read_rows(Reader& table, SamplesDraft& draft) {
    const Complain complain = [&](Position at, DiagnosticId id, std::string message, std::string hint) {
        table.document().error(at, id, "pieces: " + std::move(message), std::move(hint));
    };
    if (!table.has("columns")) table.missing("columns", "[\"piece\", \"seated_load\"]");
    std::vector<std::pair<std::string, Position>> names;
    const std::vector<std::string> read = table.list<std::string>("columns");
    const Node* const list = table.document().find("pieces.columns");
    for (std::size_t i = 0; i < read.size(); ++i) names.emplace_back(read[i], place_in(list, i, table.at("columns")));
    std::vector<RowReader> rows = table.rows("rows");
    if (names.empty()) return;
    const auto columns = sample_columns(names, table.at("columns"), complain);
    if (!columns) return;
    draft.columns = *columns;
    for (RowReader& row : rows) {
        if (row.size() != columns->size()) {
            row.complain("row-length"_id, "this row has " + std::to_string(row.size()) +
                                              (row.size() == 1 ? " cell" : " cells") + ", there are " +
                                              std::to_string(columns->size()) + " columns");
            continue;
        }
        std::vector<Node> cells;
        for (std::size_t i = 0; i < row.size(); ++i) cells.push_back(row.node(i));
        draft.samples().pieces.push_back(piece_of(*columns, cells, complain));
        draft.places.push_back(row.at());
    }
}

void read_csv(Reader& table, const FileOpener& open, SamplesDraft& draft) {
    const auto file = find_file_beside(table, "table", open, "a table lies",
                                       "write its name alone, of plain letters and digits: \"lot_1.csv\"");
    if (!file) return;
    draft.csv = std::make_shared<CsvText>(file->text, file->path);
    draft.samples().pieces = csv_pieces(*draft.csv, draft.columns, draft.places);
}

void read_pieces(Reader& table, const FileOpener& open, SamplesDraft& draft) {
    if (table.has("rows") && table.has("table")) {
        table.document().contradiction(table.at("table"), "given-twice"_id, "the pieces are given twice",
                                       "keep one of the two", table.at("rows"), "rows stand here");
        for (const std::string_view key : {"rows", "columns", "table"}) table.allow(key);
        return;
    }
    if (table.has("table")) {
        for (const std::string_view key : {"rows", "columns"}) table.allow(key);
        read_csv(table, open, draft);
        return;
    }
    if (!table.has("rows"))
        table.missing("rows", "[[\"1\", \"5.80 N\"], [\"2\", \"5.74 N\"]] (or table = \"lot_1.csv\")");
    else
        read_rows(table, draft);
}

/// Complains where a piece stands.
void complain_of(Document& document, const SamplesDraft& draft, std::size_t piece, DiagnosticId id,
                 const std::string& message, const std::string& hint) {
    if (draft.csv)
        draft.csv->error(draft.places[piece], id, message, hint);
    else
        document.error(draft.places[piece], id, message, hint);
}

void expect_names(Document& document, SamplesDraft& draft) {
    std::set<std::string> met;
    const auto& pieces = draft.samples().pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (pieces[i].name.empty())
            complain_of(document, draft, i, "empty"_id, "this piece has no name",
                        "number the pieces as they were measured");
        else if (!met.insert(pieces[i].name).second)
            complain_of(document, draft, i, "name-taken"_id,
                        "a piece \"" + pieces[i].name + "\" stands here a second time", "each piece has one row");
}

bool has_column(const SamplesDraft& draft, SampleColumn::Use use) {
    return std::any_of(draft.columns.begin(), draft.columns.end(), [&](const SampleColumn& c) { return c.use == use; });
}

/// A value is worth nothing when nobody says how well it is known.
void expect_uncertainties(Document& document, SamplesDraft& draft) {
    for (const SampleColumn& column : draft.columns) {
        if (column.use != SampleColumn::Use::value && column.use != SampleColumn::Use::shown) continue;
        const bool is_load = inspection::measure(column.kind) == inspection::Measure::force;
        const bool is_stated = document.find("uncertainty." + std::string(key(column.kind))) != nullptr;
        if (is_stated || draft.samples().expanded.contains(column.kind) ||
            (is_load && document.find("uncertainty.readings") != nullptr))
            continue;
        const std::string example = is_load                                                          ? "\"±0.05 N\""
                                    : inspection::measure(column.kind) == inspection::Measure::count ? "0.05"
                                                                                                     : "\"±0.02 mm\"";
        document.error(document.at("uncertainty"), "no-uncertainty"_id,
                       "nothing says how well " + std::string(key(column.kind)) + " was measured",
                       "under [uncertainty] state " + std::string(key(column.kind)) + " = " + example + " (U, k = 2)" +
                           (is_load ? ", or readings = \"...\" of the bench" : ""));
        draft.samples().expanded[column.kind] = 0.0;  // complained of once
    }
}

void expect_sense(Document& document, SamplesDraft& draft) {
    const inspection::Samples& samples = draft.samples();
    if (samples.lot_size >= 1 && samples.pieces.size() > static_cast<std::size_t>(samples.lot_size))
        document.error(document.at("lot.pieces"), "contradiction"_id,
                       "there are more pieces measured than the lot has: " + std::to_string(samples.pieces.size()));
    if (samples.pieces.size() > kMostRows)
        document.error(document.at("pieces"), "readings-too-many"_id, "there are more pieces than 10000");
    if (has_column(draft, SampleColumn::Use::after) && samples.treatment.empty())
        document.error(document.at("after"), "one-of-a-pair"_id,
                       "there are values measured again, and nothing says after what",
                       "add [after] and below it for example treatment = \"heat\"");
    if (has_column(draft, SampleColumn::Use::shown) && document.find("uncertainty.readings") == nullptr)
        document.error(document.at("uncertainty"), "no-uncertainty"_id,
                       "what a scale shows says nothing without its bench",
                       "under [uncertainty] name the readings of the bench: readings = \"...\"");
}

void read_samples_tables(Reader& root, const inspection::SamplingTables& tables, const wire::Catalogue& catalogue,
                         const FileOpener& open, SamplesDraft& draft) {
    if (!root.has("format")) root.missing("format", quoted_text(kSamplesFormat));
    if (!read_format(root, {kSamplesFormat})) return;
    if (auto table = root.need_table("lot", "name = \"first delivery\"")) read_lot(*table, draft.samples());
    if (auto table = root.table("plan")) read_plan(*table, tables, draft.samples());
    if (auto table = root.table("uncertainty")) read_uncertainty(*table, catalogue, open, draft);
    if (auto table = root.table("after")) {
        draft.samples().treatment = table->need<std::string>("treatment", "\"heat\"");
        table->set("conditions", draft.samples().conditions);
    }
    if (auto table = root.need_table("pieces", "table = \"lot_1.csv\"")) read_pieces(*table, open, draft);
    const bool has_rows = !root.document().has_error() && !(draft.csv && draft.csv->has_error());
    if (has_rows && draft.samples().pieces.empty())
        root.document().error(root.document().at("pieces"), "nothing-measured"_id, "no piece was measured",
                              "a row for each piece is wanted");
    if (has_rows) expect_names(root.document(), draft);
    if (!draft.columns.empty()) expect_uncertainties(root.document(), draft);
    if (!draft.columns.empty()) expect_sense(root.document(), draft);
}

}  // namespace

Result<SamplesFile> read_samples(std::string_view text, const std::string& file_name,
                                 const inspection::SamplingTables& tables, const wire::Catalogue& catalogue,
                                 const FileOpener& open) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    SamplesDraft draft;
    {
        Reader root(document);
        read_samples_tables(root, tables, catalogue, open, draft);
    }
    Diagnostics complaints = document.diagnostics();
    complaints.insert(complaints.end(), draft.of_readings.begin(), draft.of_readings.end());
    if (draft.csv)
        for (const Diagnostic& each : draft.csv->diagnostics()) complaints.push_back(each);
    if (has_error(complaints)) return complaints;
    return {std::move(draft.file), std::move(complaints)};
}

Result<SamplesFile> read_samples(std::string_view text, const std::string& file_name,
                                 const inspection::SamplingTables& tables, const wire::Catalogue& catalogue) {
    return read_samples(text, file_name, tables, catalogue, opener_beside(file_name, "the samples"));
}

}  // namespace seatload::io
