// SPDX-License-Identifier: MIT
#include "golden_case.hpp"

#include <array>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include <process.hpp>

namespace seatload::test {
namespace {

const std::filesystem::path kFolder = std::filesystem::path(SEATLOAD_SOURCE_DIR) / "tests" / "golden";
constexpr const char* kDotsPerInch = "75";

/// Where Debian and others keep programs; run_program() looks along no path.
std::filesystem::path renderer() {
    for (const char* folder : {"/usr/bin", "/usr/local/bin", "/opt/homebrew/bin"})
        if (std::filesystem::path tool = std::filesystem::path(folder) / "pdftoppm"; std::filesystem::exists(tool))
            return tool;
    return {};
}

void run(const std::vector<std::string>& words, const std::filesystem::path& folder) {
    const Ended ended = run_program(words, folder, {});
    if (ended.code != 0)
        throw std::runtime_error(words.front() + " ended with " + std::to_string(ended.code) + ": " + ended.err);
}

}  // namespace

std::vector<GoldenCase> golden_cases() {
    std::ifstream file(kFolder / "cases.txt");
    if (!file) throw std::runtime_error("there is no cases.txt");
    std::vector<GoldenCase> cases;
    for (std::string line; std::getline(file, line);) {
        std::istringstream words(line);
        GoldenCase golden;
        if (line.starts_with('#') || !(words >> golden.name)) continue;
        for (std::string option; words >> option;) golden.options.push_back(option);
        cases.push_back(std::move(golden));
    }
    return cases;
}

std::filesystem::path spec_of(const GoldenCase& golden) { return kFolder / "specs" / (golden.name + ".toml"); }
std::filesystem::path picture_of(const GoldenCase& golden) { return kFolder / "pictures" / (golden.name + ".png"); }

Picture drawn(const std::filesystem::path& spec, const std::vector<std::string>& options,
              const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    const std::string name = spec.stem().string();
    std::vector<std::string> words{SEATLOAD_PROGRAM, "sheet", spec.string(), "--output", folder.string()};
    words.insert(words.end(), options.begin(), options.end());
    run(words, folder);
    run({renderer().string(), "-r", kDotsPerInch, "-gray", "-png", "-singlefile", name + ".pdf", name}, folder);
    return read_png(folder / (name + ".png"));
}

bool can_render() { return !renderer().empty(); }

}  // namespace seatload::test
