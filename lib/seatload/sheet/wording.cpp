// SPDX-License-Identifier: MIT
#include <seatload/sheet/wording.hpp>

#include <seatload/core/assert.hpp>
#include <seatload/sheet/lettering.hpp>

namespace seatload::sheet {
namespace {

bool is_index_letter(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

const std::string& filling(std::string_view blank, std::initializer_list<Filling> fillings) {
    for (const Filling& f : fillings)
        if (f.blank == blank) return f.words;
    throw InternalError("nothing for the blank {" + std::string(blank) + "}");
}

}  // namespace

std::string with_indices(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::size_t end = i + 1;
        if (text[i] == '_')
            while (end < text.size() && is_index_letter(text[end])) ++end;
        if (end == i + 1) {
            out += text[i];
            continue;
        }
        out += kSub;
        out += text.substr(i + 1, end - i - 1);
        out += kPlain;
        i = end - 1;
    }
    return out;
}

std::string Wording::say(std::string_view key, std::initializer_list<Filling> fillings) const {
    const auto found = book_.phrases.find(key);
    if (found == book_.phrases.end()) throw InternalError("no phrase \"" + std::string(key) + "\"");
    const std::string_view phrase = found->second;
    std::string out;
    std::size_t done = 0;
    for (std::size_t open = phrase.find('{'); open != std::string_view::npos; open = phrase.find('{', done)) {
        const std::size_t closed = phrase.find('}', open);
        out += with_indices(phrase.substr(done, open - done));
        out += filling(phrase.substr(open + 1, closed - open - 1), fillings);
        done = closed + 1;
    }
    return out + with_indices(phrase.substr(done));
}

}  // namespace seatload::sheet
