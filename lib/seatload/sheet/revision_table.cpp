// SPDX-License-Identifier: MIT
#include <seatload/sheet/revision_table.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kRevisionPitch = 3.8;
constexpr double kRowPad = 0.6;
constexpr double kRevisionPad = 1.0;
constexpr double kRevisionNarrowest = 0.6;
constexpr double kRevisionWide = 120.0;  ///< from this width on, the columns are roomy
constexpr double kChangeSqueeze = 0.9;
constexpr std::size_t kMostLines = 3;  ///< of one change

/// Of index, date, change and by.
std::array<double, 4> widths(double width) {
    std::array<double, 4> out =
        width >= kRevisionWide ? std::array{18.0, 26.0, 0.0, 36.0} : std::array{12.0, 21.0, 0.0, 18.0};
    out[2] = width - out[0] - out[1] - out[3];
    return out;
}

}  // namespace

/// What was changed; the last line is narrowed, and cut in the end, when it must hold the rest.
std::vector<std::string> RevisionTable::change_lines(const std::string& change) const {
    std::vector<std::string> lines =
        wrapped(change, widths_[2] - 2.0 * kRevisionPad, kLettering, Face::regular, kChangeSqueeze);
    for (std::size_t i = kMostLines; i < lines.size(); ++i) lines[kMostLines - 1] += " " + lines[i];
    lines.resize(std::min(lines.size(), kMostLines));
    return lines;
}

RevisionTable::RevisionTable(const record::Spec& spec, const Wording& words, std::size_t most, double width)
    : widths_(widths(width)) {
    head_ = {words.say("revisions.index"),
             words.say("revisions.date"),
             {words.say("revisions.change")},
             words.say("revisions.by")};
    const std::size_t count = spec.revisions.size();
    const std::size_t first = count > most ? count - most : 0;
    for (std::size_t i = first; i < count; ++i) {
        const demand::Revision& revision = spec.revisions[i];
        rows_.push_back({revision.index, revision.date, change_lines(revision.change), revision.by});
    }
    if (first > 0) head_.change = {words.say("revisions.change_cut", {{"count", std::to_string(first)}})};
    const demand::Identity& id = spec.identity;
    if (rows_.empty() && !(id.revision.empty() && id.date.empty())) rows_.push_back({id.revision, id.date, {""}, ""});
}

double RevisionTable::height(const Row& row) const {
    return kRevisionPitch * static_cast<double>(row.change.size()) + kRowPad;
}

double RevisionTable::height() const {
    if (rows_.empty()) return 0.0;
    double sum = height(head_);
    for (const Row& row : rows_) sum += height(row);
    return sum;
}

void RevisionTable::draw(Drawing& drawing, Point lower_right) const {
    if (rows_.empty()) return;
    double left = lower_right.x;
    for (const double width : widths_) left -= width;
    double top = lower_right.y + height();
    drawing.box({left, lower_right.y, lower_right.x, top}, LineKind::wide);
    double x = left;
    for (std::size_t column = 0; column + 1 < widths_.size(); ++column) {
        x += widths_[column];
        drawing.line({x, lower_right.y}, {x, top});
    }
    const auto draw_row = [&](const Row& row, bool is_head) {
        double from = left;
        const std::array<std::vector<std::string>, 4> cells{std::vector{row.index}, std::vector{row.date}, row.change,
                                                            std::vector{row.by}};
        for (std::size_t column = 0; column < cells.size(); from += widths_[column++]) {
            double y = top - 0.5 * kRowPad;
            for (const std::string& words : cells[column]) {
                y -= kRevisionPitch;
                const bool is_index = column == 0 && !is_head;
                const bool is_change = column == 2 && !is_head;
                const Text text{.at = {from + kRevisionPad, y + 0.75},
                                .words = words,
                                .face = is_index ? Face::bold : Face::regular,
                                .squeeze = is_change ? kChangeSqueeze : 1.0};
                drawing.add(fitted(text, widths_[column] - 2.0 * kRevisionPad, kRevisionNarrowest));
            }
        }
        top -= height(row);
    };
    draw_row(head_, true);
    for (const Row& row : rows_) {
        drawing.line({left, top}, {lower_right.x, top});
        draw_row(row, false);
    }
}

}  // namespace seatload::sheet
