// SPDX-License-Identifier: MIT
#include <seatload/io/toml_writer.hpp>

#include <toml++/toml.h>
#include <seatload/io/form.hpp>
#include <support/check.hpp>

using namespace seatload::io;

TEST_CASE("The writer keeps its order and lines the remarks up") {
    TomlWriter writer;
    writer.entry("z", "1");
    writer.entry("a", "\"9 mm\"", "first");
    writer.entry("longer", "\"10 mm\"", "second");
    writer.table("b");
    writer.entry("x", "2", "alone");
    CHECK(std::move(writer).text() ==
          "z = 1\n"
          "a = \"9 mm\"        # first\n"
          "longer = \"10 mm\"  # second\n"
          "\n[b]\n"
          "x = 2  # alone\n");
}

TEST_CASE("Every text the writer quotes is read back by a TOML library to the same bytes") {
    std::string all;
    for (int byte = 1; byte < 128; ++byte) all += static_cast<char>(byte);
    all += "ü € 𝄞";
    TomlWriter writer;
    writer.entry("x", quoted_text(all), "τ");
    const toml::table table = toml::parse(std::move(writer).text());
    CHECK(table["x"].value<std::string>() == all);
}
