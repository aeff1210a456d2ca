// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace seatload::test {

/// A number that stands in a line of numbers, and the place of its last digit.
struct Literal {
    std::string text;
    double value = 0.0;
    double last_digit = 1.0;  ///< one unit in it: 0.001 for "4.125"
};

/// A line of numbers as a calculation report prints it, reckoned as a reader with a pocket calculator would:
/// "8 · 7.4 · 5.52/(π · 0.8³)". Knows + − · / powers, brackets, π, √, atan, tan and max. Throws std::runtime_error on
/// anything else.
class PrintedLine {
  public:
    explicit PrintedLine(const std::string& numbers);

    double value() const;
    /// The value with one of the numbers altered.
    double value_with(std::size_t literal, double altered) const;
    const std::vector<Literal>& literals() const { return literals_; }

  private:
    struct Token {
        char kind;  ///< 0 a literal, ^ a power, else the sign itself; s, a, t, m, p for √, atan, tan, max, π
        std::size_t literal = 0;
        double exponent = 0.0;
    };
    class Reckoner;

    std::vector<Token> tokens_;
    std::vector<Literal> literals_;
};

/// The number a printed value says, and the place of its last digit.
Literal read_literal(const std::string& text);

}  // namespace seatload::test
