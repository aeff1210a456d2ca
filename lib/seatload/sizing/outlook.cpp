// SPDX-License-Identifier: MIT
#include <seatload/sizing/outlook.hpp>

#include <algorithm>
#include <cmath>

#include <seatload/sizing/workers.hpp>

namespace seatload::sizing {
namespace {

using tolerance::kMadeChunk;

constexpr long kBlock = 64 * static_cast<long>(kMadeChunk);  ///< springs counted by one thread at one go

/// What the cases are about.
struct Ordered {
    const check::Coil& coil;
    double free_length_mm;
    tolerance::MadeOrder order;
    std::vector<MadeQuantity> quantities;
};

/// Counts a block of springs, made to each of the cases.
std::vector<MadeTally> counted_block(const std::vector<MadeCounter>& counters, std::size_t quantities, long block,
                                     const OutlookOptions& options) {
    std::vector<MadeTally> tallies(counters.size(), MadeTally(quantities));
    tolerance::MadeStrays strays;
    const long end = std::min(options.springs, (block + 1) * kBlock);
    for (long first = block * kBlock; first < end; first += static_cast<long>(kMadeChunk)) {
        tolerance::draw_strays(options.seed, static_cast<std::uint64_t>(first), strays);
        const auto springs = std::min(kMadeChunk, static_cast<std::size_t>(end - first));
        for (std::size_t c = 0; c < counters.size(); ++c) counters[c].count(strays, springs, tallies[c]);
    }
    return tallies;
}

/// All blocks, added up in their order.
std::vector<MadeTally> counted(const std::vector<MadeCounter>& counters, std::size_t quantities,
                               const OutlookOptions& options) {
    const auto blocks = static_cast<std::size_t>((options.springs + kBlock - 1) / kBlock);
    std::vector<std::vector<MadeTally>> parts(blocks);
    share_out(blocks, worker_count(options.threads, blocks), [&](std::size_t block, std::size_t) {
        parts[block] = counted_block(counters, quantities, static_cast<long>(block), options);
    });
    std::vector<MadeTally> all(counters.size(), MadeTally(quantities));
    for (const auto& part : parts)
        for (std::size_t c = 0; c < all.size(); ++c) all[c].add(part[c]);
    return all;
}

double told(const MadeQuantity& q, double measured) { return q.inverse ? 1.0 / measured : measured; }

MadeRange told(const MadeQuantity& q, const MadeRange& measured) {
    if (!q.inverse) return measured;
    return {1.0 / measured.most, 1.0 / measured.least};
}

std::optional<double> finite(double value) {
    return std::isfinite(value) ? std::optional<double>(value) : std::nullopt;
}

void set_moments(OutlookQuantity& out, const MadeQuantity& q, const MadeCount& count, double about, double springs) {
    double sum = 0.0, squares = 0.0;
    for (std::size_t i = 0; i < MadeCount::kLanes; ++i) sum += count.sums[i], squares += count.squares[i];
    out.mean = told(q, about + sum / springs);
    if (!q.inverse) out.deviation = std::sqrt(std::max(0.0, (squares - sum * sum / springs) / (springs - 1.0)));
}

OutlookQuantity summed(const MadeQuantity& q, const MadeCount& count, const MadeRange& corners, double middle,
                       long springs) {
    constexpr double kBeyond = 0.5 * (1.0 - 0.99);  // of the springs on each side of 99 of 100
    OutlookQuantity out;
    out.id = q.id;
    out.name = q.name;
    out.unit = q.unit;
    out.nominal = told(q, middle);
    out.worst = told(q, corners);
    out.middle = told(
        q, {value_at_share(count, corners, springs, kBeyond), value_at_share(count, corners, springs, 1.0 - kBeyond)});
    set_moments(out, q, count, middle, static_cast<double>(springs));
    out.least = finite(told(q, q.inverse ? q.most : q.least));
    out.most = q.inverse ? std::nullopt : finite(q.most);
    out.broken = count.broken;
    return out;
}

void set_influences(OutlookCase& out, const Ordered& o) {
    const auto loose = unadjusted_allowance(o.coil.active_coils, out.allowance, out.grades);
    const auto left = tolerance::left_after_adjusting(out.allowance);
    for (std::size_t i = 0; i < 2; ++i) {
        const auto deviations = [&](const tolerance::InfluenceAllowance& allowance) {
            return tolerance::load_deviations_n(o.order, o.coil.active_coils, o.free_length_mm, o.order.lengths[i],
                                                allowance);
        };
        out.as_made[i] = deviations(loose);
        out.adjusted[i] = deviations(left);
    }
}

/// The cases of these grades, all from the same strays.
std::vector<OutlookCase> looked_at(const Ordered& o, std::vector<OutlookCase> cases, const OutlookOptions& options) {
    std::vector<MadeCounter> counters;
    counters.reserve(cases.size());
    for (const OutlookCase& each : cases) counters.emplace_back(o.coil, o.order, each.allowance, o.quantities);
    const auto tallies = counted(counters, o.quantities.size(), options);
    for (std::size_t c = 0; c < cases.size(); ++c) {
        cases[c].springs = tallies[c].springs;
        cases[c].good = tallies[c].good;
        for (std::size_t q = 0; q < o.quantities.size(); ++q)
            cases[c].quantities.push_back(summed(o.quantities[q], tallies[c].counts[q], counters[c].corners()[q],
                                                 counters[c].middles()[q], options.springs));
        set_influences(cases[c], o);
    }
    return cases;
}

std::array<double, 2> own_loads(const check::Coil& c, double L0) {
    return {c.cold_load_n(L0, c.demand.seated_height_mm), c.cold_load_n(L0, c.demand.full_travel_height_mm)};
}

/// The diameter usually inspected: De in a bore, Di over a rod.
bool outside_usually_rules(const demand::Space& space) { return space.bore.has_value() || !space.rod.has_value(); }

}  // namespace

const OutlookQuantity* OutlookCase::first_to_break() const {
    const auto most = std::max_element(quantities.begin(), quantities.end(),
                                       [](const auto& a, const auto& b) { return a.broken < b.broken; });
    return most == quantities.end() || most->broken == 0 ? nullptr : &*most;
}

tolerance::Influence OutlookCase::largest_influence() const {
    return tolerance::largest(tolerance::influence_shares(adjusted));
}

double OutlookCase::largest_influence_share() const {
    return tolerance::influence_shares(adjusted)[static_cast<std::size_t>(largest_influence())];
}

std::optional<int> Outlook::coarsest() const {
    for (int grade = tolerance::kGrades; grade >= 1; --grade)
        if (by_grade[static_cast<std::size_t>(grade - 1)].keeps()) return grade;
    return std::nullopt;
}

const OutlookCase& Outlook::recommended() const {
    return by_grade[static_cast<std::size_t>(coarsest().value_or(1) - 1)];
}

std::optional<Outlook> outlook(const OutlookSubject& s, const OutlookOptions& options) {
    const check::DemandNumbers demand = check::numbers(s.requirement);
    const auto wire = check::numbers(s.grade, s.spring.wire_diameter, s.requirement);
    if (!wire || options.springs < 2) return std::nullopt;
    const check::Coil coil(demand, *wire, s.tables, in_mm(s.spring.mean_diameter), s.spring.ends, s.spring.total_coils);
    const double L0 = in_mm(s.spring.free_length);
    const auto loads = s.ordered_loads_n.value_or(own_loads(coil, L0));
    if (!(coil.active_coils > 0.0 && demand.full_travel_height_mm < demand.seated_height_mm && loads[0] > 0.0 &&
          loads[0] < loads[1]))
        return std::nullopt;

    const Ordered ordered{
        coil, L0, made_order(coil, L0, s.outside_rules.value_or(outside_usually_rules(s.requirement.space)), loads),
        made_quantities(coil)};
    std::vector<OutlookCase> cases;
    const auto add = [&](ToleranceGrades grades) {
        OutlookCase each;
        each.grades = grades;
        each.allowance = made_allowance(coil, s.grade.family, s.tables, grades);
        cases.push_back(std::move(each));
    };
    for (int grade = 1; grade <= tolerance::kGrades; ++grade) add({grade, grade});
    if (s.stated && s.stated->load != s.stated->diameter) add(*s.stated);
    cases = looked_at(ordered, std::move(cases), options);

    Outlook out{ordered.order, {cases[0], cases[1], cases[2]}, {}};
    if (!s.stated) return out;
    out.stated = cases.size() > 3 ? cases[3] : cases[static_cast<std::size_t>(s.stated->load - 1)];
    out.stated->grades = *s.stated;
    return out;
}

}  // namespace seatload::sizing
