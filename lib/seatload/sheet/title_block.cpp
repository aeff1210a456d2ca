// SPDX-License-Identifier: MIT
#include <seatload/sheet/title_block.hpp>

#include <utility>

#include <fmt/format.h>

#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kTitleRow = 9.0;
constexpr double kTitlePad = 1.0;
constexpr double kFirstAngleRoom = 20.5;  ///< of the sign for first-angle projection, with its margins
constexpr double kTitleNarrowest = 0.55;  ///< of the natural width of letters
constexpr double kLegible = 0.8;          ///< narrower than this a title goes on two lines
constexpr double kBesideShare = 0.4;      ///< of the width, the most that a supplementary title takes beside a title

/// The text as it is, or in plain letters of the least height, narrowed, when it would have to be narrowed a good deal.
Text roomy_or_plain(Text text, double room) {
    if (text_width(text) <= 1.1 * room) return fitted(text, room);
    text.height = kLettering;
    text.face = Face::regular;
    return fitted(text, room, kTitleNarrowest);
}

/// A field: its name above, what it says below.
void draw_field(Drawing& drawing, const Box& box, std::string_view name, const std::string& value,
                bool important = false) {
    drawing.box(box);
    drawing.add(fitted({{box.left + kTitlePad, box.top - 3.4}, std::string(name)}, box.width() - 2.0 * kTitlePad,
                       kTitleNarrowest));
    const Face face = important ? Face::bold : Face::regular;
    drawing.add(roomy_or_plain({{box.left + kTitlePad, box.bottom + 1.2}, value, kLettering, Align::left, face},
                               box.width() - 2.0 * kTitlePad));
}

/// The legal owner, which must stand there whole: on two lines instead of the field's name when it is long.
void draw_owner(Drawing& drawing, const Box& box, const std::string& name, const std::string& owner) {
    const double room = box.width() - 2.0 * kTitlePad;
    if (text_width(owner, kLettering) * kTitleNarrowest <= room) {
        draw_field(drawing, box, name, owner, true);
        return;
    }
    drawing.box(box);
    auto lines = wrapped(owner, room, kLettering, Face::regular, kTitleNarrowest);
    for (std::size_t i = 2; i < lines.size(); ++i) lines[1] += " " + lines[i];
    double y = box.top - 3.6;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, lines.size()); ++i, y -= 3.9)
        drawing.add(fitted({{box.left + kTitlePad, y}, lines[i]}, room, kTitleNarrowest));
}

/// The sign for first-angle projection (ISO 5456-2): a cone frustum, its larger end on the left, and its left-hand view
/// to the right.
void draw_first_angle(Drawing& drawing, Point centre) {
    const Point frustum = centre + Point{-4.5, 0.0};
    const Point view = centre + Point{4.5, 0.0};
    drawing.add(Line{{frustum + Point{-3.5, -2.8}, frustum + Point{3.5, -1.4}, frustum + Point{3.5, 1.4},
                      frustum + Point{-3.5, 2.8}},
                     LineKind::wide,
                     true});
    drawing.add(Arc{view, 1.4, LineKind::wide});
    drawing.add(Arc{view, 2.8, LineKind::wide});
    drawing.line(frustum + Point{-4.5, 0.0}, view + Point{3.8, 0.0}, LineKind::axis);
    drawing.line(view + Point{0.0, -3.6}, view + Point{0.0, 3.6}, LineKind::axis);
}

/// A title too long for one line: on two, the supplementary title beside the second.
void draw_long_title(Drawing& drawing, const Box& box, const TitleBlock& block) {
    const double room = box.width() - 2.0 * kTitlePad;
    const auto lines = wrapped(block.title, room, kLettering, Face::bold, kLegible);
    std::string rest;
    for (std::size_t i = 1; i < lines.size(); ++i) rest += (rest.empty() ? "" : " ") + lines[i];
    Text beside{{box.right - kTitlePad, box.bottom + 1.2}, block.supplementary_title, kLettering, Align::right};
    beside = fitted(beside, kBesideShare * room, kTitleNarrowest);
    const double taken = block.supplementary_title.empty() ? 0.0 : text_width(beside) + 2.0;
    Text first{{box.left + kTitlePad, box.top - 3.7}, lines[0], kLettering, Align::left, Face::bold};
    first.squeeze = kLegible;
    drawing.add(first);
    drawing.add(beside);
    drawing.add(fitted({{box.left + kTitlePad, box.bottom + 1.2}, rest, kLettering, Align::left, Face::bold},
                       room - taken, kTitleNarrowest));
}

void draw_title(Drawing& drawing, const Box& box, const TitleBlock& block) {
    drawing.box(box);
    const double room = box.width() - 2.0 * kTitlePad;
    if (text_width(block.title, kLettering) * kLegible > room) return draw_long_title(drawing, box, block);
    drawing.add(
        roomy_or_plain({{box.left + kTitlePad, box.top - 4.2}, block.title, 3.0, Align::left, Face::bold}, room));
    drawing.add(fitted({{box.left + kTitlePad, box.bottom + 1.2}, block.supplementary_title}, room, kTitleNarrowest));
}

void draw_scale(Drawing& drawing, const Box& box, const std::string& name, const TitleBlock& block) {
    drawing.box(box);
    drawing.add(
        fitted(Text{{box.left + kTitlePad, box.top - 3.4}, name}, box.width() - kFirstAngleRoom, kTitleNarrowest));
    drawing.add(Text{{box.left + kTitlePad, box.bottom + 1.2}, *block.scale, kLettering, Align::left, Face::bold});
    draw_first_angle(drawing, {box.right - 10.0, box.centre().y});
}

}  // namespace

double title_block_width(const Drawing& drawing) {
    constexpr double kTooNarrow = 20.0;  // beside the block, for anything to stand in
    const double whole = drawing_space(drawing.width(), drawing.height()).width();
    return whole - kTitleBlockWidth < kTooNarrow ? whole : kTitleBlockWidth;
}

TitleBlock title_block_of(const demand::Identity& identity) {
    TitleBlock block;
    block.legal_owner = identity.owner;
    block.identification_number = identity.number;
    block.revision = identity.revision;
    block.date_of_issue = identity.date;
    block.creator = identity.creator;
    block.approver = identity.approver;
    return block;
}

TitleBlock title_block_of(const demand::Identity& identity, std::string title, std::string document_type,
                          std::string document_status) {
    TitleBlock block = title_block_of(identity);
    block.title = std::move(title);
    block.document_type = std::move(document_type);
    block.document_status = std::move(document_status);
    return block;
}

void draw_title_block(Drawing& drawing, Point lower_right, const TitleBlock& block, const Wording& words) {
    const double wider = title_block_width(drawing) - kTitleBlockWidth;  // which the first field of each row takes
    const double left = lower_right.x - kTitleBlockWidth;
    const double bottom = lower_right.y;
    const auto cell = [&](int row, double from, double width) {
        return Box{left + from - (from == 0.0 ? wider : 0.0), bottom + kTitleRow * (row - 1), left + from + width,
                   bottom + kTitleRow * row};
    };
    draw_owner(drawing, cell(3, 0.0, 52.0), words.say("title_block.legal_owner"), block.legal_owner);
    draw_title(drawing, cell(3, 52.0, block.scale ? 94.0 : 128.0), block);
    if (block.scale) draw_scale(drawing, cell(3, 146.0, 34.0), words.say("title_block.scale"), block);
    draw_field(drawing, cell(2, 0.0, 44.0), words.say("title_block.creator"), block.creator);
    draw_field(drawing, cell(2, 44.0, 44.0), words.say("title_block.approval_person"), block.approver);
    const bool has_status = !block.document_status.empty();
    draw_field(drawing, cell(2, 88.0, has_status ? 40.0 : 76.0), words.say("title_block.document_type"),
               block.document_type);
    if (has_status)
        draw_field(drawing, cell(2, 128.0, 36.0), words.say("title_block.document_status"), block.document_status);
    draw_field(drawing, cell(2, 164.0, 16.0), words.say("title_block.language"), words.language());
    draw_field(drawing, cell(1, 0.0, 70.0), words.say("title_block.identification_number"), block.identification_number,
               true);
    draw_field(drawing, cell(1, 70.0, 26.0), words.say("title_block.revision"), block.revision, true);
    draw_field(drawing, cell(1, 96.0, 46.0), words.say("title_block.date_of_issue"), block.date_of_issue);
    draw_field(drawing, cell(1, 142.0, 38.0), words.say("title_block.sheet_of_sheets"),
               fmt::format("{} / {}", block.sheet, block.sheets));
    drawing.box({left - wider, bottom, lower_right.x, bottom + kTitleBlockHeight}, LineKind::wide);
}

}  // namespace seatload::sheet
