// SPDX-License-Identifier: MIT
// Writes cli/manual/complaints.md below the folder of the sources it is given.
#include <filesystem>
#include <iostream>

#include <seatload/core/file.hpp>

#include "complaints_page.hpp"

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "complaints_manual SOURCES\n";
        return 2;
    }
    const std::filesystem::path sources = argv[1];
    const auto wrong =
        seatload::replace_file(sources / "cli" / "manual" / "complaints.md", seatload::test::complaints_page(sources));
    std::cerr << seatload::render(wrong);
    return wrong.empty() ? 0 : 3;
}
