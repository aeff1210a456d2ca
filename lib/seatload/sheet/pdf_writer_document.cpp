// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer_document.hpp>

#include <new>

#include <fmt/format.h>

namespace seatload::sheet::detail {

namespace {

void keep_first(HPDF_STATUS code, HPDF_STATUS detail, void* user) noexcept {
    auto* complaint = static_cast<Complaint*>(user);
    if (complaint->code == 0) *complaint = {code, detail};
}

/// Whether it was memory that was wanting: libharu says so itself, or under an error of zlib, whose own word for it
/// (Z_MEM_ERROR) it hands on as well.
bool is_of_memory(const Complaint& complaint) {
    constexpr int kOfZlib = -4;
    return complaint.code == HPDF_FAILD_TO_ALLOC_MEM ||
           (complaint.code == HPDF_ZLIB_ERROR &&
            (complaint.detail == HPDF_FAILD_TO_ALLOC_MEM || complaint.detail == static_cast<HPDF_STATUS>(kOfZlib)));
}

}  // namespace

Document::Document() : handle_(HPDF_New(&keep_first, &complaint_)) {
    if (!handle_) throw std::bad_alloc();  // the only thing that start can lack
}

Document::~Document() { HPDF_Free(handle_); }

void Document::check(std::string_view step) const {
    if (complaint_.code == 0) return;
    if (is_of_memory(complaint_)) throw std::bad_alloc();
    throw PdfFailure{fmt::format("libharu error 0x{:04X} ({}) while {}", complaint_.code, complaint_.detail, step)};
}

void write(HPDF_Stream stream, std::string_view bytes) {
    HPDF_Stream_Write(stream, reinterpret_cast<const HPDF_BYTE*>(bytes.data()), static_cast<HPDF_UINT>(bytes.size()));
}

}  // namespace seatload::sheet::detail
