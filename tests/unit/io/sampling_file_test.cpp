// SPDX-License-Identifier: MIT
// The sampling tables as data; their numbers are held against print in tests/unit/inspection.
#include <seatload/io/sampling_file.hpp>

#include <seatload/io/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::io;

namespace {

std::string table(const std::string& name, const std::string& rows) {
    return "[" + name + "]\nevidence = \"memory\"\nrows = [" + rows + "]\n";
}

std::string file(const std::string& normal_rows) {
    const std::string sound = "[\"A\", 2, \"v 0\"], [\"B\", 3, \"0 1/3\"]";
    return "aql = \"1.0 2.5\"\n[code_letters]\nrows = [[2, \"A A A A A A B\"]]\n" + table("normal", normal_rows) +
           table("tightened", sound) + table("reduced", sound);
}

std::string complaint_on(const std::string& normal_rows) {
    const auto read = read_sampling(file(normal_rows), "x.toml");
    REQUIRE_FALSE(read.has_value());
    return render(read.error());
}

}  // namespace

TEST_CASE("Sampling tables come out as written, gaps between Ac and Re kept") {
    const auto read = read_sampling(file("[\"A\", 2, \"v 0\"], [\"B\", 3, \"0 1/3\"]"), "x.toml");
    INFO(render(read.error()));
    REQUIRE(read.has_value());
    const inspection::PlanTable& normal = read->of(inspection::Severity::normal);
    REQUIRE(normal.rows.size() == 2);
    CHECK(normal.evidence == wire::Evidence::memory);
    CHECK(normal.rows[0].cells[0].kind == inspection::PlanCell::Kind::first_below);
    CHECK(normal.rows[1].cells[1].accept == 1);
    CHECK(normal.rows[1].cells[1].reject == 3);
    CHECK(normal.rows[1].cells[0].reject == 1);
}

TEST_CASE("Wrong sampling tables are refused with what is wrong") {
    CHECK_THAT(complaint_on("[\"A\", 2, \"v\"], [\"B\", 3, \"0 1\"]"), ContainsSubstring("a cell for each AQL"));
    CHECK_THAT(complaint_on("[\"A\", 2, \"v x\"], [\"B\", 3, \"0 1\"]"), ContainsSubstring("no plan and no arrow"));
    CHECK_THAT(complaint_on("[\"A\", 2, \"0 2/1\"], [\"B\", 3, \"0 1\"]"), ContainsSubstring("no plan and no arrow"));
    CHECK_THAT(complaint_on("[\"A\", 2, \"^ 0\"], [\"B\", 3, \"0 1\"]"), ContainsSubstring("leads nowhere"));
    CHECK_THAT(complaint_on("[\"A\", 2, \"0 0\"], [\"B\", 3, \"0 v\"]"), ContainsSubstring("leads nowhere"));
    CHECK_THAT(complaint_on("[\"A\", 2, \"0 0\"], [\"B\", 3, \"0 v\"], [\"C\", 5, \"0 ^\"]"),
               ContainsSubstring("an arrow of letter B leads nowhere"));
}

TEST_CASE("The built-in sampling tables are read without a word") {
    const auto read = builtin_sampling();
    REQUIRE(read.has_value());
    CHECK(read.error().empty());
    CHECK(read->aql.size() == 26);
    CHECK(read->letters.size() == 15);
    CHECK(read->of(inspection::Severity::normal).rows.size() == 16);
    CHECK(read->of(inspection::Severity::tightened).rows.size() == 17);
    CHECK(read->of(inspection::Severity::reduced).rows.size() == 16);
}
