// SPDX-License-Identifier: MIT
// The sheets of twelve specs as unlike as orders come, drawn by the finished program, rendered, and held against the
// pictures that a person looked at and accepted (tests/golden/pictures, by the program golden_accept alone).
#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include <support/check.hpp>
#include <support/scratch_folder.hpp>

#include "comparison.hpp"
#include "golden_case.hpp"

using namespace seatload;
using namespace seatload::test;
namespace fs = std::filesystem;

namespace {

/// What came out is kept here, for a person to look at.
const fs::path kFound = fs::path(GOLDEN_FOUND);

void check_picture(const GoldenCase& golden) {
    INFO(golden.name);
    const Picture found = drawn(spec_of(golden), golden.options, kFound);
    if (!fs::exists(picture_of(golden))) {
        FAIL_CHECK("no picture was ever accepted; look at " << kFound / (golden.name + ".png")
                                                            << " and run golden_accept " << golden.name);
        return;
    }
    const Comparison comparison = compare(read_png(picture_of(golden)), found);
    if (comparison.is_alike()) return;
    const fs::path difference = kFound / (golden.name + "-difference.png");
    if (comparison.same_size) write_png(difference, comparison.difference);
    FAIL_CHECK((comparison.same_size
                    ? std::to_string(comparison.different) + " pixels differ, shown black in " + difference.string()
                    : std::string("the pictures differ in size"))
               << "; the new one is " << kFound / (golden.name + ".png") << ". When it is right, run golden_accept "
               << golden.name);
}

/// A page with something on it.
Picture page() {
    Picture picture{877, 620, {}};
    picture.grey.assign(std::size_t{picture.width} * picture.height, 255);
    for (unsigned column = 100; column < 700; ++column) picture.at(column, 300) = 0;
    return picture;
}

}  // namespace

TEST_CASE("Every golden sheet looks as it was accepted") {
    if (!can_render()) {
        WARN("poppler-utils is not installed: no sheet was looked at");
        return;
    }
    const auto cases = golden_cases();
    REQUIRE(cases.size() >= 12);
    for (const GoldenCase& golden : cases) check_picture(golden);
}

TEST_CASE("Every spec and every picture of the golden sheets belongs to a case") {
    const auto cases = golden_cases();
    for (const fs::path& folder : {spec_of(cases.front()).parent_path(), picture_of(cases.front()).parent_path()})
        for (const auto& entry : fs::directory_iterator(folder)) {
            INFO(entry.path().filename().string());
            CHECK(std::any_of(cases.begin(), cases.end(),
                              [&](const GoldenCase& golden) { return entry.path().stem().string() == golden.name; }));
        }
}

TEST_CASE("A line that moved by a pixel, one that is gone, and one more of 10 mm are all seen") {
    const Picture before = page();
    CHECK(compare(before, before).is_alike());
    CHECK(compare(before, before).different == 0);

    Picture moved = page();
    for (unsigned column = 100; column < 700; ++column) std::swap(moved.at(column, 300), moved.at(column, 301));
    CHECK(compare(before, moved).different == 1200);
    CHECK_FALSE(compare(before, moved).is_alike());

    Picture gone = page();
    for (unsigned column = 100; column < 700; ++column) gone.at(column, 300) = 255;
    CHECK_FALSE(compare(before, gone).is_alike());
    CHECK_FALSE(compare(gone, before).is_alike());

    Picture more = page();
    for (unsigned column = 400; column < 430; ++column) more.at(column, 100) = 0;  // 30 pixels of 25.4 / 75 mm
    const Comparison seen = compare(before, more);
    CHECK_FALSE(seen.is_alike());
    CHECK(Picture(seen.difference).at(415, 100) == 0);
    CHECK(Picture(seen.difference).at(415, 300) > 128);
}

TEST_CASE("Edges smoothed a little differently, and a few stray pixels, pass") {
    Picture smoothed = page();
    for (unsigned column = 100; column < 700; ++column) smoothed.at(column, 301) = 255 - kGreyStep;
    CHECK(compare(page(), smoothed).is_alike());
    Picture strays = page();
    for (unsigned row = 0; row < 20; ++row) strays.at(10, 10 * row) = 0;
    CHECK(compare(page(), strays).is_alike());
    strays.at(20, 10) = strays.at(20, 20) = strays.at(20, 30) = strays.at(20, 40) = 0;
    for (unsigned row = 20; row < 25; ++row) strays.at(10, 10 * row) = 0;
    CHECK_FALSE(compare(page(), strays).is_alike());
}

TEST_CASE("Few greys leave a picture alike, and change no pixel by more than 8 steps") {
    Picture ramp{256, 1, {}};
    for (int grey = 0; grey < 256; ++grey) ramp.grey.push_back(static_cast<std::uint8_t>(grey));
    const Picture few = in_few_greys(ramp);
    CHECK(compare(ramp, few).is_alike());
    CHECK(few.grey.front() == 0);
    CHECK(few.grey.back() == 255);
    for (std::size_t i = 0; i < 256; ++i) CHECK(std::abs(int{ramp.grey[i]} - int{few.grey[i]}) <= 8);
}

TEST_CASE("Pictures of unlike size, and a picture without pixels, are never alike") {
    Picture wider = page();
    wider.width = 620;
    wider.height = 877;
    CHECK_FALSE(compare(page(), wider).is_alike());
    CHECK_FALSE(compare(Picture{}, Picture{}).is_alike());
}

TEST_CASE("A sheet that differs in the last digit of one load is seen to differ") {
    if (!can_render()) return;
    const fs::path spec = spec_of(golden_cases().front());
    std::string text = bytes_of(spec);
    const std::string load = "force  = \"5.76 N\"";
    REQUIRE(text.find(load) != std::string::npos);
    text.replace(text.find(load), load.size(), "force  = \"5.79 N\"");
    const ScratchFolder folder;
    write_bytes(folder / "changed.toml", text);
    const Picture as_it_is = drawn(spec, {}, folder.path());
    CHECK(compare(as_it_is, drawn(spec, {}, folder.path())).different == 0);
    CHECK_FALSE(compare(as_it_is, drawn(folder / "changed.toml", {}, folder.path())).is_alike());
}

TEST_CASE("A picture is read back from PNG as it was written") {
    fs::create_directories(kFound);
    const Picture before = page();
    write_png(kFound / "page.png", before);
    const Picture after = read_png(kFound / "page.png");
    CHECK(after.width == before.width);
    CHECK(after.grey == before.grey);
    CHECK_THROWS(read_png(kFound / "there is no such picture.png"));
}
