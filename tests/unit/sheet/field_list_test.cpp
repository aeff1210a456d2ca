// SPDX-License-Identifier: MIT
// What a compression spring is ordered by, checked off in the text that poppler takes out of the PDF.
//
// The list follows, as far as their carriers could be read: ISO 2162-2:1993 (presentation of data for cylindrical
// helical compression springs), EN 15800:2008 annex B (parameter form), IS 7906-3:1975 (data sheet for orders and
// enquiries), ISO 22705-1:2021 (measurement and test parameters), MIL-STD-29A (1962, terms and clauses 5.1 to 5.3).
// Brackets round reference values: ISO 129-1 (from memory). The title block: ISO 7200:2004.
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/tool.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

/// A line of the list, and what the sheet says for it.
struct Field {
    const char* name;
    const char* words;
};

/// All white space as single blanks, so that words are found however their lines were broken.
std::string in_one_line(const std::string& text) {
    std::string out;
    for (const char c : text) {
        const bool is_blank = c == ' ' || c == '\n' || c == '\f';
        if (is_blank && (out.empty() || out.back() == ' ')) continue;
        out += is_blank ? ' ' : c;
    }
    for (const std::string hard = "\u00a0"; out.find(hard) != std::string::npos;)
        out.replace(out.find(hard), hard.size(), " ");
    return out;
}

record::Spec golden_spec(const std::string& name) {
    const auto path = std::filesystem::path(SEATLOAD_SOURCE_DIR) / "tests" / "golden" / "specs" / (name + ".toml");
    auto spec = io::read_spec(bytes_of(path), path.string(), wires());
    REQUIRE(spec.has_value());
    return std::move(spec).value();
}

/// The text of a spec's sheet, in the order it was drawn.
std::string text_of_sheet(const record::Spec& spec) {
    const ScratchFolder folder;
    const std::string copy = io::write_spec(record::makers_copy(spec));
    const wire::Grade grade = spec.own_grade ? *spec.own_grade : *wires().find(spec.wire_grade);
    const auto pdf = sheet::spring_sheet_pdf({spec, grade, tolerances(), paper(), 1, 1, copy});
    REQUIRE(pdf.has_value());
    write_bytes(folder / "sheet.pdf", *pdf);
    const ToolRun read = run_tool(folder, "pdftotext -raw " + (folder / "sheet.pdf").string() + " -");
    CHECK(read.code == 0);
    CHECK(read.err == "");
    return in_one_line(read.out);
}

void check_off(const std::string& text, const std::vector<Field>& fields) {
    for (const Field& field : fields) {
        INFO(field.name);
        CHECK_THAT(text, ContainsSubstring(field.words));
    }
}

}  // namespace

TEST_CASE("A sheet under cycles states every field a compression spring is ordered by", "[sheet]") {
    if (!has_pdf_tools({"pdftotext"})) return;
    // d = 2.5, D = 20, nt = 8.5, L0 = 62, F1 = 107 N at 48 mm, F2 = 184 N at 38 mm, closed and ground.
    const std::string text = text_of_sheet(golden_spec("peened_plated_cyclic"));
    check_off(
        text,
        {
            // Identity: IS 7906-3, MIL-STD-29A 5.1.
            {"part number", "identification number OT-14-0215"},
            {"revision", "revision A"},
            {"name", "Compression spring, oil relief valve"},
            {"quantity, lot", "Lots to quote: 20, 50, 100 pieces."},
            // Material: ISO 2162-2, EN 15800 annex B, MIL-STD-29A 5.2.1 and 5.2.2.
            {"standard and grade", "■ EN 10270-1:2011+A1:2017, DH"},
            {"wire surface", "surface; presetting (maker's choice"},
            {"certificate", "■ certificate EN 10204 type 3.1: d, Rm"},
            {"wire diameter, the maker's to adjust", "◊ diameter d, uncoiled (2.500 ± 0.025 mm)"},
            {"its tolerance class", "tolerance class of d (by the wire standard)"},
            // Rm least of DH at 2.5 mm by EN 10270-1, and G of its table of properties.
            {"Rm used", "Rm at least; G (1900)"},
            {"G used", "(81500) MPa"},
            // Geometry: ISO 2162-2, EN 15800 annex B, MIL-STD-29A (terms).
            {"outside diameter, working in a bore: D + d", "■ outside De 22.50 ±"},
            {"bore", "works in bore of (23.95 mm)"},
            {"guidance", "seats (flat and parallel, on axis)"},
            {"mean and inside diameter: 20; 20 - 2.5", "mean D; Di (20.0); (17.5) mm"},
            {"free length, the maker's to adjust", "◊ free length L0 (62 mm)"},
            {"total and active coils: nt - 2", "◊ coils, total nt; n (8.5); (6.5)"},
            {"hand of coiling", "■ hand; end tips apart right"},
            {"end orientation", "end tips apart right; (any angle)"},
            {"end type, ground", "■ ends closed and ground"},
            {"tip thickness: d/4", "ground arc; tip (270° or more); (0.62 mm)"},
            {"deburring inside and outside, chamfer", "■ deburred; chamfer in and out; (none)"},
            {"squareness with its grade: 0.05 L0", "■ squareness e1 at most 3.1 mm (grade 2)"},
            {"parallelism with its grade: 0.03 De", "■ parallelism e2 at most 0.67 mm (grade 2)"},
            {"solid length, the most", "L [mm] 48 38 (26.24) (≤ 21.46)"},
            {"smallest permissible length", "Ln (26.24)"},
            {"pitch: (L0 - 2 d) / n; helix angle", "pitch; helix angle (8.77 mm); (7.9°)"},
            {"wire length, mass", "wire a piece; mass ("},
            // Loads: ISO 2162-2, EN 15800 annex B, IS 7906-3.
            {"F1 at L1 with tolerance", "■ F1 at L1 = 48 mm 107.0 ± 10.7 N"},
            {"F2 at L2 with tolerance", "■ F2 at L2 = 38 mm 184.0 ± 18.4 N"},
            {"rate: G d^4 / (8 D^3 n)", "rate R; stroke sh (7.653 N/mm)"},
            {"stroke: L1 - L2", "stroke sh (7.653 N/mm); (10 mm)"},
            {"Fn at Ln, Fc at Lc", "F [N] 107.0 184.0 ("},
            {"static or dynamic, cycles, frequency", "duty (dynamic, 2 000 000 cycles at 25 Hz)"},
            {"working temperature", "works at up to (120 °C, engine oil)"},
            {"permitted relaxation", "permitted relaxation (none agreed)"},
            // Stresses: ISO 2162-2, EN 15800 annex B. 8 R (L0 - L) D / (pi d^3) at L1 and L2.
            {"tau1, tau2, tau_n, tau_c", "τ [MPa] (349) (599) ("},
            {"tau_k1, tau_k2", "τk [MPa] ("},
            {"tau_kh", "stress range τkh ("},
            // Process: ISO 2162-2, MIL-STD-29A appendix.
            {"stress relief: temperature, time", "stress relief, guide (200 °C to 300 °C, 30 min)"},
            {"presetting, to which length", "presetting (maker's choice; to Lc)"},
            {"peening: media, coverage, intensity", "■ shot peening required; media, coverage, intensity to be"},
            {"surface protection", "■ finish zinc flake 8 µm, colourless"},
            {"hydrogen-embrittlement relief", "■ Bake at once after plating, against hydrogen embrittlement ("},
            // Inspection: ISO 22705-1, MIL-STD-29A 5.2.3.
            {"grade of the loads", "corresponding to (EN 15800: F1 grade 1, F2 grade 2)"},
            {"grade of the coil diameter", "its tolerance (EN 15800 grade 2)"},
            {"number of preloads", "■ Press 3 times to solid length."},
            {"speed and dwell", "slowly; read after 2 s at rest"},
            {"temperature of test", "at 20 ± 5 °C"},
            {"sampling plan, loads", "■ Loads: every piece, at both lengths."},
            {"sampling plan, dimensions", "De and ends: 5 pieces, all inside."},
            {"decision rule", "inside its limits by the uncertainty U of measuring (k = 2)"},
            // A tenth of 21.4 N and of 36.8 N (common practice, no source), rounded down to two digits.
            {"uncertainty allowed", "a tenth of its tolerance: 2.1 N at L1, 3.6 N at L2."},
            // What the maker may adjust: EN 15800 (compensation rule, from memory).
            {"quantities he may alter", "To bring both loads in: free length L0, and coils nt and wire diameter d."},
            // Marking: IS 7906-3; the rest common practice, no source.
            {"packing, tangling, preservation", "■ Packed so that pieces neither tangle nor rust."},
            {"traceability", "■ Label: number, revision, pieces, lot of wire."},
            // The diagram: ISO 2162-2 and EN 15800 style (from memory).
            {"points on the axis of lengths", "L0 (62) L1 48 L2 38 Ln (26.24) Lc (21.46)"},
            {"load axis", "F [N]"},
            {"length axis", "L [mm]"},
        });
}

TEST_CASE("What depends on the kind of spring is stated where it applies", "[sheet]") {
    if (!has_pdf_tools({"pdftotext"})) return;
    // Sources as above. Over a rod the inside diameter is the required one: 10 - 1.25 = 8.75.
    check_off(text_of_sheet(golden_spec("over_a_rod")), {{"inside diameter", "inside Di (8.75 ± "},
                                                         {"rod", "works over rod of ("},
                                                         {"guidance", "guided on the rod"},
                                                         {"static", "duty (static, "},
                                                         {"no finish", "finish (none, "}});
    check_off(text_of_sheet(golden_spec("left_hand_open")),
              {{"hand", "hand; end tips apart left"},
               {"end type", "ends open, not ground"},
               // No ground face, so that only the cut leaves a burr (common practice, no source).
               {"deburring", "deburred; chamfer cut tips; (none)"}});
    check_off(text_of_sheet(golden_spec("ahead_latch")),
              {{"end orientation where half a turn must be over", "■ end tips apart 180° ± "},
               {"ageing: temperature, time", "ageing after coiling 482 °C, 60 min"}});
    check_off(text_of_sheet(golden_spec("open_ground")),
              {{"end type", "ends open and ground"}, {"squareness", "squareness e1 at most"}});
    record::Spec many = golden_spec("peened_plated_cyclic");
    many.quantities = {1000};
    const std::string text = text_of_sheet(many);
    CHECK(text.find("every piece, at both lengths") == std::string::npos);
    CHECK_THAT(text, ContainsSubstring("Loads: "));
}

TEST_CASE("The title block has every field that ISO 7200 makes mandatory, filled", "[sheet]") {
    if (!has_pdf_tools({"pdftotext"})) return;
    // ISO 7200:2004, table of fields, from a secondary reproduction.
    check_off(text_of_sheet(golden_spec("peened_plated_cyclic")),
              {{"legal owner", "legal owner Harbour Engine Works"},
               {"identification number", "identification number OT-14-0215/A"},
               {"date of issue", "date of issue 2026-11-25"},
               {"segment or sheet number", "sheet / number of sheets 1 / 1"},
               {"title", "Compression spring, oil relief valve"},
               {"approval person", "approval person M. Brook"},
               {"creator", "creator J. Hale"},
               {"document type", "document type component drawing"}});
}

TEST_CASE("Ø, ±, °, µ and τ are taken out of the PDF as themselves", "[sheet]") {
    if (!has_pdf_tools({"pdftotext"})) return;
    check_off(text_of_sheet(golden_spec("peened_plated_cyclic")), {{"diameter", "Ø22.50"},
                                                                   {"plus and minus", "107.0 ± 10.7"},
                                                                   {"degree", "20 °C"},
                                                                   {"micro", "8 µm"},
                                                                   {"tau", "τ [MPa]"}});
}

TEST_CASE("A field that a sheet does not state is missed", "[sheet]") {
    if (!has_pdf_tools({"pdftotext"})) return;
    // The same words are looked for on a sheet they do not belong on.
    const std::string text = text_of_sheet(golden_spec("ahead_latch"));
    for (const char* absent : {"squareness e1", "shot peening required", "stress range τkh", "works over rod of",
                               "hydrogen embrittlement", "ends closed and ground", "OT-14-0215"}) {
        INFO(absent);
        CHECK(text.find(absent) == std::string::npos);
    }
}

}  // namespace seatload::test
