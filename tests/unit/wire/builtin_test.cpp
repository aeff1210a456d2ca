// SPDX-License-Identifier: MIT
#include <support/check.hpp>

#include <algorithm>
#include <map>
#include <set>

#include <seatload/core/embedded.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/wire/strength.hpp>

using namespace seatload;
using namespace seatload::wire;

namespace {

const Catalogue& builtin() {
    static const Result<Catalogue> catalogue = io::builtin_catalogue();
    INFO(render(catalogue.error()));
    REQUIRE(catalogue.has_value());
    return *catalogue;
}

const StrengthTable& table_of(const Grade& grade) { return std::get<StrengthTable>(grade.strength); }

// Counted in the reference collection the data was written from.
const std::map<std::string, std::size_t> kRowCounts{{"EN10270-1-SL", 41},
                                                    {"EN10270-1-SM", 49},
                                                    {"EN10270-1-DM", 49},
                                                    {"EN10270-1-SH", 52},
                                                    {"EN10270-1-DH", 67},
                                                    {"EN10270-2-FDC", 27},
                                                    {"EN10270-2-TDC", 16},
                                                    {"EN10270-2-VDC", 16},
                                                    {"EN10270-2-FDCrV", 24},
                                                    {"EN10270-2-TDCrV", 2},
                                                    {"EN10270-2-VDCrV", 2},
                                                    {"EN10270-2-FDSiCr", 27},
                                                    {"EN10270-2-TDSiCr", 22},
                                                    {"EN10270-2-VDSiCr", 22},
                                                    {"EN10270-3-1.4310-NS", 20},
                                                    {"EN10270-3-1.4310-HS", 20},
                                                    {"EN10270-3-1.4401", 20},
                                                    {"EN10270-3-1.4568-C", 19},
                                                    {"EN10270-3-1.4568-aged", 18},
                                                    {"ASTM-A228", 58},
                                                    {"ASTM-A227-I", 27},
                                                    {"ASTM-A227-II", 27},
                                                    {"ASTM-A229-I", 28},
                                                    {"ASTM-A229-II", 28},
                                                    {"ASTM-A230", 6},
                                                    {"ASTM-A231", 16},
                                                    {"ASTM-A232", 31},
                                                    {"ASTM-A401", 17},
                                                    {"ASTM-A313-302", 45},
                                                    {"ASTM-A313-631-C", 20},
                                                    {"ASTM-A313-631-CH900", 20},
                                                    {"ASTM-B159-C51000-H08", 6},
                                                    {"X750-No1", 1},
                                                    {"X750-spring", 1},
                                                    {"EN12166-CuSn6-spring", 3}};

std::set<std::string> keys_named_in(std::string_view text) {
    std::set<std::string> keys;
    for (std::size_t from = text.find('['); from != std::string_view::npos; from = text.find('[', from + 1)) {
        const std::size_t to = text.find(']', from);
        REQUIRE(to != std::string_view::npos);
        keys.emplace(text.substr(from + 1, to - from - 1));
    }
    return keys;
}

}  // namespace

TEST_CASE("all 35 grades are built in, each with all its strength rows") {
    REQUIRE(builtin().grades.size() == 35);
    REQUIRE(kRowCounts.size() == 35);
    std::size_t all = 0;
    for (const auto& [id, count] : kRowCounts) {
        CAPTURE(id);
        const Grade* grade = builtin().find(id);
        REQUIRE(grade != nullptr);
        CHECK(table_of(*grade).rows.size() == count);
        all += count;
    }
    CHECK(all == 847);
}

TEST_CASE("no strength rises with the diameter and no row is upside down") {
    for (const Grade& grade : builtin().grades) {
        const auto& rows = table_of(grade).rows;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            CAPTURE(grade.id, in_mm(rows[i].diameter));
            CHECK((!rows[i].maximum || rows[i].minimum <= *rows[i].maximum));
            if (i == 0) continue;
            CHECK(rows[i - 1].diameter < rows[i].diameter);
            CHECK(rows[i].minimum <= rows[i - 1].minimum);
            CHECK((!rows[i].maximum || !rows[i - 1].maximum || *rows[i].maximum <= *rows[i - 1].maximum));
        }
    }
}

TEST_CASE("every built-in grade has the properties a spring needs, with their provenance") {
    for (const Grade& grade : builtin().grades) {
        CAPTURE(grade.id);
        CHECK_FALSE(grade.standard.empty());
        CHECK_FALSE(grade.designation.empty());
        CHECK_FALSE(grade.note.empty());
        std::set<std::string> properties;
        for (const Provenance& p : grade.provenance) properties.insert(p.property);
        CHECK(properties.count("tensile strength") == 1);
        CHECK((properties.count("moduli") == 1 ||
               (properties.count("shear modulus") == 1 && properties.count("Young's modulus") == 1)));
        for (const char* property : {"density", "shear modulus loss", "service limit"})
            CHECK(properties.count(property) == 1);
        CHECK(properties.count("relative cost") == (grade.relative_cost ? 1u : 0u));
        CHECK(properties.count("load loss") == (grade.load_loss ? 1u : 0u));
        for (const Provenance& p : grade.provenance) CHECK(p.evidence != Evidence::given);
        for (const StrengthRow& row : table_of(grade).rows) CHECK(row.evidence != Evidence::given);
    }
}

TEST_CASE("load-loss guidance is always an estimate, and wire that is not aged has none") {
    for (const Grade& grade : builtin().grades) {
        CAPTURE(grade.id);
        const bool is_unaged = grade.id == "EN10270-3-1.4568-C" || grade.id == "ASTM-A313-631-C";
        CHECK(grade.load_loss.has_value() != is_unaged);
        if (grade.load_loss) CHECK(grade.load_loss->evidence == Evidence::estimate);
    }
    CHECK(builtin().find("ASTM-A228")->load_loss->analogy.empty());
    CHECK_FALSE(builtin().find("EN10270-1-SM")->load_loss->analogy.empty());
    CHECK_FALSE(builtin().find("EN10270-3-1.4401")->load_loss->analogy.empty());
}

TEST_CASE("a relative cost taken from another wire says so") {
    CHECK(builtin().find("ASTM-A227-I")->relative_cost == 1.0);
    for (const Grade& grade : builtin().grades)
        for (const Provenance& p : grade.provenance)
            if (p.property == "relative cost" && p.evidence == Evidence::estimate) {
                CAPTURE(grade.id);
                CHECK_THAT(p.source, ContainsSubstring("analogy"));
            }
    CHECK_FALSE(builtin().find("EN10270-2-TDC")->relative_cost);
    CHECK_FALSE(builtin().find("X750-spring")->relative_cost);
}

TEST_CASE("every source a built-in text names is in the bibliography, and each entry is used") {
    std::set<std::string> known;
    for (const Source& source : builtin().sources) known.insert(source.key);
    CHECK(known.size() == builtin().sources.size());
    std::string texts;
    for (const Grade& grade : builtin().grades) {
        texts += grade.note + grade.material_number;
        for (const Provenance& p : grade.provenance) texts += p.source;
    }
    for (const StockSeries& series : builtin().series) texts += series.source;
    const std::set<std::string> named = keys_named_in(texts);
    for (const std::string& key : named) {
        CAPTURE(key);
        CHECK(known.count(key) == 1);
    }
    std::string files;
    for (const std::string_view name : embedded_names("data/"))
        if (name.ends_with(".toml")) files += embedded(name);
    for (const std::string& key : known) {
        CAPTURE(key);
        CHECK(files.find('[' + key + ']') != std::string::npos);
    }
}

TEST_CASE("every built-in data file says what it is, from where and in which format") {
    std::vector<std::string_view> names{"data/sources.toml", "data/stock_sizes.toml"};
    for (const std::string_view name : embedded_names("data/wire/")) names.push_back(name);
    CHECK(names.size() == 8);
    for (const std::string_view name : names) {
        CAPTURE(name);
        const std::string text(embedded(name));
        for (const char* key : {"\ndescription = ", "\nsource = ", "\ndate = ", "\nformat_version = 1\n"})
            CHECK_THAT(text, ContainsSubstring(key));
    }
}

TEST_CASE("the stock series rise and have their counted sizes") {
    const std::map<std::string, std::size_t> counts{{"metric", 77}, {"metric-textbook", 44}, {"R20", 20},
                                                    {"R40", 40},    {"music-wire", 55},      {"washburn-moen", 44}};
    CHECK(builtin().series.size() == counts.size());
    for (const auto& [id, count] : counts) {
        CAPTURE(id);
        const StockSeries* series = builtin().find_series(id);
        REQUIRE(series != nullptr);
        CHECK(series->sizes.size() == count);
        for (std::size_t i = 1; i < series->sizes.size(); ++i)
            CHECK(series->sizes[i - 1].diameter < series->sizes[i].diameter);
    }
}

TEST_CASE("gauge sizes carry their number and their inches") {
    const StockSeries* gauge = builtin().find_series("music-wire");
    REQUIRE(gauge != nullptr);
    const auto size = std::find_if(gauge->sizes.begin(), gauge->sizes.end(),
                                   [](const StockSize& s) { return s.name == "MW 32 (0.090 in)"; });
    REQUIRE(size != gauge->sizes.end());
    CHECK_THAT(in_mm(size->diameter), WithinAbs(2.286, 1e-12));
}

TEST_CASE("a metric size just outside an inch table has no strength") {
    const Grade* grade = builtin().find("ASTM-A227-I");  // begins at 0.020 in = 0.508 mm
    REQUIRE(grade != nullptr);
    CHECK_FALSE(strength_at(*grade, 0.5 * mm));
    CHECK(strength_at(*grade, 0.508 * mm));
    const Grade* music = builtin().find("ASTM-A228");  // begins at 0.004 in = 0.1016 mm
    REQUIRE(music != nullptr);
    CHECK_FALSE(strength_at(*music, 0.1 * mm));
    CHECK_FALSE(strength_at(*music, 6.36 * mm));
}

TEST_CASE("the first row of EN 10270-3 holds below its size") {
    const auto strength = strength_at(*builtin().find("EN10270-3-1.4310-NS"), 0.1 * mm);
    REQUIRE(strength);
    CHECK(in_mpa(strength->minimum) == 2200.0);
}

// Classes of EN 10270-1 (S static, D dynamic) and EN 10270-2 (F static, T medium and V high fatigue), and the scope of
// ASTM A227, all from memory.
TEST_CASE("the wires made for static loads only are those of the static classes") {
    std::vector<std::string> found;
    for (const Grade& grade : builtin().grades)
        if (grade.static_duty_only) found.push_back(grade.id);
    CHECK(found == std::vector<std::string>{"EN10270-1-SL", "EN10270-1-SM", "EN10270-1-SH", "EN10270-2-FDC",
                                            "EN10270-2-FDCrV", "EN10270-2-FDSiCr", "ASTM-A227-I", "ASTM-A227-II"});
}
