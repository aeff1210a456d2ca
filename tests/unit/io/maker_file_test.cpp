// SPDX-License-Identifier: MIT
#include <seatload/io/maker_file.hpp>

#include <algorithm>
#include <filesystem>

#include <seatload/check/verdict.hpp>
#include <seatload/core/file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <support/check.hpp>

#include "io_support.hpp"

using namespace seatload;
namespace fs = std::filesystem;

namespace {

demand::Maker maker_of(const std::string& lines) {
    const auto read = io::read_maker("name = \"maker A\"\n" + lines, "a.toml");
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    return read.value();
}

/// The limits of a requirement that goes to a maker.
demand::Requirement requirement_for(const demand::Maker& maker, const std::string& lines) {
    demand::Makers makers = io::builtin_makers();
    makers.all.push_back(maker);
    const auto read = io::read_requirement(io::kLeast + lines, "x.toml", io::catalogue(), makers);
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    return read.value();
}

const std::string kOrder = "[order]\nmaker = \"maker A\"\n";

std::string source_of(std::string_view rule_id, const demand::Limits& limits) {
    const auto rules = check::rules();
    const auto rule = std::find_if(rules.begin(), rules.end(), [&](const auto& r) { return r.id == rule_id; });
    REQUIRE(rule != rules.end());
    return check::source_of(*rule, limits);
}

}  // namespace

TEST_CASE("The ordinary workshop comes first and sets the limits that a school takes when nothing is said") {
    const demand::Makers makers = io::builtin_makers();
    REQUIRE_FALSE(makers.all.empty());
    const demand::Maker& usual = makers.all.front();
    CHECK(usual.name == "ordinary workshop");
    const demand::Limits plain = demand::school_defaults(spring::School::en_13906);
    CHECK(usual.smallest_index == plain.smallest_index);
    CHECK(usual.largest_index == plain.largest_index);
    CHECK(usual.smallest_ground_wire == plain.smallest_ground_wire);
    CHECK(usual.largest_ground_index == plain.largest_ground_index);
    CHECK_FALSE(usual.coil_step.has_value());
    CHECK_FALSE(usual.longest_free_length.has_value());
    for (const demand::Maker& maker : makers.all)
        for (const auto& [key, source] : maker.sources) CHECK_FALSE(source.empty());
}

TEST_CASE("EN practice grinds no wire under 1 mm") {
    // Common practice of makers who follow the European standards, from memory.
    const demand::Makers makers = io::builtin_makers();
    const demand::Maker* practice = makers.find("en PRACTICE");
    REQUIRE(practice != nullptr);
    CHECK(in_mm(*practice->smallest_ground_wire) == 1.0);
}

TEST_CASE("A maker's limits go into the requirement that goes to him, and are named as their source") {
    const demand::Maker maker = maker_of(
        "[limits]\nsmallest_index = 4.5\nlargest_index = 16.0\nsmallest_ground_wire = \"0.8 mm\"\n"
        "largest_ground_index = 12.0\ncoil_step = 0.25\nlongest_free_length = \"120 mm\"\n"
        "[sources]\ncoil_step = \"his leaflet\"\n[evidence]\ncoil_step = \"memory\"\n");
    const demand::Requirement r = requirement_for(maker, kOrder);
    CHECK(r.maker == "maker A");
    CHECK(r.limits.smallest_index == 4.5);
    CHECK(r.limits.largest_index == 16.0);
    CHECK(in_mm(r.limits.smallest_ground_wire) == 0.8);
    CHECK(r.limits.largest_ground_index == 12.0);
    CHECK(r.limits.coil_step == 0.25);
    CHECK(in_mm(*r.limits.longest_free_length) == 120.0);
    CHECK(r.grid.total_coils_step == 0.25);
    CHECK(source_of("ground_wire", r.limits) == "limit of the maker \"maker A\"");
    CHECK(source_of("coil_step", r.limits) == "limit of the maker \"maker A\": his leaflet (memory)");
    CHECK(source_of("stress", r.limits).find("maker") == std::string::npos);
}

TEST_CASE("What a requirement states itself goes before the maker, and is not said to be his") {
    const demand::Maker maker = maker_of("[limits]\nlargest_index = 16.0\ncoil_step = 0.25\n");
    const demand::Requirement r =
        requirement_for(maker, "[limits]\nlargest_index = 18.0\n[grid]\ntotal_coils_step = 0.5\n" + kOrder);
    CHECK(r.limits.largest_index == 18.0);
    CHECK(source_of("index_largest", r.limits).find("maker") == std::string::npos);
    CHECK(r.grid.total_coils_step == 0.5);
    CHECK(r.limits.coil_step == 0.25);
}

TEST_CASE("A school's limit that is tighter than the maker's stays") {
    const demand::Maker maker = maker_of("[limits]\nlargest_index = 16.0\n");
    // Shigley Eq. 10-18: C at most 12.
    const demand::Requirement r = requirement_for(maker, "[limits]\nschool = \"handbook\"\n" + kOrder);
    CHECK(r.limits.largest_index == 12.0);
    CHECK(source_of("index_largest", r.limits).find("maker") == std::string::npos);
}

TEST_CASE("An order that names no maker goes to the ordinary workshop, or to him whose file is given") {
    const demand::Requirement usual = requirement_for(maker_of("[limits]\n"), "");
    CHECK(usual.maker == "ordinary workshop");
    CHECK(source_of("ground_wire", usual.limits).starts_with("limit of the maker \"ordinary workshop\": "));
    demand::Makers makers = io::builtin_makers();
    makers.all.push_back(maker_of("[limits]\nlargest_index = 16.0\n"));
    makers.instead = makers.all.size() - 1;
    for (const std::string order : {"", "[order]\nmaker = \"EN practice\"\n"}) {
        const auto read = io::read_requirement(io::kLeast + order, "x.toml", io::catalogue(), makers);
        REQUIRE(read.has_value());
        CHECK(read->maker == "maker A");
        CHECK(read->limits.largest_index == 16.0);
    }
}

TEST_CASE("Every maker among the templates is read without a word") {
    int count = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "templates")) {
        if (!entry.path().filename().string().starts_with("maker_")) continue;
        const auto maker = io::read_maker(*read_text_file(entry.path()), entry.path().filename().string());
        INFO(render(maker.error()));
        REQUIRE(maker.has_value());
        CHECK(maker.error().empty());
        ++count;
    }
    CHECK(count >= 2);
}
