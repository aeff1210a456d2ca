// SPDX-License-Identifier: MIT
#include <seatload/io/correspondence_fields.hpp>
#include <seatload/io/demand_fields.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/record_forms.hpp>
#include <seatload/io/tips_form.hpp>
#include <seatload/record/history.hpp>
#include <seatload/record/key_results.hpp>

#include "kinds.hpp"

namespace seatload::test {
namespace {

using io::Span;

SchemaTable duty_table() {
    SchemaTable t;
    demand::Duty duty;
    t.visited({{"cycles", "Load cycles in all its life; stated, endurance is judged."},
               {"frequency", "How fast it moves, to be held against the natural frequency."},
               {"peened", "true: the spring is shot-peened."}},
              [&](auto& f) { io::visit_duty(f, duty); });
    return t;
}

SchemaTable limits_table() {
    SchemaTable t;
    demand::Limits limits;
    t.may<spring::School>("school",
                          "Whose rules the limits follow: EN 13906-1, taken when nothing is said, or the "
                          "handbooks. It sets what the keys below are when left out.");
    t.visited(
        {{"stress_share",
          "Share of the tensile strength Rm the static stress may reach: 0.56, \"56 %\", or \"torsional "
          "yield\" of the wire's family."},
         {"stress_safety", "Divides the permissible static stress."},
         {"stress_length", "Length at which the static stress is judged."},
         {"stress_factor", "Curvature factor in the static stress."},
         {"gap_rule",
          "Room that must be left above the solid length at full travel: the sum of the smallest gaps by "
          "EN 13906-1, or a share of the deflection."},
         {"gap_share", "That room as a share of the deflection at full travel."},
         {"solid_form", "How the solid length is worked out: by EN 13906-1 with the largest wire, or as textbooks do."},
         {"growth_form", "How the coil widens as it is pressed: ends free to turn, or held."},
         {"seating_coefficient", "Seating coefficient nu for buckling, in place of the value of the seats."},
         {"buckling_margin", "How many times the deflection at full travel must lie below that of buckling."},
         {"smallest_index", "Least spring index w = D/d."},
         {"largest_index", "Largest spring index w = D/d."},
         {"fewest_active_coils", "Fewest active coils n."},
         {"most_active_coils", "Most active coils n."},
         {"half_turn_slack", "How far n may lie from a whole number and a half on a sliding seat; 0.5 allows any."},
         {"lean_share", "Lean sideways allowed on a sliding seat without bore or rod, as a share of D."},
         {"bore_clearance", "Clearance on the diameter between the largest spring and the smallest bore."},
         {"rod_clearance", "Clearance on the diameter between the smallest spring and the largest rod."},
         {"diameter_grade", "Grade of EN 15800 of the coil diameter, used in the clearances: 1, 2 or 3."},
         {"smallest_surge_ratio", "Least ratio of the natural frequency to that of the motion."},
         {"fatigue_factor", "Least factor against fatigue."},
         {"fatigue_line", "Line between the mean stress and the amplitude that endurance is judged by."},
         {"smallest_ground_wire", "Thinner wire is not ground."},
         {"largest_ground_index", "Springs of a larger index are not ground."},
         {"coil_step", "Turns: total coils are multiples of it."},
         {"longest_free_length", "Longest free length that can be made."},
         {"load_loss",
          "Share of the load lost at temperature, in place of the guidance: from a test or the wire maker."},
         {"largest_mass", "Largest mass of the spring."},
         {"heed_service_limit", "false: the wire's limit of temperature is not heeded."}},
        [&](auto& f) { io::visit_limits(f, limits); });
    return t;
}

SchemaTable revision_table() {
    SchemaTable t;
    t.put("index", {{"type", "string"}, {"maxLength", 2}}, "Revision index, at most 2 characters (ISO 7200).");
    t.need("index");
    t.must<io::DateText>("date", "Day of the change.");
    t.must<std::string>("change", "What was changed, in words for the papers.");
    t.may<std::string>("by", "Who changed it.");
    return t;
}

SchemaTable prefer_table() {
    SchemaTable t;
    t.put("order",
          {{"type", "array"},
           {"items", {{"enum", {"tolerance room", "stress margin", "cost", "release force"}}}},
           {"minItems", 1}},
          "What springs are compared by, the most important first; those not named follow.");
    t.list<std::string>("grades", "Wire grades you would rather have.", io::kAny, 1);
    t.list<Length>("diameters", "Wire diameters you would rather have.", io::kSize, 1);
    t.list<spring::Ends>("ends", "Ends you would rather have.", io::kAny, 1);
    return t;
}

SchemaTable order_of_requirement() {
    SchemaTable t;
    t.list<int>("quantities", "Pieces a lot, each to be quoted.", io::kAtLeastOne);
    t.may<std::string>("maker",
                       "Whose limits of winding and grinding count; left out: an ordinary workshop. A maker of "
                       "your own comes by --maker-file.");
    t.may<int>("load_grade", "Grade of EN 15800 the tolerance room of loads is counted in: 1, 2 or 3.", io::kGrade);
    t.may<int>("alternatives", "How many springs to offer, one for each letter.", Span{1.0, 26.0, false, ""});
    t.may<demand::Certificate>("certificate",
                               "Certificate of the wire by EN 10204; 3.1 is taken when nothing is said.");
    t.list<std::string>("notes", "Sentences for the maker, printed on the sheet.");
    return t;
}

SchemaTable grid_table() {
    SchemaTable t;
    const Span step{0.001, 10000.0, false, ""};
    t.may<Length>("mean_diameter_step", "Step of the mean diameters that are looked at.", step);
    t.may<double>("total_coils_step", "Step of the total coils.", Span{0.01, 10000.0, false, ""});
    t.may<Length>("free_length_step", "Step of the free lengths.", step);
    t.may<demand::LengthRange>("mean_diameter", "Mean diameters to look at; left out, all that the space lets in.",
                               io::kSize);
    t.may<demand::CountRange>("total_coils", "Total coils to look at: \"5 .. 12\".");
    t.may<demand::LengthRange>("free_length", "Free lengths to look at.", io::kSize);
    return t;
}

SchemaTable wire_choice_table() {
    SchemaTable t;
    t.list<std::string>("grades", "Ids of the wire grades to look at, as `seatload wire` lists them; left out: all.");
    t.list<Length>("diameters", "Wire diameters to look at; left out: those of the series.", io::kSize);
    t.may<std::string>("series", "Series of stock sizes to look at.");
    return t;
}

SchemaTable enquiry_table() {
    SchemaTable t;
    demand::Correspondence letter;
    t.visited({{"reply_by", "Day by which makers are to answer."},
               {"address", "Address of the workshop."},
               {"contact", "Who answers questions, and how."},
               {"deliver_to", "Where the lot is to be delivered; left out: to the address."}},
              [&](auto& f) { io::visit_correspondence(f, letter); });
    return t;
}

SchemaTable coil_table() {
    SchemaTable t;
    t.list<spring::Ends>("ends", "Ends that may be offered; closed and ground alone when nothing is said.", io::kAny,
                         1);
    t.may<spring::Hand>("hand", "Which way the spring winds.");
    t.may<std::string>("finish", "Finish, in words for the maker: \"none, oiled\".");
    return t;
}

SchemaTable load_table() {
    SchemaTable t;
    t.must<demand::LoadBand>("seated",
                             "Load at the seated height. At least: hot and after load loss; at most: cold and "
                             "new.",
                             io::kNotNegative);
    t.may<demand::LoadBand>("full_travel", "Load at full travel, by the same rule.", io::kNotNegative);
    return t;
}

void add_spring(SchemaTable& t) {
    SchemaTable s;
    const Span coils{0.0, 10000.0, true, ""};
    s.may<std::string>("wire", "Id of the wire grade, as `seatload wire` lists it; left out with [own_wire].");
    s.must<Length>("wire_diameter", "d: diameter of the wire.", io::kSize);
    s.may<Length>("mean_diameter", "D: mean coil diameter; or outside_diameter or inside_diameter.", io::kSize);
    s.may<Length>("outside_diameter", "De: outside coil diameter.", io::kSize);
    s.may<Length>("inside_diameter", "Di: inside coil diameter.", io::kSize);
    s.one_of({"mean_diameter", "outside_diameter", "inside_diameter"});
    s.must<double>("total_coils", "nt: all coils, ends and all.", coils);
    s.must<Length>("free_length", "L0: length without load.", io::kSize);
    s.must<spring::Ends>("ends", "How the ends are made.");
    s.may<spring::Hand>("hand", "Which way it winds.");
    t.table("spring", s, "The spring as it is wound.").need("spring");
    t.table("own_wire", own_wire_table(), "A wire known from its certificate, in place of a grade.");
    t.also({{"anyOf", {{{"required", {"own_wire"}}}, {{"properties", {{"spring", {{"required", {"wire"}}}}}}}}}});
}

SchemaTable spec_load_table() {
    SchemaTable t;
    t.must<Length>("length", "Height the load is measured at.", io::kPositive);
    t.must<Force>("force", "Nominal load, cold and new.", io::kPositive);
    t.must<Force>("plus", "Upper deviation.", io::kNotNegative);
    t.must<Force>("minus", "Lower deviation, as a positive number.", io::kNotNegative);
    t.may<int>("grade", "Coarsest grade of EN 15800 that stays inside: 1, 2 or 3.", io::kGrade);
    t.may<demand::LoadBand>("needed", "What the mechanism needs, all through its life.", io::kNotNegative);
    return t;
}

SchemaTable state_table() {
    const std::string hex = "[0-9a-f]{64}";
    const Json sum = text_shape(hex);
    SchemaTable results;
    results.may<std::string>("program", "Program that worked these out.");
    for (const record::ResultKind& kind : record::result_kinds())
        results.put(kind.key, text_shape(kNumberPattern + " " + std::string(kind.unit)), kind.name);
    SchemaTable t;
    t.put("is", {{"enum", {"draft", "trial", "approved", "withdrawn", "evidence"}}},
          "State the spec came to, or evidence "
          "that was added.");
    t.need("is");
    t.must<io::DateText>("date", "Day of it.");
    t.must<std::string>("by", "Who answers for it.");
    t.put("sha256", text_shape("(?:" + hex + ")?"), "SHA-256 of all bytes above the line of ====.").need("sha256");
    t.may<std::string>("reason", "Why.");
    t.list<std::string>("conditions", "Conditions on which the lots of an approval were accepted.");
    t.may<double>("trial_hours", "Hours in an engine.", io::kNotNegative);
    t.may<std::string>("note", "Anything else.");
    t.rows("lots", {Json{{"type", "string"}}, sum}, 2, "Records of inspected lots: name of the file and its SHA-256.");
    t.rows("files", {Json{{"type", "string"}}, sum}, 2, "Files kept beside the spec: name and SHA-256.");
    t.table("results", results, "Key results at the approval, so that it can be seen when they move.");
    return t;
}

SchemaTable measured_table() {
    SchemaTable t;
    t.may<io::DateText>("date", "Day of the measurement.");
    t.may<std::string>("readings", "File of readings it came from.");
    t.may<bench::Stated<Rate>>("rate", "R, with its expanded uncertainty.", io::kPositive);
    t.may<bool>("wire_guessed", "true: the wire was taken by the stiffness, and is not known.");
    t.rows("loads", {Shape<Length>::json(io::kSize), Shape<bench::Stated<Force>>::json(io::kNotNegative)}, 2,
           "Loads at heights, with their expanded uncertainty.");
    return t;
}

}  // namespace

Json requirement_schema() {
    SchemaTable t;
    add_format(t, io::kRequirementFormat, false);
    t.table("identity", identity_table(), "What the papers say of the spring: the fields of their title blocks.");
    t.tables("revision", revision_table(), "Changes of the papers, the earliest first.");
    t.table("space", space_table(), "The room there is, and the heights the spring works at.").need("space");
    t.table("load", load_table(), "Loads that are needed; or [plunger] to have them worked out.");
    t.table("plunger", plunger_table(false), "A plunger the loads are worked out from, in place of [load].");
    t.one_of({"load", "plunger"});
    t.table("duty", duty_table(), "How often and how fast it moves; left out: hardly ever.");
    t.table("surroundings", surroundings_table(), "Heat, and what is around the spring.");
    t.table("wire", wire_choice_table(), "Wire to look at; left out: any grade, in metric stock sizes.");
    t.tables("own_wire", own_wire_table(),
             "Wires known from their certificates; when no grades are named, they alone "
             "are looked at.");
    t.table("coil", coil_table(), "How the spring may be made.");
    t.table("limits", limits_table(), "Limits each spring is held to; each overrides what the school sets.");
    t.table("prefer", prefer_table(), "Wishes among springs that all fit.");
    t.table("grid", grid_table(), "Steps and bounds of the search.");
    t.table("order", order_of_requirement(), "What is to be ordered.");
    t.table("enquiry", enquiry_table(), "What stands on the enquiry and on the form for the reply alone.");
    return t.file("seatload requirement", "What a spring must give, and where it must fit: for `seatload size`.");
}

Json plunger_schema() {
    SchemaTable t, spring;
    add_format(t, io::kPlungerFormat, false);
    t.table("identity", identity_table(), "What the papers say of the plunger.");
    t.table("space", space_table(), "Of the spring: its room and its heights; left out, give plunger.stroke.");
    t.table("surroundings", surroundings_table(), "Heat, and what is around the spring.");
    t.table("plunger", plunger_table(false), "Areas, pressures and friction, each as a range.").need("plunger");
    spring.must<demand::Interval<Force>>("seated", "Its load at the seat.", io::kNotNegative);
    spring.must<demand::Interval<Force>>("full_travel", "Its load at full travel.", io::kNotNegative);
    t.also({{"anyOf", {{{"required", {"space"}}}, {{"properties", {{"plunger", {{"required", {"stroke"}}}}}}}}}});
    t.table("spring", spring, "A spring to be looked at: how the plunger moves with it.");
    return t.file("seatload plunger", "What a plunger under oil pressure asks of its spring: for `seatload budget`.");
}

Json spring_schema() {
    SchemaTable t, heights;
    add_format(t, io::kSpringFormat, false);
    t.may<std::string>("name", "What the spring is called.");
    add_spring(t);
    heights.may<Length>("seated", "L1: height on the seat.", io::kSize);
    heights.may<Length>("full_travel", "L2: height at full travel.", io::kSize);
    t.table("heights", heights, "Heights its loads are told at.");
    t.table("surroundings", surroundings_table(), "Heat, and what is around it.");
    t.table("measured", measured_table(), "What the bench measured of it, shown beside what the dimensions give.");
    return t.file("seatload spring", "A spring by its dimensions: for `seatload check`.");
}

Json spec_schema() {
    SchemaTable t, required, order;
    add_format(t, io::kSpecFormat, true);
    t.may<std::string>("title", "What the papers call the spring.");
    t.may<std::string>("alternative", "Letter among the alternatives offered.");
    t.may<std::string>("why", "What it was chosen for.");
    t.table("identity", identity_table(), "Fields of the title block.");
    t.tables("revision", revision_table(), "Changes of the papers, the earliest first.");
    add_spring(t);
    t.table("seated_load", spec_load_table(), "F1: the load ordered at the seated height.").need("seated_load");
    t.table("full_travel_load", spec_load_table(), "F2: the load ordered at full travel.").need("full_travel_load");
    required.may<io::RequiredDiameter>("diameter", "The coil diameter that is inspected.");
    required.may<int>("diameter_grade", "Grade of EN 15800 of that diameter: 1, 2 or 3.", io::kGrade);
    required.may<int>("squareness_grade", "Grade of EN 15800 of ground ends: 1, 2 or 3.", io::kGrade);
    required.may<Angle>("tips", "How near half a turn apart the end tips stand, plus-minus, on a sliding seat.",
                        io::kTipsApart);
    required.list<record::Adjustable>("adjustable", "What the maker may alter to bring the loads in.");
    t.table("required", required, "What is required of the maker besides the loads.");
    t.table("space", space_table(), "The room there is, and the heights it works at.").need("space");
    t.table("duty", duty_table(), "How often and how fast it moves.");
    t.table("surroundings", surroundings_table(), "Heat, and what is around it.");
    t.table("limits", limits_table(), "Every limit it was held to.");
    order.list<int>("quantities", "Pieces a lot.", io::kAtLeastOne);
    order.may<std::string>("finish", "Finish, in words for the maker.");
    order.may<demand::Certificate>("certificate", "Certificate of the wire by EN 10204.");
    order.list<std::string>("notes", "Sentences for the maker, printed on the sheet.");
    t.table("order", order, "What is ordered.");
    t.tables("state", state_table(), "Kept by `seatload specs`: states of a spec in a library, and its evidence.");
    return t.file("seatload spec", "A spring as it is ordered: for `seatload sheet`, `check`, `report` and `specs`.");
}

}  // namespace seatload::test
