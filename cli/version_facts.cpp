// SPDX-License-Identifier: MIT
#include <cli/version_facts.hpp>

#include <algorithm>
#include <set>

#include <nlohmann/json.hpp>
#include <seatload/core/assert.hpp>
#include <seatload/core/embedded.hpp>
#include <seatload/core/line_wrap.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>

#include <cli/text_wrap.hpp>

namespace seatload::cli {
namespace {

constexpr char kGlue = '\x1f';  // stands for a blank at which no line ends

std::string digest_of_data() {
    auto names = embedded_names("");
    std::sort(names.begin(), names.end());
    std::string lines;
    for (const std::string_view name : names) lines += sha256_hex(embedded(name)) + "  " + std::string(name) + '\n';
    return sha256_hex(lines);
}

/// What a standard is called in the bibliography, with its year: its title up to the comma or colon behind it.
std::string standard_named(const wire::Catalogue& catalogue, std::string_view key) {
    for (const wire::Source& source : catalogue.sources)
        if (source.key == key) return source.title.substr(0, source.title.find(", "));
    throw InternalError("the bibliography lacks " + std::string(key));
}

std::vector<std::string> wire_standards(const wire::Catalogue& catalogue) {
    std::set<std::string> standards;
    for (const wire::Grade& grade : catalogue.grades) standards.insert(grade.standard);
    return {standards.begin(), standards.end()};
}

/// The names one after the other, none of them parted at the end of a line.
std::string whole_names(const std::vector<std::string>& names) {
    std::string all = join(names, ", ");
    for (std::size_t at = 1; at < all.size(); ++at)
        if (all[at] == ' ' && all[at - 1] != ',') all[at] = kGlue;
    return all;
}

std::string version_line(const std::string& what, const std::string& words, int width) {
    constexpr std::size_t kColumn = 14;
    std::string lines = wrapped(padded("  " + what, kColumn), words, width, kColumn);
    std::replace(lines.begin(), lines.end(), kGlue, ' ');
    return lines;
}

}  // namespace

VersionFacts version_facts() {
    const auto catalogue = io::builtin_catalogue();
    SEATLOAD_ASSERT(catalogue.has_value());
    VersionFacts facts;
    facts.program = SEATLOAD_VERSION;
    facts.data_sha256 = digest_of_data();
    facts.grades = catalogue->grades.size();
    facts.wire = wire_standards(*catalogue);
    facts.tolerances = {standard_named(*catalogue, "en-15800")};
    facts.sampling = {standard_named(*catalogue, "mil-std-105e")};
    facts.formulas = {standard_named(*catalogue, "en-13906-1")};
    for (const demand::Maker& maker : io::builtin_makers().all) facts.makers.push_back(maker.name);
    facts.languages = io::builtin_languages();
    return facts;
}

std::string version_text(const VersionFacts& facts, int width) {
    std::string text = "seatload " + facts.program + "\nData built in, each by what it says it follows:\n";
    text += version_line("wire", std::to_string(facts.grades) + " grades: " + whole_names(facts.wire), width);
    text += version_line("tolerances", join(facts.tolerances, ", "), width);
    text += version_line("sampling", join(facts.sampling, ", ") + ", which ISO 2859-1 took over", width);
    text += version_line("formulas", join(facts.formulas, ", "), width);
    text += version_line("makers", whole_names(facts.makers), width);
    text += version_line("papers", "in " + join(facts.languages, ", "), width);
    text += version_line("SHA-256", facts.data_sha256, width);
    return text;
}

std::string version_json(const VersionFacts& facts) {
    const nlohmann::ordered_json json{{"version", facts.program},
                                      {"data",
                                       {{"sha256", facts.data_sha256},
                                        {"wire_grades", facts.grades},
                                        {"wire", facts.wire},
                                        {"tolerances", facts.tolerances},
                                        {"sampling", facts.sampling},
                                        {"formulas", facts.formulas},
                                        {"makers", facts.makers},
                                        {"languages", facts.languages}}}};
    return json.dump(2) + '\n';
}

}  // namespace seatload::cli
