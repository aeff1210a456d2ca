// SPDX-License-Identifier: MIT
// Small requirements made of bytes: the search must find what the plain loop over every combination finds, and what it
// finds must make a spec that can be written and read.
#include <fmt/format.h>

#include <array>
#include <cmath>

#include <seatload/io/requirement_file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sizing/search.hpp>
#include <seatload/sizing/spread.hpp>
#include <seatload/spring/rate.hpp>

#include "fuzz/invariants.hpp"
#include "fuzz/targets.hpp"
#include "support/builtin.hpp"
#include "unit/sizing/every_combination.hpp"

namespace seatload::fuzz {
namespace {

/// Choices drawn from bytes, the first of each when they have run out.
class Choices {
  public:
    explicit Choices(std::string_view bytes) : bytes_(bytes) {}

    unsigned byte() {
        if (bytes_.empty()) return 0;
        const unsigned value = static_cast<unsigned char>(bytes_.front());
        bytes_.remove_prefix(1);
        return value;
    }
    /// One of 256 steps of equal ratio from low to high.
    double between(double low, double high) { return low * std::pow(high / low, byte() / 255.0); }
    bool yes() { return byte() % 2 == 1; }
    template <std::size_t N>
    std::string_view one_of(const std::array<std::string_view, N>& words) {
        return words[byte() % N];
    }

  private:
    std::string_view bytes_;
};

constexpr std::array<std::string_view, 6> kGrades{"ASTM-A228",           "ASTM-A401",    "EN10270-1-SH",
                                                  "EN10270-3-1.4310-NS", "ASTM-A229-II", "X750-spring"};
constexpr std::array<std::string_view, 6> kSeats{"fixed",         "slides",         "guided",
                                                 "one end tilts", "both ends tilt", "one end free"};
constexpr std::array<std::string_view, 4> kEnds{"closed and ground", "closed", "open", "open and ground"};

/// A spring to write a requirement about, so that some have springs that fit.
struct Guess {
    double d, D, n, L0, L1, L2;

    double load() const { return spring::rate(79000.0, d, D, n) * (L0 - L1); }
};

Guess guess(Choices& c) {
    Guess g{};
    g.d = c.between(0.3, 6.0);
    g.D = g.d * c.between(4.0, 16.0);
    g.n = c.between(2.5, 14.0);
    const double travel = g.n * g.d * c.between(0.1, 2.5);
    g.L0 = (g.n + 2.5) * g.d + travel;
    g.L1 = g.L0 - travel * c.between(0.1, 0.6);
    g.L2 = g.L1 - travel * c.between(0.05, 0.5);
    return g;
}

std::string room_and_loads(Choices& c, const Guess& g) {
    std::string text =
        fmt::format("[space]\nseated_height = \"{} mm\"\nfull_travel_height = \"{} mm\"\nseats = \"{}\"\n", g.L1, g.L2,
                    c.one_of(kSeats));
    if (c.yes()) text += fmt::format("bore = \"{} mm\"\n", (g.D + g.d) * c.between(1.0, 1.6));
    if (c.yes()) text += fmt::format("rod = \"{} mm\"\n", (g.D - g.d) * c.between(0.4, 1.0));
    if (c.yes()) text += fmt::format("free_length = \"at most {} mm\"\n", g.L0 * c.between(0.95, 2.0));
    const double load = g.load();
    text +=
        fmt::format("[load]\nseated = \"{} N .. {} N\"\n", load * c.between(0.3, 0.99), load * c.between(1.01, 4.0));
    if (c.yes()) text += fmt::format("full_travel = \"at most {} N\"\n", load * c.between(1.5, 12.0));
    return text;
}

std::string duty_and_limits(Choices& c) {
    std::string text = fmt::format("[surroundings]\ntemperature = \"{} °C\"\n", c.between(1.0, 200.0));
    if (c.yes())
        text += fmt::format("[duty]\ncycles = {}\nfrequency = \"{} Hz\"\npeened = {}\n", c.between(1.0, 1e8),
                            c.between(0.1, 400.0), c.yes());
    text += fmt::format("[limits]\nschool = \"{}\"\n", c.yes() ? "handbook" : "EN 13906-1");
    if (c.yes()) text += fmt::format("stress_share = {}\n", c.between(0.3, 1.0));
    if (c.yes()) text += fmt::format("half_turn_slack = {}\n", c.between(0.01, 1.0));
    if (c.yes()) text += fmt::format("buckling_margin = {}\n", c.between(1.0, 3.0));
    if (c.yes()) text += fmt::format("largest_mass = \"{} g\"\n", c.between(0.01, 100.0));
    return text;
}

std::string wire_and_grid(Choices& c, const Guess& g) {
    std::string text = fmt::format("[wire]\ngrades = [\"{}\"]\ndiameters = [\"{} mm\", \"{} mm\"]\n", c.one_of(kGrades),
                                   g.d, g.d * c.between(1.02, 1.5));
    text += fmt::format("[coil]\nends = [\"{}\"]\n", c.one_of(kEnds));
    text += fmt::format("[grid]\nmean_diameter = \"{} mm .. {} mm\"\nmean_diameter_step = \"{} mm\"\n", g.D * 0.95,
                        g.D * 1.1, g.D * c.between(0.02, 0.2));
    text +=
        fmt::format("total_coils = \"{} .. {}\"\ntotal_coils_step = {}\n", g.n + 1.0, g.n + 4.0, c.between(0.5, 3.0));
    text += fmt::format("free_length_step = \"{} mm\"\n", g.L1 * c.between(0.05, 0.3));
    return text;
}

std::string small_requirement(Choices c) {
    const Guess g = guess(c);
    return room_and_loads(c, g) + wire_and_grid(c, g) + duty_and_limits(c);
}

void require_same_count(const sizing::Census& census, const test::PlainCount& plain) {
    require(census.looked_at == plain.looked_at, "the search looked at other combinations than there are");
    require(census.fit == plain.fit, fmt::format("{} fit, the plain loop finds {}", census.fit, plain.fit));
    for (std::size_t i = 0; i < plain.rejections.size(); ++i)
        require(census.rejections[i].alone == plain.rejections[i].alone, "a limit rejects others alone");
    for (std::size_t i = 0; i < plain.best.size(); ++i)
        require(census.best[i].has_value() == plain.best[i].has_value(), "a best one is missing or made up");
}

/// The best spring as a spec, written and read again.
void require_spec(const demand::Requirement& requirement, const sizing::Space& space, const sizing::Census& census) {
    for (const sizing::Alternative& offer : sizing::spread(space, census, 2)) {
        const record::Spec spec = record::specify(requirement, space, offer, "A");
        const Texts written{{"spec.toml", io::write_spec(spec)}};
        const auto again = io::read_spec(written.at("spec.toml"), "spec.toml", test::wires());
        require(again.has_value(), "a spec found is not read: " + render(again.error()) + written.at("spec.toml"));
        require(io::write_spec(*again) == written.at("spec.toml"), "a spec found is written otherwise when read");
    }
}

}  // namespace

void size_tiny_grid(std::string_view bytes) {
    constexpr unsigned long long kTiny = 4000;  // combinations; the plain loop takes milliseconds for them
    const Texts given{{"tiny.toml", small_requirement(Choices(bytes))}};
    const auto requirement = io::read_requirement(given.at("tiny.toml"), "tiny.toml", test::wires());
    require_answer(requirement, given);
    if (!requirement) return;
    const sizing::Space space = sizing::search_space(*requirement, test::wires());
    if (space.size() > kTiny) return;
    sizing::SearchOptions options;
    options.threads = 1;
    const sizing::Census census = sizing::search(space, test::tolerances(), options);
    require_same_count(census, test::count_every_combination(space, test::tolerances()));
    require_spec(*requirement, space, census);
}

}  // namespace seatload::fuzz
