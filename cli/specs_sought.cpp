// SPDX-License-Identifier: MIT
#include <cli/specs_sought.hpp>

#include <vector>

#include <seatload/core/text.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/units/band.hpp>
#include <seatload/units/parse.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

/// Reads words, and keeps what is wrong with them.
class Words {
  public:
    template <class Q>
    std::optional<units::Band<Q>> band(const std::string& option, const std::string& text) {
        if (text.empty()) return std::nullopt;
        return take(option, units::parse_band<Q>(text));
    }
    template <class Q>
    std::optional<Q> quantity(const std::string& option, const std::string& text) {
        if (text.empty()) return std::nullopt;
        return take(option, units::parse<Q>(text));
    }
    void wrong(DiagnosticId id, std::string message, std::string hint) {
        said_.push_back(error(id, std::move(message), std::move(hint)));
    }
    const Diagnostics& said() const { return said_; }

  private:
    template <class T>
    std::optional<T> take(const std::string& option, units::Parsed<T> parsed) {
        if (!parsed.value) wrong(parsed.problem.id, option + ": " + parsed.problem.message, parsed.problem.hint);
        return parsed.value;
    }

    Diagnostics said_;
};

record::LengthBand length_band(const std::optional<units::Band<Length>>& band) {
    if (!band) return {};
    if (band->single) return {band->nominal, band->nominal};
    return {band->at_least, band->at_most};
}

std::optional<demand::Fit> fit(Words& words, const std::string& option, const std::string& text) {
    const auto band = words.band<Length>(option, text);
    if (!band) return std::nullopt;
    const record::LengthBand range = length_band(band);
    if (!range.at_least || !range.at_most || *range.at_least <= 0.0 * mm || *range.at_most < *range.at_least) {
        words.wrong("bad-range"_id, option + ": a size, or its smallest and largest, are wanted",
                    "write it as \"9 mm\" or \"9 mm .. 9.05 mm\"");
        return std::nullopt;
    }
    return demand::Fit{*range.at_least, *range.at_most, *range.at_least};
}

void read_loads(Words& words, const FindOptions& o, record::Sought& sought) {
    if (o.gives.size() != o.at.size() || o.gives.size() > 2)
        return words.wrong("unmatched-options"_id, "each --gives goes with an --at, once or twice",
                           "for example --gives \"5 N .. 6 N\" --at \"18 mm\"");
    for (std::size_t i = 0; i < o.gives.size(); ++i) {
        const auto load = words.band<Force>("--gives", o.gives[i]);
        const auto length = words.quantity<Length>("--at", o.at[i]);
        if (!load || !length) continue;
        if (load->single)
            words.wrong("no-tolerance"_id, "--gives: one load alone is never met exactly",
                        "write a range: \"5 N .. 6 N\", \"5.5 N ±10 %\" or \"at least 5 N\"");
        else if (*length <= 0.0 * mm)
            words.wrong("out-of-span"_id, "--at: a length above zero is wanted",
                        "the length of the spring at which it gives the load: \"18 mm\"");
        else
            sought.loads.push_back({*length, {load->at_least, load->at_most}});
    }
    if (sought.loads.size() < 2) return;
    const record::WantedLoad& one = sought.loads[0];
    const record::WantedLoad& other = sought.loads[1];
    if (one.at == other.at)
        words.wrong("named-twice"_id, "--at: the same length twice",
                    "state both bounds of its load in one --gives: \"5 N .. 6 N\"");
    if (one.at < other.at) sought.loads = std::vector{other, one};
}

bool asks_in_words(const FindOptions& o) {
    return !o.gives.empty() || !o.at.empty() || !o.bore.empty() || !o.rod.empty() || !o.temperature.empty();
}

}  // namespace

Result<record::Sought> read_sought(const FindOptions& o, const wire::Catalogue& wires) {
    record::Sought sought;
    Words words;
    read_loads(words, o, sought);
    sought.bore = fit(words, "--bore", o.bore);
    sought.rod = fit(words, "--rod", o.rod);
    sought.temperature = words.quantity<Celsius>("--temperature", o.temperature);
    sought.wire = o.wire;
    sought.wire_diameter = length_band(words.band<Length>("--wire-diameter", o.wire_diameter));
    sought.outside_diameter = length_band(words.band<Length>("--outside", o.outside_diameter));
    sought.free_length = length_band(words.band<Length>("--free-length", o.free_length));
    if (!o.requirement.empty() && asks_in_words(o))
        words.wrong("exclusive"_id, "a requirement says all of loads, lengths, bore and heat itself",
                    "leave out --gives, --at, --bore, --rod and --temperature");
    if (!words.said().empty()) return words.said();
    if (o.requirement.empty()) return sought;
    auto read = read_file(o.requirement, [&](std::string_view text, const std::string& name) {
        return io::read_requirement(text, name, wires);
    });
    if (!read) return Diagnostics(read.error());
    sought.requirement = std::move(read).value();
    return sought;
}

std::string sought_words(const FindOptions& o) {
    std::vector<std::string> parts;
    if (!o.requirement.empty()) parts.push_back("fits " + o.requirement);
    for (std::size_t i = 0; i < o.gives.size() && i < o.at.size(); ++i) parts.push_back(o.gives[i] + " at " + o.at[i]);
    if (!o.gives.empty()) parts.push_back(o.temperature.empty() ? "cold and new" : "least loads at " + o.temperature);
    const auto say = [&](const std::string& what, const std::string& value) {
        if (!value.empty()) parts.push_back(what + ' ' + value);
    };
    say("in a bore of", o.bore);
    say("over a rod of", o.rod);
    say("wire", o.wire);
    say("d", o.wire_diameter);
    say("De", o.outside_diameter);
    say("L0", o.free_length);
    return join(parts, ", ");
}

}  // namespace seatload::cli
