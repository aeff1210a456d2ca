// SPDX-License-Identifier: MIT
#include <seatload/io/history_tables.hpp>

#include <charconv>
#include <cmath>
#include <limits>

#include <seatload/core/file_name.hpp>
#include <seatload/io/date_form.hpp>
#include <seatload/io/fields.hpp>
#include <seatload/io/words.hpp>

namespace seatload::io {

template <>
struct Form<record::Step::Kind> : WordForm<record::Step::Kind, Form<record::Step::Kind>> {
    static constexpr Word<record::Step::Kind> kWords[] = {
        {"draft", record::Step::Kind::draft},       {"trial", record::Step::Kind::trial},
        {"approved", record::Step::Kind::approved}, {"withdrawn", record::Step::Kind::withdrawn},
        {"evidence", record::Step::Kind::evidence},
    };
};

namespace {

using record::Step;
using StepKind = Step::Kind;

constexpr std::size_t kHexDigits = 64;

bool is_sha256(const std::string& text) {
    return text.size() == kHexDigits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

template <class Fields, class S>
void visit_step_words(Fields& f, S& step) {
    f.needed("sha256", "\"<64 digits>\"", step.sha256, kAny, "of all above the line of ====");
    f.field("reason", step.reason, kAny, "");
    f.field("conditions", step.conditions, kAny, "on which its lots were accepted");
    f.field("trial_hours", step.trial_hours, kNotNegative, "in an engine");
    f.field("note", step.note, kAny, "");
}

std::vector<record::KeptFile> read_files(Reader& table, std::string_view key) {
    std::vector<record::KeptFile> files;
    for (RowReader& row : table.rows(key)) {
        row.expect_at_most(2);
        record::KeptFile file{row.need<std::string>(0, "name"), row.need<std::string>(1, "SHA-256")};
        if (!file.name.empty() && !is_plain_file_name(file.name))
            row.complain("bad-file-name"_id, "\"" + file.name + "\" is no name of a file beside the spec");
        if (!file.sha256.empty() && !is_sha256(file.sha256))
            row.complain("not-a-seal"_id, "\"" + file.sha256 + "\" is no SHA-256: 64 digits 0 to 9, a to f");
        files.push_back(std::move(file));
    }
    return files;
}

/// A number before a unit that must be the one of its kind; NaN when it is none.
double number_with_unit(const std::string& text, std::string_view unit) {
    double value = 0.0;
    const char* const end = text.data() + text.size();
    const auto [rest, problem] = std::from_chars(text.data(), end, value);
    if (problem != std::errc() ||
        std::string_view(rest, static_cast<std::size_t>(end - rest)) != " " + std::string(unit))
        return std::numeric_limits<double>::quiet_NaN();
    return value;
}

record::KeyResults read_results(Reader& table) {
    record::KeyResults results;
    results.program = table.find<std::string>("program").value_or("");
    for (const record::ResultKind& kind : record::result_kinds()) {
        const auto text = table.find<std::string>(kind.key);
        results.values.push_back(text ? number_with_unit(*text, kind.unit) : std::numeric_limits<double>::quiet_NaN());
        if (text && std::isnan(results.values.back()))
            table.error(kind.key, "not-a-number"_id, "a number and the unit " + std::string(kind.unit) + " are wanted");
    }
    return results;
}

void write_results(TomlWriter& writer, const record::KeyResults& results) {
    writer.table("state.results");
    writer.entry("program", quoted_text(results.program), "that worked these out");
    const auto kinds = record::result_kinds();
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (!std::isnan(results.values[i]))
            writer.entry(kinds[i].key, quoted_text(record::shown(kinds[i], results.values[i])), kinds[i].name);
}

Step read_step(Reader& table) {
    Step step;
    step.kind = table.need<StepKind>("is", "\"draft\"");
    step.date = table.need<DateText>("date", "\"2026-11-25\"").iso;
    step.by = table.need<std::string>("by", "\"A. Nkemelu\"");
    FieldReader fields(table);
    visit_step_words(fields, step);
    if (!step.sha256.empty() && !is_sha256(step.sha256))
        table.error("sha256", "not-a-seal"_id, "64 digits 0 to 9, a to f are wanted");
    step.lots = read_files(table, "lots");
    step.files = read_files(table, "files");
    if (auto results = table.table("results")) step.results = read_results(*results);
    return step;
}

void write_files(TomlWriter& writer, std::string_view key, const std::vector<record::KeptFile>& files) {
    if (files.empty()) return;
    std::string rows;
    for (const record::KeptFile& file : files)
        rows += "\n    [" + quoted_text(file.name) + ", " + quoted_text(file.sha256) + "],";
    writer.entry(key, "[" + rows + "\n]");
}

/// Whether a revision in one state can be brought to the next; evidence changes nothing and may always come in.
bool can_follow(StepKind before, StepKind now) {
    if (now == StepKind::evidence) return before != StepKind::withdrawn;
    if (now == StepKind::trial) return before == StepKind::draft;
    if (now == StepKind::approved) return before == StepKind::draft || before == StepKind::trial;
    return now == StepKind::withdrawn && before != StepKind::withdrawn;
}

/// Complains of what cannot have come after what stands above it.
void check_order(Reader& table, const record::History& before, const Step& now) {
    if (before.empty()) {
        if (now.kind != StepKind::draft) table.error("is", "cannot-follow"_id, "the first state is always \"draft\"");
        return;
    }
    const Step& last = record::last_change(before);
    if (!can_follow(last.kind, now.kind))
        table.error("is", "cannot-follow"_id,
                    "\"" + std::string(word(now.kind)) + "\" cannot follow \"" + std::string(word(last.kind)) + "\"");
    // Dates as ISO 8601 writes them sort as texts.
    if (!now.date.empty() && now.date < before.back().date)
        table.error("date", "date-out-of-order"_id, "before the date of the state above, " + before.back().date);
}

}  // namespace

record::History read_history(Reader& root) {
    record::History history;
    if (!root.has("state"))
        root.document().error(root.at(), "not-taken-in"_id, "no [[state]] stands below the line of ====",
                              "put the file back as it was, or take the spec in again with `seatload specs add FILE`");
    for (Reader& table : root.tables("state")) {
        Step step = read_step(table);
        if (history.empty() || history.front().kind == StepKind::draft) check_order(table, history, step);
        history.push_back(std::move(step));
    }
    return history;
}

void write_history(TomlWriter& writer, const record::History& history) {
    for (const Step& step : history) {
        writer.next_table("state");
        writer.entry("is", Form<StepKind>::write(step.kind));
        writer.entry("date", quoted_text(step.date));
        writer.entry("by", quoted_text(step.by));
        FieldWriter fields(writer);
        visit_step_words(fields, step);
        write_files(writer, "lots", step.lots);
        write_files(writer, "files", step.files);
        if (step.results) write_results(writer, *step.results);
    }
}

}  // namespace seatload::io
