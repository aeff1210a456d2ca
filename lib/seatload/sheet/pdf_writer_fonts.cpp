// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer_fonts.hpp>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <string>
#include <system_error>

#include <seatload/sheet/font_metrics.hpp>

namespace seatload::sheet::detail {

namespace {

static_assert(HPDF_MAJOR_VERSION == 2 && (HPDF_MINOR_VERSION == 3 || HPDF_MINOR_VERSION == 4),
              "the ToUnicode repair below reaches into libharu's structures: look at it again for another version");

void write_font(int descriptor, std::string_view bytes) {
    while (descriptor >= 0 && !bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written <= 0) break;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    if (!bytes.empty()) throw PdfFailure{"no memory for the typeface"};
}

/// A typeface as a file, as libharu 2.3 loads them from a path only: one in memory or, where no /proc gives that a path
/// (a bare container), one among the temporary files, gone when this object is.
class FontFile {
  public:
    explicit FontFile(std::string_view bytes) : descriptor_(memfd_create("font", MFD_CLOEXEC)) {
        path_ = fmt::format("/proc/self/fd/{}", descriptor_);
        if (access(path_.c_str(), R_OK) != 0) put_among_temporary_files();
        try {
            write_font(descriptor_, bytes);
        } catch (...) {
            remove();
            throw;
        }
    }
    ~FontFile() { remove(); }
    FontFile(const FontFile&) = delete;
    FontFile& operator=(const FontFile&) = delete;
    const std::string& path() const { return path_; }

  private:
    void put_among_temporary_files() {
        std::error_code none;
        const std::filesystem::path folder = std::filesystem::temp_directory_path(none);
        path_ = ((none ? "/tmp" : folder) / "seatload-font-XXXXXX").string();
        if (descriptor_ >= 0) close(descriptor_);
        descriptor_ = mkostemp(path_.data(), O_CLOEXEC);
        is_named_ = descriptor_ >= 0;
    }
    void remove() {
        if (is_named_) unlink(path_.c_str());
        if (descriptor_ >= 0) close(descriptor_);
    }

    int descriptor_;
    std::string path_;
    bool is_named_ = false;
};

HPDF_Font load_font(const Document& document, Face face) {
    const FontFile file(font_file(face));
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

}  // namespace

Fonts load_fonts(const Document& document) {
    return {load_font(document, Face::regular), load_font(document, Face::bold)};
}

void mend(const Document& document, const Fonts& fonts) {
    for (const HPDF_Font font : {fonts.regular, fonts.bold}) {
        mend_to_unicode(font);
        mend_descriptor(font);
    }
    document.check("mending the typefaces");
}

}  // namespace seatload::sheet::detail
