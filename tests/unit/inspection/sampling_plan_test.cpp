// SPDX-License-Identifier: MIT
// The plans against what is printed of MIL-STD-105E, table II-A and II-B.
#include <seatload/inspection/sampling_plan.hpp>

#include <sstream>
#include <vector>

#include <seatload/io/builtin.hpp>
#include <support/check.hpp>

using namespace seatload;
using namespace seatload::inspection;

namespace {

const SamplingTables& tables() {
    static const SamplingTables all = io::builtin_sampling().value();
    return all;
}

SamplingPlan plan(long lot, double aql, inspection::Severity severity = inspection::Severity::normal,
                  Level level = Level::two) {
    const auto found = find_plan(tables(), lot, level, aql, severity);
    REQUIRE(found.has_value());
    return *found;
}

/// A line of the guide: code letter, sample size, then for AQL 0.65 to 15 the number Re, or an arrow: v and ^ at its
/// head, | along its shaft.
struct GuideLine {
    char letter;
    int size;
    std::vector<std::string> cells;
};

std::vector<GuideLine> guide(const std::string& text) {
    std::vector<GuideLine> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        GuideLine read{};
        words >> read.letter >> read.size;
        for (std::string cell; words >> cell;) read.cells.push_back(cell);
        if (!read.cells.empty()) lines.push_back(read);
    }
    return lines;
}

// As the guide to custodial contracts of the Facility Maintenance and Operations Committee, National Institute of
// Building Sciences, reprints MIL-STD-105E (AC-TABLE.ASC, tables 1-A and 1-B), seen as text.
constexpr const char* kNormal = R"(
A 2    | | | | v 1 ^ v
B 3    | | | v 1 ^ v 2
C 5    | | v 1 ^ v 2 3
D 8    | v 1 ^ v 2 3 4
E 13   v 1 ^ v 2 3 4 6
F 20   1 ^ v 2 3 4 6 8
G 32   ^ v 2 3 4 6 8 11
H 50   v 2 3 4 6 8 11 15
J 80   2 3 4 6 8 11 15 22
K 125  3 4 6 8 11 15 22 ^
L 200  4 6 8 11 15 22 ^ |
M 315  6 8 11 15 22 ^ | |
N 500  8 11 15 22 ^ | | |
P 800  11 15 22 ^ | | | |
Q 1250 15 22 ^ | | | | |
)";
constexpr const char* kTightened = R"(
A 2    | | | | | v | |
B 3    | | | | v 1 | v
C 5    | | | v 1 | v 2
D 8    | | v 1 | v 2 3
E 13   | v 1 | v 2 3 4
F 20   v 1 | v 2 3 4 6
G 32   1 | v 2 3 4 6 9
H 50   | v 2 3 4 6 9 13
J 80   v 2 3 4 6 9 13 19
K 125  2 3 4 6 9 13 19 ^
)";
constexpr double kAql[] = {0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10.0, 15.0};

/// Size and Re of the plan that a cell has or leads to.
std::pair<int, int> plan_by_guide(const std::vector<GuideLine>& lines, std::size_t row, std::size_t column) {
    const auto cell = [&](std::size_t r) { return lines[r].cells[column]; };
    // A shaft belongs to the head at its lower end, or else to the one at its upper end.
    std::size_t end = row;
    while (cell(end) == "|" && end + 1 < lines.size()) ++end;
    const bool is_down = cell(end) == "v";
    std::size_t found = row;
    while (cell(found) == "|" || cell(found) == "v" || cell(found) == "^") is_down ? ++found : --found;
    return {lines[found].size, std::stoi(cell(found))};
}

void check_against(const char* text, inspection::Severity severity) {
    const auto lines = guide(text);
    for (std::size_t row = 0; row < lines.size(); ++row)
        for (std::size_t column = 0; column < std::size(kAql); ++column) {
            // The guide's arrow at A and AQL 10 points above the first row: a slip, there is nothing above.
            if (lines[row].cells[column] == "^" && row == 0) continue;
            const auto [size, reject] = plan_by_guide(lines, row, column);
            // A lot so large that the sample is not all of it, by its letter.
            SamplingTables one_letter = tables();
            one_letter.letters = {{2, {}}};
            one_letter.letters.front().letters.fill(lines[row].letter);
            const auto found = find_plan(one_letter, 10'000'000, Level::two, kAql[column], severity);
            INFO(lines[row].letter << " at AQL " << kAql[column]);
            REQUIRE(found.has_value());
            CHECK(found->size == size);
            CHECK(found->reject == reject);
            CHECK(found->accept == reject - 1);
        }
}

}  // namespace

TEST_CASE("Normal plans are those of MIL-STD-105E table II-A, arrows followed") {
    check_against(kNormal, inspection::Severity::normal);
}

TEST_CASE("Tightened plans are those of MIL-STD-105E table II-B, arrows followed") {
    check_against(kTightened, inspection::Severity::tightened);
}

// MIL-STD-105E table II-A as a transcript of the standard carries it: each letter's row of Ac from its first on.
TEST_CASE("Every letter's acceptance numbers are those of the normal table") {
    const std::vector<int> series{0, 1, 2, 3, 5, 7, 10, 14, 21, 30, 44};
    for (const PlanRow& row : tables().of(inspection::Severity::normal).rows) {
        std::vector<int> found;
        for (const PlanCell& cell : row.cells)
            if (cell.kind == PlanCell::Kind::plan) found.push_back(cell.accept);
        // A ends with 30, B to E with 44, F on with 21; R begins with 1.
        const std::size_t end = row.letter == 'A' ? 10u : row.letter <= 'E' ? 11u : 9u;
        const std::vector<int> expected(series.begin() + (row.letter == 'R' ? 1 : 0),
                                        series.begin() + static_cast<long>(end));
        INFO(row.letter);
        CHECK(found == expected);
    }
}

TEST_CASE("Code letters of level II are those printed beside the plans") {
    // the same guide
    const std::pair<long, char> kLetters[] = {{2, 'A'},      {8, 'A'},      {9, 'B'},      {15, 'B'},    {16, 'C'},
                                              {25, 'C'},     {26, 'D'},     {50, 'D'},     {51, 'E'},    {90, 'E'},
                                              {91, 'F'},     {150, 'F'},    {151, 'G'},    {280, 'G'},   {281, 'H'},
                                              {500, 'H'},    {501, 'J'},    {1200, 'J'},   {1201, 'K'},  {3200, 'K'},
                                              {3201, 'L'},   {10000, 'L'},  {10001, 'M'},  {35000, 'M'}, {35001, 'N'},
                                              {150000, 'N'}, {150001, 'P'}, {500000, 'P'}, {500001, 'Q'}};
    for (const auto& [lot, letter] : kLetters) CHECK(code_letter(tables(), lot, Level::two) == letter);
}

// The excerpt for level II and normal inspection that the project's reference gives for small lots.
TEST_CASE("Small lots at AQL 1 and 2.5 get the plans their arrows lead to") {
    const struct {
        long lot;
        int size1, accept1, size25, accept25;
    } kRows[] = {{40, 13, 0, 5, 0}, {80, 13, 0, 20, 1}, {120, 13, 0, 20, 1}, {200, 50, 1, 32, 2}, {400, 50, 1, 50, 3}};
    for (const auto& row : kRows) {
        CHECK(plan(row.lot, 1.0).size == row.size1);
        CHECK(plan(row.lot, 1.0).accept == row.accept1);
        CHECK(plan(row.lot, 2.5).size == row.size25);
        CHECK(plan(row.lot, 2.5).accept == row.accept25);
    }
    CHECK(plan(40, 1.0).letter == 'D');
    CHECK(plan(40, 1.0).used == 'E');
}

TEST_CASE("A sample as large as the lot is the whole lot") {
    CHECK(plan(8, 1.0).size == 8);
    CHECK(plan(13, 1.0).size == 13);
    CHECK(plan(14, 1.0).size == 13);
}

// Montgomery, Introduction to Statistical Quality Control, the example of a lot of 2000 at AQL 0.65 % (from memory):
// letter K; normal 125, Ac 2; tightened 125, Ac 1; reduced 50, Ac 1, Re 3.
TEST_CASE("A lot of 2000 at AQL 0.65 has the three plans of the textbook") {
    CHECK(plan(2000, 0.65).letter == 'K');
    CHECK(plan(2000, 0.65).size == 125);
    CHECK(plan(2000, 0.65).accept == 2);
    CHECK(plan(2000, 0.65, inspection::Severity::tightened).accept == 1);
    CHECK(plan(2000, 0.65, inspection::Severity::reduced).size == 50);
    CHECK(plan(2000, 0.65, inspection::Severity::reduced).accept == 1);
    CHECK(plan(2000, 0.65, inspection::Severity::reduced).reject == 3);
}

TEST_CASE("An AQL that is none of the series has no plan") {
    CHECK_FALSE(find_plan(tables(), 100, Level::two, 2.0, inspection::Severity::normal).has_value());
}

TEST_CASE("Every lot, level, AQL and severity leads to a plan with sample and acceptance number in keeping") {
    for (const inspection::Severity severity :
         {inspection::Severity::normal, inspection::Severity::tightened, inspection::Severity::reduced})
        for (const LetterRow& row : tables().letters)
            for (std::size_t level = 0; level < kLevels; ++level)
                for (const double aql : tables().aql) {
                    const SamplingPlan found = plan(row.from, aql, severity, static_cast<Level>(level));
                    CHECK(found.size >= 1);
                    CHECK(found.size <= row.from);
                    CHECK(found.reject > found.accept);
                }
}
