// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_diagram.hpp>

#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/operating_limits.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// What stands at a point of the diagram: a symbol, and its value in the paper's first unit.
class Labels {
  public:
    explicit Labels(const Facts& facts) : figures_(facts.figures()) {}

    std::string given(std::string_view letter, std::string_view index, const Amount& amount) const {
        return symbol(letter, index) + " " + first(amount);
    }
    std::string reference_length(std::string_view index, const Length& length) const {
        return reference("L", index, figures_.length(length, {2}));
    }
    static std::string reference(std::string_view letter, std::string_view index, const Amount& amount) {
        return symbol(letter, index) + " " + sheet::reference(first(amount));
    }
    std::string reference_force(std::string_view index, const Force& force) const {
        return reference("F", index, figures_.force(force));
    }

  private:
    Figures figures_;
};

DiagramLoad diagram_load(const Facts& facts, const record::LoadAtLength& load,
                         const std::optional<Force>& grade_tolerance, std::string_view index) {
    const Figures figures = facts.figures();
    const Labels labels(facts);
    DiagramLoad out{
        in_mm(load.length), in_newton(load.nominal), in_newton(load.plus), in_newton(load.minus), {}, {}, {}};
    if (grade_tolerance) out.grade_tolerance = in_newton(*grade_tolerance);
    out.length_words = labels.given("L", index, figures.length(load.length));
    out.load_words = labels.given("F", index, figures.limits(load).nominal);
    return out;
}

/// Where the spring buckles and where its stress reaches the limit.
void add_limits(LoadDiagram& diagram, const Facts& facts) {
    const Labels labels(facts);
    if (const auto length = buckling_length(facts)) {
        diagram.buckling_length = in_mm(*length);
        diagram.buckling_words = labels.reference_length("K", *length);
        diagram.words.buckling = facts.say("diagram.buckling");
    }
    const Force force = permissible_load(facts);
    diagram.permissible_force = in_newton(force);
    diagram.permissible_words = labels.reference_force("τ", force);
    diagram.permissible_above_words = facts.say("diagram.above", {{"force", diagram.permissible_words}});
    diagram.words.permissible = facts.say("diagram.stress_limit", {{"force", symbol("F", "τ")}});
}

}  // namespace

LoadDiagram sheet_diagram(const Facts& facts) {
    const check::Evaluation& e = facts.values;
    const Figures figures = facts.figures();
    const Labels labels(facts);
    LoadDiagram out;
    out.free_length = in_mm(facts.spec.spring.free_length);
    out.rate = in_newton_per_mm(e.rate);
    out.seated = diagram_load(facts, facts.spec.seated, facts.seated_grade_tolerance, "1");
    out.full_travel = diagram_load(facts, facts.spec.full_travel, facts.full_travel_grade_tolerance, "2");
    out.smallest_length = in_mm(e.smallest_length);
    const check::AtLength at_solid = facts.at_longest_solid();
    out.solid_length = in_mm(at_solid.length);
    out.free_words = facts.may_adjust(record::Adjustable::free_length)
                         ? Labels::reference("L", "0", drawn_free_length(facts, {2}))
                         : labels.given("L", "0", drawn_free_length(facts));
    out.smallest_words = labels.reference_length("n", e.smallest_length);
    out.smallest_load_words = labels.reference_force("n", e.at_smallest_length.load);
    out.solid_words = labels.reference_length("c", at_solid.length);
    out.solid_load_words = labels.reference_force("c", at_solid.load);
    out.words.force_axis = "F [" + figures.first_unit(Unit::newton) + "]";
    out.words.length_axis = "L [" + figures.first_unit(Unit::mm) + "]";
    out.words.ordered = facts.say("diagram.as_ordered");
    out.words.grade = facts.say("diagram.grade");
    add_limits(out, facts);
    return out;
}

}  // namespace seatload::sheet
