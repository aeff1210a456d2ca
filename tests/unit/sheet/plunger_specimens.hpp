// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include <seatload/core/file.hpp>
#include <seatload/demand/budget.hpp>
#include <seatload/io/plunger_file.hpp>
#include <support/check.hpp>

// Plungers as unlike as a budget may bring them: those of the templates and changes of them.

namespace seatload::test {

inline record::PlungerFile template_plunger(const std::string& name) {
    const std::string path = std::string(SEATLOAD_SOURCE_DIR) + "/templates/" + name;
    const auto file = io::read_plunger(read_text_file(path).value(), path);
    for (const Diagnostic& d : file.error()) UNSCOPED_INFO(d.message);
    REQUIRE(file.has_value());
    return *file;
}

struct PlungerSpecimen {
    std::string name;
    record::PlungerFile file;
    demand::Budget budget;
};

inline PlungerSpecimen plunger_specimen(std::string name, const record::PlungerFile& file) {
    return {std::move(name), file, demand::plunger_budget(file.plunger, file.spring)};
}

inline demand::Face area_face(double square_mm) { return {std::nullopt, demand::exactly(square_mm * (mm * mm))}; }

/// A plunger with nothing but a seat, a piston and a pressure; every number is known exactly.
inline record::PlungerFile plain_plunger(double seat_mm2, double full_mm2, double release_mpa) {
    record::PlungerFile file;
    file.identity.position = "plain plunger";
    file.plunger.seat = area_face(seat_mm2);
    file.plunger.full = area_face(full_mm2);
    file.plunger.stroke = 5.0 * mm;
    file.plunger.friction = demand::exactly(0.5 * newton);
    file.plunger.pressures.release = demand::exactly(release_mpa * MPa);
    file.plunger.pressures.residual = demand::exactly(0.01 * MPa);
    return file;
}

inline std::vector<PlungerSpecimen> plunger_specimens() {
    std::vector<PlungerSpecimen> out;
    const record::PlungerFile ahead = template_plunger("ahead_latch_plunger.toml");
    out.push_back(plunger_specimen("ahead", ahead));
    out.push_back(plunger_specimen("astern", template_plunger("astern_latch_plunger.toml")));

    record::PlungerFile spring = ahead;
    spring.spring = {{4.9 * newton, 5.3 * newton}, {12.4 * newton, 13.1 * newton}};
    spring.plunger.back = demand::BackPressure{{0.0 * MPa, 0.005 * MPa}, area_face(60.0)};
    spring.plunger.annulus_share = {0.6, 1.0};
    out.push_back(plunger_specimen("a spring given, back pressure", spring));

    record::PlungerFile impossible = ahead;
    impossible.plunger.pressures.leak = demand::Interval<Stress>{0.0 * MPa, 0.12 * MPa};
    out.push_back(plunger_specimen("leaks more than release allows", impossible));
    impossible.plunger.pressures.hold_open = demand::exactly(0.03 * MPa);
    out.push_back(plunger_specimen("contradicts itself at both ends", impossible));

    record::PlungerFile modulating = plain_plunger(100.0, 110.0, 0.3);
    modulating.spring = {demand::exactly(12.0 * newton), demand::exactly(25.0 * newton)};
    out.push_back(plunger_specimen("modulates", modulating));
    out.push_back(plunger_specimen("nothing but a pressure", plain_plunger(50.0, 110.0, 0.16)));

    record::PlungerFile slow = ahead;
    slow.plunger.drain->longest_time = 1e-6 * second;
    slow.plunger.drain->gap.clearance = demand::exactly(0.001 * mm);
    out.push_back(plunger_specimen("cold oil never in time", slow));

    record::PlungerFile faint = plain_plunger(100.0, 110.0, 0.001);
    out.push_back(plunger_specimen("a release pressure less than friction", faint));
    faint.plunger.pressures.release = demand::exactly(0.2 * MPa);
    faint.plunger.pressures.residual = {};
    faint.spring = {demand::exactly(0.2 * newton), demand::exactly(0.4 * newton)};
    out.push_back(plunger_specimen("a spring that does not bring it home", faint));

    record::PlungerFile wordy = ahead;
    wordy.identity.position = "Sixty characters of a name that a careful owner gives his latch";
    wordy.identity.engine = "Ottermere M21 with the reversing gearbox of the second series";
    wordy.identity.owner = "Мастерская «Верфь» и Søren Ångström Engine and Gearbox Rebuilders of Ottermere Harbour";
    out.push_back(plunger_specimen("long names", wordy));
    return out;
}

}  // namespace seatload::test
