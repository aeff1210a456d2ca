// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <seatload/wire/catalogue.hpp>

using namespace seatload;
using namespace seatload::wire;

namespace {

Grade grade(std::string id, double smallest_mm, double largest_mm) {
    Grade g;
    g.id = std::move(id);
    g.strength = StrengthGiven{1900.0 * MPa, smallest_mm * mm, largest_mm * mm};
    return g;
}

Catalogue small() {
    Catalogue catalogue;
    catalogue.grades = {grade("EN-SH", 0.5, 2.0), grade("EN-DH", 0.1, 4.0), grade("own", 1.0, 1.0)};
    catalogue.series = {{"metric",
                         "sizes",
                         {{0.4 * mm, "0.40 mm"}, {1.0 * mm, "1.00 mm"}, {3.0 * mm, "3.00 mm"}},
                         "",
                         Evidence::standard}};
    return catalogue;
}

std::vector<double> diameters(const Catalogue& catalogue, std::string_view id, std::string_view series = "metric") {
    std::vector<double> numbers;
    for (const StockSize& size : stock_sizes(catalogue, *catalogue.find(id), series))
        numbers.push_back(in_mm(size.diameter));
    return numbers;
}

using Numbers = std::vector<double>;

}  // namespace

TEST_CASE("a grade and a series are found whatever the case") {
    const Catalogue catalogue = small();
    REQUIRE(catalogue.find("en-sh") != nullptr);
    CHECK(catalogue.find("en-sh")->id == "EN-SH");
    CHECK(catalogue.find("EN-SX") == nullptr);
    CHECK(catalogue.find("") == nullptr);
    CHECK(catalogue.find_series("METRIC") != nullptr);
    CHECK(catalogue.ids() == std::vector<std::string>{"EN-SH", "EN-DH", "own"});
}

TEST_CASE("stock sizes are those of the series inside the grade's strengths") {
    const Catalogue catalogue = small();
    CHECK(diameters(catalogue, "EN-SH") == Numbers{1.0});
    CHECK(diameters(catalogue, "EN-DH") == Numbers{0.4, 1.0, 3.0});
    CHECK(diameters(catalogue, "EN-DH", "no such series").empty());
}

TEST_CASE("a holding restricts stock to what is held and leaves other grades without") {
    Catalogue catalogue = small();
    catalogue.holdings = {{"en-dh", {3.5 * mm, 0.7 * mm}}, {"EN-DH", {0.7 * mm, 1.1 * mm}}};
    CHECK(diameters(catalogue, "EN-DH") == Numbers{0.7, 1.1, 3.5});
    CHECK(diameters(catalogue, "EN-SH").empty());
    const auto sizes = stock_sizes(catalogue, *catalogue.find("EN-DH"), "metric");
    CHECK(sizes.front().name == "0.70 mm");
    CHECK(sizes.front().evidence == Evidence::given);
}

TEST_CASE("a mistyped grade is answered with the nearest, or with those that contain it") {
    const Catalogue catalogue = small();
    CHECK(catalogue.suggestion("EN-SHH") == "did you mean \"EN-SH\"?");
    CHECK(catalogue.suggestion("h") == "did you mean EN-SH or EN-DH?");
    CHECK(catalogue.suggestion("something else").empty());
    CHECK(catalogue.suggestion("").empty());
}
