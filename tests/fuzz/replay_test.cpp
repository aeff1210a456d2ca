// SPDX-License-Identifier: MIT
// The functions that are fuzzed, given their seeds, what once went wrong, and alterations of both: a few seconds of
// what the libFuzzer program does for as long as it is let. The same alterations on every machine.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <stdexcept>

#include <support/check.hpp>
#include <support/random_requirement.hpp>

#include "fuzz/seeds.hpp"
#include "fuzz/targets.hpp"

using namespace seatload;
using fuzz::Seed;
using test::Draw;

namespace {

/// What trips readers: ends of number ranges, half-written TOML, letters that are none.
constexpr std::array<std::string_view, 24> kTrips{
    "1e308", "-1e308", "1e-320",   "-0",     "inf",  "nan", "99999999999999999999",
    "0x1F",  "\"",     "'''",      "\"\"\"", "[[",   "]",   "{",
    "= ",    "\n",     "\r",       "\t",     "\xff", "∞",   " mm",
    " ±",    " .. ",   "at least "};

std::size_t place(Draw& draw, const std::string& text) { return draw.below(text.size() + 1); }

std::string cut_out(Draw& draw, std::string text) {
    const std::size_t at = place(draw, text);
    return text.erase(at, draw.below(40));
}

std::string put_in(Draw& draw, std::string text) {
    return text.insert(place(draw, text), kTrips[draw.below(kTrips.size())]);
}

std::string double_up(Draw& draw, std::string text) {
    const std::string piece = text.substr(place(draw, text), draw.below(200));
    return text.insert(place(draw, text), piece);
}

std::string change_byte(Draw& draw, std::string text) {
    if (!text.empty()) text[draw.below(text.size())] = static_cast<char>(draw.below(256));
    return text;
}

std::string change_figure(Draw& draw, std::string text) {
    const std::size_t at = text.find_first_of("0123456789", place(draw, text));
    return at == std::string::npos ? text : text.replace(at, 1, kTrips[draw.below(8)]);
}

std::string cut_off(Draw& draw, std::string text) { return text.substr(0, place(draw, text)); }

std::string altered(Draw& draw, std::string text) {
    constexpr std::array kWays{cut_out, put_in, double_up, change_byte, change_figure, change_figure, cut_off};
    for (std::size_t times = 1 + draw.below(3); times > 0; --times) text = kWays[draw.below(kWays.size())](draw, text);
    return text;
}

void run(const fuzz::Target& target, const std::string& bytes, const std::string& name) {
    INFO(target.name << " with " << name << ":\n" << bytes);
    CHECK_NOTHROW(target.run(bytes));
}

/// So many that a short file takes about as long as a long one; SEATLOAD_FUZZ_TIMES in the environment asks for more.
int alterations(const std::vector<Seed>& all) {
    std::size_t bytes = 0;
    for (const Seed& seed : all) bytes += seed.bytes.size();
    const std::size_t mean = bytes / all.size();
    const char* times = std::getenv("SEATLOAD_FUZZ_TIMES");
    const auto usual = static_cast<int>(std::clamp<std::size_t>(1'000'000 / (mean + 1), 30, 600));
    return usual * (times != nullptr ? std::max(1, std::atoi(times)) : 1);
}

}  // namespace

TEST_CASE("Readers and search answer as promised to their seeds and to what once went wrong") {
    for (const fuzz::Target& target : fuzz::targets()) {
        const auto all = fuzz::seeds(target.name);
        INFO(target.name);
        REQUIRE(all.size() >= 1);
        for (const Seed& seed : all) run(target, seed.bytes, seed.name);
    }
}

TEST_CASE("Readers and search answer as promised to seeds altered at random") {
    for (const fuzz::Target& target : fuzz::targets()) {
        const auto all = fuzz::seeds(target.name);
        Draw draw(20261126);
        for (int i = alterations(all); i > 0; --i) {
            const Seed& seed = all[draw.below(all.size())];
            run(target, altered(draw, seed.bytes), seed.name + ", altered");
        }
    }
}

TEST_CASE("A target that is not promised to hold is found out") {
    CHECK_THROWS_AS(fuzz::target("no such target"), std::invalid_argument);
    CHECK(fuzz::targets().size() >= 18);
}
