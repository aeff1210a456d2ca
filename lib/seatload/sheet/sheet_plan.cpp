// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_plan.hpp>

#include <algorithm>
#include <array>
#include <map>

namespace seatload::sheet {
namespace {

constexpr double kFigureTop = 1.5;  ///< above the figure, whose heading stands beside its leader
constexpr double kPitchStep = 0.1;
constexpr double kEasyPitch = 4.1;  ///< worth taking height from a figure that does not grow by it

Arrangement arrangement(const SheetStock& stock, const Sharing& sharing) {
    return (stock.is_upright ? upright : lying)(stock.space, stock.foot, stock.legend_height, sharing);
}

/// A way to share the sheet out, with the scale it allows.
struct Trial {
    Sharing sharing;
    Arrangement where;
    Scale scale;

    /// Whether it allows the scale of another, and letters as wide.
    bool is_no_worse(const Trial& other) const {
        return scale.factor() >= other.scale.factor() && sharing.squeeze >= other.sharing.squeeze;
    }
    /// Whether it differs from another by the height of the figure alone.
    bool is_like(const Trial& other) const {
        return sharing.split == other.sharing.split && sharing.diagram_height == other.sharing.diagram_height &&
               sharing.squeeze == other.sharing.squeeze && scale.factor() == other.scale.factor();
    }
};

/// Tries trials, breaking the entries into lines only once for each squeeze.
class Planner {
  public:
    explicit Planner(const SheetStock& stock) : stock_(stock) {}

    std::optional<SheetPlan> first_that_fits(const std::vector<Trial>& trials, Keeping keeping,
                                             const Entries& entries) {
        entries_ = &entries;
        auto first = std::find_if(trials.begin(), trials.end(),
                                  [&](const Trial& trial) { return fits(trial, kLeastPitch, keeping); });
        if (first == trials.end()) return std::nullopt;
        // No block is parted where that costs neither scale nor width of letters.
        const auto whole = std::find_if(first, trials.end(), [&](const Trial& trial) {
            return trial.is_no_worse(*first) && fits(trial, kLeastPitch, {Together::blocks, keeping.heads_again});
        });
        if (whole != trials.end()) {
            first = whole;
            keeping.together = Together::blocks;
        }
        const auto easy = std::find_if(first, trials.end(), [&](const Trial& trial) {
            return trial.is_like(*first) && fits(trial, kEasyPitch, keeping);
        });
        const Trial& best = easy == trials.end() ? *first : *easy;
        const SetEntries& text = set(best);
        return SheetPlan{best.where, best.scale, text, widest_pitch(text, best.where.columns, keeping), keeping};
    }

    /// The trials of sharings, in their order.
    template <class Sharings>
    std::vector<Trial> trials(const Sharings& sharings) {
        std::vector<Trial> out;
        for (const Sharing& sharing : sharings) {
            Arrangement where = arrangement(stock_, sharing);
            const Box box = figure_box(where);
            const Scale scale = scale_in(box);
            out.push_back({sharing, std::move(where), scale});
        }
        return out;
    }

  private:
    const SetEntries& set(const Trial& trial) {
        const double squeeze = trial.sharing.squeeze;
        const double width = trial.where.columns.front().width();
        const std::pair key{entries_, squeeze};
        if (const auto known = set_.find(key); known != set_.end()) return known->second;
        return set_.emplace(key, SetEntries(*entries_, width, squeeze)).first->second;
    }

    bool fits(const Trial& trial, double pitch, const Keeping& keeping) {
        return set(trial).fit(trial.where.columns, pitch, keeping);
    }

    Scale scale_in(const Box& box) {
        const auto [at, is_new] = scales_.try_emplace({box.width(), box.height()});
        if (is_new) at->second = figure_scale(stock_.figure, box);
        return at->second;
    }

    static double widest_pitch(const SetEntries& text, const std::vector<Box>& columns, const Keeping& keeping) {
        double pitch = kLeastPitch;
        while (pitch + kPitchStep <= kMostPitch && text.fit(columns, pitch + kPitchStep, keeping)) pitch += kPitchStep;
        return pitch;
    }

    const SheetStock& stock_;
    const Entries* entries_ = nullptr;                             ///< those being tried
    std::map<std::pair<const Entries*, double>, SetEntries> set_;  ///< by entries and squeeze
    std::map<std::pair<double, double>, Scale> scales_;            ///< by width and height of the figure's box
};

}  // namespace

Box figure_box(const Arrangement& where) {
    const Box& part = where.figure;
    return {part.left, part.bottom, part.right, part.top - kFigureTop};
}

std::optional<SheetPlan> plan_sheet(const SheetStock& stock) {
    Planner planner(stock);
    std::vector<Trial> trials = planner.trials(sharings(stock.is_upright));
    std::stable_sort(trials.begin(), trials.end(),
                     [](const Trial& a, const Trial& b) { return a.scale.factor() > b.scale.factor(); });
    const std::vector<Trial> tight = planner.trials(tight_sharings(stock.is_upright));
    // The loads are read across their grid: they are parted only on a sheet that is full.
    constexpr std::array kKeepings{Keeping{Together::grids, true}, Keeping{Together::pairs, true},
                                   Keeping{Together::grids, false}, Keeping{Together::pairs, false}};
    for (const Keeping& keeping : kKeepings)
        for (const bool is_tight : {false, true})
            for (const Entries* entries : {&stock.entries, &stock.evened})
                if (auto plan = planner.first_that_fits(is_tight ? tight : trials, keeping, *entries)) return plan;
    return std::nullopt;
}

}  // namespace seatload::sheet
