// SPDX-License-Identifier: MIT
#include <seatload/io/builtin.hpp>

#include <seatload/core/embedded.hpp>
#include <seatload/io/sampling_file.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/tolerance_file.hpp>
#include <seatload/io/wire_file.hpp>
#include <seatload/io/wording_file.hpp>

namespace seatload::io {
namespace {

constexpr std::string_view kWordingFolder = "templates/wording/";
constexpr std::string_view kMakersFolder = "data/makers/";
constexpr std::string_view kUsualMaker = "data/makers/ordinary.toml";

}  // namespace

Result<wire::Catalogue> builtin_catalogue() {
    // wire/common.toml must come before the grades that name its tables
    std::vector<std::string_view> names{"data/sources.toml", "data/stock_sizes.toml", "data/wire/common.toml"};
    for (const std::string_view name : embedded_names("data/wire/"))
        if (name != names[2]) names.push_back(name);
    wire::Catalogue catalogue;
    for (const std::string_view name : names) {
        Result<wire::Catalogue> larger = read_wire_file(embedded(name), std::string(name), std::move(catalogue));
        if (!larger) return larger;
        catalogue = std::move(larger).value();
    }
    return catalogue;
}

Result<tolerance::Tables> builtin_tolerances() {
    constexpr std::string_view kName = "data/en_15800.toml";
    return read_tolerances(embedded(kName), std::string(kName));
}

Result<inspection::SamplingTables> builtin_sampling() {
    constexpr std::string_view kName = "data/iso_2859_1.toml";
    return read_sampling(embedded(kName), std::string(kName));
}

demand::Makers builtin_makers() {
    demand::Makers makers;
    for (const std::string_view name : embedded_names(kMakersFolder)) {
        auto maker = read_maker(embedded(name), std::string(name));
        SEATLOAD_ASSERT(maker.has_value());
        const bool is_first = name == kUsualMaker;
        makers.all.insert(is_first ? makers.all.begin() : makers.all.end(), std::move(maker).value());
    }
    return makers;
}

std::vector<std::string> builtin_languages() {
    std::vector<std::string> languages;
    for (const std::string_view name : embedded_names(kWordingFolder))
        languages.emplace_back(name.substr(kWordingFolder.size(), 2));
    return languages;
}

record::PhraseBook builtin_wording(std::string_view language) {
    const auto text_of = [](std::string_view code) {
        return embedded(std::string(kWordingFolder) + std::string(code) + ".toml");
    };
    auto english = read_wording(text_of("en"), "wording/en.toml");
    SEATLOAD_ASSERT(english.has_value());
    if (language == "en") return std::move(english).value();
    auto book = read_wording(text_of(language), "wording/" + std::string(language) + ".toml", *english);
    SEATLOAD_ASSERT(book.has_value());
    return std::move(book).value();
}

}  // namespace seatload::io
