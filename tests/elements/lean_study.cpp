// SPDX-License-Identifier: MIT
// Makes tests/elements/lean_table.csv anew, on standard output; takes a quarter of an hour.
#include <algorithm>
#include <elements/lean_rows.hpp>
#include <iostream>
#include <seatload/spring/buckling.hpp>

using namespace seatload;
using namespace seatload::test::elements;

namespace {

/// Shares of the length: up to 0.8 of the buckling deflection of a sliding seat, or of the length where there is none,
/// but never past solid.
std::vector<double> compressions(const LeanRow& row) {
    const double solid = 1.0 - row.coils().d_mm / row.coils().pitch_mm;
    const double buckling = spring::buckling_share(row.slenderness, row.moduli, 1.0);
    std::vector<double> all = {0.15, 0.3, 0.45, 0.6};
    if (buckling < 0.9) all = {0.3 * buckling, 0.5 * buckling, 0.65 * buckling, 0.8 * buckling};
    std::erase_if(all, [&](double share) { return share > solid; });
    return all;
}

void print_spring(LeanRow row, const std::vector<double>& shares) {
    std::vector<Stage> stages;
    for (const double share : shares) stages.push_back({share * row.coils().length_mm(), false});
    if (stages.empty()) return;
    for (const StageResult& found : press(row.coils(), row.head, stages)) {
        row.compression = found.deflection_mm / row.coils().length_mm();
        row.lean = found.head.length() / row.coils().D_mm;
        row.bow = 0.0;
        for (const Sideways& coil : found.coils) row.bow = std::max(row.bow, coil.length() / row.coils().D_mm);
        std::cout << text(row) << std::endl;
    }
}

}  // namespace

int main() {
    std::cout << kLeanColumns << std::endl;
    const auto all = [](Head head, double moduli, std::vector<double> indices, std::vector<double> slendernesses,
                        std::vector<double> whole_turns) {
        for (const double index : indices)
            for (const double slenderness : slendernesses)
                for (const double turns : whole_turns)
                    for (const double over : {0.0, 0.25, 0.5, 0.75}) {
                        const LeanRow row{head, moduli, index, slenderness, turns + over};
                        print_spring(row, compressions(row));
                    }
    };
    all(Head::slides, 0.3956, {5, 8, 14}, {1.5, 2.5, 3.5, 5}, {2, 4, 8});
    all(Head::slides, 0.375, {8}, {2.5, 3.5}, {4});
    all(Head::slides, 0.36, {8, 14}, {2.4, 2.6}, {2, 4, 8});
    all(Head::on_axis, 0.3956, {8}, {2.5, 5}, {5});
    // Half turns pressed far, in which the rest has come back on the other side.
    for (const LeanRow& row : {LeanRow{Head::slides, 0.36, 8, 2.2, 4.5}, LeanRow{Head::slides, 0.36, 8, 2.0, 4.5},
                               LeanRow{Head::slides, 0.3733, 11, 2.35, 4.5}, LeanRow{Head::slides, 0.36, 14, 2.2, 2.5},
                               LeanRow{Head::slides, 0.3956, 8, 2.3, 4.5}})
        print_spring(row, {0.3, 0.5, 0.6, 0.7, 0.75});
}
