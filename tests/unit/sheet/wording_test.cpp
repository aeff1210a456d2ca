// SPDX-License-Identifier: MIT
// That the papers for the maker say nothing but the phrases of the wording files, and all of them.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include <support/check.hpp>

#include <seatload/io/builtin.hpp>
#include <seatload/io/wording_file.hpp>
#include <seatload/sheet/enquiry.hpp>
#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/spring_sheet.hpp>

#include "sheet_words.hpp"
#include "specimens.hpp"

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kRoot = SEATLOAD_SOURCE_DIR;

std::string text_of(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

/// What our own papers draw, in English only: the calculation report, the bench sheet, the pressure diagram,
/// the what-if sheet, the comparison of quotations, the report of an inspection.
bool is_report(const std::string& name) {
    for (const char* start : {"report", "fatigue_diagram", "fit_map", "histogram", "plot", "bench", "inspection",
                              "pressure", "quotes", "what_if", "own_title"})
        if (name.starts_with(start)) return true;
    return false;
}

/// The sources that make papers for the maker.
std::vector<fs::path> paper_sources() {
    std::vector<fs::path> out;
    for (const auto& entry : fs::directory_iterator(kRoot / "lib" / "seatload" / "sheet")) {
        const std::string ending = entry.path().extension().string();
        if ((ending == ".cpp" || ending == ".hpp") && !is_report(entry.path().filename().string()))
            out.push_back(entry.path());
    }
    std::sort(out.begin(), out.end());
    return out;
}

/// The string literals of a source; comments and includes are no part of it, and neither is what is said to the user
/// of the program by error().
std::vector<std::string> literals(std::string source) {
    source = std::regex_replace(source, std::regex("//[^\n]*|#include[^\n]*"), "");
    source = std::regex_replace(source, std::regex("\\berror\\([^;]*;"), "");
    std::vector<std::string> out;
    const std::regex literal("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    for (std::sregex_iterator it(source.begin(), source.end(), literal), end; it != end; ++it) out.push_back((*it)[1]);
    return out;
}

bool is_key(const std::string& words) { return std::regex_match(words, std::regex("[a-z_]+\\.[A-Za-z0-9_]+")); }

std::set<std::string> keys_said() {
    std::set<std::string> keys;
    for (const fs::path& path : paper_sources())
        for (const std::string& words : literals(text_of(path)))
            if (is_key(words) && !words.ends_with(".toml")) keys.insert(words);
    return keys;
}

std::set<std::string> blanks_of(const record::PhraseBook& book) {
    std::set<std::string> out;
    for (const auto& [key, phrase] : book.phrases)
        for (const std::string& blank : io::blanks(phrase)) out.insert(blank);
    return out;
}

std::string in_a_row(const std::set<std::string>& words) {
    std::string out;
    for (const std::string& word : words) out += word + " ";
    return out;
}

TEST_CASE("every phrase that a paper says is in the English wording, and every one there is said", "[wording]") {
    std::set<std::string> known;
    for (const auto& [key, phrase] : io::builtin_wording().phrases) known.insert(key);
    CHECK(known.size() > 150);
    CHECK(in_a_row(keys_said()) == in_a_row(known));
}

TEST_CASE("German and Italian have the phrases and the blanks of the English wording", "[wording]") {
    CHECK(io::builtin_languages() == std::vector<std::string>{"en", "de", "it"});
    const record::PhraseBook english = io::builtin_wording();
    for (const std::string language : {"de", "it"}) {
        const std::string name = language + ".toml";
        const auto book = io::read_wording(text_of(kRoot / "templates" / "wording" / name), name, english);
        INFO(render(book.error()));
        REQUIRE(book.has_value());
        CHECK(book->language == language);
        CHECK(book->phrases.at("number.decimal_mark") == ",");
        // A phrase taken over as it stands is one that is the same in both languages; there are few.
        int alike = 0;
        for (const auto& [key, phrase] : book->phrases) alike += phrase == english.phrases.at(key) ? 1 : 0;
        CHECK(alike < 12);
    }
}

TEST_CASE("all phrases can be printed", "[wording]") {
    for (const std::string& language : io::builtin_languages())
        for (const auto& [key, phrase] : io::builtin_wording(language).phrases) {
            INFO(language << " " << key);
            Diagnostics diagnostics;
            CHECK(sheet::readable(phrase, key, diagnostics) == phrase);
            CHECK(diagnostics.empty());
        }
}

TEST_CASE("no words stand in the code that makes papers for the maker", "[wording]") {
    // Files that talk to the user of the program or to a PDF reader, not to the maker.
    const std::set<std::string> apart{"attached_specs.cpp",  "font_metrics.cpp", "lettering.cpp",
                                      "pdf_attachments.cpp", "pdf_check.cpp",    "printable.cpp",
                                      "spec_attachment.cpp", "wording.cpp"};
    const std::set<std::string> allowed{// units
                                        "Hz", "lbf", "MPa", "ksi", "N/mm", "lbf/in", "oz", "mm", "in", "min",
                                        // stems looked for in the finish that the user wrote
                                        "zinc", "zink", "plat", "galvan", "cadmi", "kadmi", "nickel", "nichel",
                                        // whom a report of our own is for, unless it says otherwise
                                        "for our own use",
                                        // how the data write a range of temperatures
                                        " to ",
                                        // why a spec is refused, said to the user
                                        "seated load", "load at full travel", "the free length",
                                        "the coils with the wire or the coil diameter", "anything",
                                        "over-defined: both loads are required, and the maker may not adjust "};
    const std::set<std::string> blanks = blanks_of(io::builtin_wording());
    const std::regex word("[A-Za-z]{2,}");
    for (const fs::path& path : paper_sources()) {
        const std::string name = path.filename().string();
        if (apart.contains(name) || name.starts_with("pdf_writer")) continue;
        for (const std::string& words : literals(text_of(path))) {
            INFO(path.filename().string() << ": \"" << words << '"');
            const bool is_plain = !std::regex_search(words, word);
            CHECK((is_plain || is_key(words) || blanks.contains(words) || allowed.contains(words)));
        }
    }
}

sheet::Paper in_language(const std::string& language) {
    return sheet::Paper{sheet::Wording(io::builtin_wording(language))};
}

std::string words_in(const record::Spec& spec, const sheet::Paper& paper) {
    const auto page = sheet::spring_sheet({spec, grade_of(spec), tolerances(), paper});
    REQUIRE(page.has_value());
    return joined(words_of(*page));
}

TEST_CASE("the sheet speaks the language asked for, with its decimal mark", "[wording]") {
    // Terms of DIN EN 13906-1 and DIN EN 15800, and of UNI EN 13906-1 (from memory).
    const record::Spec spec = specimen(latch());
    const std::string german = words_in(spec, in_language("de"));
    for (const char* part :
         {"ungespannte Länge L0", "Windungsrichtung", "angelegt und geschliffen", "Federrate R", "Rechtwinkligkeit e1",
          "Parallelität e2", "8,2 ± 0,3 mm", "(0,800 ± 0,013", "Vorsicht", " de ", "2024-05-02"})
        CHECK_THAT(german, ContainsSubstring(part));
    const std::string italian = words_in(spec, in_language("it"));
    for (const char* part : {"lunghezza libera L0", "senso di avvolgimento", "chiuse e molate", "rigidezza R",
                             "perpendicolarità e1", "parallelismo e2", "8,2 ± 0,3 mm", "Attenzione", " it "})
        CHECK_THAT(italian, ContainsSubstring(part));
    for (const std::string& words : {german, italian}) {
        // The type of a certificate is no number.
        const std::string numbers = std::regex_replace(words, std::regex("10204[^:]*:"), "");
        CHECK(numbers != words);
        CHECK_FALSE(std::regex_search(numbers, std::regex("[0-9]\\.[0-9]")));
        for (const char* english : {"least", "grade", "maker", "Loads", "pieces", "required", "outside", "Process"})
            CHECK(words.find(english) == std::string::npos);
    }
}

TEST_CASE("the enquiry speaks the language asked for", "[wording]") {
    const record::Spec spec = specimen(latch());
    const std::vector<sheet::EnquiryAlternative> alternatives(2, {spec, grade_of(spec)});
    const auto pages = sheet::enquiry(alternatives, tolerances(), in_language("de"));
    REQUIRE(pages.has_value());
    std::string words;
    for (const sheet::Drawing& page : *pages) words += joined(words_of(page));
    for (const char* part : {"Anfrage: Druckfeder, ahead latch plunger", "20 Stück:", "je Stück", "Drahtbescheinigung",
                             "Blocklänge Lc höchstens", "Unterschrift"})
        CHECK_THAT(words, ContainsSubstring(part));
}

}  // namespace
}  // namespace seatload::test
