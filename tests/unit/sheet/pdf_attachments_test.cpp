// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_attachments.hpp>

#include <random>

#include <seatload/core/file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/makers_copy.hpp>
#include <seatload/sheet/attached_specs.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/pdf_writer.hpp>
#include <seatload/sheet/spec_attachment.hpp>
#include <seatload/sheet/spring_sheet.hpp>
#include <seatload/sheet/tamper_mark.hpp>
#include <support/tool.hpp>

#include "specimens.hpp"

namespace seatload::test {
namespace {

using sheet::Drawing;

std::string copy_of(const record::Spec& spec) { return io::write_spec(record::makers_copy(spec)); }

std::string sheet_of(const record::Spec& spec) {
    return sheet::spring_sheet_pdf({spec, grade_of(spec), tolerances(), paper(), 1, 1, copy_of(spec)}).value();
}

std::string only_complaint(const Result<sheet::PdfAttachments>& result) {
    REQUIRE_FALSE(result.has_value());
    REQUIRE(result.error().size() == 1);
    return render(result.error());
}

/// What qpdf makes of a PDF when told to.
std::string through_qpdf(const std::string& pdf, const std::string& options) {
    const ScratchFolder folder;
    write_bytes(folder / "in.pdf", pdf);
    write_bytes(folder / "large", std::string(3 * kLargestInput, '0'));
    write_bytes(folder / "other", "format = \"seatload spec 1\"\n");
    const std::string command =
        "cd " + folder.path().string() + " && qpdf --warning-exit-0 in.pdf " + options + " out.pdf";
    const ToolRun run = run_tool(folder, command);
    INFO(command << '\n' << run.err);
    REQUIRE(run.code == 0);
    return bytes_of(folder / "out.pdf");
}

/// The spec as a file can hold it, with all that a maker's copy leaves out.
record::Spec secretive(record::Spec spec) {
    spec.space.seated_height = spec.seated.length;
    spec.space.full_travel_height = spec.full_travel.length;
    spec.seated_demand = {1.25 * newton, 77.75 * newton};
    spec.full_travel_demand = {std::nullopt, 88.25 * newton};
    return spec;
}

TEST_CASE("a sheet drawn from the spec taken out of a sheet is the same to the last byte", "[sheet]") {
    for (const Specimen& each : specimens()) {
        INFO(each.name);
        if (each.spec.own_grade) continue;  // a table of strengths under a new name, which no file can hold
        const std::string pdf = sheet_of(secretive(each.spec));
        const auto carried = sheet::pdf_attachments(pdf);
        REQUIRE(carried.has_value());
        const sheet::AttachedSpecs found = sheet::attached_specs(*carried);
        CHECK(found.tampered.empty());
        REQUIRE(found.specs.size() == 1);
        const auto read = io::read_spec(found.specs[0].bytes, found.specs[0].name, wires());
        INFO(render(read.error()));
        REQUIRE(read.has_value());
        CHECK(sheet_of(*read) == pdf);
    }
}

TEST_CASE("files go into a PDF and come out of it", "[sheet]") {
    const Drawing page = sheet::a4_landscape();
    std::string all_bytes;
    for (int i = 0; i < 256; ++i) all_bytes += static_cast<char>(i);
    const std::vector<sheet::Attachment> files{{"b.toml", all_bytes, "Größe", "application/toml"},
                                               {"a.txt", "", "", "text/plain"}};
    const std::string pdf = sheet::write_pdf({&page, 1}, {"Test", "", "", "some words"}, files).value();
    const auto carried = sheet::pdf_attachments(pdf);
    REQUIRE(carried.has_value());
    CHECK(carried->keywords == "some words");
    REQUIRE(carried->files.size() == 2);
    CHECK(carried->files[0].name == "a.txt");
    CHECK(carried->files[0].bytes.empty());
    CHECK(carried->files[1].name == "b.toml");
    CHECK(carried->files[1].bytes == all_bytes);
    CHECK(carried->files[1].description == "Größe");
    CHECK(carried->files[1].mime == "application/toml");
    CHECK(sheet::pdf_attachments(sheet::write_pdf({&page, 1}, {"Test", "", ""}).value())->files.empty());
}

TEST_CASE("the letters of a page can be compared with a mark", "[sheet]") {
    Drawing page = sheet::a4_landscape();
    page.add(sheet::Text{{50.0, 50.0}, "mark " + sheet::tamper_mark("abc")});
    page.add(sheet::Text{.at = {50.0, 60.0}, .words = "Größe (\\) 5", .face = sheet::Face::bold});
    const auto carried = sheet::pdf_attachments(sheet::write_pdf({&page, 1}, {"Test", "", ""}).value());
    REQUIRE(carried.has_value());
    CHECK(carried->letters == "markba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015adGre(\\)5");
}

TEST_CASE("an enquiry carries every spec, under names that differ", "[sheet]") {
    record::Spec first = specimen(latch()), second = first, third = first;
    second.alternative = "B";
    second.notes = {"another"};
    third.notes = {"a third, of the same letter"};
    std::vector<sheet::EnquiryAlternative> alternatives;
    for (const record::Spec* spec : {&first, &second, &third})
        alternatives.push_back({*spec, grade_of(*spec), copy_of(*spec)});
    const sheet::EnquiryLetter letter{{}, "reply.toml", "format = \"a form\"\n"};
    const std::string pdf = sheet::enquiry_pdf(alternatives, tolerances(), paper(), letter).value();
    const auto carried = sheet::pdf_attachments(pdf);
    REQUIRE(carried.has_value());
    CHECK(carried->files.size() == 4);
    const sheet::AttachedSpecs found = sheet::attached_specs(*carried);
    CHECK(found.tampered.empty());
    REQUIRE(found.specs.size() == 3);
    CHECK(found.specs[0].name == "ot-14-0312-a-2.toml");
    CHECK(found.specs[0].bytes == copy_of(third));
    CHECK(found.specs[1].name == "ot-14-0312-a.toml");
    CHECK(found.specs[1].bytes == copy_of(first));
    CHECK(found.specs[2].name == "ot-14-0312-b.toml");
    CHECK(found.specs[2].bytes == copy_of(second));
}

TEST_CASE("an attachment is named after the drawing number, whatever it is made of", "[sheet]") {
    record::Spec spec = specimen(latch());
    const auto name = [&] { return sheet::spec_attachment(spec, "", paper().words).name; };
    CHECK(name() == "ot-14-0312-a.toml");
    spec.identity.number.clear();
    CHECK(name() == "spec-a.toml");
    spec.alternative.clear();
    CHECK(name() == "spec.toml");
    spec.identity.number = std::string(300, '7') + "/../ü";
    CHECK(name().size() < 100);
    CHECK(sheet::spring_sheet_pdf({spec, grade_of(spec), tolerances(), paper(), 1, 1, copy_of(spec)}).has_value());
}

TEST_CASE("a mark is the digest in eight groups of eight", "[sheet]") {
    // FIPS 180-4, example "abc", from memory.
    CHECK(sheet::tamper_mark("abc") == "ba7816bf 8f01cfea 414140de 5dae2223 b00361a3 96177a9c b410ff61 f20015ad");
}

TEST_CASE("marks are read back from keywords among other words", "[sheet]") {
    const std::string line =
        sheet::marks_of(std::vector<sheet::Attachment>{{"a.toml", "abc", "", ""}, {"b c.toml", "", "", ""}});
    const auto marks = sheet::marks_in("spring; " + line + "; seatload spec sha256 short.toml 12");
    REQUIRE(marks.size() == 2);
    CHECK(marks[0].name == "a.toml");
    CHECK(marks[0].hex == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(marks[1].name == "b c.toml");
    CHECK(sheet::marks_in("").empty());
    CHECK(sheet::marks_of({}).empty());
}

TEST_CASE("a sheet rewritten by another program still gives its spec", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    const record::Spec spec = specimen(latch());
    const std::string pdf = sheet_of(spec);
    for (const char* options : {"--linearize --", "--object-streams=generate --", "--stream-data=uncompress --",
                                "--qdf --", "--coalesce-contents --", "--encrypt '' owner 256 -- --"}) {
        INFO(options);
        const auto carried = sheet::pdf_attachments(through_qpdf(pdf, options));
        INFO(render(carried.error()));
        REQUIRE(carried.has_value());
        const sheet::AttachedSpecs found = sheet::attached_specs(*carried);
        CHECK(found.tampered.empty());
        REQUIRE(found.specs.size() == 1);
        CHECK(found.specs[0].bytes == copy_of(spec));
    }
}

TEST_CASE("a spec exchanged, taken out or renamed inside its sheet is found out", "[sheet]") {
    if (!has_pdf_tools({"qpdf"})) return;
    const std::string pdf = sheet_of(specimen(latch()));
    const auto said = [&](const std::string& options) {
        const auto carried = sheet::pdf_attachments(through_qpdf(pdf, options));
        REQUIRE(carried.has_value());
        std::string all;
        for (const Diagnostic& tampered : sheet::attached_specs(*carried).tampered) all += tampered.message + '\n';
        return all;
    };
    CHECK(said("--add-attachment other --key=ot-14-0312-a.toml --replace -- --") ==
          "tampered: attached spec ot-14-0312-a.toml does not match the mark\n");
    CHECK(said("--remove-attachment=ot-14-0312-a.toml --") ==
          "tampered: the spec ot-14-0312-a.toml is no longer attached\n");
    CHECK(said("--add-attachment other --key=b.toml -- --") == "tampered: attached spec b.toml has no mark\n");
    CHECK(said("--add-attachment in.pdf --key=a.pdf --mimetype=application/pdf -- --").empty());
}

TEST_CASE("what is no PDF, locked, or packed to burst is refused in words", "[sheet]") {
    const std::string no_pdf =
        "error: this is not a PDF [not-a-pdf]\n"
        "    hint: specs are carried by the PDFs of sheets and enquiries; a spec file itself is put to "
        "`seatload sheet`\n";
    CHECK(only_complaint(sheet::pdf_attachments("")) == no_pdf);
    CHECK(only_complaint(sheet::pdf_attachments("format = \"seatload spec 1\"\n")) == no_pdf);
    CHECK(only_complaint(sheet::pdf_attachments("%PDF-1.7\nnothing more")) ==
          "error: the PDF is damaged, and is not mended by guessing [bad-pdf]\n"
          "    hint: take it again from where it came\n");
    if (!has_pdf_tools({"qpdf"})) return;
    const std::string pdf = sheet_of(specimen(latch()));
    CHECK(only_complaint(sheet::pdf_attachments(through_qpdf(pdf, "--encrypt user owner 256 -- --"))) ==
          "error: the PDF is locked with a password [bad-pdf]\n    hint: save it without one from a PDF reader\n");
    const std::string packed = through_qpdf(pdf, "--add-attachment large --key=z.txt -- --");
    CHECK(packed.size() < kLargestInput);
    CHECK(only_complaint(sheet::pdf_attachments(packed)) ==
          "error: the attached file \"z.txt\" is larger than in any paper of ours [bad-pdf]\n"
          "    hint: give the PDF as seatload wrote it\n");
}

TEST_CASE("a PDF cut short or with bytes changed is read or refused, never a crash", "[sheet]") {
    const std::string pdf = sheet_of(specimen(latch()));
    for (std::size_t cut = 0; cut < pdf.size() - 30; cut += pdf.size() / 40)
        CHECK_FALSE(sheet::pdf_attachments(std::string_view(pdf).substr(0, cut)).has_value());
    std::mt19937 random(20261125);
    const std::string copy = copy_of(specimen(latch()));
    int read = 0, refused = 0;
    for (int round = 0; round < 150; ++round) {
        std::string changed = pdf;
        for (int i = 0; i < 1 + round % 20; ++i) {
            // Half of the changes hit the last tenth, where the structure stands; the rest is mostly typefaces.
            const std::size_t from = i % 2 == 0 ? changed.size() - changed.size() / 10 : 0;
            changed[from + random() % (changed.size() - from)] = static_cast<char>(random() % 256);
        }
        const auto carried = sheet::pdf_attachments(changed);
        (carried ? read : refused)++;
        if (!carried) continue;
        for (const sheet::Attachment& spec : sheet::attached_specs(*carried).specs)
            CHECK((spec.bytes == copy || !sheet::attached_specs(*carried).tampered.empty()));
    }
    CHECK(read > 0);
    CHECK(refused > 0);
}

}  // namespace
}  // namespace seatload::test
