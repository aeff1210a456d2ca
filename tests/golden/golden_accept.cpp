// SPDX-License-Identifier: MIT
// Takes the pictures of golden sheets as they are drawn now for the ones to be held against: golden_accept NAME...,
// or golden_accept --all. Look at them first; nothing else ever writes into tests/golden/pictures.
#include <algorithm>
#include <exception>
#include <iostream>
#include <string>
#include <vector>

#include "golden_case.hpp"

namespace {

using namespace seatload::test;

constexpr int kUsage = 2;

int accept(const std::vector<std::string>& names) {
    const auto cases = golden_cases();
    const bool all = names == std::vector<std::string>{"--all"};
    int accepted = 0;
    for (const GoldenCase& golden : cases) {
        if (!all && std::find(names.begin(), names.end(), golden.name) == names.end()) continue;
        std::filesystem::create_directories(picture_of(golden).parent_path());
        write_png(picture_of(golden), in_few_greys(drawn(spec_of(golden), golden.options, GOLDEN_FOUND)));
        std::cout << picture_of(golden).string() << '\n';
        ++accepted;
    }
    if (all || accepted == static_cast<int>(names.size())) return 0;
    std::cerr << "golden_accept: not every name is one of cases.txt\n";
    return kUsage;
}

}  // namespace

int main(int argc, char** argv) {
    try {
        const std::vector<std::string> names(argv + 1, argv + argc);
        if (!names.empty()) return accept(names);
        std::cerr << "usage: golden_accept NAME... | --all\n";
        return kUsage;
    } catch (const std::exception& wrong) {
        std::cerr << "golden_accept: " << wrong.what() << '\n';
        return 1;
    }
}
