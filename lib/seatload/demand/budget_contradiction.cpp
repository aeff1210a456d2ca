// SPDX-License-Identifier: MIT
#include <seatload/demand/budget_contradiction.hpp>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <numbers>
#include <optional>

#include <seatload/core/text.hpp>

namespace seatload::demand {
namespace {

constexpr int kDigits = 4;
constexpr std::size_t kMostMends = 4;

std::string in_newtons(double value) { return significant(value, kDigits) + " N"; }

std::string place_words(LoadPlace place) { return place == LoadPlace::seated ? "seated load" : "full-travel load"; }

std::size_t index_of(const SolvedRules& solved, const SolvedRule* rule) {
    return static_cast<std::size_t>(rule - solved.rules.data());
}

std::string words_for(LoadPlace place, const SolvedRule* least, const SolvedRule& most) {
    const std::string upper = std::string(most.rule->aim) + " it may be at most " + in_newtons(most.extreme.value);
    if (most.extreme.value <= 0.0)
        return "No " + place_words(place) + " is small enough: " + upper + ", and no compression spring pulls.";
    return "No " + place_words(place) + " can do both: " + std::string(least->rule->aim) + " it must be at least " +
           in_newtons(least->extreme.value) + ", " + upper + ".";
}

/// One input moved to where the contradiction is gone.
struct Mend {
    const PointInput* input = nullptr;
    bool is_upper = false;  ///< at most this value, else at least
    double value = 0.0;
    double now = 0.0;

    /// How far it is moved, as a factor.
    double effort() const { return now == 0.0 || value == 0.0 ? 1e9 : std::abs(std::log(value / now)); }
};

/// How far an input can sensibly be moved.
Interval<double> sensible(const PointInput& input, const PlungerBox& box) {
    using P = PlungerPoint;
    constexpr double kFarthest = 10.0;  // times what it is
    const auto is_one_of = [&](std::initializer_list<PointMember> members) {
        return std::find(members.begin(), members.end(), input.member) != members.end();
    };
    const double now_low = box.low.*input.member;
    const double now_high = box.high.*input.member;
    if (is_one_of({&P::half_angle_rad})) return {0.0, 80.0 / 180.0 * std::numbers::pi};
    if (is_one_of({&P::annulus_share, &P::drain_eccentricity})) return {0.0, 1.0};
    if (is_one_of({&P::seat_area_mm2})) return {now_high / kFarthest, box.low.full_area_mm2};
    if (is_one_of({&P::full_area_mm2})) return {box.high.seat_area_mm2, kFarthest * now_low};
    if (is_one_of({&P::friction_n, &P::leak_mpa, &P::residual_mpa, &P::side_parked_n, &P::side_released_n,
                   &P::flank_friction, &P::bore_friction, &P::back_mpa, &P::back_area_mm2}))
        return {0.0, kFarthest * now_low};
    return {now_high / kFarthest, kFarthest * now_low};
}

PlungerBox cut(const PlungerBox& box, PointMember member, bool is_upper, double value) {
    PlungerBox cut = box;
    for (double* end : {&(cut.low.*member), &(cut.high.*member)})
        *end = is_upper ? std::min(*end, value) : std::max(*end, value);
    return cut;
}

/// To three digits, towards the side asked for.
double to_three_digits(double value, bool up) {
    if (value == 0.0) return 0.0;
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) - 2.0);
    return (up ? std::ceil(value / step - 1e-9) : std::floor(value / step + 1e-9)) * step;
}

class Mender {
  public:
    Mender(const Plunger& plunger, const PlungerBox& box, LoadPlace place)
        : plunger_(plunger), box_(box), place_(place) {}

    std::optional<Mend> mend(const PointInput& input, bool is_upper) const {
        const double now = is_upper ? box_.high.*input.member : box_.low.*input.member;
        double bad = now;
        double good = is_upper ? sensible(input, box_).low : sensible(input, box_).high;
        if ((is_upper ? good >= now : good <= now) || !is_mended(input, is_upper, good)) return std::nullopt;
        for (int i = 0; i < 50; ++i) {
            const double middle = 0.5 * (good + bad);
            (is_mended(input, is_upper, middle) ? good : bad) = middle;
        }
        const double round = shown_scale(input) * to_three_digits(good / shown_scale(input), !is_upper);
        if (round == now || !is_mended(input, is_upper, round)) return std::nullopt;
        return Mend{&input, is_upper, round, now};
    }

  private:
    /// The unit people see it in, so that rounding is to their digits.
    static double shown_scale(const PointInput& input) {
        return input.member == &PlungerPoint::half_angle_rad ? std::numbers::pi / 180.0 : 1.0;
    }
    bool is_mended(const PointInput& input, bool is_upper, double value) const {
        return !solve_rules(plunger_, cut(box_, input.member, is_upper, value)).contradict(place_);
    }

    const Plunger& plunger_;
    const PlungerBox& box_;
    LoadPlace place_;
};

std::vector<Mend> mends(const Plunger& plunger, const PlungerBox& box, LoadPlace place) {
    const Mender mender(plunger, box, place);
    std::vector<Mend> found;
    for (const PointInput& input : point_inputs()) {
        if (box.high.*input.member == 0.0) continue;
        for (const bool is_upper : {true, false})
            if (const auto one = mender.mend(input, is_upper)) found.push_back(*one);
    }
    std::stable_sort(found.begin(), found.end(), [](const Mend& a, const Mend& b) { return a.effort() < b.effort(); });
    if (found.size() > kMostMends) found.resize(kMostMends);
    return found;
}

std::string ways_out(const std::vector<Mend>& mends) {
    if (mends.empty()) return "No change of one number alone mends it; two or more must give way.";
    std::vector<std::string> words;
    for (const Mend& mend : mends)
        words.push_back(std::string(mend.input->words) + (mend.is_upper ? " at most " : " at least ") +
                        mend.input->shown(mend.value) + " (now " + mend.input->shown(mend.now) + ")");
    return (mends.size() == 1 ? "This alone would mend it: " : "Any one of these alone would mend it: ") +
           join(words, "; ") + ".";
}

}  // namespace

std::vector<Contradiction> contradictions(const Plunger& plunger, const PlungerBox& box, const SolvedRules& solved) {
    std::vector<Contradiction> found;
    for (const LoadPlace place : {LoadPlace::seated, LoadPlace::full_travel}) {
        if (!solved.contradict(place)) continue;
        const SolvedRule* least = solved.biting(place, Bound::at_least);
        const SolvedRule* most = solved.biting(place, Bound::at_most);
        found.push_back({words_for(place, least, *most), ways_out(mends(plunger, box, place)), index_of(solved, least),
                         index_of(solved, most)});
    }
    return found;
}

}  // namespace seatload::demand
