// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_plan.hpp>

#include <algorithm>
#include <map>

namespace seatload::sheet {
namespace {

constexpr double kFigureTop = 1.5;  ///< above the figure, whose heading stands beside its leader
constexpr double kPitchStep = 0.1;

Arrangement arrangement(const SheetStock& stock, const Sharing& sharing) {
    return (stock.is_upright ? upright : lying)(stock.space, stock.foot, stock.legend_height, sharing);
}

/// A way to share the sheet out, with the scale it allows.
struct Trial {
    Arrangement where;
    double squeeze;
    Scale scale;
};

/// Tries trials, breaking the entries into lines only once for each squeeze.
class Planner {
  public:
    explicit Planner(const SheetStock& stock) : stock_(stock) {}

    std::optional<SheetPlan> first_that_fits(const std::vector<Trial>& trials) {
        for (const Trial& trial : trials) {
            const SetEntries& text = set(trial.where.columns.front().width(), trial.squeeze);
            if (text.fit(trial.where.columns, kLeastPitch))
                return SheetPlan{trial.where, trial.scale, text, widest_pitch(text, trial.where.columns)};
        }
        return std::nullopt;
    }

    /// The trials of sharings, in their order.
    template <class Sharings>
    std::vector<Trial> trials(const Sharings& sharings) {
        std::vector<Trial> out;
        for (const Sharing& sharing : sharings) {
            Arrangement where = arrangement(stock_, sharing);
            const Box box = figure_box(where);
            const Scale scale = scale_in(box);
            out.push_back({std::move(where), sharing.squeeze, scale});
        }
        return out;
    }

  private:
    const SetEntries& set(double width, double squeeze) {
        return set_.try_emplace(squeeze, stock_.entries, width, squeeze).first->second;
    }

    Scale scale_in(const Box& box) {
        const auto [at, is_new] = scales_.try_emplace({box.width(), box.height()});
        if (is_new) at->second = figure_scale(stock_.figure, box);
        return at->second;
    }

    static double widest_pitch(const SetEntries& text, const std::vector<Box>& columns) {
        double pitch = kLeastPitch;
        while (pitch + kPitchStep <= kMostPitch && text.fit(columns, pitch + kPitchStep)) pitch += kPitchStep;
        return pitch;
    }

    const SheetStock& stock_;
    std::map<double, SetEntries> set_;                   ///< by squeeze
    std::map<std::pair<double, double>, Scale> scales_;  ///< by width and height of the figure's box
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
    if (auto plan = planner.first_that_fits(trials)) return plan;
    return planner.first_that_fits(planner.trials(tight_sharings(stock.is_upright)));
}

}  // namespace seatload::sheet
