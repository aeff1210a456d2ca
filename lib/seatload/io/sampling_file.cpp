// SPDX-License-Identifier: MIT
#include <seatload/io/sampling_file.hpp>

#include <charconv>

#include <seatload/core/text.hpp>
#include <seatload/io/reader.hpp>
#include <seatload/io/wire_words.hpp>

namespace seatload::io {
namespace {

using inspection::PlanCell;
using inspection::PlanRow;

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    for (const std::string_view word : split(text, ' '))
        if (!word.empty()) words.push_back(word);
    return words;
}

template <class Number>
std::optional<Number> number_of(std::string_view word) {
    Number number{};
    const char* const end = word.data() + word.size();
    const auto [stop, fault] = std::from_chars(word.data(), end, number);
    if (fault != std::errc{} || stop != end) return std::nullopt;
    return number;
}

std::optional<PlanCell> cell_of(std::string_view word) {
    if (word == "v") return PlanCell{PlanCell::Kind::first_below, 0, 1};
    if (word == "^") return PlanCell{PlanCell::Kind::first_above, 0, 1};
    const std::size_t bar = word.find('/');
    const auto accept = number_of<int>(word.substr(0, bar));
    if (!accept) return std::nullopt;
    if (bar == std::string_view::npos) return PlanCell{PlanCell::Kind::plan, *accept, *accept + 1};
    const auto reject = number_of<int>(word.substr(bar + 1));
    if (!reject || *reject <= *accept) return std::nullopt;
    return PlanCell{PlanCell::Kind::plan, *accept, *reject};
}

std::vector<double> read_aql(Reader& root) {
    std::vector<double> all;
    const std::string text = root.need<std::string>("aql", "\"0.65 1.0\"");
    for (const std::string_view word : words_of(text)) {
        const auto limit = number_of<double>(word);
        if (!limit || (!all.empty() && *limit <= all.back()))
            root.error("aql", "bad-sampling-table"_id,
                       "numbers are wanted that rise, this is \"" + std::string(word) + '"');
        else
            all.push_back(*limit);
    }
    return all;
}

inspection::LetterRow read_letters(RowReader& row) {
    inspection::LetterRow read;
    read.from = row.need<int>(0, "lot size", kPositive);
    const std::string text = row.need<std::string>(1, "letters");
    const auto words = words_of(text);
    if (words.size() != inspection::kLevels)
        row.complain("bad-sampling-table"_id, "a letter for each of seven levels is wanted");
    for (std::size_t i = 0; i < std::min(words.size(), inspection::kLevels); ++i) read.letters[i] = words[i].front();
    row.expect_at_most(2);
    return read;
}

PlanRow read_plans(RowReader& row, std::size_t columns) {
    PlanRow read;
    const std::string letter = row.need<std::string>(0, "letter");
    read.letter = letter.empty() ? '?' : letter.front();
    read.size = row.need<int>(1, "sample size", kPositive);
    const std::string text = row.need<std::string>(2, "cells");
    for (const std::string_view word : words_of(text)) {
        const auto cell = cell_of(word);
        if (!cell) row.complain("bad-sampling-table"_id, "\"" + std::string(word) + "\" is no plan and no arrow");
        read.cells.push_back(cell.value_or(PlanCell{}));
    }
    if (read.cells.size() != columns) row.complain("bad-sampling-table"_id, "there must be a cell for each AQL");
    row.expect_at_most(3);
    return read;
}

/// Every arrow must lead to a plan: one above it, or one below.
void expect_ends(Reader& table, const inspection::PlanTable& plans, std::size_t columns) {
    const auto walk = [&](auto row, auto end, std::size_t column, PlanCell::Kind arrow) {
        for (bool has_plan = false; row != end; ++row) {
            const PlanCell::Kind kind = row->cells[column].kind;
            if (kind == arrow && !has_plan)
                table.error("rows", "bad-sampling-table"_id,
                            std::string("an arrow of letter ") + row->letter + " leads nowhere");
            has_plan = has_plan || kind == PlanCell::Kind::plan;
        }
    };
    for (std::size_t c = 0; c < columns; ++c) {
        walk(plans.rows.begin(), plans.rows.end(), c, PlanCell::Kind::first_above);
        walk(plans.rows.rbegin(), plans.rows.rend(), c, PlanCell::Kind::first_below);
    }
}

void read_plan_table(Reader& root, std::string_view key, std::size_t columns, inspection::PlanTable& plans) {
    auto table = root.need_table(key, "rows = [ ... ]");
    if (!table) return;
    table->allow("note");
    plans.evidence = table->need<wire::Evidence>("evidence", "\"memory\"");
    for (RowReader& row : table->rows("rows")) plans.rows.push_back(read_plans(row, columns));
    if (!root.document().has_error()) expect_ends(*table, plans, columns);
}

}  // namespace

Result<inspection::SamplingTables> read_sampling(std::string_view text, const std::string& file_name) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    inspection::SamplingTables tables;
    {
        Reader root(document);
        for (const std::string_view key : {"description", "source", "date", "format_version"}) root.allow(key);
        tables.aql = read_aql(root);
        if (auto letters = root.need_table("code_letters", "rows = [ ... ]")) {
            for (const std::string_view key : {"evidence", "levels"}) letters->allow(key);
            for (RowReader& row : letters->rows("rows")) tables.letters.push_back(read_letters(row));
        }
        for (const auto severity :
             {inspection::Severity::normal, inspection::Severity::tightened, inspection::Severity::reduced})
            read_plan_table(root, word(severity), tables.aql.size(), tables.plans[static_cast<std::size_t>(severity)]);
    }
    if (document.has_error()) return document.diagnostics();
    return tables;
}

}  // namespace seatload::io
