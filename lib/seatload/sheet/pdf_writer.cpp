// SPDX-License-Identifier: MIT
// The one file that knows libharu (2.3.0 to 2.4.x), and works round what it does wrong.
#include <seatload/sheet/pdf_writer.hpp>

#include <fmt/format.h>
#include <hpdf.h>
#include <hpdf_conf.h>
#include <hpdf_namedict.h>
#include <hpdf_utils.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <cstring>
#include <vector>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/sha256.hpp>
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

void write(HPDF_Stream stream, std::string_view bytes) {
    HPDF_Stream_Write(stream, reinterpret_cast<const HPDF_BYTE*>(bytes.data()), static_cast<HPDF_UINT>(bytes.size()));
}

/// libharu's ToUnicode map uses operators that are not allowed there (readers complain): put a legal one in its place.
void mend_to_unicode(HPDF_Font font) {
    auto* map = static_cast<HPDF_Dict>(HPDF_Dict_GetItem(font, "ToUnicode", HPDF_OCLASS_DICT));
    if (!map) throw PdfFailure{"libharu made no text map"};
    HPDF_MemStream_FreeData(map->stream);
    for (const char* key : {"Type", "CMapName", "CIDSystemInfo", "WMode"}) HPDF_Dict_RemoveElement(map, key);
    const std::string cmap = identity_to_unicode();
    write(map->stream, cmap);
    map->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
}

/// libharu asks readers to thicken a face that is bold already (FontDescriptor flag bit 19), names it "-Bold,Bold", and
/// leaves the large character map uncompressed.
void mend_descriptor(HPDF_Font font) {
    auto* attributes = static_cast<HPDF_FontAttr>(font->attr);
    attributes->fontdef->flags &= ~(1u << 18);
    auto* face = static_cast<HPDF_TTFontDefAttr>(attributes->fontdef->attr);
    if (char* style = std::strchr(face->base_font, ',')) *style = '\0';
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
    if (!info.keywords.empty()) HPDF_SetInfoAttr(document.handle(), HPDF_INFO_KEYWORDS, info.keywords.c_str());
    HPDF_SetInfoAttr(document.handle(), HPDF_INFO_CREATOR, "seatload");
    document.check("describing the document");
}

HPDF_Page draw_page(const Document& document, const Fonts& fonts, const Drawing& drawing) {
    const HPDF_Page page = HPDF_AddPage(document.handle());
    HPDF_Page_SetWidth(page, points(drawing.width()));
    HPDF_Page_SetHeight(page, points(drawing.height()));
    document.check("starting a page");
    Painter painter(page, fonts);
    for (const Item& item : drawing.items()) std::visit(painter, item);
    document.check("drawing a page");
    return page;
}

/// The embedded file stream itself: compressed, with its kind and size, and without a date.
HPDF_Dict embedded_file(HPDF_Doc doc, const Attachment& attachment) {
    const HPDF_Dict file = HPDF_DictStream_New(doc->mmgr, doc->xref);
    if (!file) throw PdfFailure{"no memory for an attachment"};
    write(file->stream, attachment.bytes);
    file->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
    HPDF_Dict_AddName(file, "Type", "EmbeddedFile");
    HPDF_Dict_AddName(file, "Subtype", attachment.mime.c_str());
    const HPDF_Dict parameters = HPDF_Dict_New(doc->mmgr);
    HPDF_Dict_Add(file, "Params", parameters);
    HPDF_Dict_AddNumber(parameters, "Size", static_cast<HPDF_INT32>(attachment.bytes.size()));
    return file;
}

/// The file specification (ISO 32000-1, 7.11.3) with the keys libharu leaves out, and with the name alone where it
/// writes the path on the builder's machine.
HPDF_Dict file_specification(HPDF_Doc doc, const Attachment& attachment) {
    const HPDF_Encoder utf8 = HPDF_GetEncoder(doc, "UTF-8");
    const HPDF_Dict file = embedded_file(doc, attachment);
    const HPDF_Dict specification = HPDF_Dict_New(doc->mmgr);
    HPDF_Xref_Add(doc->xref, specification);
    HPDF_Dict_AddName(specification, "Type", "Filespec");
    HPDF_Dict_Add(specification, "F", HPDF_String_New(doc->mmgr, attachment.name.c_str(), nullptr));
    HPDF_Dict_Add(specification, "UF", HPDF_String_New(doc->mmgr, attachment.name.c_str(), utf8));
    HPDF_Dict_Add(specification, "Desc", HPDF_String_New(doc->mmgr, attachment.description.c_str(), utf8));
    HPDF_Dict_AddName(specification, "AFRelationship", "Source");
    const HPDF_Dict streams = HPDF_Dict_New(doc->mmgr);
    HPDF_Dict_Add(specification, "EF", streams);
    HPDF_Dict_Add(streams, "F", file);
    HPDF_Dict_Add(streams, "UF", file);
    return specification;
}

/// The document's (empty) list of embedded files, in a name tree of one leaf.
HPDF_Array new_list_of_files(HPDF_Doc doc) {
    const HPDF_NameDict names = HPDF_NameDict_New(doc->mmgr, doc->xref);
    HPDF_Catalog_SetNames(doc->catalog, names);
    const HPDF_NameTree tree = HPDF_NameTree_New(doc->mmgr, doc->xref);
    HPDF_NameDict_SetNameTree(names, HPDF_NAME_EMBEDDED_FILES, tree);
    return static_cast<HPDF_Array>(HPDF_Dict_GetItem(tree, "Names", HPDF_OCLASS_ARRAY));
}

/// Attaches in the order of the names, as a name tree must be: libharu's own HPDF_AttachFile files them wrongly from
/// the third on, and readers then find none.
void attach(const Document& document, std::span<const Attachment> attachments) {
    if (attachments.empty()) return;
    std::vector<const Attachment*> in_order;
    for (const Attachment& attachment : attachments) in_order.push_back(&attachment);
    std::sort(in_order.begin(), in_order.end(),
              [](const Attachment* a, const Attachment* b) { return a->name < b->name; });
    const HPDF_Doc doc = document.handle();
    const HPDF_Array names = new_list_of_files(doc);
    const HPDF_Array associated = HPDF_Array_New(doc->mmgr);
    HPDF_Dict_Add(doc->catalog, "AF", associated);
    document.check("starting the list of attachments");
    for (const Attachment* attachment : in_order) {
        const HPDF_Dict specification = file_specification(doc, *attachment);
        HPDF_Array_Add(names, HPDF_String_New(doc->mmgr, attachment->name.c_str(), nullptr));
        HPDF_Array_Add(names, specification);
        HPDF_Array_Add(associated, specification);
    }
    document.check("attaching files");
}

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

/// An identifier made of what the document holds: libharu would make it of the clock, or none.
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
    const Fonts fonts{load_font(document, Face::regular), load_font(document, Face::bold)};
    std::vector<HPDF_Page> drawn;
    for (const Drawing& page : pages) drawn.push_back(draw_page(document, fonts, page));
    attach(document, attachments);
    identify(document, drawn, info, attachments);
    for (const HPDF_Font font : {fonts.regular, fonts.bold}) {
        mend_to_unicode(font);
        mend_descriptor(font);
    }
    document.check("mending the typefaces");
    return saved(document);
}

}  // namespace

Result<std::string> write_pdf(std::span<const Drawing> pages, const DocumentInfo& info,
                              std::span<const Attachment> attachments) {
    Diagnostics errors = complaints(pages);
    for (Diagnostic& wrong : complaints(attachments)) errors.push_back(std::move(wrong));
    for (const std::string* text : {&info.title, &info.author, &info.subject, &info.keywords})
        if (!is_printable(*text, Face::regular))
            errors.push_back(error("the document's description has a character that cannot be written"));
    if (!errors.empty()) return errors;
    try {
        return assemble(pages, info, attachments);
    } catch (const PdfFailure& failure) {
        return error("the PDF could not be made: " + failure.what);
    }
}

}  // namespace seatload::sheet
