// SPDX-License-Identifier: MIT
#include <seatload/sizing/alteration.hpp>

#include <algorithm>

namespace seatload::sizing {
namespace {

using demand::Requirement;
using demand::Seats;

class Alterations {
  public:
    explicit Alterations(const Requirement& requirement) : requirement_(requirement) {}

    template <class Change>
    void add(std::string id, std::string words, const Change& change, RuleSet mends = kAllRules) {
        Requirement changed = requirement_;
        change(changed);
        all_.push_back({std::move(id), std::move(words), std::move(changed), mends});
    }

    void seats() {
        const Seats now = requirement_.space.seats;
        if (now == Seats::guided) return;
        const RuleSet mends = rule_called("buckling") | rule_called("half_turn") | rule_called("sideways_stiffness") |
                              rule_called("seats_flat") | rule_called("lean");
        if (now != Seats::fixed)
            add(
                "space.seats.fixed", "hold both ends flat, so that they can neither slide nor tilt (seats = \"fixed\")",
                [](Requirement& r) { r.space.seats = Seats::fixed; }, mends);
        add(
            "space.seats.guided", "guide the spring along its length (seats = \"guided\")",
            [](Requirement& r) { r.space.seats = Seats::guided; }, mends);
    }

    void wire() {
        const demand::WireChoice& wire = requirement_.wire;
        const bool sizes = !wire.diameters.empty(), grades = !wire.grades.empty() || !wire.own_grades.empty();
        const auto any_size = [](Requirement& r) { r.wire.diameters.clear(); };
        const auto any_grade = [](Requirement& r) {
            r.wire.grades.clear();
            r.wire.own_grades.clear();
        };
        if (sizes) add("wire.diameters.any", "allow any wire size in stock", any_size);
        if (grades) add("wire.grades.any", "allow any wire grade", any_grade);
        if (sizes && grades)
            add("wire.any", "allow any wire grade in any size in stock", [&](Requirement& r) {
                any_size(r);
                any_grade(r);
            });
    }

    void ends() {
        for (const spring::Ends kind :
             {spring::Ends::closed_ground, spring::Ends::closed, spring::Ends::open_ground, spring::Ends::open}) {
            if (std::find(requirement_.ends.begin(), requirement_.ends.end(), kind) != requirement_.ends.end())
                continue;
            const std::string word(spring::word(kind));
            add("coil.ends." + word, "allow " + word + " ends", [&](Requirement& r) { r.ends.push_back(kind); });
        }
    }

    void peening() {
        if (requirement_.duty.is_dynamic() && !requirement_.duty.peened)
            add(
                "duty.peened", "shot-peen the spring", [](Requirement& r) { r.duty.peened = true; },
                rule_called("fatigue"));
    }

    void tolerance() {
        if (requirement_.limits.diameter_grade > 1)
            add(
                "limits.diameter_grade", "ask for the coil diameter to EN 15800 grade 1",
                [](Requirement& r) { r.limits.diameter_grade = 1; },
                rule_called("bore_clearance") | rule_called("rod_clearance") | rule_called("lean"));
    }

    void grid() {
        const demand::Grid usual;
        const demand::Grid& now = requirement_.grid;
        add("grid.finer", "look again on a grid with half the steps", [](Requirement& r) {
            r.grid.mean_diameter_step *= 0.5;
            r.grid.total_coils_step *= 0.5;
            r.grid.free_length_step *= 0.5;
        });
        if (now.mean_diameter || now.free_length || now.total_coils.smallest > usual.total_coils.smallest ||
            now.total_coils.largest < usual.total_coils.largest)
            add("grid.wider", "look again without the ranges under [grid]", [&](Requirement& r) {
                r.grid.mean_diameter.reset();
                r.grid.free_length.reset();
                r.grid.total_coils.smallest = std::min(now.total_coils.smallest, usual.total_coils.smallest);
                r.grid.total_coils.largest = std::max(now.total_coils.largest, usual.total_coils.largest);
            });
    }

    std::vector<Alteration> take() { return std::move(all_); }

  private:
    const Requirement& requirement_;
    std::vector<Alteration> all_;
};

}  // namespace

std::vector<Alteration> alterations(const Requirement& requirement) {
    Alterations all(requirement);
    all.seats();
    all.peening();
    all.wire();
    all.ends();
    all.tolerance();
    all.grid();
    return all.take();
}

}  // namespace seatload::sizing
