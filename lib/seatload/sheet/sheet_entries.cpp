// SPDX-License-Identifier: MIT
#include <seatload/sheet/sheet_entries.hpp>

#include <array>

#include <seatload/core/assert.hpp>
#include <seatload/sheet/adjustment.hpp>
#include <seatload/sheet/figures.hpp>
#include <seatload/sheet/inspection_limits.hpp>
#include <seatload/sheet/terms.hpp>

namespace seatload::sheet {
namespace {

constexpr double kWarm = 80.0;  ///< deg C from which a loss of load must be spoken of (common practice, no source)

std::string allowed_uncertainty(const Facts& facts) {
    const auto most = [&](const record::LoadAtLength& load) { return with_unit(allowed_uncertainty(facts, load)); };
    return facts.say("inspection.uncertainty",
                     {{"first", most(facts.spec.seated)}, {"second", most(facts.spec.full_travel)}});
}

/// What the spring may lose in warm service; nothing when it stays cool.
Entries relaxation_entries(const Facts& facts) {
    const std::optional<Share>& loss = facts.spec.limits.load_loss;
    const Celsius temperature = facts.spec.surroundings.temperature;
    if (!loss && temperature.degrees < kWarm) return {};
    const std::string words =
        loss ? facts.say("service.relaxation_at_most", {{"share", facts.figures().number(100.0 * loss->value, {2})},
                                                        {"temperature", facts.figures().temperature(temperature)}})
             : facts.say("service.relaxation_open");
    return {Named{Status::reference, facts.say("service.relaxation"), reference(words)}};
}

}  // namespace

Entries service_entries(const Facts& facts) {
    const record::Spec& spec = facts.spec;
    const std::string medium = spec.surroundings.medium.empty() ? "" : ", " + spec.surroundings.medium;
    Entries out{Heading{facts.say("service.heading")}};
    out.push_back(Named{Status::reference, facts.say("service.duty"), reference(duty(facts))});
    out.push_back(Named{Status::reference, facts.say("service.temperature"),
                        reference(facts.figures().temperature(spec.surroundings.temperature) + medium)});
    append(out, relaxation_entries(facts));
    out.push_back(Named{Status::reference, facts.say("service.seats"), reference(seats(facts))});
    return out;
}

Entries inspection_entries(const Facts& facts) {
    Entries out{Heading{facts.say("inspection.heading")}};
    out.push_back(required_paragraph(test_sequence(facts)));
    if (!facts.bears_solid()) out.push_back(required_paragraph(facts.say("inspection.never_shorter")));
    out.push_back(required_paragraph(inspected_pieces(facts)));
    out.push_back(required_paragraph(facts.say("inspection.decision") + " " + allowed_uncertainty(facts)));
    return out;
}

Entries adjust_entries(const Facts& facts) {
    std::string words = facts.say("adjust.loads", {{"quantities", adjustable_quantities(facts)}});
    const std::string bounds = kept_bounds(facts);
    if (!bounds.empty()) words += " " + facts.say("adjust.keep", {{"bounds", bounds}});
    if (const auto aim = aimed_free_length(facts))
        words += " " + facts.say("adjust.aim", {{"length", with_unit(facts.figures().length(*aim))}});
    words += " " + facts.say("adjust.nothing_else");
    words += " " + facts.say("adjust.report", {{"diameter", coil_symbol(facts)}});
    return {Heading{std::string(sign(Status::adjustable)) + " " + facts.say("adjust.heading")}, Paragraph{words}};
}

Entries order_entries(const Facts& facts) {
    Entries out{Heading{facts.say("order.heading")}};
    if (!facts.spec.quantities.empty() && !facts.spec.alternative.empty())  // once chosen, the order says how many
        out.push_back(Paragraph{facts.say("order.lots", {{"lots", quantities(facts.spec)}})});
    out.push_back(required_paragraph(facts.say("order.packing")));
    out.push_back(required_paragraph(facts.say("order.label")));
    int count = 0;
    for (const std::string& note : facts.spec.notes)
        out.push_back(required_paragraph(std::to_string(++count) + ". " + note));
    return out;
}

Entries sheet_entries(const Facts& facts) {
    Entries all;
    for (const auto group : {&wire_entries, &geometry_entries, &load_entries, &process_entries, &inspection_entries,
                             &adjust_entries, &service_entries, &order_entries})
        append(all, group(facts));
    for (Entry& entry : all)
        if (auto* const heading = std::get_if<Heading>(&entry))
            heading->again = facts.say("sheet.heading_again", {{"heading", heading->words}});
    return all;
}

Entries evened(const Entries& entries) {
    constexpr std::array<std::size_t, 8> kOrder{0, 1, 3, 6, 2, 4, 5, 7};  // process and service before the loads
    std::vector<Entries> groups;
    for (const Entry& entry : entries) {
        if (std::holds_alternative<Heading>(entry)) groups.emplace_back();
        groups.back().push_back(entry);
    }
    SEATLOAD_ASSERT(groups.size() == kOrder.size());
    Entries out;
    for (const std::size_t group : kOrder) append(out, std::move(groups[group]));
    return out;
}

}  // namespace seatload::sheet
