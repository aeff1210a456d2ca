// SPDX-License-Identifier: MIT
#include <filesystem>

#include <seatload/check/evaluation.hpp>
#include <seatload/core/file.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/record/specify.hpp>
#include <support/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
namespace fs = std::filesystem;

namespace {

std::vector<fs::path> kept_specs() {
    std::vector<fs::path> paths;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(SEATLOAD_SOURCE_DIR) / "specs"))
        if (entry.path().extension() == ".toml") paths.push_back(entry.path());
    return paths;
}

}  // namespace

TEST_CASE("every kept spec loads, stands as we write it, and still meets its own limits") {
    const auto paths = kept_specs();
    REQUIRE_FALSE(paths.empty());
    for (const fs::path& path : paths) {
        CAPTURE(path.string());
        const std::string text = read_text_file(path).value();
        const auto spec = io::read_spec(text, path.string(), test::wires());
        INFO(render(spec.error()));
        REQUIRE(spec.has_value());
        CHECK(io::write_spec(*spec) == text);
        const wire::Grade& grade = spec->own_grade ? *spec->own_grade : *test::wires().find(spec->wire_grade);
        const auto evaluation = check::evaluate(spec->spring, grade, record::requirement_of(*spec), test::tolerances());
        REQUIRE(evaluation.has_value());
        for (const check::Verdict& verdict : evaluation->verdicts) {
            CAPTURE(verdict.reason);
            CHECK(verdict.passed);
        }
    }
}
