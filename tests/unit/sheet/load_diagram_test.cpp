// SPDX-License-Identifier: MIT
#include <seatload/sheet/load_diagram.hpp>

#include <numbers>

#include <seatload/sheet/facts.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/sheet_diagram.hpp>
#include <support/check.hpp>

#include "layout_check.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

using namespace sheet;

LoadDiagram diagram_of(const record::Spec& spec) {
    return sheet_diagram(facts(spec, grade_of(spec), tolerances(), paper()).value());
}

constexpr Box kUsualBox{40.0, 40.0, 134.0, 106.0};

/// A diagram on a page of its own, and what a place on the paper stands for.
class Drawn {
  public:
    explicit Drawn(const LoadDiagram& diagram, const Box& box = kUsualBox) : page(300.0, 300.0) {
        draw_load_diagram(page, box, diagram);
        std::vector<Point> discs;
        for (const Item& item : page.items())
            if (const Disc* disc = std::get_if<Disc>(&item)) discs.push_back(disc->centre);
        REQUIRE(discs.size() == 2);
        seated_ = discs[0];
        full_travel_ = discs[1];
        first_ = diagram.seated;
        second_ = diagram.full_travel;
    }

    /// By the two points whose length and load are ordered.
    double length_at(double x) const {
        return first_.length + (x - seated_.x) / (full_travel_.x - seated_.x) * (second_.length - first_.length);
    }
    double force_at(double y) const {
        return first_.nominal + (y - seated_.y) / (full_travel_.y - seated_.y) * (second_.nominal - first_.nominal);
    }

    /// Limit lines longer than the samples in the key.
    std::vector<Line> limit_lines(bool upright) const {
        std::vector<Line> out;
        for (const Item& item : page.items()) {
            const Line* line = std::get_if<Line>(&item);
            if (!line || line->kind != LineKind::extreme) continue;
            const Point way = line->points[1] - line->points[0];
            if (std::abs(upright ? way.y : way.x) > 12.0) out.push_back(*line);
        }
        return out;
    }

    bool reads(const std::string& words) const {
        for (const Item& item : page.items())
            if (const Text* text = std::get_if<Text>(&item); text && plain(text->words) == words) return true;
        return false;
    }

    /// Whether a symbol stands alone, before its value or beside another.
    bool names(const std::string& symbol) const {
        for (const Item& item : page.items())
            if (const Text* text = std::get_if<Text>(&item))
                for (std::string words = ", " + plain(text->words) + " "; !words.empty(); words.pop_back())
                    if (words.ends_with(", " + symbol + " ") || words.ends_with(", " + symbol + ",")) return true;
        return false;
    }

    Drawing page;

  private:
    Point seated_;
    Point full_travel_;
    DiagramLoad first_;
    DiagramLoad second_;
};

/// Spring B of the check values (d 2, D 16, n 12.5, L0 100; E 206 000, G 81 500 MPa), on seats with that coefficient.
record::Spec spring_b(double seating_coefficient) {
    record::Spec spec = specimen({"EN10270-1-SH", 2.0, 16.0, 14.5, 100.0, spring::Ends::closed_ground, 80.0, 60.0});
    spec.limits.seating_coefficient = seating_coefficient;
    spec.space.seats = demand::Seats::fixed;
    return spec;
}

TEST_CASE("the buckling line stands at the length where buckling begins", "[sheet]") {
    // EN 13906-1 cl. 9.14 with nu 0.5, 0.7 and 1: sK = 36.0764, 15.926 and 7.38196 mm; independently computed values.
    struct Row {
        double coefficient;
        double deflection;
    };
    for (const Row& row : {Row{0.5, 36.0764}, Row{0.7, 15.926}, Row{1.0, 7.38196}}) {
        INFO("nu " << row.coefficient);
        const Drawn drawn(diagram_of(spring_b(row.coefficient)));
        const auto lines = drawn.limit_lines(true);
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].points[0].x == lines[0].points[1].x);
        CHECK_THAT(drawn.length_at(lines[0].points[0].x), WithinAbs(100.0 - row.deflection, 5e-4 * row.deflection));
        CHECK(drawn.reads("LK buckling"));
    }
}

TEST_CASE("no buckling line stands where the spring cannot buckle or the line would be past solid", "[sheet]") {
    // L0/D 1.25 is below 2.58, the least slenderness at which it can buckle with nu = 1 (EN 13906-1 cl. 9.14).
    record::Spec stocky = specimen({"EN10270-1-SH", 2.0, 16.0, 5.5, 20.0, spring::Ends::closed_ground, 17.0, 15.0});
    record::Spec guided = spring_b(0.5);
    guided.space.seats = demand::Seats::guided;
    // With nu = 0.415 spring B would buckle only when pressed shorter than solid, by the same clause:
    const record::Spec past_solid = spring_b(0.415);
    const double m = 81500.0 / 206000.0;
    const double q = std::numbers::pi * 16.0 / (0.415 * 100.0);
    const double deflection = 50.0 / (1.0 - m) * (1.0 - std::sqrt(1.0 - (1.0 - m) / (0.5 + m) * q * q));
    REQUIRE(100.0 - deflection < diagram_of(past_solid).solid_length);
    for (const record::Spec& spec : {stocky, guided, past_solid}) {
        const Drawn drawn(diagram_of(spec));
        CHECK(drawn.limit_lines(true).empty());
        CHECK_FALSE(drawn.reads("LK buckling"));
    }
}

TEST_CASE("the stress limit stands at the force that brings the stress to it", "[sheet]") {
    // tau = k 8 F D/(pi d^3) (EN 13906-1 cl. 9.5); k by cl. 7 or by Wahl where the limit counts with it. The share is
    // given so that the limit does not hang on a table: 40 % of the 1980 MPa that EN 10270-1 SH wire of 2 mm has.
    struct Row {
        demand::StressFactor factor;
        double k;
    };
    for (const Row& row : {Row{demand::StressFactor::none, 1.0}, Row{demand::StressFactor::bergstraesser, 8.5 / 7.25},
                           Row{demand::StressFactor::wahl, 31.0 / 28.0 + 0.615 / 8.0}}) {
        record::Spec spec = spring_b(0.5);
        spec.limits.stress_share = 0.4;
        spec.limits.stress_safety = 1.25;
        spec.limits.stress_factor = row.factor;
        const double permissible = 0.4 * 1980.0 / 1.25;
        const double force = permissible * std::numbers::pi * 8.0 / (8.0 * 16.0 * row.k);
        const Drawn drawn(diagram_of(spec));
        const auto lines = drawn.limit_lines(false);
        REQUIRE(lines.size() == 1);
        CHECK(lines[0].points[0].y == lines[0].points[1].y);
        CHECK_THAT(drawn.force_at(lines[0].points[0].y), WithinRel(force, 1e-3));
        CHECK(drawn.reads("Fτ stress limit"));
    }
}

TEST_CASE("a stress limit far above the diagram is marked at its upper edge", "[sheet]") {
    record::Spec spec = spring_b(0.5);
    spec.limits.stress_share = 1.5;
    const Drawn drawn(diagram_of(spec));
    CHECK(drawn.limit_lines(false).empty());
    bool found = false;
    for (const Item& item : drawn.page.items())
        if (const Text* text = std::get_if<Text>(&item);
            text && plain(text->words).ends_with("above") && plain(text->words).starts_with("Fτ")) {
            found = true;
            CHECK(drawn.force_at(text->at.y) > in_newton(spec.full_travel.nominal));
        }
    CHECK(found);
    // One just above the highest load is not: the diagram grows to hold it.
    const LoadDiagram just = [&] {
        LoadDiagram d = diagram_of(spec);
        d.permissible_force = 1.1 * d.rate * (d.free_length - d.solid_length);
        return d;
    }();
    const Drawn grown(just);
    REQUIRE(grown.limit_lines(false).size() == 1);
    CHECK_THAT(grown.force_at(grown.limit_lines(false)[0].points[0].y), WithinRel(*just.permissible_force, 1e-6));
}

TEST_CASE("the key names what is in the diagram, in the caller's words", "[sheet]") {
    LoadDiagram d = diagram_of(spring_b(0.5));
    d.words = {"Kraft [N]", "Länge [mm]", "bestellt", "Gütegrad", "Knickung", "Grenze"};
    d.permissible_force = 0.5 * d.full_travel.nominal;
    const Drawn all(d);
    for (const std::string words : {"Kraft [N]", "Länge [mm]", "bestellt", "Gütegrad", "Knickung", "Grenze"})
        CHECK(all.reads(words));
    d.seated.grade_tolerance.reset();
    d.full_travel.grade_tolerance.reset();
    d.buckling_length.reset();
    d.permissible_force.reset();
    const Drawn few(d);
    CHECK(few.reads("bestellt"));
    for (const std::string words : {"Gütegrad", "Knickung", "Grenze"}) CHECK_FALSE(few.reads(words));
    CHECK(few.limit_lines(true).empty());
    CHECK(few.limit_lines(false).empty());
}

TEST_CASE("bands, bars and the load line stand at their lengths and forces", "[sheet]") {
    const record::Spec spec = spring_b(0.5);
    const LoadDiagram d = diagram_of(spec);
    const Drawn drawn(d);
    std::vector<Box> bands;
    std::vector<Line> wide;
    for (const Item& item : drawn.page.items()) {
        if (const sheet::Area* area = std::get_if<sheet::Area>(&item); area && area->grey > 0.5 && area->grey < 1.0) {
            Box box = empty_box();
            for (const Point p : area->points) box = include(box, p);
            bands.push_back(box);
        }
        if (const Line* line = std::get_if<Line>(&item); line && line->kind == LineKind::wide) wide.push_back(*line);
    }
    REQUIRE(bands.size() == 3);  // the key's sample, L1, L2
    CHECK_THAT(drawn.length_at(bands[1].centre().x), WithinAbs(80.0, 1e-6));
    CHECK_THAT(drawn.force_at(bands[1].top), WithinRel(in_newton(spec.seated.nominal + spec.seated.plus), 1e-6));
    CHECK_THAT(drawn.force_at(bands[1].bottom), WithinRel(in_newton(spec.seated.nominal - spec.seated.minus), 1e-6));
    CHECK_THAT(drawn.length_at(bands[2].centre().x), WithinAbs(60.0, 1e-6));
    CHECK_THAT(drawn.force_at(bands[2].top),
               WithinRel(in_newton(spec.full_travel.nominal + spec.full_travel.plus), 1e-6));
    // The load line goes from nothing at L0 with R = G d^4/(8 D^3 n) (EN 13906-1 cl. 9.3).
    const double rate = 81500.0 * 16.0 / (8.0 * 16.0 * 16.0 * 16.0 * 12.5);
    const Line& line = wide.back();
    CHECK_THAT(drawn.length_at(line.points[0].x), WithinAbs(100.0, 0.05));
    CHECK_THAT(drawn.force_at(line.points[0].y), WithinAbs(0.0, 0.05));
    CHECK_THAT(drawn.force_at(line.points[1].y), WithinRel(rate * (100.0 - drawn.length_at(line.points[1].x)), 2e-3));
}

TEST_CASE("no label of a diagram overlaps another or leaves its box, on any paper", "[sheet]") {
    // Of a wide sheet, one whose figure takes most of the width, and an upright sheet.
    for (const Box& box : {kUsualBox, Box{40.0, 40.0, 102.0, 106.0}, Box{40.0, 40.0, 210.0, 100.0}})
        for (const Specimen& specimen : specimens())
            for (const double share : {0.3, 0.5, 2.0}) {
                INFO(specimen.name << ", box " << box.width() << " by " << box.height() << ", share " << share);
                record::Spec spec = specimen.spec;
                spec.limits.stress_share = share;
                const Drawn drawn(diagram_of(spec), box);
                for (const Item& item : drawn.page.items())
                    if (const Text* text = std::get_if<Text>(&item)) {
                        INFO(plain(text->words));
                        const Box room{box.left - 0.01, box.bottom - 0.5, box.right + 0.01, box.top};
                        CHECK(room.contains(text_box(*text)));
                    }
                std::string faults;
                for (const std::string& fault : layout_faults(drawn.page)) faults += fault + "\n";
                CHECK(faults == "");
            }
}

TEST_CASE("lines to labels under the axis stay near their places, and reference lengths make way for that", "[sheet]") {
    // Of a long spring that works near its solid length: all lengths but L0 lie at the right.
    const LoadDiagram diagram =
        diagram_of(specimen({"EN10270-2-FDSiCr", 1.7, 12.9, 15.0, 69.5, spring::Ends::closed_ground, 42.0, 38.0}));
    for (const double width : {82.0, 86.0, 90.0, 94.0, 98.0}) {
        CAPTURE(width);
        const Drawn drawn(diagram, {40.0, 40.0, 40.0 + width, 86.0});
        for (const std::string& words :
             {diagram.free_words, diagram.seated.length_words, diagram.full_travel.length_words})
            CHECK(drawn.reads(plain(words)));
        for (const Item& item : drawn.page.items())
            if (const Text* text = std::get_if<Text>(&item); text && text->words == diagram.seated.length_words)
                CHECK_THAT(drawn.length_at(text->at.x), WithinAbs(diagram.seated.length, 12.0));
    }
}

TEST_CASE("in a low diagram the ordered loads keep their values, and every reference point its symbol", "[sheet]") {
    for (const double height : {38.0, 44.0, 52.0})
        for (const double width : {58.0, 74.0, 94.0}) {
            CAPTURE(height, width);
            const LoadDiagram diagram = diagram_of(specimen(latch()));
            const Drawn drawn(diagram, {40.0, 40.0, 40.0 + width, 40.0 + height});
            for (const std::string& words : {diagram.seated.load_words, diagram.full_travel.load_words,
                                             diagram.seated.length_words, diagram.full_travel.length_words})
                CHECK(drawn.reads(plain(words)));
            for (const char* symbol : {"Ln", "Lc", "Fn", "Fc"}) {
                INFO(symbol);
                CHECK(drawn.names(symbol));
            }
            CHECK(layout_faults(drawn.page).empty());
        }
    CHECK(Drawn(diagram_of(specimen(latch()))).reads(plain(diagram_of(specimen(latch())).solid_words)));
}

}  // namespace
}  // namespace seatload::test
