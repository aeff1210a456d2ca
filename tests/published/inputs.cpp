// SPDX-License-Identifier: MIT
#include "published/inputs.hpp"

#include <stdexcept>

#include <seatload/units/parse.hpp>

namespace seatload::published {
namespace {

constexpr int kDeepest = 40;  // two quantities that ask for each other would never end

Quantities all_quantities() {
    Quantities all;
    for (const Quantities& part :
         {geometry_quantities(), load_quantities(), design_quantities(), fatigue_quantities(), stability_quantities(),
          tolerance_quantities(), plunger_quantities(), bench_quantities(), inspection_quantities()})
        for (const auto& [name, entry] : part)
            if (!all.emplace(name, entry).second) throw std::runtime_error("two quantities are called " + name);
    return all;
}

}  // namespace

const Quantity& quantity(const std::string& name) {
    static const Quantities all = all_quantities();
    const auto found = all.find(name);
    if (found == all.end()) throw std::runtime_error("no quantity is called \"" + name + "\"");
    return found->second;
}

void Inputs::state(const std::string& name, const std::string& text) {
    const Quantity& stated = quantity(name);
    if (stated.is_word) {
        words_[name] = text;
        return;
    }
    if (stated.dimension == nullptr) throw std::runtime_error(name + " is a plain number, not \"" + text + "\"");
    const auto parsed = units::parse_in(*stated.dimension, text);
    if (!parsed.value) throw std::runtime_error(name + " = \"" + text + "\": " + parsed.problem.message);
    numbers_[name] = *parsed.value;
}

void Inputs::state(const std::string& name, double plain_number) {
    const Quantity& stated = quantity(name);
    if (stated.is_word || stated.dimension != nullptr)
        throw std::runtime_error(name + " needs a text, not a plain number");
    numbers_[name] = plain_number;
}

Inputs Inputs::with(const std::string& name, double base) const {
    Inputs changed = *this;
    changed.numbers_[name] = base;
    return changed;
}

double Inputs::number(const std::string& name) const {
    if (const auto found = numbers_.find(name); found != numbers_.end()) return found->second;
    const Quantity& wanted = quantity(name);
    if (!wanted.evaluate) throw std::runtime_error("\"" + name + "\" is needed and not stated");
    if (++depth_ > kDeepest) throw std::runtime_error("\"" + name + "\" is worked out in a circle");
    const double value = wanted.evaluate(*this);
    --depth_;
    return value;
}

std::string Inputs::word(const std::string& name, std::optional<std::string> otherwise) const {
    if (const auto found = words_.find(name); found != words_.end()) return found->second;
    if (!otherwise) throw std::runtime_error("\"" + name + "\" is needed and not stated");
    return *otherwise;
}

}  // namespace seatload::published
