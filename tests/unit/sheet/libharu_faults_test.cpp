// SPDX-License-Identifier: MIT
// The faults of libharu 2.3.0 that the writer works round, one by one. Each was seen with that version; a test that
// turns superfluous with a later one still says what a reader of the PDF relies on.
#include <algorithm>
#include <sstream>

#include <seatload/core/file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <support/tool.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;
using sheet::Drawing;

Result<std::string> drawn(const record::Spec& spec) {
    // A specimen's own grade is a table of strengths under a new name, which no file can hold.
    const std::string copy = spec.own_grade ? "a spec\n" : io::write_spec(record::makers_copy(spec));
    return sheet::spring_sheet_pdf({spec, grade_of(spec), tolerances(), paper(), 1, 1, copy});
}

/// The PDF with everything unpacked, to be read as text.
std::string unpacked(const std::string& pdf) {
    const ScratchFolder folder;
    write_bytes(folder / "packed.pdf", pdf);
    const ToolRun run = run_tool(folder, "qpdf --qdf --object-streams=disable " + (folder / "packed.pdf").string() +
                                             " " + (folder / "u").string());
    CHECK(run.code == 0);
    CHECK(run.err == "");
    return bytes_of(folder / "u");
}

/// What follows each `key`, up to a blank, a line end or a closing bracket.
std::vector<std::string> words_after(const std::string& text, std::string_view key) {
    std::vector<std::string> found;
    for (std::size_t at = text.find(key); at != std::string::npos; at = text.find(key, at)) {
        at += key.size();
        found.push_back(text.substr(at, text.find_first_of(" \n>]", at) - at));
    }
    return found;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::istringstream stream(text);
    std::vector<std::string> lines;
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

unsigned number_at(std::string_view bytes, std::size_t at, std::size_t length) {
    unsigned number = 0;
    for (std::size_t i = 0; i < length; ++i) number = number * 256 + static_cast<unsigned char>(bytes.at(at + i));
    return number;
}

/// The bytes of a table of a TrueType file (ISO/IEC 14496-22, font header).
std::string_view table(std::string_view font, std::string_view tag) {
    for (std::size_t i = 0, at = 12; i < number_at(font, 4, 2); ++i, at += 16)
        if (font.substr(at, 4) == tag) return font.substr(number_at(font, at + 8, 4), number_at(font, at + 12, 4));
    return {};
}

/// The outlines of a typeface, glyph by glyph.
std::vector<std::string_view> outlines(std::string_view font) {
    const std::string_view places = table(font, "loca"), glyphs = table(font, "glyf");
    const bool is_long = number_at(table(font, "head"), 50, 2) == 1;
    const std::size_t count = number_at(table(font, "maxp"), 4, 2);
    const auto place = [&](std::size_t glyph) {
        return is_long ? number_at(places, 4 * glyph, 4) : 2 * number_at(places, 2 * glyph, 2);
    };
    std::vector<std::string_view> out;
    for (std::size_t glyph = 0; glyph < count; ++glyph)
        out.push_back(glyphs.substr(place(glyph), place(glyph + 1) - place(glyph)));
    return out;
}

bool is_composite(std::string_view outline) { return outline.size() > 2 && number_at(outline, 0, 2) >= 0x8000; }

/// The glyphs a composite one is put together from (table glyf, composite description).
std::vector<std::size_t> components(std::string_view outline) {
    constexpr unsigned kWords = 0x1, kScale = 0x8, kMore = 0x20, kTwoScales = 0x40, kMatrix = 0x80;
    std::vector<std::size_t> out;
    unsigned flags = kMore;
    for (std::size_t at = 10; (flags & kMore) != 0;) {
        flags = number_at(outline, at, 2);
        out.push_back(number_at(outline, at + 2, 2));
        at += 4 + ((flags & kWords) != 0 ? 4u : 2u);
        if ((flags & kScale) != 0) at += 2;
        if ((flags & kTwoScales) != 0) at += 4;
        if ((flags & kMatrix) != 0) at += 8;
    }
    return out;
}

TEST_CASE("fault: the text map has illegal operators, but poppler reads ours without a word", "[sheet]") {
    if (!has_pdf_tools({"qpdf", "pdftotext"})) return;
    const std::string pdf = drawn(specimen(latch())).value();
    const std::string plain = unpacked(pdf);
    CHECK(plain.find("begincidrange") == std::string::npos);
    CHECK(plain.find("beginbfrange") != std::string::npos);
    // A block of a CMap holds at most 100 lines (Adobe Technical Note 5014, from memory).
    for (const std::string& line : lines_of(plain))
        if (line.ends_with(" beginbfrange")) CHECK(std::stoi(line) <= 100);
    const ScratchFolder folder;
    write_bytes(folder / "sheet.pdf", pdf);
    const ToolRun text = run_tool(folder, "pdftotext " + (folder / "sheet.pdf").string() + " -");
    CHECK(text.err == "");
    CHECK_THAT(text.out, ContainsSubstring("Compression spring"));
}

TEST_CASE("fault: a bold face is named twice bold and marked to be thickened", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    const std::string plain = unpacked(drawn(specimen(latch())).value());
    CHECK(plain.find(",Bold") == std::string::npos);
    const auto names = words_after(plain, "/BaseFont /");
    CHECK(names.size() == 4);  // each face and its descendant font
    for (const std::string& name : names) CHECK(name.substr(name.find('+') + 1).starts_with("LiberationSans"));
    // ISO 32000-1, table 123, from memory: bit 19 (ForceBold).
    const auto flags = words_after(plain, "/Flags ");
    CHECK(flags.size() == 2);
    for (const std::string& flag : flags) CHECK((std::stoul(flag) & (1ul << 18)) == 0);
}

TEST_CASE("fault: an unbalanced graphics state leaks, but every page takes back what it saves", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    for (const Specimen& each : specimens()) {
        const std::string plain = unpacked(drawn(each.spec).value());
        int depth = 0, deepest = 0, saved = 0;
        for (const std::string& op : lines_of(plain)) {
            if (op != "q" && op != "Q") continue;
            depth += op == "q" ? 1 : -1;
            saved += op == "q" ? 1 : 0;
            deepest = std::max(deepest, depth);
            REQUIRE(depth >= 0);
        }
        INFO(each.name);
        CHECK(depth == 0);
        CHECK(saved > 50);
        CHECK(deepest < 28);  // where libharu gives up
    }
}

TEST_CASE("fault: attachments get the builder's path, a header of 1.3 and a date", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    const std::string pdf = drawn(specimen(latch())).value();
    CHECK(pdf.starts_with("%PDF-1.7"));
    const std::string plain = unpacked(pdf);
    for (const char* unwanted :
         {"/proc/", "/tmp", SEATLOAD_SOURCE_DIR, "/ModDate", "/CreationDate", "/Encrypt", "pdfaid"}) {
        CAPTURE(unwanted);
        CHECK(plain.find(unwanted) == std::string::npos);
    }
    for (const char* wanted : {"/AFRelationship /Source", "/AF ", "/UF ", "/Desc ", "/Subtype /application#2ftoml"}) {
        CAPTURE(wanted);
        CHECK(plain.find(wanted) != std::string::npos);
    }
}

TEST_CASE("fault: the third attachment is filed wrongly, but ours come in order however given", "[sheet]") {
    const Drawing page = sheet::a4_landscape();
    const std::vector<sheet::Attachment> files{{"zzz.toml", "z", "last", "application/toml"},
                                               {"aa.toml", "a", "first", "application/toml"},
                                               {"b.txt", "", "empty", "text/plain"},
                                               {"a.toml", std::string(100000, 'x'), "long", "application/toml"}};
    const auto pdf = sheet::write_pdf({&page, 1}, {"Test", "", ""}, files);
    REQUIRE(pdf.has_value());
    if (!has_pdf_tools({"pdfdetach", "qpdf"})) return;
    const ScratchFolder folder;
    const std::string path = (folder / "four.pdf").string();
    write_bytes(path, *pdf);
    CHECK(run_tool(folder, "qpdf --check " + path).code == 0);
    const ToolRun list = run_tool(folder, "pdfdetach -list " + path);
    CHECK(list.err == "");
    CHECK(list.out == "4 embedded files\n1: a.toml\n2: aa.toml\n3: b.txt\n4: zzz.toml\n");
    for (const auto& [number, bytes] :
         {std::pair{"1", files[3].bytes}, std::pair{"3", files[2].bytes}, std::pair{"4", files[0].bytes}}) {
        const std::string out = (folder / number).string();
        CHECK(run_tool(folder, std::string("pdfdetach -save ") + number + " -o " + out + ' ' + path).code == 0);
        CHECK(bytes_of(out) == bytes);
    }
}

TEST_CASE("fault: attachments of any name and kind are taken, but ours are checked", "[sheet]") {
    const Drawing page = sheet::a4_landscape();
    const auto attached = [&](std::vector<sheet::Attachment> files) {
        return sheet::write_pdf({&page, 1}, {"Test", "", ""}, files).has_value();
    };
    CHECK(attached({{"a.toml", "x", "", "application/toml"}}));
    for (const char* name : {"", "../a.toml", "/a.toml", "ü.toml", "a\nb", "(a"})
        CHECK_FALSE(attached({{name, "x", "", "application/toml"}}));
    for (const char* mime : {"", "toml", "/toml", "text/", "text/a/b", "text/p l", "text/\xC3"})
        CHECK_FALSE(attached({{"a.toml", "x", "", mime}}));
    CHECK_FALSE(attached({{"a.toml", "x", "\xFF", "application/toml"}}));
    CHECK_FALSE(attached({{"a.toml", "x", "", "text/plain"}, {"a.toml", "y", "", "text/plain"}}));
    CHECK_FALSE(attached({{"a.toml", std::string(kLargestInput + 1, 'x'), "", "text/plain"}}));
}

TEST_CASE("fault: the identifier is none or made of the clock, but ours is made of the contents", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    record::Spec spec = specimen(latch());
    const auto identifiers = [&] { return words_after(unpacked(drawn(spec).value()), "/ID [<"); };
    const auto before = identifiers();
    REQUIRE(before.size() == 1);
    CHECK(before == identifiers());
    spec.identity.revision = "C";
    CHECK(before != identifiers());
}

TEST_CASE("fault: faces are embedded unpacked, but a sheet stays small enough to mail", "[sheet]") {
    for (const Specimen& each : specimens()) {
        INFO(each.name);
        CHECK(drawn(each.spec).value().size() < 250'000);
    }
    if (!has_pdf_tools({"qpdf"})) return;
    const ScratchFolder folder;
    write_bytes(folder / "sheet.pdf", drawn(specimen(latch())).value());
    const std::string packed = bytes_of(folder / "sheet.pdf");
    // Every stream says how it is packed.
    CHECK(words_after(packed, "\nstream").size() == words_after(packed, "/Filter").size());
}

TEST_CASE("fault: a character without glyph prints a box, but a sheet warns and prints a sign for it", "[sheet]") {
    record::Spec spec = specimen(latch());
    spec.notes = {"春 wound to last"};
    const auto pdf = drawn(spec);
    REQUIRE(pdf.has_value());
    REQUIRE(pdf.error().size() == 1);
    CHECK(pdf.error().front().severity == Severity::warning);
    if (!has_pdf_tools({"pdftotext"})) return;
    const ScratchFolder folder;
    write_bytes(folder / "sheet.pdf", *pdf);
    const ToolRun text = run_tool(folder, "pdftotext -layout " + (folder / "sheet.pdf").string() + " -");
    CHECK_THAT(text.out, ContainsSubstring("□ wound to last"));
}

TEST_CASE("fault: a glyph made of composite glyphs loses its base, but the built-in faces have none", "[sheet]") {
    for (const sheet::Face face : {sheet::Face::regular, sheet::Face::bold}) {
        const auto glyphs = outlines(sheet::font_file(face));
        int composites = 0;
        for (const std::string_view outline : glyphs) {
            if (!is_composite(outline)) continue;
            ++composites;
            for (const std::size_t component : components(outline)) CHECK_FALSE(is_composite(glyphs.at(component)));
        }
        CHECK(composites > 100);  // the accented letters
    }
}

TEST_CASE("fault: some functions lose text, errors or bytes, but none of them is called", "[sheet]") {
    std::string source;  // of all files that know libharu
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "lib/seatload/sheet"))
        if (entry.path().filename().string().starts_with("pdf_writer")) source += read_text_file(entry.path()).value();
    for (const char* name : {"HPDF_SaveToFile", "HPDF_AttachFile", "HPDF_Page_MeasureText", "HPDF_Page_TextRect",
                             "HPDF_SetPassword", "HPDF_PDFA_SetPDFAConformance", "HPDF_SetInfoDateAttr", "setlocale"}) {
        CAPTURE(name);
        CHECK(source.find(std::string(name) + "(") == std::string::npos);
    }
    for (const char* name : {"HPDF_SaveToStream", "HPDF_Page_ShowText", "HPDF_Catalog_SetNames"})
        CHECK(source.find(std::string(name) + "(") != std::string::npos);
}

}  // namespace
}  // namespace seatload::test
