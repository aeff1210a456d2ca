// SPDX-License-Identifier: MIT
#include <seatload/sizing/near_wire.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace seatload::sizing {
namespace {

constexpr std::size_t kMostTried = 4;  // wires whose shortfall is found out

/// A wire before it is known what it lacks.
struct Tried {
    WirePlaces places;
    std::vector<std::size_t> lacking;  ///< requirements with which it has nothing
    unsigned long long one_limit_off = 0;
    double distance = 0.0;  ///< of its diameter from the nearest that serves those, the largest logarithm of the ratio
};

std::vector<Tried> wires_that_serve_most(Family family) {
    std::vector<const Space*> spaces;
    for (const Member& member : family) spaces.push_back(&member.space);
    std::vector<Tried> most;
    for (WirePlaces& places : wires_of_all(spaces)) {
        Tried one;
        for (std::size_t i = 0; i < family.size(); ++i)
            if (!best_of_wire(family[i].space, family[i].census, places[i])) one.lacking.push_back(i);
        if (one.lacking.size() == family.size()) continue;
        if (!most.empty() && one.lacking.size() > most.front().lacking.size()) continue;
        if (!most.empty() && one.lacking.size() < most.front().lacking.size()) most.clear();
        one.places = std::move(places);
        most.push_back(std::move(one));
    }
    return most;
}

/// Combinations of one wire that only one limit keeps out.
unsigned long long one_limit_off(const Space& space, std::size_t wire, const Setting& setting) {
    Space one = space;
    one.wires = {space.wires[wire]};
    SearchOptions quiet;
    quiet.threads = setting.options.threads;
    unsigned long long count = 0;
    for (const Rejections& rejections : search(one, setting.tables, quiet).rejections) count += rejections.alone;
    return count;
}

/// How far a wire's diameter is from the nearest with which a requirement has a spring, as the logarithm of the ratio.
double distance_to_served(const Member& member, double d) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < member.space.wires.size(); ++i)
        if (best_of_wire(member.space, member.census, i))
            least = std::min(least, std::abs(std::log(member.space.wires[i].numbers.d_mm / d)));
    return least;
}

void keep_likeliest(std::vector<Tried>& tried, Family family, const Setting& setting) {
    for (Tried& one : tried) {
        one.one_limit_off = std::numeric_limits<unsigned long long>::max();
        for (const std::size_t i : one.lacking) {
            const double d = family[i].space.wires[one.places[i]].numbers.d_mm;
            one.one_limit_off = std::min(one.one_limit_off, one_limit_off(family[i].space, one.places[i], setting));
            one.distance = std::max(one.distance, distance_to_served(family[i], d));
        }
    }
    std::stable_sort(tried.begin(), tried.end(), [](const Tried& a, const Tried& b) {
        return std::tuple(b.one_limit_off, a.distance) < std::tuple(a.one_limit_off, b.distance);
    });
    if (tried.size() > kMostTried) tried.resize(kMostTried);
}

void drop_other_wire(Shortfall& why, const std::string& grade, Length diameter) {
    const auto is_other = [&](const auto& relief) {
        return relief.proof.grade != grade || relief.proof.spring.wire_diameter != diameter;
    };
    std::erase_if(why.reliefs, is_other);
    std::erase_if(why.altered, is_other);
    std::erase_if(why.joint, is_other);
}

NearWire with_lacks(const Tried& tried, Family family, const Setting& setting) {
    const Space& space = family[0].space;
    NearWire wire{tried.places,
                  space.grades[space.wires[tried.places[0]].grade].id,
                  space.wires[tried.places[0]].size.diameter,
                  {},
                  {}};
    for (std::size_t i = 0; i < family.size(); ++i)
        wire.springs.push_back(best_of_wire(family[i].space, family[i].census, tried.places[i]));
    for (const std::size_t i : tried.lacking) {
        Shortfall why = shortfall(with_wire_alone(family[i].requirement, wire.grade, wire.diameter), setting);
        drop_other_wire(why, wire.grade, wire.diameter);
        wire.lacks.push_back({i, std::move(why)});
    }
    return wire;
}

/// The largest of the smallest changes that its requirements need; infinite when no change of numbers will do.
double change_needed(const NearWire& wire) {
    constexpr double kInfinite = std::numeric_limits<double>::infinity();
    double most = 0.0;
    for (const WireLack& lack : wire.lacks) {
        double least = kInfinite;
        for (const auto* reliefs : {&lack.why.reliefs, &lack.why.joint})
            if (!reliefs->empty()) least = std::min(least, reliefs->front().change);
        most = std::max(most, least);
    }
    return most;
}

}  // namespace

demand::Requirement with_wire_alone(const demand::Requirement& requirement, const std::string& grade,
                                    Length wire_diameter) {
    demand::Requirement alone = requirement;
    std::erase_if(alone.wire.own_grades, [&](const wire::Grade& own) { return own.id != grade; });
    alone.wire.grades.clear();
    if (alone.wire.own_grades.empty()) alone.wire.grades = {grade};
    alone.wire.diameters = {wire_diameter};
    return alone;
}

std::optional<NearWire> near_wire(Family family, const Setting& setting) {
    std::vector<Tried> tried = wires_that_serve_most(family);
    keep_likeliest(tried, family, setting);
    std::optional<NearWire> nearest;
    double least = std::numeric_limits<double>::infinity();
    for (const Tried& one : tried) {
        NearWire wire = with_lacks(one, family, setting);
        const double change = change_needed(wire);
        if (nearest && change >= least) continue;
        least = change;
        nearest = std::move(wire);
    }
    return nearest;
}

}  // namespace seatload::sizing
