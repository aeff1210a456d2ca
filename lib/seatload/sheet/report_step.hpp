// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <seatload/sheet/report_trust.hpp>

namespace seatload::sheet {

/// One line of a calculation as printed: formula, the numbers put in, the value, and what it rests on. Script marks as
/// in lettering.hpp.
struct Step {
    std::string name;     ///< "spring rate"
    std::string symbol;   ///< "R"
    std::string formula;  ///< right-hand side in symbols; empty when the value is not worked out but looked up
    std::string numbers;  ///< the same with the numbers put in; a reader recomputes the value from it
    std::string value;
    std::string unit;                          ///< may be empty
    std::string source;                        ///< standard and clause, book and equation, or file and key
    Trust formula_trust;                       ///< of the formula, or of the value looked up
    Trust value_trust;                         ///< the weakest of the formula and all that was put in
    bool is_rounded = false;                   ///< whether the printed value left digits out
    std::vector<std::string> rounded_numbers;  ///< of the numbers put in, those printed with digits left out

    bool operator==(const Step&) const = default;
};

/// Steps under one heading.
struct StepGroup {
    std::string heading;
    std::vector<Step> steps;
    bool stands_in_tables = false;  ///< what comes of it stands in the tables of tolerances and of the simulation too

    bool operator==(const StepGroup&) const = default;
};

/// Builds a calculation line by line. Formulas are written once, as "{G}*{d}^4/(8*{D}^3*{n})": braces hold the key of a
/// number put down before, and both the formula in symbols and the line of numbers are made from it, so that they
/// cannot differ. A key is a symbol and its index parted by "_": "F_1", "tau_k1". Besides + - * / ^ and brackets there
/// are pi, sqrt, atan, tan, max.
class Calculation {
  public:
    void heading(std::string words, bool stands_in_tables = false);

    /// A number that is not worked out here.
    void given(const std::string& key, const std::string& name, double value, const std::string& unit,
               const std::string& source, Trust trust);

    /// What is no number.
    void said(const std::string& name, const std::string& words, const std::string& source, Trust trust);

    /// A number worked out; `value` comes from the library, never from the formula's text.
    void step(const std::string& key, const std::string& name, std::string_view formula, double value,
              const std::string& unit, const std::string& source, Trust trust);

    const std::vector<StepGroup>& groups() const { return groups_; }
    std::vector<StepGroup> take() { return std::move(groups_); }

  private:
    struct Number {
        std::string symbol;
        std::string text;
        bool is_rounded;
        Trust trust;
    };
    const Number& number(const std::string& key) const;
    void put_down(const std::string& key, Step step);

    std::vector<StepGroup> groups_;
    std::map<std::string, Number> numbers_;
};

/// The symbol of a key: "tau_k1" as τ with the index k1.
std::string symbol_of_key(std::string_view key);

}  // namespace seatload::sheet
