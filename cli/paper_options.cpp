// SPDX-License-Identifier: MIT
#include <cli/paper_options.hpp>

#include <algorithm>

#include <seatload/core/append.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/builtin.hpp>
#include <seatload/io/wording_file.hpp>
#include <seatload/sheet/lettering.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

/// Which of the choices the word is; when it is none, that is complained of.
std::size_t chosen(const std::string& option, const std::string& word, const std::vector<std::string>& choices,
                   Diagnostics& diagnostics) {
    const auto found = std::find(choices.begin(), choices.end(), word);
    if (found != choices.end()) return static_cast<std::size_t>(found - choices.begin());
    const std::string meant(trim(did_you_mean(word, choices)));
    diagnostics.push_back(
        error("not-a-choice"_id, option + ": \"" + word + "\" is not one of " + join(choices, ", "), meant));
    return 0;
}

/// The book, or which of its phrases the typefaces cannot print.
Result<record::PhraseBook> printable(Result<record::PhraseBook> book, const std::string& file) {
    if (!book) return book;
    Diagnostics diagnostics;
    for (const auto& [key, words] : book->phrases) {
        Diagnostics said;
        sheet::readable(words, key, said);
        for (Diagnostic& each : said) {
            each.severity = Severity::error;
            diagnostics.push_back(each);
        }
    }
    if (diagnostics.empty()) return book;
    return placed(diagnostics, file);
}

Result<record::PhraseBook> phrases(const PaperOptions& options) {
    if (!options.wording.empty()) {
        const record::PhraseBook english = io::builtin_wording();
        return printable(
            read_file(options.wording, [&](std::string_view text,
                                           const std::string& name) { return io::read_wording(text, name, english); }),
            options.wording);
    }
    if (options.language.empty()) return io::builtin_wording();
    Diagnostics diagnostics;
    const auto languages = io::builtin_languages();
    const std::size_t language = chosen("--language", options.language, languages, diagnostics);
    if (diagnostics.empty()) return io::builtin_wording(languages[language]);
    if (diagnostics.back().hint.empty())
        diagnostics.back().hint = "for another language name a wording file of your own with --wording";
    return diagnostics;
}

}  // namespace

Result<sheet::Paper> make_paper(const PaperOptions& options) {
    Diagnostics diagnostics;
    if (!options.language.empty() && !options.wording.empty())
        diagnostics.push_back(error("exclusive"_id, "--language and --wording exclude each other",
                                    "a wording file names its language itself"));
    const bool is_inch = chosen("--units", options.units, {"metric", "inch"}, diagnostics) == 1;
    const bool is_letter = chosen("--paper", options.size, {"a4", "letter"}, diagnostics) == 1;
    auto book = phrases(options);
    append(diagnostics, book.error());
    if (has_error(diagnostics)) return diagnostics;
    sheet::Paper paper{sheet::Wording(std::move(book).value())};
    paper.units = is_inch ? sheet::Units::inch : sheet::Units::metric;
    paper.size = is_letter ? sheet::PaperSize::letter : sheet::PaperSize::a4;
    paper.upright = options.portrait;
    return {std::move(paper), std::move(diagnostics)};
}

}  // namespace seatload::cli
