// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <charconv>

#include <seatload/core/text.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

/// Electroplated hard wire can crack from hydrogen (common practice, no source).
bool plating_embrittles(const Facts& facts) {
    const bool hard =
        facts.grade.family == wire::Family::cold_drawn_carbon || facts.grade.family == wire::Family::oil_tempered;
    const std::string finish = lower(facts.spec.finish);
    const auto mentions = [&](std::string_view word) { return finish.find(word) != std::string::npos; };
    // Word stems of the languages papers are written in.
    return hard && (mentions("zinc") || mentions("zink") || mentions("plat") || mentions("galvan") ||
                    mentions("cadmi") || mentions("kadmi") || mentions("nickel") || mentions("nichel"));
}

constexpr double kBakeFrom = 190.0;  ///< deg C, usual against hydrogen embrittlement (from memory)
constexpr double kBakeTo = 220.0;

/// The temperature that the data write so: "200 °C".
std::optional<Celsius> celsius(std::string_view as_written) {
    double degrees = 0.0;
    const char* const end = as_written.data() + as_written.size();
    const auto [rest, fault] = std::from_chars(as_written.data(), end, degrees);
    return fault == std::errc{} && std::string_view(rest, end) == " °C" ? std::optional(Celsius{degrees})
                                                                        : std::nullopt;
}

/// "392 to 572 °F [200 to 300 °C]".
std::string range_in_both(const Facts& facts, Celsius from, Celsius to) {
    const Figures figures = facts.figures();
    const auto range = [&](double first, double last, const char* unit) {
        return facts.say("wire.range_from_to",
                         {{"from", figures.number(first, {0})}, {"to", figures.number(last, {0}) + unit}});
    };
    return range(1.8 * from.degrees + 32.0, 1.8 * to.degrees + 32.0, " °F") + " [" +
           range(from.degrees, to.degrees, " °C") + "]";
}

/// "200 °C to 300 °C" or "482 °C", as the data write it, in the paper's language and units; other words as they are.
std::string temperature_words(const Facts& facts, const std::string& as_written) {
    constexpr std::string_view kTo = " to ";
    const auto at = as_written.find(kTo);
    if (at == std::string::npos) {
        const auto one = celsius(as_written);
        return one ? facts.figures().temperature(*one) : as_written;
    }
    const std::string from = as_written.substr(0, at);
    const std::string to = as_written.substr(at + kTo.size());
    if (celsius(from) && celsius(to) && facts.figures().has_inches())
        return range_in_both(facts, *celsius(from), *celsius(to));
    return facts.say("wire.range_from_to", {{"from", from}, {"to", to}});
}

/// Wire whose strength rests on ageing must be aged; other wire is stress relieved by the maker's own practice, for
/// which a guide is given.
Entries heat_entries(const Facts& facts) {
    const auto& relief = facts.grade.stress_relief;
    if (!relief) return {};
    const std::string words =
        temperature_words(facts, relief->temperature) + (relief->time.empty() ? "" : ", " + relief->time);
    if (!relief->hardens) return {Named{Status::adjustable, facts.say("process.stress_relief"), reference(words)}};
    // The remark on the row says that ageing would make another grade of this one.
    if (!relief->analogy.empty())
        return {Named{Status::required, facts.say("process.ageing"), facts.say("process.used_as_drawn")}};
    // That it is aged is required whatever is known of the cycle.
    return {Named{
        Status::required, facts.say("process.ageing_after"),
        is_firm(relief->evidence) ? words : facts.say("process.ageing_unconfirmed", {{"cycle", reference(words)}})}};
}

}  // namespace

Entries process_entries(const Facts& facts) {
    Entries out{Heading{facts.say("process.heading")}};
    append(out, heat_entries(facts));
    out.push_back(Named{
        Status::adjustable, facts.say("process.surface_and_presetting"),
        reference(facts.bears_solid() ? facts.say("process.preset_to_solid") : facts.say("process.preset_to_L2"))});
    if (facts.spec.duty.peened)
        out.push_back(Named{Status::required, facts.say("process.peening"),
                            facts.say("process.peening_required", {{"agreement", facts.agreement()}})});
    else if (facts.spec.duty.is_dynamic())
        out.push_back(
            Named{Status::reference, facts.say("process.peening"), reference(facts.say("process.no_peening"))});
    out.push_back(Named{facts.spec.finish.empty() ? Status::reference : Status::required, facts.say("process.finish"),
                        finish(facts)});
    if (plating_embrittles(facts))
        out.push_back(required_paragraph(facts.say("process.bake", {{"from", facts.figures().temperature({kBakeFrom})},
                                                                    {"to", facts.figures().temperature({kBakeTo})}})));
    return out;
}

}  // namespace seatload::sheet
