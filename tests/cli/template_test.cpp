// SPDX-License-Identifier: MIT
// The templates a user starts from.
#include <filesystem>

#include <seatload/core/file.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/io/samples_file.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/check.hpp>

using namespace seatload;
namespace fs = std::filesystem;

TEST_CASE("every template of a requirement is read without a word and has springs that fit") {
    const auto catalogue = io::builtin_catalogue();
    const auto tolerances = io::builtin_tolerances();
    REQUIRE((catalogue.has_value() && tolerances.has_value()));
    int count = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "templates")) {
        if (entry.is_directory()) continue;  // wordings of the papers
        INFO(entry.path().filename().string());
        const auto text = read_text_file(entry.path());
        REQUIRE(text.has_value());
        if (text->find("format = \"seatload requirement 1\"") == std::string::npos) continue;
        const auto requirement = io::read_requirement(*text, entry.path().filename().string(), *catalogue);
        INFO(render(requirement.error()));
        REQUIRE(requirement.has_value());
        CHECK(requirement.error().empty());
        const sizing::Space space = sizing::search_space(*requirement, *catalogue);
        const sizing::Census census = sizing::search(space, *tolerances, {});
        CHECK(census.fit > 0);
        const auto wanted = static_cast<std::size_t>(requirement->alternatives);
        CHECK(sizing::spread(space, census, wanted).size() == wanted);
        ++count;
    }
    CHECK(count >= 4);
}

TEST_CASE("every template of samples is read without a word") {
    const auto catalogue = io::builtin_catalogue();
    const auto sampling = io::builtin_sampling();
    REQUIRE((catalogue.has_value() && sampling.has_value()));
    int count = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "templates")) {
        if (entry.path().extension() != ".toml") continue;
        INFO(entry.path().filename().string());
        const auto text = read_text_file(entry.path());
        REQUIRE(text.has_value());
        if (text->find("format = \"seatload samples 1\"") == std::string::npos) continue;
        const auto samples = io::read_samples(*text, entry.path().string(), *sampling, *catalogue);
        INFO(render(samples.error()));
        REQUIRE(samples.has_value());
        CHECK(samples.error().empty());
        ++count;
    }
    CHECK(count == 2);
}
