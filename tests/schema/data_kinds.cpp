// SPDX-License-Identifier: MIT
#include <seatload/io/builtin.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/reply_fields.hpp>
#include <seatload/io/wire_words.hpp>

#include "kinds.hpp"

namespace seatload::test {
namespace {

using io::Span;

const Json kText{{"type", "string"}};
const Span kWireStrength{100.0, 6000.0, false, ""};

Json evidence_shape() { return Shape<wire::Evidence>::json(io::kAny); }
Json dash_or(const Json& shape) { return either({{{"enum", {"-"}}}, shape}); }

/// The three ways a strength is told, each with keys of its own.
Json strength_shape() {
    SchemaTable law, given, rows;
    law.must<Stress>("A", "A in Rm = A / d^m, d in mm.", kWireStrength);
    law.must<double>("m", "m in Rm = A / d^m.", io::kShare);
    law.must<units::Band<Length>>("range", "Diameters the law holds for, both ends.", io::kPositive);
    given.must<Stress>("Rm", "The least tensile strength.", kWireStrength);
    given.may<units::Band<Length>>("range", "Diameters it holds for, both ends.", io::kPositive);
    rows.must<wire::StrengthLookup>("lookup", "What is taken between two rows.");
    rows.rows("rows",
              {Shape<Length>::json(io::kPositive), Shape<Stress>::json(kWireStrength),
               dash_or(Shape<Stress>::json(kWireStrength)), evidence_shape()},
              2, "Diameter, least strength, greatest strength or \"-\", evidence; rising in diameter.", 1);
    rows.need("rows");
    rows.may<Length>("smallest", "How far below the first diameter its row still holds.", io::kPositive);
    return either({law.json(), given.json(), rows.json()});
}

SchemaTable reference_table() {
    SchemaTable t;
    t.must<std::string>("row", "Name of the row.");
    t.may<std::string>("analogy", "Why that row stands for this wire, when it is of another.");
    return t;
}

SchemaTable supplied_table() {
    SchemaTable t;
    t.must<Stress>("Rm", "The least tensile strength.", kWireStrength);
    t.may<wire::Evidence>("evidence", "How far it can be trusted; \"given\" when nothing is said.");
    return t;
}

SchemaTable grade_table() {
    SchemaTable t;
    t.put("id", {{"type", "string"}, {"minLength", 1}}, "Id; that of a built-in grade replaces it.").need("id");
    t.may<std::string>("standard", "Standard.");
    t.may<std::string>("designation", "Designation by the standard.");
    t.may<std::string>("supplied_as", "Condition such wire is bought in.");
    t.table("supplied_strength", supplied_table(), "Least strength of such wire as it is bought.");
    t.must<wire::Family>("family", "Kind of wire.");
    t.may<std::string>("family_text", "Kind of wire, in words of your own.");
    t.may<std::string>("material_number", "Material number.");
    t.rows("provenance", {kText, evidence_shape(), kText}, 3, "Property, evidence and source of what is stated here.");
    t.rows("moduli",
           {either({{{"enum", {"over"}}}, Shape<Length>::json(io::kAny)}), Shape<Stress>::json(io::kPositive),
            Shape<Stress>::json(io::kPositive)},
           3, "Up to a diameter (\"over\" for all larger ones), G and E; in place of the two keys below.", 1);
    t.may<Stress>("shear_modulus", "G at 20 °C.", io::kPositive);
    t.may<Stress>("young_modulus", "E at 20 °C.", io::kPositive);
    t.one_of({"moduli", "shear_modulus"}).one_of({"moduli", "young_modulus"});
    t.must<Density>("density", "Density.", io::kPositive);
    t.must<Share>("shear_modulus_loss_per_100_kelvin", "Share of G that is lost with each 100 K.", io::kShare);
    t.must<Celsius>("service_limit", "The hottest service.", io::kTemperature);
    t.may<bool>("static_duty_only", "true: refused where the load goes through 10 000 cycles or more.");
    t.may<double>("relative_cost", "Cost by mass; hard-drawn wire is 1.", io::kPositive);
    t.may<std::string>("diameter_tolerance", "Name of a tolerance table.");
    t.table("load_loss", reference_table(), "The row of guidance on load loss at temperature.");
    t.table("stress_relief", reference_table(), "The row on stress relief.");
    t.may<std::string>("note", "Anything else worth knowing.");
    t.put("strength", strength_shape(), "Tensile strength: one value, a law, or a table.").need("strength");
    return t;
}

/// Tables of a wire file that name their source and evidence.
SchemaTable sourced_table() {
    SchemaTable t;
    t.may<std::string>("source", "Where it comes from.");
    t.may<wire::Evidence>("evidence", "How far it can be trusted; \"given\" when nothing is said.");
    return t;
}

Json size_shape() {
    const Json length = Shape<Length>::json(io::kPositive);
    return either(
        {length, {{"type", "array"}, {"items", {length, kText}}, {"minItems", 2}, {"additionalItems", false}}});
}

void add_wire_tables(SchemaTable& t) {
    SchemaTable entry, tolerance, loss = sourced_table(), relief = sourced_table(), series = sourced_table(), holding;
    entry.must<std::string>("key", "Key that texts name in square brackets.");
    entry.must<std::string>("kind", "Book, standard, page.");
    entry.must<std::string>("title", "Title, author, year.");
    t.tables("entry", entry, "Sources.");
    tolerance.must<std::string>("id", "Name of the table.");
    tolerance.may<std::string>("source", "Where it comes from.");
    tolerance.rows("rows", {Shape<Length>::json(io::kPositive), Shape<Length>::json(io::kPositive), evidence_shape()},
                   2, "Up to a diameter, tolerance plus and minus, evidence.", 1);
    tolerance.need("rows");
    t.tables("tolerance_table", tolerance, "Tolerances of wire diameters.");
    loss.must<std::string>("row", "Name that grades refer to.");
    loss.may<std::string>("basis", "What it was measured at.");
    loss.rows("points", {Shape<Celsius>::json(io::kTemperature), dash_or(Shape<Share>::json(io::kShare))}, 2,
              "Temperature, and the share of load lost or \"-\" when it is not known.", 1);
    loss.need("points");
    t.tables("load_loss", loss, "Guidance on load loss at temperature.");
    relief.must<std::string>("row", "Name that grades refer to.");
    relief.must<std::string>("temperature", "Temperature, in words for the maker.");
    relief.must<std::string>("time", "Time, in words for the maker.");
    relief.may<bool>("hardens", "true: the strength of the grade rests on this heat treatment.");
    t.tables("stress_relief", relief, "Stress relief.");
    series.must<std::string>("id", "Name of the series.");
    series.may<std::string>("title", "What it is, in words.");
    series.put("sizes", {{"type", "array"}, {"items", size_shape()}, {"minItems", 1}},
               "Diameters, rising, each with its name when it has one.");
    series.need("sizes");
    series.list<Length>("from_memory", "Those of the sizes that are from memory.", io::kPositive);
    t.tables("series", series, "Series of stock diameters.");
    t.tables("grade", grade_table(), "Wire grades.");
    holding.must<std::string>("grade", "Id of the grade.");
    holding.put("diameters", {{"type", "array"}, {"items", Shape<Length>::json(io::kPositive)}, {"minItems", 1}},
                "Diameters that are held.");
    holding.need("diameters");
    t.tables("holding", holding, "Wire the winder holds. Any holding restricts the search to the holdings.");
}

SchemaTable offer_table() {
    const record::Offer offer;
    const record::Price price;
    SchemaTable t, prices, wire, changes;
    t.must<std::string>("alternative", "Letter of the alternative that is offered.");
    t.visited({{"tooling", "Amount paid once."}, {"least_pieces", "The fewest you wind."}},
              [&](auto& f) { io::visit_offer_head(f, offer); });
    prices.put("quantity", Shape<io::Answer<int>>::json(io::kPieces), "Pieces this price is for.").need("quantity");
    prices.visited({{"unit_price", "Amount a piece, digits with a decimal point: \"2.40\"."},
                    {"lot_charge", "Amount for setting up, with each lot."},
                    {"lead_time", "\"4 weeks\", \"20 days\" or \"15 working days\"."}},
                   [&](auto& f) { io::visit_price(f, price); });
    t.tables("price", prices, "One for each quantity.");
    wire.visited({{"grade", "Standard and grade."},
                  {"diameter", "Diameter."},
                  {"tensile_strength", "Tensile strength as on its certificate."}},
                 [&](auto& f) { io::visit_held_wire(f, offer.wire); });
    t.table("wire", wire, "Wire you hold and would wind from, when it is not that of the sheet.");
    changes.visited({{"outside_diameter", "De you ask for."},
                     {"total_coils", "nt you ask for."},
                     {"free_length", "L0 you ask for."},
                     {"ends", "Ends you ask for."},
                     {"load_grade", "Grade of EN 15800 of the loads you ask for: 1, 2 or 3."},
                     {"diameter_grade", "Grade of EN 15800 of the coil diameter you ask for: 1, 2 or 3."},
                     {"tips", "How near half a turn apart you hold the end tips, plus-minus."},
                     {"note", "Anything else, in your words."}},
                    [&](auto& f) { io::visit_changes(f, offer.changes); });
    t.table("changes", changes, "What you would have otherwise than on the sheet.");
    return t;
}

SchemaTable reply_maker_table() {
    record::Maker maker;
    SchemaTable t;
    t.visited({{"firm", "Firm."},
               {"person", "Who offers."},
               {"quotation", "The firm's number of this offer."},
               {"date", "Day of the reply."},
               {"valid_until", "Last day the offer holds."},
               {"currency", "Currency of all amounts, three letters: EUR."},
               {"delivery_terms", "Terms of delivery."},
               {"certificates", "What comes with the lot."}},
              [&](auto& f) { io::visit_maker(f, maker); });
    return t;
}

/// Limits a maker's file may state, and the shape each has.
SchemaTable maker_limits() {
    SchemaTable t;
    t.may<double>("smallest_index", "Least spring index w = D/d he winds.", io::kAtLeastOne);
    t.may<double>("largest_index", "Largest spring index he winds.", io::kAtLeastOne);
    t.may<Length>("smallest_ground_wire", "Thinnest wire he grinds.", io::kSize);
    t.may<double>("largest_ground_index", "Largest index he grinds.", io::kAtLeastOne);
    t.may<double>("coil_step", "Turns: total coils are multiples of it.", io::kPositive);
    t.may<Length>("longest_free_length", "Longest free length he makes.", io::kSize);
    return t;
}

/// A table with the keys of the limits, all of one shape.
SchemaTable of_limits(const Json& shape, const std::string& what) {
    SchemaTable t;
    const Json limits = maker_limits().json();
    for (const auto& [key, limit] : limits["properties"].items()) t.put(key, shape, what + key + '.');
    return t;
}

}  // namespace

Json reply_schema() {
    record::Enquired enquiry;
    const record::Charges charges;
    SchemaTable t, asked, costs;
    add_format(t, io::kReplyFormat, true);
    asked.visited({{"number", "Part number."},
                   {"revision", "Revision."},
                   {"title", "What the spring is called."},
                   {"alternatives", "Letters that were enquired for."},
                   {"quantities", "Pieces that were enquired for."},
                   {"reply_by", "Day by which a reply was asked."},
                   {"address", "Address of the workshop."},
                   {"contact", "Who answers questions."},
                   {"deliver_to", "Where the lot is to be delivered."},
                   {"mark", "Mark of what was enquired for: leave it as it is."}},
                  [&](auto& f) { io::visit_enquired(f, enquiry); });
    t.table("enquiry", asked, "What was enquired for; stays as it is.");
    t.table("maker", reply_maker_table(), "Who replies.");
    costs.visited({{"packing", "Amount a lot; 0 when the prices hold it."},
                   {"carriage", "Amount a lot; 0 when the prices hold it."},
                   {"certificate", "Certificate of the wire, amount a lot."},
                   {"least_order", "Amount below which no order is taken."},
                   {"duty", "Share of the price: \"3.5 %\"."},
                   {"tax", "Share of the price: \"20 %\"."}},
                  [&](auto& f) { io::visit_charges(f, charges); });
    t.table("charges", costs, "What comes on top of the prices.");
    t.tables("offer", offer_table(), "One for each alternative that is offered.", true).need("offer");
    return t.file("seatload reply", "A maker's answer to an enquiry, as a form: for `seatload reply` and `quotes`.");
}

Json maker_schema() {
    SchemaTable t;
    add_format(t, io::kMakerFormat, false);
    t.must<std::string>("name", "Name of the maker.");
    t.may<std::string>("note", "Anything else worth knowing.");
    t.table("limits", maker_limits(), "What he can wind and grind.").need("limits");
    t.table("evidence", of_limits(evidence_shape(), "How far one can trust "), "How far each limit can be trusted.");
    t.table("sources", of_limits(kText, "Source of "), "Where each limit comes from.");
    return t.file("seatload maker", "What a spring maker can wind and grind: for --maker-file.");
}

Json wire_schema() {
    SchemaTable t;
    t.put("format_version", {{"enum", {1}}}, "Version of the form of wire files.").need("format_version");
    for (const auto& [key, words] : KeyWords{{"description", "What the file holds."},
                                             {"source", "Where it comes from."},
                                             {"date", "When it was put together."}})
        t.may<std::string>(key, words);
    add_wire_tables(t);
    return t.file("seatload wire", "Wire of your own, laid over the built-in grades: for --wire-file.");
}

Json sampling_schema() {
    SchemaTable t, letters, plans;
    for (const std::string_view key : {"description", "source", "date", "format_version"})
        t.put(key, Json::object(), "Head of the file.");
    t.put("aql", text_shape(" *(?:[0-9.]+(?: +[0-9.]+)*)? *"), "AQLs in per cent, rising, between blanks.").need("aql");
    letters.put("evidence", Json::object(), "How far the letters can be trusted.");
    letters.put("levels", Json::object(), "Order of the levels in a row.");
    letters.rows("rows", {number_shape(io::kPositive, "integer"), kText}, 2,
                 "From a lot size on, the letter for each of the seven levels.");
    t.table("code_letters", letters, "Code letters.").need("code_letters");
    plans.put("note", Json::object(), "What to know of it.");
    plans.must<wire::Evidence>("evidence", "How far the plans can be trusted.");
    plans.rows("rows", {kText, number_shape(io::kPositive, "integer"), kText}, 3,
               "Letter, sample size, and for each AQL acceptance number, both numbers, or an arrow.");
    for (const std::string_view key : {"normal", "tightened", "reduced"})
        t.table(key, plans, "Single plans.").need(key);
    return t.file("seatload sampling", "Sampling plans of ISO 2859-1: built in.");
}

Json tolerances_schema() {
    SchemaTable t, diameters;
    for (const std::string_view key : {"description", "source", "date", "format_version"})
        t.put(key, Json::object(), "Head of the file.");
    diameters.put("note", Json::object(), "What to know of it.");
    std::vector<Json> row(11, Shape<Length>::json(io::kPositive));
    for (int grade = 1; grade <= 3; ++grade) row.push_back(evidence_shape());
    diameters.rows("rows", row, row.size(),
                   "Over and up to a mean diameter, nine tolerances, three marks of evidence.");
    diameters.need("rows");
    t.table("coil_diameter", diameters, "Tolerances of coil diameters.").need("coil_diameter");
    return t.file("seatload tolerances", "Tolerances of EN 15800: built in.");
}

Json wording_schema() {
    std::map<std::string, SchemaTable> sections;
    for (const auto& [path, english] : io::builtin_wording("en").phrases) {
        const std::size_t point = path.find('.');
        const std::string key = path.substr(point + 1);
        sections[path.substr(0, point)].put(key, {{"type", "string"}, {"minLength", 1}}, english).need(key);
    }
    SchemaTable t;
    add_format(t, io::kWordingFormat, true);
    t.put("language", text_shape("[a-z]{2}"), "Language by its two letters (ISO 639-1).").need("language");
    for (const auto& [name, section] : sections)
        t.table(name, section, "Phrases; what each says in English stands here.").need(name);
    return t.file("seatload wording", "What papers say, in a language: for --wording.");
}

}  // namespace seatload::test
