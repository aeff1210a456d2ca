// SPDX-License-Identifier: MIT
#include <seatload/sheet/pdf_writer_painter.hpp>

#include <algorithm>
#include <cmath>
#include <variant>
#include <vector>

#include <seatload/sheet/font_metrics.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet::detail {

namespace {

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

}  // namespace

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

}  // namespace seatload::sheet::detail
