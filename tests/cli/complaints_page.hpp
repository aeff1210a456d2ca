// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>

namespace seatload::test {

/// The page of the manual on complaints (Markdown): each by its name, with what it means, and one example that the
/// tests below the folder of the sources hold the program to.
std::string complaints_page(const std::filesystem::path& sources);

}  // namespace seatload::test
