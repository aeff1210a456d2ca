// SPDX-License-Identifier: MIT
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>

#include <support/check.hpp>

#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/spring_sheet.hpp>

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
    return sheet::spring_sheet_pdf({spec, grade_of(spec), tolerances(), paper()}).value();
}

/// A folder of its own, gone with the test.
class Folder {
  public:
    Folder() : path_(std::filesystem::temp_directory_path() / ("seatload_sheet_" + std::to_string(getpid()))) {
        std::filesystem::create_directories(path_);
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::string operator/(const char* name) const { return (path_ / name).string(); }

  private:
    std::filesystem::path path_;
};

bool has_tool(const std::string& name) { return std::system(("command -v " + name + " >/dev/null 2>&1").c_str()) == 0; }

std::string contents(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream out;
    out << file.rdbuf();
    return out.str();
}

struct Run {
    int code;
    std::string out;
    std::string err;
};

Run run(const Folder& folder, const std::string& command) {
    const int status = std::system((command + " >" + (folder / "out") + " 2>" + (folder / "err")).c_str());
    return {WEXITSTATUS(status), contents(folder / "out"), contents(folder / "err")};
}

void write(const std::string& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

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
    CHECK(before == sheet_bytes(spec));
}

TEST_CASE("every sheet is clean for qpdf and for poppler", "[sheet]") {
    if (!has_tool("qpdf") || !has_tool("pdftotext") || !has_tool("pdffonts") || !has_tool("pdfinfo")) {
        WARN("qpdf or poppler-utils is not installed: the PDFs were not read back");
        return;
    }
    const Folder folder;
    for (const Specimen& specimen : specimens()) {
        INFO(specimen.name);
        write(folder / "sheet.pdf", sheet_bytes(specimen.spec));
        const Run checked = run(folder, "qpdf --check " + (folder / "sheet.pdf"));
        CHECK(checked.code == 0);
        CHECK(checked.err == "");
        for (const char* tool : {"pdftotext", "pdffonts", "pdfinfo"}) {
            const Run read =
                run(folder, tool + (" " + (folder / "sheet.pdf")) + (std::string(tool) == "pdftotext" ? " -" : ""));
            CHECK(read.code == 0);
            CHECK(read.err == "");
        }
    }
}

TEST_CASE("the text of a sheet can be taken out of the PDF again", "[sheet]") {
    if (!has_tool("pdftotext") || !has_tool("pdffonts")) {
        WARN("poppler-utils is not installed: the PDF was not read back");
        return;
    }
    const Folder folder;
    record::Spec spec = specimen(latch());
    spec.notes = {"Пружины не спутывать; Łódź, Ørsted, 8 µm"};
    write(folder / "sheet.pdf", sheet_bytes(spec));
    const Run text = run(folder, "pdftotext -layout " + (folder / "sheet.pdf") + " -");
    for (const char* words :
         {"Ø8.2 ± 0.3", "°C", "8 µm", "τ", "Пружины не спутывать", "Łódź", "Ørsted", "OT-14-0312", "5:1", "■", "◊"})
        CHECK_THAT(text.out, ContainsSubstring(words));
    const Run fonts = run(folder, "pdffonts " + (folder / "sheet.pdf"));
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
    if (!has_tool("pdfinfo") || !has_tool("qpdf")) {
        WARN("qpdf or poppler-utils is not installed: the PDF was not read back");
        return;
    }
    const Folder folder;
    write(folder / "enquiry.pdf", *bytes);
    CHECK(run(folder, "qpdf --check " + (folder / "enquiry.pdf")).code == 0);
    CHECK_THAT(run(folder, "pdfinfo " + (folder / "enquiry.pdf")).out, ContainsSubstring("Pages:           4"));
}

}  // namespace
}  // namespace seatload::test
