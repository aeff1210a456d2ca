// SPDX-License-Identifier: MIT
#include <seatload/sheet/printable.hpp>

#include <utility>

#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {

demand::Identity printable(demand::Identity identity, Diagnostics& diagnostics) {
    const auto clean = [&](std::string& text, std::string_view what) { text = readable(text, what, diagnostics); };
    clean(identity.engine, "engine");
    clean(identity.position, "position");
    clean(identity.number, "number");
    clean(identity.revision, "revision");
    clean(identity.date, "date");
    clean(identity.owner, "owner");
    clean(identity.creator, "creator");
    clean(identity.approver, "approver");
    return identity;
}

record::Spec printable(record::Spec spec, Diagnostics& diagnostics) {
    const auto clean = [&](std::string& text, std::string_view what) { text = readable(text, what, diagnostics); };
    // Not the maker's business: why it is offered, and whose engine it is for.
    spec.why.clear();
    spec.identity.engine.clear();
    spec.identity = printable(std::move(spec.identity), diagnostics);
    clean(spec.title, "title");
    clean(spec.alternative, "alternative");
    clean(spec.surroundings.medium, "medium");
    clean(spec.finish, "finish");
    for (std::string& note : spec.notes) clean(note, "note");
    for (demand::Revision& revision : spec.revisions)
        for (std::string* text : {&revision.index, &revision.change, &revision.by}) clean(*text, "revision");
    return spec;
}

demand::Correspondence printable(demand::Correspondence letter, Diagnostics& diagnostics) {
    letter.address = readable(letter.address, "address", diagnostics);
    letter.contact = readable(letter.contact, "contact", diagnostics);
    letter.deliver_to = readable(letter.deliver_to, "place of delivery", diagnostics);
    return letter;
}

Purchase printable(Purchase purchase, Diagnostics& diagnostics) {
    purchase.number = readable(purchase.number, "order number", diagnostics);
    purchase.quotation = readable(purchase.quotation, "quotation", diagnostics);
    purchase.alternative = readable(purchase.alternative, "alternative", diagnostics);
    return purchase;
}

wire::Grade printable(wire::Grade grade, Diagnostics& diagnostics) {
    grade.standard = readable(grade.standard, "wire standard", diagnostics);
    grade.designation = readable(grade.designation, "wire grade", diagnostics);
    grade.supplied_as = readable(grade.supplied_as, "wire condition", diagnostics);
    grade.material_number = readable(grade.material_number, "material number", diagnostics);
    if (grade.stress_relief) {
        grade.stress_relief->temperature = readable(grade.stress_relief->temperature, "stress relief", diagnostics);
        grade.stress_relief->time = readable(grade.stress_relief->time, "stress relief", diagnostics);
    }
    return grade;
}

}  // namespace seatload::sheet
