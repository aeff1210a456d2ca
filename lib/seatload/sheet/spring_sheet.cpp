// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_sheet.hpp>

#include <fmt/format.h>

#include <array>

#include <seatload/core/text.hpp>
#include <seatload/sheet/columns.hpp>
#include <seatload/sheet/complaint.hpp>
#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/frame.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/load_diagram.hpp>
#include <seatload/sheet/operating_limits.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/sheet_entries.hpp>
#include <seatload/sheet/spec_attachment.hpp>
#include <seatload/sheet/spring_figure.hpp>
#include <seatload/sheet/terms.hpp>
#include <seatload/sheet/title_block.hpp>
#include <seatload/sheet/word_wrap.hpp>

namespace seatload::sheet {
namespace {

constexpr double kHeadingRoom = 6.0;  ///< above the diagram
constexpr double kFigureTop = 1.5;    ///< above the figure, whose heading stands beside its leader
constexpr double kLegendHeight = 5.2;
constexpr double kLinePitch = 4.1;

constexpr double kUsualShare = 0.648;
constexpr double kWideShare = 0.76;  ///< for a figure that gains a step of scale by it

/// How the sheet is shared out between figure, diagram and tables.
struct Sharing {
    double figure_height;
    double squeeze;                     ///< of the letters in the tables
    double figure_share = kUsualShare;  ///< of the width; the rest is the diagram's
};
// In order of liking; of those in which all entries find room, the one with the largest scale is taken.
constexpr std::array kFigureShares{kUsualShare, kWideShare};
constexpr std::array kSqueezes{1.0, 0.95, 0.9, 0.86};
constexpr double kTallestFigure = 76.0;
constexpr double kLowestFigure = 56.0;
constexpr double kFigureStep = 1.0;
/// For sheets with many notes: the first in which all entries find room is taken.
constexpr std::array kTightSharings{Sharing{56.0, 0.88}, Sharing{52.0, 0.84}, Sharing{48.0, 0.8}, Sharing{44.0, 0.78}};

SpringFigure figure(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const auto shown = [](bool adjustable, const std::string& words) { return adjustable ? reference(words) : words; };
    SpringFigure out{spec.spring, in_mm(spec.seated.length), in_mm(spec.full_travel.length), !spec.bore_rules, {}};
    out.words.wire_diameter = shown(facts.wire_is_adjustable(), "Ø" + wire_number(spec.spring.wire_diameter));
    out.words.coil_diameter = shown(facts.diameter_is_adjustable(), "Ø" + coil_diameter(facts));
    out.words.free_length = shown(facts.may_adjust(record::Adjustable::free_length),
                                  symbol("L", "0") + " = " + number(spec.spring.free_length));
    out.words.seated = symbol("L", "1") + " = " + number(spec.seated.length);
    out.words.full_travel = symbol("L", "2") + " = " + number(spec.full_travel.length);
    if (!spring::are_ground(spec.spring.ends)) return out;
    out.words.squareness = symbol("e", "1");
    out.words.parallelism = symbol("e", "2");
    return out;
}

DiagramLoad diagram_load(const record::LoadAtLength& load, const std::optional<Force>& grade_tolerance,
                         std::string_view index) {
    DiagramLoad out{
        in_mm(load.length), in_newton(load.nominal), in_newton(load.plus), in_newton(load.minus), {}, {}, {}};
    if (grade_tolerance) out.grade_tolerance = in_newton(*grade_tolerance);
    out.length_words = symbol("L", index) + " " + number(load.length);
    out.load_words = symbol("F", index) + " " + limits(load).nominal;
    return out;
}

/// Where the spring buckles and where its stress reaches the limit.
void add_limits(LoadDiagram& diagram, const Facts& facts) {
    if (const auto length = buckling_length(facts)) {
        diagram.buckling_length = in_mm(*length);
        diagram.buckling_words = symbol("L", "K") + " " + reference(trimmed(in_mm(*length), 2));
        diagram.words.buckling = symbol("L", "K") + " buckling";
    }
    const Force force = permissible_load(facts);
    diagram.permissible_force = in_newton(force);
    diagram.permissible_words = symbol("F", "τ") + " " + reference(significant(in_newton(force), 4));
    diagram.permissible_above_words = diagram.permissible_words + " above";
    diagram.words.permissible = symbol("F", "τ") + " stress limit";
}

LoadDiagram diagram(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    const auto force = [](std::string_view index, const Force& f) {
        return symbol("F", index) + " " + reference(significant(in_newton(f), 4));
    };
    const auto length = [](std::string_view index, const Length& l) {
        return symbol("L", index) + " " + reference(trimmed(in_mm(l), 2));
    };
    LoadDiagram out;
    out.free_length = in_mm(facts.spec.spring.free_length);
    out.rate = in_newton_per_mm(e.rate);
    out.seated = diagram_load(facts.spec.seated, facts.seated_grade_tolerance, "1");
    out.full_travel = diagram_load(facts.spec.full_travel, facts.full_travel_grade_tolerance, "2");
    out.smallest_length = in_mm(e.smallest_length);
    out.solid_length = in_mm(e.solid_length);
    out.free_words = facts.may_adjust(record::Adjustable::free_length)
                         ? length("0", facts.spec.spring.free_length)
                         : symbol("L", "0") + " " + number(facts.spec.spring.free_length);
    out.smallest_words = length("n", e.smallest_length);
    out.smallest_load_words = force("n", e.at_smallest_length.load);
    out.solid_words = length("c", e.solid_length);
    out.solid_load_words = force("c", e.at_solid.load);
    add_limits(out, facts);
    return out;
}

Box figure_box(const Box& upper, Sharing sharing) {
    return {upper.left, upper.bottom, upper.left + sharing.figure_share * upper.width(), upper.top - kFigureTop};
}

void draw_upper_part(Drawing& drawing, const Facts& facts, const Box& box, Sharing sharing, Scale scale) {
    const double split = figure_box(box, sharing).right;
    const double head = box.top - 4.6;
    drawing.line({split, box.bottom}, {split, box.top});
    drawing.line({box.left, box.bottom}, {box.right, box.bottom});
    drawing.add(
        Text{.at = {box.left + 2.0, head},
             .words = fmt::format("Free spring, {} hand, scale {}", spring::word(facts.spec.spring.hand), scale.text()),
             .face = Face::bold});
    drawing.add(Text{.at = {split + 2.0, head}, .words = "Load and length", .face = Face::bold});
    drawing.add(Text{{box.right - 2.0, head},
                     "R " + reference(significant(in_newton_per_mm(facts.values.rate), 4) + " N/mm"),
                     kLettering,
                     Align::right});
    draw_figure(drawing, figure(facts), figure_box(box, sharing), scale);
    draw_load_diagram(drawing, {split + 2.0, box.bottom + 0.5, box.right - 2.0, box.top - kHeadingRoom + 0.5},
                      diagram(facts));
}

void draw_legend(Drawing& drawing, const Box& box) {
    const double y = box.bottom + 1.4;
    const std::array<std::string, 4> pieces{
        std::string(sign(Status::required)) + " required and inspected", "( ) reference, not inspected",
        std::string(sign(Status::adjustable)) + " the maker may adjust", "lengths in mm"};
    double x = box.left + 2.0;
    for (const std::string& piece : pieces) {
        drawing.add(Text{{x, y}, piece});
        x += text_width(piece, kLettering) + 9.0;
    }
    drawing.line({box.left, box.bottom}, {box.right, box.bottom});
}

void draw_caution(Drawing& drawing, const Box& box) {
    double y = box.top - 4.2;
    drawing.line({box.left, box.top}, {box.right, box.top}, LineKind::wide);
    drawing.add(Text{.at = {box.left + 2.0, y}, .words = "Caution", .face = Face::bold});
    for (const std::string& line : wrapped(caution(), box.width() - 4.0, kLettering, Face::regular, 0.95)) {
        y -= kLinePitch;
        drawing.add(Text{.at = {box.left + 2.0, y}, .words = line, .squeeze = 0.95});
    }
}

TitleBlock title_block(const Facts& facts, const SheetInput& input, Scale scale) {
    const demand::Identity& id = facts.spec.identity;
    TitleBlock block;
    block.legal_owner = id.owner;
    block.title = title(facts.spec);
    block.supplementary_title = supplementary_title(facts.spec);
    block.identification_number = drawing_number(facts.spec);
    block.revision = id.revision;
    block.date_of_issue = id.date;
    block.creator = id.creator;
    block.approver = id.approver;
    block.document_type = "component drawing";
    // One of several to choose from is not yet the one to be made.
    if (!facts.spec.alternative.empty()) block.document_status = "for quotation";
    block.sheet = input.page;
    block.sheets = input.pages;
    block.scale = scale.text();
    return block;
}

Box upper_part(const Box& space, Sharing sharing) {
    return {space.left, space.top - sharing.figure_height, space.right, space.top};
}

Scale scale_of(const Facts& facts, Sharing sharing) {
    const Drawing page = a4_landscape();
    return figure_scale(figure(facts),
                        figure_box(upper_part(drawing_space(page.width(), page.height()), sharing), sharing));
}

/// A sheet shared out in one way.
struct Arranged {
    Drawing drawing;
    Scale scale;
};

/// Nothing when an entry found no room.
std::optional<Arranged> arranged(const Facts& facts, const SheetInput& input, const Entries& entries, Sharing sharing) {
    Drawing drawing = a4_landscape();
    const Box space = drawing_space(drawing.width(), drawing.height());
    const Box upper = upper_part(space, sharing);
    const Box legend{space.left, upper.bottom - kLegendHeight, space.right, upper.bottom};
    const Box body{space.left, space.bottom + kTitleBlockHeight + 0.5, space.right, legend.bottom - 0.8};
    const Columns columns{body, 3, sharing.squeeze};
    if (columns.draw(drawing, entries) < entries.size()) return std::nullopt;
    const Scale scale = scale_of(facts, sharing);
    draw_frame(drawing);
    draw_upper_part(drawing, facts, upper, sharing, scale);
    draw_legend(drawing, legend);
    draw_title_block(drawing, {space.right, space.bottom}, title_block(facts, input, scale));
    draw_caution(drawing, {space.left, space.bottom, space.right - kTitleBlockWidth, space.bottom + kTitleBlockHeight});
    return Arranged{std::move(drawing), scale};
}

std::optional<Arranged> best_arrangement(const Facts& facts, const SheetInput& input, const Entries& entries) {
    std::optional<Arranged> best;
    for (const double share : kFigureShares)
        for (const double squeeze : kSqueezes)
            for (double height = kTallestFigure; height >= kLowestFigure; height -= kFigureStep) {
                const Sharing sharing{height, squeeze, share};
                if (best && scale_of(facts, sharing).factor() <= best->scale.factor()) continue;
                if (auto sheet = arranged(facts, input, entries, sharing)) best = std::move(sheet);
            }
    for (const Sharing& sharing : kTightSharings)
        if (!best) best = arranged(facts, input, entries, sharing);
    return best;
}

}  // namespace

Result<Drawing> spring_sheet(const SheetInput& input) {
    const auto known = facts(input.spec, input.grade, input.tolerances, input.paper);
    if (!known) return known.error();
    if (auto best = best_arrangement(*known, input, sheet_entries(*known)))
        return {std::move(best->drawing), known.error()};
    return error("the notes are longer than the sheet has room for", "shorten them, or put some on another paper");
}

Result<std::string> spring_sheet_pdf(const SheetInput& input) {
    const auto drawing = spring_sheet(input);
    if (!drawing) return drawing.error();
    Diagnostics ignored;  // the same texts were complained of by spring_sheet()
    const record::Spec spec = printable(input.spec, ignored);
    std::vector<Attachment> attached;
    if (!input.spec_text.empty()) attached.push_back(spec_attachment(input.spec, input.spec_text));
    auto bytes = write_pdf({&*drawing, 1},
                           {title(spec), spec.identity.owner, "Drawing-and-tolerance sheet", marks_of(attached)},
                           attached);
    if (!bytes) return bytes.error();
    return {std::move(bytes).value(), drawing.error()};
}

}  // namespace seatload::sheet
