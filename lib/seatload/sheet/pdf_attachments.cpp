// SPDX-License-Identifier: MIT
// The one file that knows libqpdf (11 and later).
#include <seatload/sheet/pdf_attachments.hpp>

#define POINTERHOLDER_TRANSITION 4  // the library's own smart pointer is not used here
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFExc.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFTokenizer.hh>

#include <exception>
#include <stdexcept>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/file.hpp>

namespace seatload::sheet {
namespace {

constexpr std::size_t kFarthestHeader =
    1024;  // readers look for "%PDF-" no further (ISO 32000-1, annex H, from memory)
constexpr std::size_t kLargestPage = 16 * 1024 * 1024;  ///< operators of a page [bytes], far above any of ours
constexpr std::size_t kMostPages = 200;

/// Something about the PDF that its user is to be told.
struct Refusal {
    std::string message;
    std::string hint = "give the PDF as seatload wrote it";
};

Refusal damaged() { return {"the PDF is damaged, and is not mended by guessing", "take it again from where it came"}; }

/// Keeps what is unpacked, up to a limit: a few bytes can unpack to gigabytes.
class BoundedText : public Pipeline {
  public:
    explicit BoundedText(std::size_t largest) : Pipeline("bounded text", nullptr), largest_(largest) {}

    using Pipeline::write;
    void write(const unsigned char* data, std::size_t length) override {
        is_full_ = is_full_ || length > largest_ - text_.size();
        // Stops the unpacking; qpdf turns what is thrown here into a warning.
        if (is_full_) throw std::runtime_error("larger than any file of ours");
        text_.append(reinterpret_cast<const char*>(data), length);
    }
    void finish() override {}

    bool is_full() const { return is_full_; }
    const std::string& text() const { return text_; }

  private:
    std::size_t largest_;
    std::string text_;
    bool is_full_ = false;
};

/// What a stream unpacks to.
std::string unpacked(QPDFObjectHandle stream, std::size_t largest, const std::string& what) {
    if (!stream.isStream()) throw Refusal{what + " is damaged"};
    BoundedText text(largest);
    bool is_unpacked = false;
    const bool is_whole = stream.pipeStreamData(&text, &is_unpacked, 0, qpdf_dl_generalized, true);
    if (text.is_full()) throw Refusal{what + " is larger than in any paper of ours"};
    if (!is_whole || !is_unpacked) throw Refusal{what + " is damaged"};
    return text.text();
}

Attachment attachment(const std::string& name, QPDFFileSpecObjectHelper& specification) {
    const QPDFObjectHandle stream = specification.getEmbeddedFileStream();
    Attachment out;
    out.name = name;
    out.bytes = unpacked(stream, kLargestInput, "the attached file \"" + name + '"');
    out.description = specification.getDescription();
    out.mime = QPDFEFStreamObjectHelper(stream).getSubtype();
    return out;
}

std::vector<Attachment> files(QPDF& pdf) {
    QPDFEmbeddedFileDocumentHelper helper(pdf);
    std::vector<Attachment> out;
    if (!helper.hasEmbeddedFiles()) return out;
    for (const auto& [name, specification] : helper.getEmbeddedFiles()) {
        if (out.size() == kMostAttachments) throw Refusal{"more files are attached than to any paper of ours"};
        out.push_back(attachment(name, *specification));
    }
    return out;
}

std::string keywords(QPDF& pdf) {
    QPDFObjectHandle info = pdf.getTrailer().getKey("/Info");
    if (!info.isDictionary()) return {};
    QPDFObjectHandle words = info.getKey("/Keywords");
    return words.isString() ? words.getUTF8Value() : std::string();
}

/// The letters of a string as our typefaces are written: two bytes each, UTF-16. Only ASCII is wanted here.
std::string ascii_letters(const std::string& utf16) {
    std::string out;
    for (std::size_t i = 0; i + 1 < utf16.size(); i += 2)
        if (utf16[i] == '\0' && utf16[i + 1] > ' ' && utf16[i + 1] < '\x7F') out += utf16[i + 1];
    return out;
}

std::string letters_of(const std::string& operators) {
    QPDFTokenizer tokenizer;
    tokenizer.allowEOF();
    std::string out;
    for (const char c : operators) {
        tokenizer.presentCharacter(c);
        QPDFTokenizer::Token token;
        bool is_unread = false;
        char unread = '\0';
        while (tokenizer.getToken(token, is_unread, unread)) {
            if (token.getType() == QPDFTokenizer::tt_string) out += ascii_letters(token.getValue());
            if (!is_unread) break;
            tokenizer.presentCharacter(unread);
        }
    }
    return out;
}

std::string letters(QPDF& pdf) {
    const auto pages = QPDFPageDocumentHelper(pdf).getAllPages();
    if (pages.size() > kMostPages) throw Refusal{"it has more pages than any paper of ours"};
    std::string out;
    for (QPDFPageObjectHelper page : pages)
        for (QPDFObjectHandle& stream : page.getPageContents())
            out += letters_of(unpacked(stream, kLargestPage, "a page"));
    return out;
}

PdfAttachments read_strictly(std::string_view bytes) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.setAttemptRecovery(false);
    pdf.processMemoryFile("PDF", bytes.data(), bytes.size());
    PdfAttachments out{files(pdf), keywords(pdf), letters(pdf)};
    if (pdf.anyWarnings()) throw damaged();
    return out;
}

PdfAttachments read(std::string_view bytes) {
    try {
        return read_strictly(bytes);
    } catch (const QPDFExc& failure) {
        if (failure.getErrorCode() != qpdf_e_password) throw damaged();
        throw Refusal{"the PDF is locked with a password", "save it without one from a PDF reader"};
    } catch (const std::exception&) {  // qpdf also complains of odd contents by logic_error and its kin
        throw damaged();
    }
}

}  // namespace

Result<PdfAttachments> pdf_attachments(std::string_view bytes) {
    if (bytes.substr(0, kFarthestHeader).find("%PDF-") == std::string_view::npos)
        return error(
            "not-a-pdf"_id, "this is not a PDF",
            "specs are carried by the PDFs of sheets and enquiries; a spec file itself is put to `seatload sheet`");
    try {
        return read(bytes);
    } catch (const Refusal& refusal) {
        return error("bad-pdf"_id, refusal.message, refusal.hint);
    }
}

}  // namespace seatload::sheet
