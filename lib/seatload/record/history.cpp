// SPDX-License-Identifier: MIT
#include <seatload/record/history.hpp>

#include <algorithm>

#include <seatload/core/assert.hpp>

namespace seatload::record {
namespace {

constexpr std::string_view kLetters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
constexpr std::size_t kLongestIndex = 2;  // ISO 7200

bool is_number(const std::string& text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string::npos;
}

/// Letters counted on: Z is followed by AA, AZ by BA.
std::string next_letters(std::string index) {
    for (std::size_t i = index.size(); i-- > 0;) {
        const std::size_t at = kLetters.find(index[i]);
        if (at == std::string_view::npos) return {};
        if (at + 1 < kLetters.size()) {
            index[i] = kLetters[at + 1];
            return index;
        }
        index[i] = kLetters.front();
    }
    return kLetters.front() + index;
}

}  // namespace

const Step& last_change(const History& history) {
    const auto found =
        std::find_if(history.rbegin(), history.rend(), [](const Step& s) { return s.kind != Step::Kind::evidence; });
    SEATLOAD_ASSERT(found != history.rend());
    return *found;
}

State state_of(const History& history) {
    switch (last_change(history).kind) {
        case Step::Kind::trial:
            return State::trial;
        case Step::Kind::approved:
            return State::approved;
        case Step::Kind::withdrawn:
            return State::withdrawn;
        default:
            return State::draft;
    }
}

const Step* approval_of(const History& history) {
    const auto found =
        std::find_if(history.begin(), history.end(), [](const Step& s) { return s.kind == Step::Kind::approved; });
    return found == history.end() ? nullptr : &*found;
}

bool is_frozen(State state) { return state != State::draft; }

std::optional<std::string> frozen_sha256(const History& history) {
    if (!is_frozen(state_of(history))) return std::nullopt;
    const auto frozen = std::find_if(history.begin(), history.end(), [](const Step& s) {
        return s.kind != Step::Kind::draft && s.kind != Step::Kind::evidence;
    });
    return frozen->sha256;
}

double trial_hours(const History& history) {
    double hours = 0.0;
    for (const Step& step : history) hours += step.trial_hours.value_or(0.0);
    return hours;
}

std::string_view word(State state) {
    switch (state) {
        case State::draft:
            return "draft";
        case State::trial:
            return "trial";
        case State::approved:
            return "approved";
        case State::superseded:
            return "superseded";
        case State::withdrawn:
            return "withdrawn";
    }
    throw InternalError("a state without a word");
}

std::string_view word(Step::Kind kind) {
    switch (kind) {
        case Step::Kind::draft:
            return "draft";
        case Step::Kind::trial:
            return "trial";
        case Step::Kind::approved:
            return "approved";
        case Step::Kind::withdrawn:
            return "withdrawn";
        case Step::Kind::evidence:
            return "evidence";
    }
    throw InternalError("a step without a word");
}

std::string next_index(const std::string& index) {
    if (index.empty()) return std::string(1, kLetters.front());
    const std::string next = is_number(index) ? std::to_string(std::stoi(index) + 1) : next_letters(index);
    return next.size() <= kLongestIndex ? next : std::string{};
}

}  // namespace seatload::record
