// SPDX-License-Identifier: MIT
#include "hand_reckoner.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include <seatload/sheet/lettering.hpp>

namespace seatload::test {
namespace {

bool starts(const std::string& text, std::size_t at, const std::string& with) {
    return text.compare(at, with.size(), with) == 0;
}

std::size_t end_of_digits(const std::string& text, std::size_t at) {
    return std::min(text.find_first_not_of("0123456789.", at), text.size());
}

}  // namespace

Literal read_literal(const std::string& text) {
    const bool negative = starts(text, 0, "−");
    const std::string digits = negative ? text.substr(std::string("−").size()) : text;
    const std::size_t point = digits.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : digits.size() - point - 1;
    if (digits.empty() || end_of_digits(digits, 0) != digits.size()) throw std::runtime_error("no number: " + text);
    return {text, (negative ? -1.0 : 1.0) * std::stod(digits), std::pow(10.0, -static_cast<double>(decimals))};
}

PrintedLine::PrintedLine(const std::string& numbers) {
    for (std::size_t i = 0; i < numbers.size();) {
        const char c = numbers[i];
        if (c == ' ') {
            ++i;
        } else if (c >= '0' && c <= '9') {
            const std::size_t end = end_of_digits(numbers, i);
            tokens_.push_back({'0', literals_.size()});
            literals_.push_back(read_literal(numbers.substr(i, end - i)));
            i = end;
        } else if (c == sheet::kSuper) {
            const std::size_t end = numbers.find(sheet::kPlain, i);
            tokens_.push_back({'^', 0, std::stod(numbers.substr(i + 1, end - i - 1))});
            i = end + 1;
        } else {
            static const std::pair<std::string, char> kSigns[] = {
                {"·", '*'},   {"−", '-'}, {"π", 'p'}, {"√", 's'}, {"atan", 'a'}, {"tan", 't'},
                {"max", 'm'}, {"+", '+'}, {"/", '/'}, {"(", '('}, {")", ')'},    {",", ','}};
            const auto found = std::find_if(std::begin(kSigns), std::end(kSigns),
                                            [&](const auto& sign) { return starts(numbers, i, sign.first); });
            if (found == std::end(kSigns)) throw std::runtime_error("unknown sign in: " + sheet::plain(numbers));
            tokens_.push_back({found->second});
            i += found->first.size();
        }
    }
}

/// Recursive descent: sum, product, power, atom.
class PrintedLine::Reckoner {
  public:
    Reckoner(const PrintedLine& line, std::vector<double> values) : line_(line), values_(std::move(values)) {}

    double all() {
        const double value = sum();
        if (at_ != line_.tokens_.size()) throw std::runtime_error("more after the end of a formula");
        return value;
    }

  private:
    bool take(char kind) {
        if (at_ == line_.tokens_.size() || line_.tokens_[at_].kind != kind) return false;
        ++at_;
        return true;
    }
    void want(char kind) {
        if (!take(kind)) throw std::runtime_error(std::string("missing ") + kind);
    }
    double sum() {
        double value = product();
        while (true)
            if (take('+'))
                value += product();
            else if (take('-'))
                value -= product();
            else
                return value;
    }
    double product() {
        double value = power();
        while (true)
            if (take('*'))
                value *= power();
            else if (take('/'))
                value /= power();
            else
                return value;
    }
    double power() {
        const double value = atom();
        if (!take('^')) return value;
        return std::pow(value, line_.tokens_[at_ - 1].exponent);
    }
    double bracket() {
        want('(');
        const double value = sum();
        want(')');
        return value;
    }
    double atom() {
        if (take('-')) return -power();
        if (take('p')) return std::numbers::pi;
        if (take('s')) return std::sqrt(bracket());
        if (take('a')) return std::atan(bracket());
        if (take('t')) return std::tan(bracket());
        if (take('m')) {
            want('(');
            const double a = sum();
            want(',');
            const double b = sum();
            want(')');
            return std::max(a, b);
        }
        if (take('0')) return values_[line_.tokens_[at_ - 1].literal];
        return bracket();
    }

    const PrintedLine& line_;
    std::vector<double> values_;
    std::size_t at_ = 0;
};

double PrintedLine::value() const {
    std::vector<double> values;
    for (const Literal& literal : literals_) values.push_back(literal.value);
    return Reckoner(*this, values).all();
}

double PrintedLine::value_with(std::size_t index, double altered) const {
    std::vector<double> values;
    for (const Literal& literal : literals_) values.push_back(literal.value);
    values[index] = altered;
    return Reckoner(*this, values).all();
}

}  // namespace seatload::test
