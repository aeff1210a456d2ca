// SPDX-License-Identifier: MIT
#include "shapes.hpp"

#include <algorithm>

namespace seatload::test {
namespace {

constexpr std::string_view kDefinitions = "#/definitions/";

std::map<std::string, Json>& all_definitions() {
    static std::map<std::string, Json> all;
    return all;
}

void add_definitions(const Json& node, Json& found) {
    if (node.is_object() && node.contains("$ref")) {
        const std::string name = node["$ref"].get<std::string>().substr(kDefinitions.size());
        found[name] = all_definitions().at(name);
    }
    if (node.is_structured())
        for (const Json& member : node) add_definitions(member, found);
}

std::string suffix(const io::Span& span) { return is_signed(span) ? "_signed" : ""; }

const units::Dimension& length() { return units::dimension_of<Length>(); }
const units::Dimension& force() { return units::dimension_of<Force>(); }

}  // namespace

Json shared_text(const std::string& name, const std::string& pattern, const std::string& words) {
    all_definitions()[name] = {{"description", words}, {"type", "string"}, {"pattern", pattern}};
    return {{"$ref", std::string(kDefinitions) + name}};
}

Json definitions_of(const Json& schema) {
    nlohmann::json sorted;  // by name, whatever the order of the keys that refer to them
    Json found = Json::object();
    add_definitions(schema, found);
    for (const auto& [name, definition] : found.items()) sorted[name] = nullptr;
    Json out = Json::object();
    for (const auto& [name, nothing] : sorted.items()) out[name] = found[name];
    return out;
}

std::string name_of(const units::Dimension& dimension) {
    std::string name(dimension.article_and_name.substr(dimension.article_and_name.find(' ') + 1));
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
}

std::string words_for(const units::Dimension& dimension, const std::string& what, const std::string& examples) {
    std::string units;
    for (const units::UnitSize& unit : dimension.units) units += (units.empty() ? "" : ", ") + std::string(unit.name);
    return what + " with its unit (" + units + "): " + examples;
}

Json either(std::initializer_list<Json> shapes) { return {{"anyOf", Json(std::vector<Json>(shapes))}}; }
Json text_shape(const std::string& pattern) { return {{"type", "string"}, {"pattern", "^" + pattern + "$"}}; }
Json blank_shape() { return text_shape("[ \\t]*"); }

Json quantity_shape(const units::Dimension& dimension, const io::Span& span) {
    const std::string article(dimension.article_and_name);
    return shared_text(name_of(dimension) + suffix(span), whole_text({quantity_pattern(dimension, is_signed(span))}),
                       words_for(dimension, article, '"' + std::string(dimension.example) + '"'));
}

Json stated_shape(const units::Dimension& dimension, const io::Span& span) {
    const std::string example(dimension.example);
    return shared_text(name_of(dimension) + "_stated" + suffix(span),
                       whole_text({stated_pattern(dimension, is_signed(span))}),
                       words_for(dimension, std::string(dimension.article_and_name) + ", and what it may be off by,",
                                 '"' + example + " ±1 %\", or \"" + example + "\" when it is exact"));
}

Json two_ends_shape(const units::Dimension& dimension, const io::Span& span) {
    return shared_text(name_of(dimension) + "_two_ends" + suffix(span),
                       whole_text({two_limits_pattern(dimension, is_signed(span))}),
                       words_for(dimension, "both ends of a range", "\"0.10 mm .. 6.5 mm\""));
}

Json interval_shape(const units::Dimension& dimension, const io::Span& span) {
    const bool minus = is_signed(span);
    const std::string example(dimension.example);
    return shared_text(name_of(dimension) + "_range" + suffix(span),
                       whole_text({at_most_pattern(dimension, minus), two_limits_pattern(dimension, minus),
                                   quantity_pattern(dimension, minus)}),
                       words_for(dimension, std::string(dimension.article_and_name) + ", or a range from .. to,",
                                 '"' + example + "\", \"" + example + " ±10 %\", \"at most " + example + '"'));
}

Json Shape<demand::LoadBand>::json(const io::Span&) {
    return shared_text(
        "load_band",
        whole_text(
            {at_least_pattern(force(), false), at_most_pattern(force(), false), two_limits_pattern(force(), false)}),
        words_for(force(), "the loads that are allowed",
                  "\"4.8 N .. 6.5 N\", \"5.6 N ±10 %\", \"at least 4.8 N\", \"at most 13.5 N\"; never one load alone"));
}

Json Shape<demand::Fit>::json(const io::Span&) {
    return shared_text(
        "size_with_limits", whole_text({two_limits_pattern(length(), false), quantity_pattern(length(), false)}),
        words_for(length(), "a size and its limits", "\"9.00 mm .. 9.05 mm\", \"9 mm +0.05 mm\", \"9 mm ±0.02 mm\""));
}

Json Shape<demand::CountRange>::json(const io::Span&) {
    const std::string number = "[ \\t]*" + kNumberPattern + "[ \\t]*";
    return text_shape(number + "\\.\\." + number);
}

Json Shape<demand::Interval<double>>::json(const io::Span& span) {
    const std::string number = "[ \\t]*" + kNumberPattern + "[ \\t]*%?[ \\t]*";
    return either({number_shape(span), text_shape(number + "(?:\\.\\." + number + ")?")});
}

Json Shape<io::StressShare>::json(const io::Span& span) {
    return either({Shape<Share>::json(span), {{"enum", {"torsional yield"}}}});
}

Json Shape<Share>::json(const io::Span& span) {
    return either({number_shape(span), quantity_shape(units::dimension_of<Share>(), span)});
}

Json Shape<bench::ScaleReading>::json(const io::Span&) {
    const io::Span any{};
    return either({quantity_shape(units::dimension_of<Mass>(), any), quantity_shape(force(), any)});
}

Json Shape<bench::Stated<double>>::json(const io::Span& span) {
    const std::string number = "[ \\t]*" + kNumberPattern + "[ \\t]*";
    return either({number_shape(span), text_shape(number + "(?:(?:±|\\+/-|\\+-)" + number + ")?")});
}

Json Shape<io::StatedCelsius>::json(const io::Span&) {
    const units::Dimension& celsius = units::dimension_of<Celsius>();
    return shared_text(
        "temperature_stated",
        whole_text({quantity_pattern(celsius, true) + "(?:(?:±|\\+/-|\\+-)" + quantity_pattern(celsius, false) + ")?"}),
        words_for(celsius, "a temperature, and what it may be off by,", "\"21 °C ±2 °C\""));
}

Json plus_minus_shape(const units::Dimension& dimension) {
    const Json text =
        shared_text(name_of(dimension) + "_plus_minus",
                    whole_text({"[ \\t]*(?:±|\\+/-|\\+-)?" + quantity_pattern(dimension, false)}),
                    words_for(dimension, "so much both ways", "\"±" + std::string(dimension.example) + '"'));
    const bool is_share = &dimension == &units::dimension_of<Share>();
    return is_share ? either({number_shape(io::kNotNegative), text}) : text;
}

Json plus_minus_scale() { return either({plus_minus_shape(units::dimension_of<Mass>()), plus_minus_shape(force())}); }

Json Shape<io::DateText>::json(const io::Span&) {
    return shared_text("date", "^[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])$",
                       "a day as year, month and day: \"2026-11-25\"");
}

Json Shape<record::Money>::json(const io::Span&) {
    return either({{{"type", "number"}, {"minimum", 0}}, text_shape("[ \\t]*[0-9]{1,9}(?:\\.[0-9]{1,4})?[ \\t]*")});
}

Json Shape<record::LeadTime>::json(const io::Span&) {
    return text_shape("[ \\t]*[0-9]{1,3}[ \\t]*(?:days?|working days?|weeks?)[ \\t]*");
}

Json Shape<io::Currency>::json(const io::Span&) { return text_shape("[ \\t]*[A-Za-z]{3}[ \\t]*"); }

}  // namespace seatload::test
