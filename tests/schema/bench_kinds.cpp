// SPDX-License-Identifier: MIT
#include <seatload/core/assert.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/inspection_forms.hpp>
#include <seatload/io/readings_csv.hpp>
#include <seatload/io/readings_forms.hpp>
#include <seatload/io/samples_columns.hpp>
#include <seatload/io/spring_forms.hpp>

#include "kinds.hpp"

namespace seatload::test {
namespace {

using io::PlusMinus;
using io::Span;

const Span kPiecesSpan{1.0, 1'000'000.0, false, ""};
const Span kCountSpan{0.0, 10'000'000.0, false, ""};

SchemaTable run_table() {
    SchemaTable t;
    t.may<std::string>("title", "What was measured, in a line.");
    t.may<std::string>("fixture", "What the spring was pressed in and with.");
    t.may<double>("coverage_factor", "k: how wide the ± of results is; 2 holds 95 % of what may be.",
                  Span{1.0, 5.0, false, ""});
    t.may<io::DateText>("date", "Day of the measurement.");
    t.may<io::StatedCelsius>("temperature", "Temperature of the room.");
    return t;
}

SchemaTable scale_table() {
    SchemaTable t;
    t.must<bench::ScaleReading>("step", "Step of the display.");
    t.may<PlusMinus<Share>>("span", "What it may be off by in proportion, the same in all readings.");
    t.may<PlusMinus<bench::ScaleReading>>("linearity", "What each reading may be off by.");
    t.may<PlusMinus<bench::ScaleReading>>("zero", "What its zero may be off by.");
    t.may<bench::ScaleReading>("tare", "What it shows without a spring: the plate that lies on it.");
    t.may<bench::StandardGravity>("adjusted_for", "\"standard\" when its maker says so; else latitude and above_sea.");
    t.may<Angle>("latitude", "Latitude of the place where it was adjusted.", Span{-1.0, 1.0, false, ""});
    t.may<Length>("above_sea", "Height of that place above the sea.");
    t.also({{"dependencies", {{"above_sea", {"latitude"}}}}});
    return t;
}

SchemaTable gauge_table() {
    SchemaTable t;
    t.must<Length>("step", "Step of its dial or display.", io::kPositive);
    t.may<PlusMinus<Length>>("error", "What each height may be off by.");
    t.may<PlusMinus<Share>>("span", "What it may be off by in proportion.");
    t.may<PlusMinus<Length>>("zero", "What its zero may be off by.");
    return t;
}

SchemaTable indicator_table() {
    SchemaTable t;
    t.must<Length>("step", "Step of its dial or display.", io::kPositive);
    t.may<PlusMinus<Length>>("error", "What each travel may be off by.");
    t.may<PlusMinus<Share>>("span", "What it may be off by in proportion.");
    t.may<bench::Stated<Length>>("height_at_zero", "Height between the plates where it shows zero.", io::kSize);
    t.may<bench::Bearing>("bears_on_pan", "How the push of its own plunger comes onto the scale.");
    t.may<Force>("force", "Push of its plunger, when it is the same everywhere.", io::kNotNegative);
    t.may<Force>("force_at_zero", "Push of its plunger at travel zero; needs force_rise.", io::kNotNegative);
    t.may<Rate>("force_rise", "How that push rises with travel.", io::kNotNegative);
    t.also({{"dependencies", {{"force_rise", {"force_at_zero"}}, {"force_at_zero", {"force_rise"}}}}});
    t.rows("forces", {Shape<Length>::json(io::kAny), Shape<Force>::json(io::kNotNegative)}, 2,
           "Push of its plunger in steps: travel and force, two rows at least.", 2);
    t.may<PlusMinus<Force>>("force_error", "What that push may be off by.");
    t.may<Length>("tare_travel", "Travel it already bore on the pan with when the scale showed its tare.");
    return t;
}

void add_rows(SchemaTable& t, std::string_view key, std::string_view words) {
    const Json row{{"type", "array"}, {"items", {{"type", "string"}}}, {"minItems", 2}, {"maxItems", 6}};
    t.put(key, {{"type", "array"}, {"items", row}}, words);
    const Json usual = either({Shape<Length>::json(io::kAny), Shape<bench::ScaleReading>::json(io::kAny),
                               Shape<io::Direction>::json(io::kAny)});
    const Json in_usual_order{{"properties", {{std::string(key), {{"items", {{"items", usual}}}}}}}};
    t.also({{"if", {{"not", {{"required", {"columns"}}}}}}, {"then", in_usual_order}});
    t.list<io::Column>("columns", "Order of the cells in the rows.", io::kAny, 2);
    t.may<std::string>("table", "CSV table beside this file that holds the readings, in place of rows.");
}

SchemaTable load_path_table() {
    SchemaTable t;
    t.may<bench::Stated<Rate>>("stiffness", "Stiffness of scale and frame together, when it is known.", io::kPositive);
    add_rows(t, "block", "Travel and scale with a rigid block in the place of the spring.");
    return t;
}

SchemaTable measured_spring_table() {
    SchemaTable t;
    t.must<std::string>("name", "Name of the spring; its files are named after it.");
    t.may<bench::Role>("role", "What it is: the suspect, a good one, or new.");
    t.may<std::string>("wire", "Id of the wire grade, when it is known.");
    t.may<bench::Stated<Length>>("wire_diameter", "d, with what it may be off by.", io::kSize);
    t.may<bench::Stated<Length>>("outside_diameter", "De, with what it may be off by.", io::kSize);
    t.may<bench::Stated<double>>("total_coils", "nt, counted: \"6.5 ±0.1\".", Span{0.0, 10000.0, true, ""});
    t.may<bench::Stated<Length>>("free_length", "L0 as measured free.", io::kSize);
    t.may<bench::Stated<Length>>("free_length_new", "L0 it had when new, when that is known: tells how it set.",
                                 io::kSize);
    t.may<spring::Ends>("ends", "How its ends are made.");
    t.may<int>("preloads", "How often it was pressed before the readings.", Span{0.0, 1000.0, false, ""});
    t.may<Length>("preload_height", "How far it was pressed then.", io::kSize);
    add_rows(t, "readings",
             "One row a reading: height (or travel) and what the scale shows, then \"unloading\" when it "
             "was let up.");
    t.one_of({"readings", "table"});
    return t;
}

Json measured_shape(const Span& span) {
    return either({Shape<Force>::json(span), Shape<Length>::json(span), number_shape(span)});
}

SchemaTable plan_table() {
    SchemaTable t;
    t.put("inspect", {{"enum", {"every piece", "by sampling"}}}, "How many pieces decide on the loads.")
        .need("inspect");
    t.may<inspection::Level>("level", "Inspection level of ISO 2859-1.");
    t.may<inspection::Severity>("severity", "How strict the plan is.");
    t.may<double>("aql", "AQL in per cent, one of those ISO 2859-1 has.", io::kPositive);
    return t;
}

SchemaTable uncertainty_table() {
    SchemaTable t;
    for (const inspection::Kind kind : inspection::kKinds) {
        const std::string words = "U (k = 2) of the " + std::string(inspection::words(kind)) + ".";
        if (measure(kind) == inspection::Measure::force) t.may<PlusMinus<Force>>(key(kind), words);
        if (measure(kind) == inspection::Measure::length) t.may<PlusMinus<Length>>(key(kind), words);
        if (measure(kind) == inspection::Measure::count) t.may<double>(key(kind), words, io::kPositive);
    }
    t.may<std::string>("readings", "File of readings whose bench the loads were measured on: their U is worked out.");
    return t;
}

/// The names of columns, as the reader lists them to whom it knows none.
Json column_names() {
    constexpr std::string_view kHead = "columns are ";
    const std::string hint = io::sample_column_hint("");
    SEATLOAD_ASSERT(hint.starts_with(kHead));
    Json names = Json::array();
    for (const std::string_view name : split(std::string_view(hint).substr(kHead.size()), ','))
        names.push_back(trim(name));
    return names;
}

SchemaTable pieces_table() {
    SchemaTable t;
    t.put("columns", {{"type", "array"}, {"items", {{"enum", column_names()}}}}, "What each cell of a row is.");
    const Json cell{{"type", {"string", "number"}}};
    t.put("rows", {{"type", "array"}, {"items", {{"type", "array"}, {"items", cell}, {"minItems", 2}}}},
          "One row a piece, in the order measured; an empty text was not measured.");
    t.may<std::string>("table", "CSV table beside this file that holds the pieces, in place of columns and rows.");
    t.one_of({"rows", "table"});
    return t;
}

SchemaTable characteristic_table() {
    SchemaTable t;
    t.must<inspection::Kind>("of", "What was measured.");
    t.put("at_least", measured_shape(io::kAny), "Lower limit on the sheet.");
    t.put("at_most", measured_shape(io::kAny), "Upper limit on the sheet.");
    t.put("uncertainty", measured_shape(io::kNotNegative), "U, k = 2.");
    t.put("mean", measured_shape(io::kAny), "Mean of the pieces.");
    t.put("deviation", measured_shape(io::kNotNegative), "Standard deviation s.");
    t.must<bool>("decides", "Whether it counts for the verdict.");
    t.must<int>("inside", "Pieces inside the limits by U or more.", kCountSpan);
    t.must<int>("unproven", "Pieces nearer to a limit than U.", kCountSpan);
    t.must<int>("outside", "Pieces outside by more than U.", kCountSpan);
    t.must<inspection::Verdict>("verdict", "What follows for this characteristic.");
    return t;
}

}  // namespace

Json readings_schema() {
    SchemaTable t, heights;
    add_format(t, io::kReadingsFormat, false);
    t.table("run", run_table(), "The session.");
    t.table("scale", scale_table(), "The scale.").need("scale");
    t.table("gauge", gauge_table(), "What heights were set by.");
    t.table("indicator", indicator_table(), "The indicator that told travels.");
    t.table("load_path", load_path_table(), "How far scale and frame give way themselves.");
    heights.others(Shape<bench::Stated<Length>>::json(io::kSize));
    t.table("heights", heights, "Heights the load is asked for at, by any name: seated, full_travel.");
    t.tables("spring", measured_spring_table(), "One for each spring.").need("spring");
    return t.file("seatload readings", "What a home-made bench showed of springs: for `seatload bench`.");
}

Json samples_schema() {
    SchemaTable t, lot, after;
    add_format(t, io::kSamplesFormat, true);
    lot.must<std::string>("name", "Name of the lot; its record is named after it.");
    lot.must<int>("pieces", "Pieces of the whole lot.", kPiecesSpan);
    lot.may<std::string>("maker", "Who wound it.");
    lot.may<std::string>("number", "Part number of the spec it was ordered by.");
    lot.may<std::string>("revision", "Revision of that spec.");
    lot.may<std::string>("fixture", "What it was measured with.");
    lot.may<io::DateText>("date", "Day of the inspection.");
    t.table("lot", lot, "The lot.").need("lot");
    t.table("plan", plan_table(),
            "By how many pieces the loads are judged; left out, every piece of a lot of up to 150.");
    t.table("uncertainty", uncertainty_table(), "How well each thing was measured.");
    after.must<std::string>("treatment",
                            "What was done before pieces were measured again: \"heat\", \"pressed solid\".");
    after.may<std::string>("conditions", "How: \"24 h at 120 °C, held at L2\".");
    t.table("after", after, "When some were measured again after a treatment.");
    t.table("pieces", pieces_table(), "What was measured.").need("pieces");
    return t.file("seatload samples", "What was measured of a lot: for `seatload inspect`.");
}

Json lot_schema() {
    SchemaTable t, spec, lot;
    add_format(t, io::kLotFormat, true);
    t.must<inspection::Verdict>("verdict", "What the inspection found.");
    t.list<std::string>("reasons", "Why.");
    t.list<std::string>("conditions",
                        "What nobody measured and must hold, for the lot to be as good as the verdict says.");
    t.list<std::string>("remarks", "What else to know.");
    spec.may<std::string>("number", "Part number.");
    spec.may<std::string>("revision", "Revision.");
    spec.must<std::string>("sha256", "SHA-256 of the spec's file.");
    t.table("spec", spec, "The spec it was held to.").need("spec");
    lot.must<std::string>("name", "Name of the lot.");
    lot.may<std::string>("maker", "Who wound it.");
    lot.must<int>("pieces", "Pieces of the lot.", Span{1.0, 10'000'000.0, false, ""});
    lot.must<int>("inspected", "Pieces measured.", kCountSpan);
    lot.may<std::string>("plan", "Plan for the loads, in words.");
    lot.may<io::DateText>("date", "Day of the inspection.");
    t.table("lot", lot, "The lot.").need("lot");
    t.tables("characteristic", characteristic_table(), "One for each thing measured.");
    return t.file("seatload lot",
                  "What an inspection found, as `seatload inspect` writes it: for `seatload specs approve`.");
}

}  // namespace seatload::test
