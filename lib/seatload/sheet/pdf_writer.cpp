// SPDX-License-Identifier: MIT
// The one file that knows libharu (2.3.0 to 2.4.x), and works round what it does wrong.
#include <seatload/sheet/pdf_writer.hpp>

#include <fmt/format.h>
#include <hpdf.h>
#include <hpdf_conf.h>
#include <hpdf_utils.h>
#include <sys/mman.h>
#include <unistd.h>

#include <seatload/sheet/complaint.hpp>
#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/pdf_check.hpp>

namespace seatload::sheet {
namespace {

static_assert(HPDF_MAJOR_VERSION == 2 && (HPDF_MINOR_VERSION == 3 || HPDF_MINOR_VERSION == 4),
              "the ToUnicode repair below reaches into libharu's structures: look at it again for another version");

/// libharu's first complaint; every later one is only an echo ("invalid document").
struct Complaint {
    unsigned long code = 0;
    unsigned long detail = 0;
};

/// Thrown and caught in this file alone, never through libharu's C frames.
struct PdfFailure {
    std::string what;
};

void keep_first(HPDF_STATUS code, HPDF_STATUS detail, void* user) noexcept {
    auto* complaint = static_cast<Complaint*>(user);
    if (complaint->code == 0) *complaint = {code, detail};
}

class Document {
  public:
    Document() : handle_(HPDF_New(&keep_first, &complaint_)) {
        if (!handle_) throw PdfFailure{"libharu could not start a document"};
    }
    ~Document() { HPDF_Free(handle_); }
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    HPDF_Doc handle() const { return handle_; }
    void check(std::string_view step) const {
        if (complaint_.code != 0)
            throw PdfFailure{
                fmt::format("libharu error 0x{:04X} ({}) while {}", complaint_.code, complaint_.detail, step)};
    }

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

/// A file in memory: libharu 2.3 loads typefaces from a path only.
class MemoryFile {
  public:
    explicit MemoryFile(std::string_view bytes) : descriptor_(memfd_create("font", MFD_CLOEXEC)) {
        while (descriptor_ >= 0 && !bytes.empty()) {
            const ssize_t written = write(descriptor_, bytes.data(), bytes.size());
            if (written <= 0) break;
            bytes.remove_prefix(static_cast<std::size_t>(written));
        }
        if (!bytes.empty()) throw PdfFailure{"no memory for the typeface"};
    }
    ~MemoryFile() {
        if (descriptor_ >= 0) close(descriptor_);
    }
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    std::string path() const { return fmt::format("/proc/self/fd/{}", descriptor_); }

  private:
    int descriptor_;
};

struct Fonts {
    HPDF_Font regular;
    HPDF_Font bold;
};

HPDF_Font load_font(const Document& document, Face face) {
    const MemoryFile file(font_file(face));
    const char* name = HPDF_LoadTTFontFromFile(document.handle(), file.path().c_str(), HPDF_TRUE);
    document.check("loading a typeface");
    const HPDF_Font font = HPDF_GetFont(document.handle(), name, "UTF-8");
    document.check("preparing a typeface");
    return font;
}

/// A legal CMap from character codes (which are UTF-16) to Unicode. Its ranges may not cross a last byte of FF, and a
/// block holds at most 100 of them (Adobe Technical Note 5014).
std::string identity_to_unicode() {
    std::string cmap =
        "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
        "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
        "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
        "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
    for (int first = 0; first < 256; first += 100) {
        const int count = std::min(100, 256 - first);
        cmap += fmt::format("{} beginbfrange\n", count);
        for (int high = first; high < first + count; ++high)
            cmap += fmt::format("<{0:02X}00> <{0:02X}FF> <{0:02X}00>\n", high);
        cmap += "endbfrange\n";
    }
    return cmap + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

/// libharu's ToUnicode map uses operators that are not allowed there (readers complain): put a legal one in its place.
void mend_to_unicode(HPDF_Font font) {
    auto* map = static_cast<HPDF_Dict>(HPDF_Dict_GetItem(font, "ToUnicode", HPDF_OCLASS_DICT));
    if (!map) throw PdfFailure{"libharu made no text map"};
    HPDF_MemStream_FreeData(map->stream);
    for (const char* key : {"Type", "CMapName", "CIDSystemInfo", "WMode"}) HPDF_Dict_RemoveElement(map, key);
    const std::string cmap = identity_to_unicode();
    HPDF_Stream_Write(map->stream, reinterpret_cast<const HPDF_BYTE*>(cmap.data()),
                      static_cast<HPDF_UINT>(cmap.size()));
    map->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
}

/// libharu asks readers to thicken a face that is bold already (FontDescriptor flag bit 19), and leaves the large
/// character map uncompressed.
void mend_descriptor(HPDF_Font font) {
    auto* attributes = static_cast<HPDF_FontAttr>(font->attr);
    attributes->fontdef->flags &= ~(1u << 18);
    if (attributes->map_stream) attributes->map_stream->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
}

HPDF_REAL points(double mm) { return static_cast<HPDF_REAL>(mm * 72.0 / 25.4); }

// The element of a dash pattern is UINT16 in libharu 2.3 and REAL in 2.4.
template <class Function>
struct DashElementOf;
template <class R, class P, class T, class... Rest>
struct DashElementOf<R (*)(P, const T*, Rest...)> {
    using type = T;
};
using DashElement = DashElementOf<decltype(&HPDF_Page_SetDash)>::type;

/// Dashes and gaps in points, for narrow lines (ISO 128-2: dash 12 or 24, gap 3, dot half a line width).
std::vector<DashElement> dashes(LineKind kind) {
    switch (kind) {
        case LineKind::hidden:
            return {9, 2};
        case LineKind::axis:
            return {17, 2, 1, 2};
        case LineKind::extreme:
            return {17, 2, 1, 2, 1, 2};
        default:
            return {};
    }
}

/// Puts the items of a drawing on a libharu page.
class Painter {
  public:
    Painter(HPDF_Page page, const Fonts& fonts) : page_(page), fonts_(fonts) {}

    void operator()(const Line& line) {
        const SavedState state(page_);
        set_stroke(line.kind);
        trace(line.points);
        if (line.closed) HPDF_Page_ClosePath(page_);
        HPDF_Page_Stroke(page_);
    }
    void operator()(const Area& area) {
        const SavedState state(page_);
        HPDF_Page_SetGrayFill(page_, static_cast<HPDF_REAL>(area.grey));
        trace(area.points);
        HPDF_Page_ClosePath(page_);
        HPDF_Page_Fill(page_);
    }
    void operator()(const Arc& arc) {
        const SavedState state(page_);
        set_stroke(arc.kind);
        // One chord a degree: libharu's own arcs run the other way round and join badly with dashes.
        const int steps = std::max(2, static_cast<int>(std::ceil(arc.to - arc.from)));
        Path path;
        for (int i = 0; i <= steps; ++i)
            path.push_back(arc.centre + turned({arc.radius, 0.0}, arc.from + (arc.to - arc.from) * i / steps));
        trace(path);
        if (arc.to - arc.from >= 360.0) HPDF_Page_ClosePath(page_);
        HPDF_Page_Stroke(page_);
    }
    void operator()(const Disc& disc) {
        const SavedState state(page_);
        HPDF_Page_SetGrayFill(page_, static_cast<HPDF_REAL>(disc.grey));
        HPDF_Page_Circle(page_, points(disc.centre.x), points(disc.centre.y), points(disc.radius));
        HPDF_Page_Fill(page_);
    }
    void operator()(const Text& text) {
        if (text.masked) wipe(text_box(text));
        const SavedState state(page_);
        HPDF_Page_SetGrayFill(page_, 0);
        HPDF_Page_BeginText(page_);
        place(text);
        for (const Run& run : runs(text.words)) show(run, text);
        HPDF_Page_EndText(page_);
    }

  private:
    void set_stroke(LineKind kind) {
        HPDF_Page_SetGrayStroke(page_, 0);
        HPDF_Page_SetLineWidth(page_, points(line_width(kind)));
        const auto pattern = dashes(kind);
        if (!pattern.empty()) HPDF_Page_SetDash(page_, pattern.data(), static_cast<HPDF_UINT>(pattern.size()), 0);
        HPDF_Page_SetLineJoin(page_, HPDF_ROUND_JOIN);
        HPDF_Page_SetLineCap(page_, kind == LineKind::wide ? HPDF_ROUND_END : HPDF_BUTT_END);
    }
    void trace(const Path& path) {
        HPDF_Page_MoveTo(page_, points(path.front().x), points(path.front().y));
        for (std::size_t i = 1; i < path.size(); ++i) HPDF_Page_LineTo(page_, points(path[i].x), points(path[i].y));
    }
    void wipe(const Box& box) {
        const SavedState state(page_);
        HPDF_Page_SetGrayFill(page_, 1);
        HPDF_Page_Rectangle(page_, points(box.left), points(box.bottom), points(box.width()), points(box.height()));
        HPDF_Page_Fill(page_);
    }
    void place(const Text& text) {
        const double width = text_width(text);
        const double shift = text.align == Align::left ? 0.0 : text.align == Align::centre ? -0.5 * width : -width;
        const Point start = text.at + turned({shift, 0.0}, text.turn);
        const Point along = turned({1.0, 0.0}, text.turn);
        HPDF_Page_SetTextMatrix(page_, static_cast<HPDF_REAL>(along.x), static_cast<HPDF_REAL>(along.y),
                                static_cast<HPDF_REAL>(-along.y), static_cast<HPDF_REAL>(along.x), points(start.x),
                                points(start.y));
        HPDF_Page_SetHorizontalScalling(page_, static_cast<HPDF_REAL>(100.0 * text.squeeze));
    }
    void show(const Run& run, const Text& text) {
        const double em = text.height / metrics(text.face).capital_height();
        const double size = run.script == Script::plain ? em : kScriptSize * em;
        HPDF_Page_SetFontAndSize(page_, text.face == Face::bold ? fonts_.bold : fonts_.regular, points(size));
        HPDF_Page_SetTextRise(page_, points(script_rise(run.script) * text.height));
        HPDF_Page_ShowText(page_, run.words.c_str());
    }

    HPDF_Page page_;
    const Fonts& fonts_;
};

void describe(const Document& document, const DocumentInfo& info) {
    // Set before the attributes: they are then written as UTF-16, in any language.
    HPDF_SetCurrentEncoder(document.handle(), "UTF-8");
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_TITLE, info.title.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_AUTHOR, info.author.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_SUBJECT, info.subject.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_CREATOR, "seatload");
    document.check("describing the document");
}

void draw_page(const Document& document, const Fonts& fonts, const Drawing& drawing) {
    const HPDF_Page page = HPDF_AddPage(document.handle());
    HPDF_Page_SetWidth(page, points(drawing.width()));
    HPDF_Page_SetHeight(page, points(drawing.height()));
    document.check("starting a page");
    Painter painter(page, fonts);
    for (const Item& item : drawing.items()) std::visit(painter, item);
    document.check("drawing a page");
}

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

std::string assemble(std::span<const Drawing> pages, const DocumentInfo& info) {
    const Document document;
    HPDF_SetCompressionMode(document.handle(), HPDF_COMP_ALL);
    HPDF_UseUTFEncodings(document.handle());
    describe(document, info);
    const Fonts fonts{load_font(document, Face::regular), load_font(document, Face::bold)};
    for (const Drawing& page : pages) draw_page(document, fonts, page);
    for (const HPDF_Font font : {fonts.regular, fonts.bold}) {
        mend_to_unicode(font);
        mend_descriptor(font);
    }
    document.check("mending the typefaces");
    return saved(document);
}

}  // namespace

Result<std::string> write_pdf(std::span<const Drawing> pages, const DocumentInfo& info) {
    Diagnostics errors = complaints(pages);
    for (const std::string* text : {&info.title, &info.author, &info.subject})
        if (!is_printable(*text, Face::regular))
            errors.push_back(error("the document's description has a character that cannot be written"));
    if (!errors.empty()) return errors;
    try {
        return assemble(pages, info);
    } catch (const PdfFailure& failure) {
        return error("the PDF could not be made: " + failure.what);
    }
}

}  // namespace seatload::sheet
