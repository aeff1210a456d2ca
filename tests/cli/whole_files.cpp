// SPDX-License-Identifier: MIT
#include "whole_files.hpp"

#include <support/check.hpp>

namespace seatload::test {

namespace fs = std::filesystem;

Contents whole_of(const Workshop& shop, const std::string& words) {
    fs::remove_all(shop / "whole");
    fs::create_directory(shop / "whole");
    const ToolRun run = shop.sh("$SEATLOAD " + into(words, "whole"));
    INFO(run.err);
    REQUIRE(run.code == 0);
    const Contents whole = contents_of(shop / "whole");
    REQUIRE_FALSE(whole.empty());
    return whole;
}

void check_only_whole(const Contents& found, const Contents& whole) {
    for (const auto& [name, bytes] : found) {
        if (fs::path(name).filename() == ".lock") continue;
        INFO(name);
        REQUIRE(whole.count(name) == 1);
        CHECK(bytes == whole.at(name));
    }
}

}  // namespace seatload::test
