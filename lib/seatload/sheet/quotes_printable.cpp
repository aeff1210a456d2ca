// SPDX-License-Identifier: MIT
#include <seatload/sheet/quotes_printable.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/printable.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

void clean(std::string& text, std::string_view what, Diagnostics& diagnostics) {
    Diagnostics found;
    text = readable(text, what, found);
    for (Diagnostic& d : found) {
        const auto is_same = [&](const Diagnostic& known) { return known.message == d.message; };
        if (std::none_of(diagnostics.begin(), diagnostics.end(), is_same)) diagnostics.push_back(std::move(d));
    }
}

/// Texts of ours that hold what a maker wrote.
void clean_judgement(record::JudgedOffer& offer, Diagnostics& diagnostics) {
    clean(offer.offer.alternative, "alternative", diagnostics);
    record::CounterOffer& spring = offer.spring;
    for (auto* differences : {&spring.asked, &spring.adjusted})
        for (record::Difference& each : *differences)
            for (std::string* text : {&each.now, &each.before}) clean(*text, "change asked for", diagnostics);
    for (auto* texts : {&spring.missing, &spring.remarks, &offer.reasons, &offer.questions})
        for (std::string& text : *texts) clean(text, "reply", diagnostics);
    for (record::Failure& failure : spring.failures) failure.reason = with_true_minus(failure.reason);
}

}  // namespace

record::Comparison printable(record::Comparison all, Diagnostics& diagnostics) {
    for (record::EnquiredSpring& each : all.springs) each.spec.identity = printable(each.spec.identity, diagnostics);
    for (std::string* text : {&all.enquiry.title, &all.enquiry.number, &all.enquiry.revision})
        clean(*text, "enquiry", diagnostics);
    for (record::NamedReply& each : all.replies) {
        record::Maker& maker = each.reply.maker;
        clean(each.name, "firm", diagnostics);
        for (std::string* text : {&maker.quotation, &maker.delivery_terms, &maker.certificates, &maker.person})
            clean(*text, "reply", diagnostics);
    }
    for (record::JudgedOffer& offer : all.offers) clean_judgement(offer, diagnostics);
    return all;
}

}  // namespace seatload::sheet
