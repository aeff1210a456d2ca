// SPDX-License-Identifier: MIT
#include "family_pairs.hpp"

#include <initializer_list>
#include <random>

namespace seatload::test {
namespace {

using demand::Requirement;
using spring::Ends;

class PairDraw {
  public:
    template <class T>
    T one_of(std::initializer_list<T> values) {
        return *(values.begin() + random_() % values.size());
    }
    bool in(unsigned times, unsigned of) { return random_() % of < times; }

  private:
    std::mt19937 random_{20261126};
};

demand::LoadBand band(PairDraw& draw, double at_least, double at_most) {
    const double easier = draw.one_of({0.0, 0.1, 0.3});
    return {at_least * (1.0 - easier) * newton, at_most * (1.0 + easier) * newton};
}

Requirement drawn(PairDraw& draw) {
    Requirement r;
    r.limits = demand::school_defaults(draw.in(4, 5) ? spring::School::en_13906 : spring::School::handbook);
    const double bore = draw.one_of({8.5, 8.8, 9.0, 9.3});
    r.space.bore = demand::Fit{bore * mm, (bore + 0.05) * mm, bore * mm};
    r.space.seated_height = draw.one_of({14.0, 14.6, 15.0, 15.3}) * mm;
    r.space.full_travel_height = draw.one_of({8.5, 9.0, 9.6}) * mm;
    r.space.seats = draw.one_of({demand::Seats::slides, demand::Seats::fixed, demand::Seats::guided});
    r.seated_load = band(draw, draw.one_of({3.0, 4.4, 4.8}), draw.one_of({6.5, 7.5}));
    r.full_travel_load = {std::nullopt, draw.one_of({12.0, 13.5, 16.0}) * newton};
    r.surroundings.temperature = {draw.one_of({20.0, 90.0, 120.0})};
    r.wire.grades = draw.one_of<std::vector<std::string>>(
        {{"ASTM-A401", "EN10270-3-1.4310-NS"}, {"EN10270-2-FDSiCr", "EN10270-3-1.4310-NS"}, {"EN10270-3-1.4310-NS"}});
    r.wire.diameters = draw.one_of<std::vector<Length>>(
        {{0.65 * mm, 0.7 * mm}, {0.7 * mm, 0.8 * mm}, {0.6 * mm, 0.7 * mm, 0.75 * mm}});
    r.ends = draw.one_of<std::vector<Ends>>(
        {{Ends::closed_ground}, {Ends::closed, Ends::closed_ground}, {Ends::closed_ground, Ends::open}});
    r.grid.mean_diameter_step = draw.one_of({0.1, 0.1, 0.2}) * mm;
    r.grid.mean_diameter = demand::LengthRange{draw.one_of({6.8, 7.2}) * mm, draw.one_of({8.0, 8.4}) * mm};
    r.grid.total_coils_step = draw.one_of({0.5, 0.5, 0.25});
    r.grid.total_coils = {draw.one_of({4.0, 5.0}), draw.one_of({9.0, 10.0})};
    r.grid.free_length_step = draw.one_of({0.2, 0.2, 0.3}) * mm;
    r.grid.free_length = demand::LengthRange{draw.one_of({14.0, 17.0}) * mm, draw.one_of({22.0, 25.0}) * mm};
    return r;
}

}  // namespace

std::vector<std::pair<Requirement, Requirement>> family_pairs(std::size_t count) {
    PairDraw draw;
    std::vector<std::pair<Requirement, Requirement>> pairs;
    for (std::size_t i = 0; i < count; ++i) {
        Requirement first = drawn(draw);
        pairs.emplace_back(std::move(first), drawn(draw));
    }
    return pairs;
}

}  // namespace seatload::test
