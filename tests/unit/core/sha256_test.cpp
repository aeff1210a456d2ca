// SPDX-License-Identifier: MIT
#include <seatload/core/sha256.hpp>

#include <support/tool.hpp>

using namespace seatload;

TEST_CASE("the digests of the standard's examples come out") {
    // FIPS 180-4 (examples of the Secure Hash Standard: one block, two blocks, a million letters) and the empty
    // message, from memory.
    CHECK(sha256_hex("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sha256_hex("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(sha256_hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(sha256_hex(std::string(1000000, 'a')) == "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("sha256sum of the GNU coreutils says the same, at every length about a block") {
    if (std::system("command -v sha256sum >/dev/null 2>&1") != 0) {
        WARN("sha256sum is not installed: nothing compared");
        return;
    }
    const test::ScratchFolder folder;
    std::string bytes;
    for (const std::size_t length : {1u, 54u, 55u, 56u, 63u, 64u, 65u, 119u, 120u, 128u, 5000u}) {
        while (bytes.size() < length) bytes += static_cast<char>(bytes.size() * 37 % 256);
        test::write_bytes(folder / "message", bytes);
        const test::ToolRun said = test::run_tool(folder, "sha256sum <" + (folder / "message").string());
        CAPTURE(length);
        CHECK(said.out.substr(0, 64) == sha256_hex(bytes));
    }
}
