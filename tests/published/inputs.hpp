// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>

#include <seatload/units/dimension.hpp>

namespace seatload::published {

class Inputs;

/// Something a source states or works out: its dimension, and how our library gets it from other quantities.
struct Quantity {
    const units::Dimension* dimension = nullptr;    ///< null for a plain number or a word
    std::function<double(const Inputs&)> evaluate;  ///< empty for what can only be given
    bool is_word = false;
};

using Quantities = std::map<std::string, Quantity, std::less<>>;

/// The quantity of this name. Throws std::runtime_error for a name that is not in the table.
const Quantity& quantity(const std::string& name);

/// What a source states of one spring. A quantity that is not stated is worked out from the others when it is asked
/// for.
class Inputs {
  public:
    void state(const std::string& name, const std::string& text);  ///< a quantity with its unit, or a word
    void state(const std::string& name, double plain);             ///< a plain number
    Inputs with(const std::string& name, double base) const;       ///< the same with one number changed

    bool has(const std::string& name) const { return numbers_.contains(name) || words_.contains(name); }
    /// The number in the base unit of its dimension, as stated or worked out.
    double number(const std::string& name) const;
    std::string word(const std::string& name, std::optional<std::string> otherwise = {}) const;

    template <class Q>
    Q get(const std::string& name) const {
        return units::from_base<Q>(number(name));
    }

  private:
    std::map<std::string, double> numbers_;
    std::map<std::string, std::string> words_;
    mutable int depth_ = 0;  ///< of quantities worked out from one another
};

template <class Q>
Quantity given() {
    return {&units::dimension_of<Q>(), {}, false};
}
inline Quantity given_number() { return {}; }
inline Quantity given_word() { return {nullptr, {}, true}; }

template <class Q, class F>
Quantity worked_out(F formula) {
    return {&units::dimension_of<Q>(), [formula](const Inputs& in) { return in_base_unit(Q(formula(in))); }, false};
}
template <class F>
Quantity plain(F formula) {
    return {nullptr, formula, false};
}

Quantities geometry_quantities();
Quantities load_quantities();
Quantities design_quantities();
Quantities fatigue_quantities();
Quantities stability_quantities();
Quantities tolerance_quantities();
Quantities plunger_quantities();
Quantities bench_quantities();
Quantities inspection_quantities();

}  // namespace seatload::published
