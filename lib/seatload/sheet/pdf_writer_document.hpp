// SPDX-License-Identifier: MIT
#pragma once

// What the files that know libharu (2.3.0 to 2.4.x) have in common; nothing else includes this.

#include <hpdf.h>

#include <string>
#include <string_view>

namespace seatload::sheet::detail {

/// libharu's first complaint; every later one is only an echo ("invalid document").
struct Complaint {
    unsigned long code = 0;
    unsigned long detail = 0;
};

/// Thrown and caught below write_pdf() alone, never through libharu's C frames.
struct PdfFailure {
    std::string what;
};

/// A document that libharu is making.
class Document {
  public:
    Document();
    ~Document();
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    HPDF_Doc handle() const { return handle_; }
    /// Throws when libharu has complained since the document began; `step` says while doing what.
    void check(std::string_view step) const;

  private:
    Complaint complaint_;
    HPDF_Doc handle_;
};

/// Balances the page's graphics state: an unbalanced one leaks inside libharu.
class SavedState {
  public:
    explicit SavedState(HPDF_Page page) : page_(page) { HPDF_Page_GSave(page_); }
    ~SavedState() { HPDF_Page_GRestore(page_); }
    SavedState(const SavedState&) = delete;
    SavedState& operator=(const SavedState&) = delete;

  private:
    HPDF_Page page_;
};

/// Millimetres as points [pt].
inline HPDF_REAL points(double mm) { return static_cast<HPDF_REAL>(mm * 72.0 / 25.4); }

/// Adds bytes to a stream of libharu.
void write(HPDF_Stream stream, std::string_view bytes);

}  // namespace seatload::sheet::detail
