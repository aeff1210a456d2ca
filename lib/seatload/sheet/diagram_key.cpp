// SPDX-License-Identifier: MIT
#include <seatload/sheet/diagram_key.hpp>

#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

constexpr double kRowPitch = 4.3;
constexpr double kBetween = 4.0;  ///< one entry and the next
constexpr double kIndent = 1.0;
constexpr double kSampleGap = 1.4;  ///< sample and words
constexpr double kLow = -0.3;       ///< of a sample, from the base line of its words
constexpr double kHigh = 2.8;

double sample_width(Sample sample) {
    switch (sample) {
        case Sample::none:
            return 0.0;
        case Sample::band:
            return 2.4;
        case Sample::bar:
            return 1.6;
        case Sample::upright_limit:
            return 0.6;
        case Sample::level_limit:
            return 9.0;
    }
    return 0.0;
}

double indent(Sample sample) { return sample == Sample::none ? 0.0 : sample_width(sample) + kSampleGap; }

double width_of(const KeyEntry& entry) { return indent(entry.sample) + text_width(entry.words, kLettering); }

/// Where each entry stands: from the key's left edge, and in which row.
struct EntryPlace {
    double x;
    int row;
};

std::vector<EntryPlace> places(const std::vector<KeyEntry>& entries, double width) {
    std::vector<EntryPlace> out;
    double x = kIndent;
    int row = 0;
    for (const KeyEntry& entry : entries) {
        if (x > kIndent && x + width_of(entry) > width) {
            x = kIndent;
            ++row;
        }
        out.push_back({x, row});
        x += width_of(entry) + kBetween;
    }
    return out;
}

void draw_sample(Drawing& drawing, Sample sample, Point at) {
    const double right = at.x + sample_width(sample);
    const double middle = 0.5 * (at.x + right);
    switch (sample) {
        case Sample::none:
            return;
        case Sample::band:
            return draw_band(drawing, {at.x, at.y + kLow, right, at.y + kHigh});
        case Sample::bar:
            return draw_tolerance_bar(drawing, middle, at.y + kLow, at.y + kHigh);
        case Sample::upright_limit:
            return drawing.line({middle, at.y + kLow}, {middle, at.y + kHigh}, LineKind::extreme);
        case Sample::level_limit:
            return drawing.line({at.x, at.y + 0.5 * kLettering}, {right, at.y + 0.5 * kLettering}, LineKind::extreme);
    }
}

}  // namespace

double key_height(const std::vector<KeyEntry>& entries, double width) {
    if (entries.empty()) return 0.0;
    return kRowPitch * (places(entries, width).back().row + 1) + 0.7;
}

void draw_key(Drawing& drawing, const Box& box, const std::vector<KeyEntry>& entries) {
    const std::vector<EntryPlace> all = places(entries, box.width());
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const Point at{box.left + all[i].x, box.top - 4.0 - kRowPitch * all[i].row};
        draw_sample(drawing, entries[i].sample, at);
        drawing.add(Text{{at.x + indent(entries[i].sample), at.y}, entries[i].words});
    }
}

void draw_tolerance_bar(Drawing& drawing, double x, double low, double high) {
    drawing.line({x, low}, {x, high});
    for (const double y : {low, high}) drawing.line({x - 0.8, y}, {x + 0.8, y});
}

void draw_band(Drawing& drawing, const Box& band) {
    drawing.fill(band, 0.8);
    drawing.box(band);
}

}  // namespace seatload::sheet
