// SPDX-License-Identifier: MIT
#include <seatload/io/wording_file.hpp>

#include <fmt/format.h>

#include <algorithm>

#include <seatload/core/text.hpp>
#include <seatload/io/document.hpp>
#include <seatload/io/format_mark.hpp>
#include <seatload/io/reader.hpp>

namespace seatload::io {
namespace {

/// A phrase with where it stands.
struct PlacedPhrase {
    std::string key;
    std::string words;
    Position key_at;
    Position at;
};

std::vector<std::string> keys(const record::PhraseBook& book) {
    std::vector<std::string> out;
    for (const auto& [key, words] : book.phrases) out.push_back(key);
    return out;
}

/// The phrases of all tables, "table.key", in the order of the file. What is no text goes into the book as it is
/// complained of, so that it is not called missing as well.
std::vector<PlacedPhrase> collect(Document& document, record::PhraseBook& book) {
    std::vector<PlacedPhrase> out;
    for (const Entry& section : std::get<Table>(document.root().value)) {
        const Table* phrases = std::get_if<Table>(&section.node.value);
        if (phrases == nullptr) continue;
        for (const Entry& entry : *phrases) {
            const std::string key = section.key + '.' + entry.key;
            const auto* words = std::get_if<std::string>(&entry.node.value);
            if (words != nullptr) {
                out.push_back({key, *words, entry.at, entry.node.at});
                continue;
            }
            document.error(entry.node.at, "wrong-kind"_id,
                           key + ": text in quotes is wanted, this is " + std::string(kind_of(entry.node)));
            book.phrases.emplace(key, "");
        }
    }
    return out;
}

constexpr std::string_view kDecimalMark = "number.decimal_mark";

/// What a phrase must not be like, whatever the language.
void check_words(Document& document, const PlacedPhrase& phrase) {
    if (trim(phrase.words).empty()) document.error(phrase.at, "empty"_id, phrase.key + ": the phrase is empty");
    if (phrase.key == kDecimalMark && phrase.words != "." && phrase.words != ",")
        document.error(phrase.at, "wording-phrase"_id, phrase.key + ": the decimal mark is a point or a comma",
                       "write \".\" or \",\"");
    const auto open = std::count(phrase.words.begin(), phrase.words.end(), '{');
    const auto closed = std::count(phrase.words.begin(), phrase.words.end(), '}');
    if (open != closed)
        document.error(phrase.at, "wording-blanks"_id, phrase.key + ": a brace is left open",
                       "a blank is written {name}");
    const bool has_control = std::any_of(phrase.words.begin(), phrase.words.end(),
                                         [](char c) { return static_cast<unsigned char>(c) < 0x20; });
    if (has_control)
        document.error(phrase.at, "wording-phrase"_id, phrase.key + ": a phrase is one line, without tabs");
}

std::string in_braces(const std::vector<std::string>& names) {
    std::string out;
    for (const std::string& name : names) out += (out.empty() ? "{" : ", {") + name + "}";
    return out.empty() ? "none" : out;
}

void check_against(Document& document, const PlacedPhrase& phrase, const record::PhraseBook& model) {
    const auto found = model.phrases.find(phrase.key);
    if (found == model.phrases.end()) {
        document.error(phrase.key_at, "wording-phrase"_id, phrase.key + ": no paper has this phrase",
                       std::string(trim(did_you_mean(phrase.key, keys(model)))));
        return;
    }
    const auto wanted = blanks(found->second);
    if (blanks(phrase.words) != wanted)
        document.error(phrase.at, "wording-blanks"_id, phrase.key + ": the blanks are not those of the English phrase",
                       fmt::format("wanted: {}, in any order; English: \"{}\"", in_braces(wanted), found->second));
}

void check_complete(Document& document, const record::PhraseBook& book, const record::PhraseBook& model) {
    for (const auto& [key, words] : model.phrases)
        if (book.phrases.find(key) == book.phrases.end())
            document.error(document.at(key), "wording-phrase"_id, key + ": missing",
                           fmt::format("English: \"{}\"", words));
}

/// ISO 639-1 codes are two lower-case letters.
bool is_language(std::string_view code) {
    return code.size() == 2 && std::all_of(code.begin(), code.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

void read_head(Document& document, record::PhraseBook& book) {
    Reader root(document);
    root.allow_all();
    if (!root.has("format")) root.missing("format", quoted_text(kWordingFormat));
    if (!read_format(root, {kWordingFormat})) return;
    book.language = root.need<std::string>("language", "\"en\"");
    if (root.has("language") && !is_language(book.language))
        root.error("language", "not-a-language"_id, "a language is two small letters (ISO 639-1)",
                   "for example \"en\", \"de\", \"it\"");
}

Result<record::PhraseBook> read(std::string_view text, const std::string& file_name, const record::PhraseBook* model) {
    Document document(text, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::PhraseBook book;
    read_head(document, book);
    if (document.has_error()) return document.diagnostics();
    for (const PlacedPhrase& phrase : collect(document, book)) {
        check_words(document, phrase);
        if (model != nullptr) check_against(document, phrase, *model);
        book.phrases.emplace(phrase.key, phrase.words);
    }
    if (model != nullptr) check_complete(document, book, *model);
    if (document.has_error()) return document.diagnostics();
    return {std::move(book), document.diagnostics()};
}

}  // namespace

std::vector<std::string> blanks(std::string_view phrase) {
    std::vector<std::string> names;
    for (std::size_t open = phrase.find('{'); open != std::string_view::npos; open = phrase.find('{', open + 1)) {
        const std::size_t closed = phrase.find('}', open);
        if (closed == std::string_view::npos) break;
        names.emplace_back(phrase.substr(open + 1, closed - open - 1));
    }
    std::sort(names.begin(), names.end());
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

Result<record::PhraseBook> read_wording(std::string_view text, const std::string& file_name,
                                        const record::PhraseBook& model) {
    return read(text, file_name, &model);
}

Result<record::PhraseBook> read_wording(std::string_view text, const std::string& file_name) {
    return read(text, file_name, nullptr);
}

}  // namespace seatload::io
