// SPDX-License-Identifier: MIT
// A bare container may have no /proc, by which files without a name get one and typefaces have a path. Sanitized
// programs cannot do without it: they look there for leaks and for their very options, so these cases are left out
// there as slow.
#include <filesystem>
#include <string>

#include <support/tool.hpp>

using namespace seatload;

namespace {

/// A command line of the shell in the folder, in which /proc is empty (unshare of util-linux, as an administrator of a
/// name space of its own).
test::ToolRun without_proc(const test::ScratchFolder& folder, const std::string& words) {
    return test::run_tool(folder, "cd " + folder.path().string() + " && unshare --map-root-user --mount sh -c '" +
                                      "mount -t tmpfs none /proc && test ! -e /proc/self && " + words + "'");
}

}  // namespace

TEST_CASE("without /proc the same papers are written, and nothing else is left", "[slow]") {
    const test::ScratchFolder folder;
    if (without_proc(folder, "true").code != 0) {
        WARN("this system lets nobody hide /proc: not tested");
        return;
    }
    std::filesystem::copy_file(std::filesystem::path(SEATLOAD_SOURCE_DIR) / "specs/ottermere-m14/governor-detent.toml",
                               folder / "spring.toml");
    std::filesystem::create_directory(folder / "tmp");
    const std::string sheet = std::string("TMPDIR=") + (folder / "tmp").string() + ' ' + SEATLOAD_PROGRAM + " sheet ";
    REQUIRE(test::run_tool(folder, "cd " + folder.path().string() + " && " + sheet + "spring.toml -o with").code == 0);
    const test::ToolRun run = without_proc(folder, sheet + "spring.toml -o without");
    INFO(run.err);
    CHECK(run.code == 0);
    CHECK(test::bytes_of(folder / "without/spring.pdf") == test::bytes_of(folder / "with/spring.pdf"));
    CHECK(std::filesystem::is_empty(folder / "tmp"));
    CHECK(std::distance(std::filesystem::directory_iterator(folder / "without"), {}) == 1);
}

TEST_CASE("without /proc a file is written over as a whole", "[slow]") {
    const test::ScratchFolder folder;
    if (without_proc(folder, "true").code != 0) {
        WARN("this system lets nobody hide /proc: not tested");
        return;
    }
    const std::string start = std::string(SEATLOAD_PROGRAM) + " start wire --overwrite -o here/wire.toml";
    std::filesystem::create_directory(folder / "here");
    test::write_bytes(folder / "here/wire.toml", "an old file");
    CHECK(without_proc(folder, start).code == 0);
    CHECK(test::bytes_of(folder / "here/wire.toml") ==
          test::bytes_of(std::filesystem::path(SEATLOAD_SOURCE_DIR) / "templates/start/wire.toml"));
    CHECK(std::distance(std::filesystem::directory_iterator(folder / "here"), {}) == 1);
}
