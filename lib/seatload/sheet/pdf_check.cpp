// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_check.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/core/text.hpp>
#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/utf8.hpp>

namespace seatload::sheet {
namespace {

constexpr double kFarthest = 5000.0;    ///< [mm]; libharu clamps reals to 32 767 points without a word
constexpr double kTallest = 200.0;      ///< [mm]; libharu takes no type above 600 points
constexpr double kNarrowestPage = 2.0;  ///< [mm]; libharu takes no page under 3 points, but one that is not a number

bool is_drawable(double number) { return std::isfinite(number) && std::abs(number) <= kFarthest; }
bool is_page_size(double size) { return is_drawable(size) && size >= kNarrowestPage; }
bool is_drawable(Point p) { return is_drawable(p.x) && is_drawable(p.y); }
bool is_drawable(const Path& path) {
    return path.size() >= 2 && std::all_of(path.begin(), path.end(), [](Point p) { return is_drawable(p); });
}

struct IsSound {
    bool operator()(const Line& line) const { return is_drawable(line.points); }
    bool operator()(const Area& area) const {
        return area.points.size() >= 3 && is_drawable(area.points) && is_grey(area.grey);
    }
    bool operator()(const Arc& arc) const {
        return is_drawable(arc.centre) && is_drawable(arc.radius) && arc.radius > 0.0 && is_drawable(arc.from) &&
               is_drawable(arc.to) && arc.from < arc.to;
    }
    bool operator()(const Disc& disc) const {
        return is_drawable(disc.centre) && is_drawable(disc.radius) && disc.radius > 0.0 && is_grey(disc.grey);
    }
    bool operator()(const Text& text) const {
        return is_drawable(text.at) && text.height > 0.0 && text.height <= kTallest && is_drawable(text.turn) &&
               text.squeeze > 0.1 && text.squeeze < 3.0;
    }
    static bool is_grey(double grey) { return grey >= 0.0 && grey <= 1.0; }
};

bool is_mime_type(std::string_view mime) {
    constexpr std::size_t kLongest = 100;  // libharu's names end at 127
    const auto is_token = [](char c) { return (c >= 'a' && c <= 'z') || c == '-' || c == '.' || c == '+'; };
    const std::size_t slash = mime.find('/');
    if (slash == 0 || slash == std::string_view::npos || slash + 1 == mime.size() || mime.size() > kLongest)
        return false;
    return std::all_of(mime.begin(), mime.begin() + static_cast<std::ptrdiff_t>(slash), is_token) &&
           std::all_of(mime.begin() + static_cast<std::ptrdiff_t>(slash) + 1, mime.end(), is_token);
}

}  // namespace

bool is_printable(std::string_view words, Face face) {
    if (first_invalid_utf8(words)) return false;
    for (const Run& run : runs(words))
        for (const char32_t c : characters(run.words))
            if (!metrics(face).has(c)) return false;
    return true;
}

Diagnostics complaints(std::span<const Drawing> pages) {
    Diagnostics out;
    if (pages.empty()) out.push_back(error("bad-pdf"_id, "a PDF needs at least one page"));
    for (std::size_t p = 0; p < pages.size(); ++p) {
        if (!is_page_size(pages[p].width()) || !is_page_size(pages[p].height()))
            out.push_back(error("bad-pdf"_id, fmt::format("page {}: no such size of paper", p + 1)));
        for (const Item& item : pages[p].items()) {
            if (!std::visit(IsSound{}, item))
                out.push_back(
                    error("bad-pdf"_id,
                          fmt::format("page {}: something to be drawn is not a number or far off the page", p + 1)));
            const Text* text = std::get_if<Text>(&item);
            if (text && !is_printable(text->words, text->face))
                out.push_back(
                    error("bad-pdf"_id, fmt::format("page {}: a text has a character that cannot be printed", p + 1)));
        }
    }
    return out;
}

Diagnostics complaints(std::span<const Attachment> attachments) {
    Diagnostics out;
    std::set<std::string> names;
    for (const Attachment& attachment : attachments) {
        if (!is_plain_file_name(attachment.name))
            out.push_back(error("bad-pdf"_id, "an attachment has a name that is no plain file name"));
        else if (!names.insert(attachment.name).second)
            out.push_back(error("bad-pdf"_id, "two attachments have the name " + attachment.name));
        if (!is_mime_type(attachment.mime)) out.push_back(error("bad-pdf"_id, "an attachment is of no known kind"));
        if (!is_printable(attachment.description, Face::regular))
            out.push_back(error("bad-pdf"_id, "an attachment's description has a character that cannot be written"));
        if (attachment.bytes.size() > kLargestInput)
            out.push_back(error("bad-pdf"_id, "an attachment is larger than 1 MiB"));
    }
    return out;
}

}  // namespace seatload::sheet
