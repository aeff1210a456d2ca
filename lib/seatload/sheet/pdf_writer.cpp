// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer.hpp>

#include <hpdf.h>

#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/sheet/pdf_check.hpp>
#include <seatload/sheet/pdf_writer_attachments.hpp>
#include <seatload/sheet/pdf_writer_document.hpp>
#include <seatload/sheet/pdf_writer_fonts.hpp>
#include <seatload/sheet/pdf_writer_metadata.hpp>
#include <seatload/sheet/pdf_writer_painter.hpp>

namespace seatload::sheet {
namespace {

using namespace detail;

/// The document's bytes. Saved to memory, since libharu reports success on a full disk.
std::string saved(const Document& document) {
    HPDF_SaveToStream(document.handle());
    document.check("saving");
    HPDF_ResetStream(document.handle());
    std::string bytes(HPDF_GetStreamSize(document.handle()), '\0');
    std::size_t done = 0;
    while (done < bytes.size()) {
        auto count = static_cast<HPDF_UINT32>(bytes.size() - done);
        // Its status is the end of the stream in a normal run; what counts is that bytes come.
        HPDF_ReadFromStream(document.handle(), reinterpret_cast<HPDF_BYTE*>(bytes.data() + done), &count);
        if (count == 0) throw PdfFailure{"libharu gave back less than it saved"};
        done += count;
    }
    return bytes;
}

std::string assemble(std::span<const Drawing> pages, const DocumentInfo& info,
                     std::span<const Attachment> attachments) {
    const Document document;
    document.handle()->pdf_version = HPDF_VER_17;  // the first with embedded files as we write them; libharu says 1.3
    HPDF_SetCompressionMode(document.handle(), HPDF_COMP_ALL);
    HPDF_UseUTFEncodings(document.handle());
    describe(document, info);
    const Fonts fonts = load_fonts(document);
    std::vector<HPDF_Page> drawn;
    for (const Drawing& page : pages) drawn.push_back(draw_page(document, fonts, page));
    attach(document, attachments);
    identify(document, drawn, info, attachments);
    mend(document, fonts);
    return saved(document);
}

}  // namespace

Result<std::string> write_pdf(std::span<const Drawing> pages, const DocumentInfo& info,
                              std::span<const Attachment> attachments) {
    Diagnostics errors = complaints(pages);
    for (Diagnostic& wrong : complaints(attachments)) errors.push_back(std::move(wrong));
    for (const std::string* text : {&info.title, &info.author, &info.subject, &info.keywords})
        if (!is_printable(*text, Face::regular))
            errors.push_back(error("bad-pdf"_id, "the document's description has a character that cannot be written"));
    if (!errors.empty()) return errors;
    try {
        return assemble(pages, info, attachments);
    } catch (const PdfFailure& failure) {
        return error("bad-pdf"_id, "the PDF could not be made: " + failure.what);
    }
}

}  // namespace seatload::sheet
