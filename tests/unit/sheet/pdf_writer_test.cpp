// SPDX-License-Identifier: MIT
#include <limits>
#include <sstream>

#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/tool.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

using sheet::Drawing;

Result<std::string> pdf_of(const Drawing& page) { return sheet::write_pdf({&page, 1}, {"Test", "", ""}); }

Drawing page_with(sheet::Item item) {
    Drawing page = sheet::a4_landscape();
    page.add(std::move(item));
    return page;
}

std::string sheet_bytes(const record::Spec& spec) {
    // A specimen's own grade is a table of strengths under a new name, which no file can hold.
    const std::string copy = spec.own_grade ? "a spec\n" : io::write_spec(record::makers_copy(spec));
    return sheet::spring_sheet_pdf({spec, grade_of(spec), tolerances(), paper(), 1, 1, copy}).value();
}

TEST_CASE("a coordinate that is not a number, or lies far off, is an error", "[sheet]") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    for (const double bad : {nan, inf, -inf, 1e9}) {
        CHECK_FALSE(pdf_of(page_with(sheet::Line{{{0.0, 0.0}, {bad, 1.0}}})).has_value());
        CHECK_FALSE(pdf_of(page_with(sheet::Area{{{0.0, 0.0}, {1.0, 0.0}, {1.0, bad}}, 0.5})).has_value());
        CHECK_FALSE(pdf_of(page_with(sheet::Arc{{bad, 0.0}, 1.0})).has_value());
        CHECK_FALSE(pdf_of(page_with(sheet::Disc{{0.0, 0.0}, bad})).has_value());
        CHECK_FALSE(pdf_of(page_with(sheet::Text{{bad, 0.0}, "x"})).has_value());
        CHECK_FALSE(pdf_of(page_with(sheet::Text{{0.0, 0.0}, "x", bad})).has_value());
    }
    for (const double bad : {nan, inf, -1.0, 0.0, 1e9}) {
        CHECK_FALSE(pdf_of(Drawing(bad, 210.0)).has_value());
        CHECK_FALSE(pdf_of(Drawing(297.0, bad)).has_value());
    }
    CHECK_FALSE(pdf_of(page_with(sheet::Line{{{1.0, 1.0}}})).has_value());
    CHECK(pdf_of(page_with(sheet::Line{{{0.0, 0.0}, {1.0, 1.0}}})).has_value());
}

TEST_CASE("text that is not UTF-8 or has no glyph is an error, never a silent box", "[sheet]") {
    for (const char* bad : {"\xC3(", "\xED\xA0\x80", "\xF0\x9F\x98\x80", "春", "⌀", "tab\t"})
        CHECK_FALSE(pdf_of(page_with(sheet::Text{{50.0, 50.0}, bad})).has_value());
    CHECK_FALSE(sheet::write_pdf(std::vector<Drawing>{sheet::a4_landscape()}, {"春", "", ""}).has_value());
    CHECK(pdf_of(page_with(sheet::Text{{50.0, 50.0}, "Ø ± ° µ τ Ж Ł"})).has_value());
}

TEST_CASE("a document without a page is an error", "[sheet]") {
    CHECK_FALSE(sheet::write_pdf({}, {"Test", "", ""}).has_value());
}

TEST_CASE("equal sheets give equal bytes, and other sheets other bytes", "[sheet]") {
    record::Spec spec = specimen(latch());
    const std::string once = sheet_bytes(spec);
    CHECK(once == sheet_bytes(spec));
    CHECK(once.starts_with("%PDF-"));
    CHECK(once.find("/CreationDate") == std::string::npos);
    spec.identity.revision = "B";
    CHECK(once != sheet_bytes(spec));
}

TEST_CASE("our reasons change nothing on the sheet, to the last byte", "[sheet]") {
    record::Spec spec = specimen(latch());
    const std::string before = sheet_bytes(spec);
    spec.why = "cheapest, and the customer is in a hurry";
    spec.identity.engine = "Ottermere M21";
    spec.seated_demand = {1.5 * newton, std::nullopt};
    spec.full_travel_demand = {std::nullopt, 99.0 * newton};
    CHECK(before == sheet_bytes(spec));
}

TEST_CASE("every sheet is clean for qpdf and for poppler", "[sheet][slow]") {
    if (!has_pdf_tools({"qpdf", "pdftotext", "pdffonts", "pdfinfo", "pdfdetach"})) return;
    const ScratchFolder folder;
    const std::string pdf = (folder / "sheet.pdf").string();
    for (const Specimen& specimen : specimens()) {
        INFO(specimen.name);
        write_bytes(pdf, sheet_bytes(specimen.spec));
        for (const std::string& command : {"qpdf --check " + pdf, "pdftotext " + pdf + " -", "pdffonts " + pdf,
                                           "pdfinfo " + pdf, "pdfdetach -list " + pdf}) {
            const ToolRun read = run_tool(folder, command);
            INFO(command);
            CHECK(read.code == 0);
            CHECK(read.err == "");
        }
    }
}

TEST_CASE("the text of a sheet can be taken out of the PDF again", "[sheet]") {
    if (!has_pdf_tools({"pdftotext", "pdffonts"})) return;
    const ScratchFolder folder;
    const std::string pdf = (folder / "sheet.pdf").string();
    record::Spec spec = specimen(latch());
    spec.notes = {"Пружины не спутывать; Łódź, Ørsted, 8 µm"};
    write_bytes(pdf, sheet_bytes(spec));
    const ToolRun text = run_tool(folder, "pdftotext -layout " + pdf + " -");
    for (const char* words :
         {"Ø8.2 ± 0.3", "°C", "8 µm", "τ", "Пружины не спутывать", "Łódź", "Ørsted", "OT-14-0312", "2:1", "■", "◊"})
        CHECK_THAT(text.out, ContainsSubstring(words));
    const ToolRun fonts = run_tool(folder, "pdffonts " + pdf);
    CHECK_THAT(fonts.out, ContainsSubstring("LiberationSans"));
    // Columns "emb sub uni" of every typeface.
    std::istringstream lines(fonts.out);
    std::string line;
    int faces = 0;
    while (std::getline(lines, line)) {
        if (line.find("Liberation") == std::string::npos) continue;
        ++faces;
        CHECK_THAT(line, ContainsSubstring("yes yes yes"));
    }
    CHECK(faces == 2);
}

TEST_CASE("an enquiry is one document with cover, reply and sheets", "[sheet]") {
    const std::vector<Specimen> all = specimens();
    const std::vector<sheet::EnquiryAlternative> alternatives{{all[0].spec, grade_of(all[0].spec)},
                                                              {all[3].spec, grade_of(all[3].spec)}};
    const auto bytes = sheet::enquiry_pdf(alternatives, tolerances(), paper());
    REQUIRE(bytes.has_value());
    CHECK(*bytes == *sheet::enquiry_pdf(alternatives, tolerances(), paper()));
    CHECK_FALSE(sheet::enquiry_pdf({}, tolerances(), paper()).has_value());
    if (!has_pdf_tools({"pdfinfo", "qpdf"})) return;
    const ScratchFolder folder;
    const std::string pdf = (folder / "enquiry.pdf").string();
    write_bytes(pdf, *bytes);
    CHECK(run_tool(folder, "qpdf --check " + pdf).code == 0);
    CHECK_THAT(run_tool(folder, "pdfinfo " + pdf).out, ContainsSubstring("Pages:           4"));
}

}  // namespace
}  // namespace seatload::test
