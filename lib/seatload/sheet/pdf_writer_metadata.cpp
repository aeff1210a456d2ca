// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer_metadata.hpp>

#include <string>

#include <seatload/core/sha256.hpp>

namespace seatload::sheet::detail {

namespace {

/// What has been drawn on a page, as PDF operators.
std::string drawn_on(HPDF_Page page) {
    const HPDF_Stream stream = static_cast<HPDF_PageAttr>(page->attr)->stream;
    std::string operators;
    for (HPDF_UINT i = 0; i < HPDF_MemStream_GetBufCount(stream); ++i) {
        HPDF_UINT length = 0;
        const HPDF_BYTE* bytes = HPDF_MemStream_GetBufPtr(stream, i, &length);
        operators.append(reinterpret_cast<const char*>(bytes), length);
    }
    return operators;
}

}  // namespace

void describe(const Document& document, const DocumentInfo& info) {
    // Set before the attributes: they are then written as UTF-16, in any language.
    HPDF_SetCurrentEncoder(document.handle(), "UTF-8");
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_TITLE, info.title.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_AUTHOR, info.author.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_SUBJECT, info.subject.c_str());
    if (!info.keywords.empty()) HPDF_SetInfoAttr(document.handle(), HPDF_INFO_KEYWORDS, info.keywords.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_CREATOR, "seatload");
    document.check("describing the document");
}

void identify(const Document& document, std::span<const HPDF_Page> pages, const DocumentInfo& info,
              std::span<const Attachment> attachments) {
    std::string digests;
    for (const std::string* text : {&info.title, &info.author, &info.subject, &info.keywords})
        digests += sha256_hex(*text);
    for (const HPDF_Page page : pages) digests += sha256_hex(drawn_on(page));
    for (const Attachment& a : attachments) digests += sha256_hex(a.name) + sha256_hex(a.bytes);
    std::string identifier = sha256_hex(digests).substr(0, 16);
    const HPDF_Doc doc = document.handle();
    const HPDF_Array pair = HPDF_Array_New(doc->mmgr);
    HPDF_Dict_Add(doc->trailer, "ID", pair);
    for (int i = 0; i < 2; ++i)
        HPDF_Array_Add(pair, HPDF_Binary_New(doc->mmgr, reinterpret_cast<HPDF_BYTE*>(identifier.data()),
                                             static_cast<HPDF_UINT>(identifier.size())));
    document.check("identifying the document");
}

}  // namespace seatload::sheet::detail
