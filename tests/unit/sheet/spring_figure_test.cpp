// SPDX-License-Identifier: MIT
#include <seatload/sheet/spring_figure.hpp>

#include <regex>

#include <seatload/sheet/coil_outline.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/check.hpp>

#include "drawn_figure.hpp"
#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

Drawing sheet_of(const record::Spec& spec) {
    return spring_sheet({spec, grade_of(spec), tolerances(), paper()}).value();
}

/// Every text of a page, script marks taken out.
std::vector<std::string> texts(const Drawing& page) {
    std::vector<std::string> out;
    for (const Item& item : page.items())
        if (const Text* text = std::get_if<Text>(&item)) out.push_back(plain(text->words));
    return out;
}

const Text* text_that_reads(const Drawing& page, const std::string& words) {
    for (const Item& item : page.items())
        if (const Text* text = std::get_if<Text>(&item); text && plain(text->words) == words) return text;
    return nullptr;
}

/// The scale in the first text that matches; nothing when none does.
std::optional<double> scale_in(const Drawing& page, const std::string& pattern) {
    std::smatch match;
    for (const std::string& text : texts(page))
        if (std::regex_search(text, match, std::regex(pattern))) return std::stod(match[1]) / std::stod(match[2]);
    return std::nullopt;
}

double stated_scale(const Drawing& page) { return scale_in(page, R"(scale (\d+):(\d+))").value(); }
std::optional<double> detail_scale(const Drawing& page) { return scale_in(page, R"(^X \((\d+):(\d+)\)$)"); }

/// Springs whose wire is too fine to be read in a view of the whole spring.
std::vector<Specimen> fine_springs() {
    using enum spring::Ends;
    const char* sh = "EN10270-1-SH";
    std::vector<Specimen> out;
    const auto add = [&](const char* name, const Shape& shape) { out.push_back({name, specimen(shape)}); };
    add("d 0.2, 40 coils", {"ASTM-A228", 0.2, 1.6, 40.0, 16.0, closed, 14.0, 11.0});
    add("d 0.2, wide coils", {"ASTM-A228", 0.2, 3.6, 12.0, 30.0, closed, 22.0, 14.0});
    add("L0/D 12", {sh, 1.2, 12.0, 34.0, 144.0, closed, 120.0, 90.0});
    add("L0/D 20, left hand", {sh, 1.0, 10.0, 40.0, 200.0, closed, 150.0, 100.0, spring::Hand::left});
    add("L0/D 20, ground", {sh, 0.8, 10.0, 40.5, 200.0, closed_ground, 150.0, 100.0});
    add("90 coils", {sh, 0.3, 3.0, 90.25, 100.0, closed, 60.0, 45.0});
    return out;
}

std::vector<Specimen> all_springs() {
    using enum spring::Ends;
    std::vector<Specimen> out = specimens();
    for (Specimen& fine : fine_springs()) out.push_back(std::move(fine));
    out.push_back({"d 8, 2.5 coils", specimen({"EN10270-1-SH", 8.0, 48.0, 4.5, 60.0, closed_ground, 54.0, 50.0})});
    out.push_back({"L0/D 0.3", specimen({"EN10270-1-SH", 1.0, 24.0, 3.5, 7.2, closed, 6.6, 6.2})});
    return out;
}

TEST_CASE("the figure of a sheet gives d, De, L0, coils and hand again at its stated scale", "[sheet]") {
    for (const Specimen& specimen : all_springs()) {
        const spring::Spring& s = specimen.spec.spring;
        INFO(specimen.name);
        const Drawing page = sheet_of(specimen.spec);
        const double scale = stated_scale(page);
        const DrawnFigure figure = drawn_figure(page);
        const Measured found = measured(figure);
        CHECK_THAT(found.outside_diameter / scale, WithinRel(in_mm(s.outside_diameter()), 0.01));
        CHECK_THAT(found.free_length / scale, WithinRel(in_mm(s.free_length), 0.01));
        CHECK_THAT(found.wire_diameter / scale, WithinRel(in_mm(s.wire_diameter), 0.01));
        CHECK_THAT(found.total_coils, WithinRel(s.total_coils, 0.01));
        if (figure.line) continue;  // a single line does not show what lies in front
        const double axis = extent(figure.side).centre().y;
        CHECK(hand(figure.side, axis) == (s.hand == spring::Hand::right ? 1 : -1));
    }
}

TEST_CASE("a simplified picture stands only for wire too thin to be outlined", "[sheet]") {
    // ISO 2162-1 allows the single line (from memory); 0.8 mm leaves half a millimetre of paper between two narrow
    // lines.
    int simplified = 0;
    for (const Specimen& specimen : all_springs()) {
        INFO(specimen.name);
        const Drawing page = sheet_of(specimen.spec);
        const double wire_on_paper = stated_scale(page) * in_mm(specimen.spec.spring.wire_diameter);
        CHECK(drawn_figure(page).line.has_value() == (wire_on_paper < 0.8));
        if (wire_on_paper < 0.8) ++simplified;
    }
    CHECK(simplified >= 2);
}

TEST_CASE("a detail of the end gives wire and outside diameter again at its own scale", "[sheet]") {
    int shown = 0;
    for (const Specimen& specimen : fine_springs()) {
        const spring::Spring& s = specimen.spec.spring;
        INFO(specimen.name);
        const Drawing page = sheet_of(specimen.spec);
        const auto scale = detail_scale(page);
        if (!scale) continue;  // the tables leave it no room
        ++shown;
        CHECK(*scale > stated_scale(page));
        const Pieces detail = drawn_figure(page).detail;
        const Box box = extent(detail);
        const bool whole_end = box.height() > 0.9 * *scale * in_mm(s.outside_diameter());
        if (whole_end) CHECK_THAT(box.height() / *scale, WithinRel(in_mm(s.outside_diameter()), 0.01));
        // The upper edge alone does not reach the axis: measured where its wire runs straightest.
        const auto two = flattest_half_turn(detail, whole_end ? box.centre().y : box.bottom + 0.25 * box.height());
        REQUIRE(two.size() == 2);
        CHECK_THAT(distance_across(two) / *scale, WithinRel(in_mm(s.wire_diameter), whole_end ? 0.01 : 0.02));
        if (whole_end) CHECK(hand(detail, box.centre().y) == (s.hand == spring::Hand::right ? 1 : -1));
    }
    CHECK(shown >= 5);
}

TEST_CASE("the circle in the view and the circle of the detail hold the same part of the spring", "[sheet]") {
    for (const Specimen& specimen : fine_springs()) {
        INFO(specimen.name);
        const Drawing page = sheet_of(specimen.spec);
        if (!detail_scale(page)) continue;
        std::vector<Arc> circles;
        for (const Item& item : page.items())
            if (const Arc* arc = std::get_if<Arc>(&item)) circles.push_back(*arc);
        REQUIRE(circles.size() >= 2);
        const double in_view = circles[0].radius / stated_scale(page);
        CHECK_THAT(circles[1].radius / detail_scale(page).value(), WithinRel(in_view, 1e-9));
        // Its letter stands at the circle, clear of it.
        const Text* letter = text_that_reads(page, "X");
        REQUIRE(letter);
        const Box box = text_box(*letter);
        const double off =
            std::hypot(std::max(0.0, circles[0].centre.x - box.right), std::max(0.0, box.bottom - circles[0].centre.y));
        CHECK(off > circles[0].radius - 0.8);
        CHECK(off < circles[0].radius + 6.0);
    }
}

/// A figure as a caller would ask for it, with words of about the usual length.
SpringFigure figure_of(const record::Spec& spec) {
    SpringFigure out{spec.spring, in_mm(spec.seated.length), in_mm(spec.full_travel.length), !spec.bore_rules, {}};
    out.words.wire_diameter = "(Ø0.80)";
    out.words.coil_diameter = "Ø28.20 ± 0.30";
    out.words.free_length = "(L0 = 19.3)";
    out.words.seated = "L1 = 15";
    out.words.full_travel = "L2 = 9.5";
    if (!spring::are_ground(spec.spring.ends)) return out;
    out.words.squareness = with_sub("e", "1");
    out.words.parallelism = with_sub("e", "2");
    return out;
}

Drawing drawn(const SpringFigure& figure, const Box& box) {
    Drawing page(400.0, 400.0);
    draw_figure(page, figure, box, figure_scale(figure, box));
    return page;
}

TEST_CASE("a detail is drawn where the wire is too fine to read and there is room for it", "[sheet]") {
    const Box roomy{30.0, 30.0, 203.0, 104.0};
    for (const Specimen& specimen : fine_springs()) {
        INFO(specimen.name);
        const SpringFigure figure = figure_of(specimen.spec);
        const Scale scale = figure_scale(figure, roomy);
        const auto detail = detail_scale(drawn(figure, roomy));
        REQUIRE(detail.has_value());
        CHECK(*detail > scale.factor());
        // ISO 5455: 1, 2 or 5 times a power of ten.
        const double digit = *detail / std::pow(10.0, std::floor(std::log10(*detail) + 1e-9));
        CHECK((std::abs(digit - 1.0) < 1e-9 || std::abs(digit - 2.0) < 1e-9 || std::abs(digit - 5.0) < 1e-9));
        // A box with hardly more room than the views and their dimensions take.
        const double across = scale.factor() * in_mm(figure.spring.free_length + figure.spring.outside_diameter());
        const double upwards = scale.factor() * in_mm(figure.spring.outside_diameter());
        const Box tight{30.0, 30.0, 30.0 + across + 34.0, 30.0 + upwards + 30.0};
        CHECK(figure_scale(figure, tight).factor() == scale.factor());
        CHECK_FALSE(detail_scale(drawn(figure, tight)).has_value());
    }
    CHECK_FALSE(detail_scale(drawn(figure_of(specimen(latch())), roomy)).has_value());
}

TEST_CASE("squareness and parallelism are shown at ground ends and nowhere else", "[sheet]") {
    for (const Specimen& specimen : all_springs()) {
        INFO(specimen.name);
        const Drawing page = sheet_of(specimen.spec);
        const bool ground = spring::are_ground(specimen.spec.spring.ends);
        const Text* e1 = text_that_reads(page, "e1");
        const Text* e2 = text_that_reads(page, "e2");
        REQUIRE((e1 != nullptr) == ground);
        REQUIRE((e2 != nullptr) == ground);
        if (!ground) continue;
        // At the far end: e1 above the side, e2 under it (common practice, no source).
        const DrawnFigure figure = drawn_figure(page);
        const Box view = figure.line ? extent({{{}, {*figure.line}}}) : extent(figure.side);
        CHECK(text_box(*e1).left > view.right);
        CHECK(text_box(*e1).bottom > view.top);
        CHECK(text_box(*e2).left > view.right);
        CHECK(text_box(*e2).top < view.centre().y);
    }
}

TEST_CASE("the side may lean out from the base plate and the end tilt, but the spring is drawn true", "[sheet]") {
    const Box box{30.0, 30.0, 203.0, 104.0};
    SpringFigure figure = figure_of(specimen(latch()));
    const Drawing with = drawn(figure, box);
    const Box view = extent(drawn_figure(with).side);
    const double scale = figure_scale(figure, box).factor();
    CHECK_THAT(view.width(), WithinRel(scale * 19.3, 1e-6));
    CHECK_THAT(view.height(), WithinRel(scale * 8.2, 0.001));
    std::vector<Line> leaning;
    for (const Item& item : with.items())
        if (const Line* line = std::get_if<Line>(&item);
            line && line->kind == LineKind::extreme && line->points.size() == 2)
            leaning.push_back(*line);
    REQUIRE(leaning.size() == 2);
    // One leaves the upper outer edge at the base, the other the upper outer edge at the far end.
    CHECK_THAT(leaning[0].points[0].x, WithinAbs(view.left, 1e-6));
    CHECK_THAT(leaning[0].points[0].y, WithinAbs(view.top, 0.05));
    CHECK_THAT(leaning[0].points[1].x, WithinAbs(view.right, 1e-6));
    CHECK(leaning[0].points[1].y > view.top + 1.0);
    CHECK_THAT(leaning[1].points[0].x, WithinAbs(view.right, 1e-6));
    CHECK_THAT(leaning[1].points[1].y, WithinAbs(view.bottom, 0.05));
    CHECK(leaning[1].points[1].x > view.right + 1.0);

    figure.words.squareness.clear();
    figure.words.parallelism.clear();
    const Drawing without = drawn(figure, box);
    for (const Item& item : without.items())
        if (const Line* line = std::get_if<Line>(&item); line && line->kind == LineKind::extreme)
            CHECK(line->points.size() != 2);
}

TEST_CASE("a figure stays inside its box on any paper, and no line crosses its lettering", "[sheet]") {
    // Of a wide sheet, a narrow one and an upright one.
    for (const Box& box : {Box{30.0, 30.0, 203.0, 104.0}, Box{30.0, 60.0, 190.0, 116.0}, Box{30.0, 30.0, 140.0, 180.0}})
        for (const Specimen& specimen : all_springs()) {
            INFO(specimen.name << ", box " << box.width() << " by " << box.height());
            const Drawing page = drawn(figure_of(specimen.spec), box);
            const Box room{box.left - 0.01, box.bottom - 0.6, box.right + 0.01, box.top + 0.01};
            for (const Item& item : page.items()) {
                if (const Text* text = std::get_if<Text>(&item)) {
                    INFO(plain(text->words));
                    CHECK(room.contains(text_box(*text)));
                }
                if (const Line* line = std::get_if<Line>(&item)) CHECK(room.contains(extent({{{}, {line->points}}})));
            }
            std::string faults;
            for (const std::string& fault : layout_faults(page)) faults += fault + "\n";
            CHECK(faults == "");
        }
}

}  // namespace
}  // namespace seatload::test
