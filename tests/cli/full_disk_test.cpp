// SPDX-License-Identifier: MIT
// libharu 2.3.0 reports success when it saves to a full disk; so what is said of papers is ours to get right.
#include <filesystem>

#include <support/tool.hpp>

using namespace seatload;

namespace {

/// The program under a limit on the size of a file [bytes], which fails a write as a full disk does.
test::ToolRun run_on_small_disk(const test::ScratchFolder& folder, unsigned largest, const std::string& words) {
    const std::string limit = std::to_string(largest / 512);  // sh counts in blocks of 512 bytes (POSIX ulimit)
    return test::run_tool(folder, "cd " + folder.path().string() + " && trap '' XFSZ && ulimit -f " + limit + " && " +
                                      SEATLOAD_PROGRAM " " + words);
}

std::string spec() {
    return "format = \"seatload spec 1\"\n"
           "[spring]\nwire = \"EN10270-1-SH\"\nwire_diameter = \"1 mm\"\nmean_diameter = \"8 mm\"\n"
           "total_coils = 8.5\nfree_length = \"30 mm\"\nends = \"closed and ground\"\n"
           "[seated_load]\nlength = \"24 mm\"\nforce = \"18.4 N\"\nplus = \"3 N\"\nminus = \"3 N\"\n"
           "[full_travel_load]\nlength = \"18 mm\"\nforce = \"36.8 N\"\nplus = \"4 N\"\nminus = \"4 N\"\n"
           "[space]\nbore = \"10 mm\"\nseated_height = \"24 mm\"\nfull_travel_height = \"18 mm\"\n";
}

}  // namespace

TEST_CASE("a paper that does not fit on the disk is an error, and leaves nothing behind") {
    const test::ScratchFolder folder;
    test::write_bytes(folder / "spring.toml", spec());
    REQUIRE(run_on_small_disk(folder, 16 * 1024 * 1024, "sheet spring.toml").code == 0);
    // The spec and not the sheet is what is written here: the sheet's typefaces pass through a file in memory, which
    // the limit counts too, and are larger than the sheet.
    const test::ToolRun run = run_on_small_disk(folder, 512, "sheet --extract output/spring.pdf --output copies");
    CHECK(run.code == 2);
    CHECK(run.out == "");
    CHECK(run.err == "copies/spec.toml: error: cannot write the file: File too large [cannot-write]\n");
    CHECK(std::filesystem::is_empty(folder / "copies"));
}

TEST_CASE("a device that is full is no place for a sheet") {
    const test::ScratchFolder folder;
    test::write_bytes(folder / "spring.toml", spec());
    std::filesystem::create_directory(folder / "output");
    std::filesystem::create_symlink("/dev/full", folder / "output" / "spring.pdf");
    const test::ToolRun run = run_on_small_disk(folder, 16 * 1024 * 1024, "sheet spring.toml");
    CHECK(run.code == 2);
    CHECK(run.out == "");
    CHECK(run.err == "output/spring.pdf: error: not a regular file; nothing written [not-a-file]\n");
}

TEST_CASE("with room enough the same sheet is written") {
    const test::ScratchFolder folder;
    test::write_bytes(folder / "spring.toml", spec());
    const test::ToolRun run = run_on_small_disk(folder, 16 * 1024 * 1024, "sheet spring.toml");
    CHECK(run.code == 0);
    CHECK(run.out.starts_with("output/spring.pdf\n"));
    CHECK(test::bytes_of(folder / "output" / "spring.pdf").starts_with("%PDF-1.7"));
}
