// SPDX-License-Identifier: MIT
#include <seatload/io/kept_spec_file.hpp>

#include <algorithm>

#include <seatload/core/append.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/io/history_tables.hpp>
#include <seatload/io/spec_file.hpp>

namespace seatload::io {
namespace {

// A line of its own. Readers of specs take it for a remark.
constexpr std::string_view kStatesMark =
    "# ==== states and evidence, kept by `seatload specs`: change nothing below ====\n";

/// Where the line that begins the states starts, or the end of the text.
std::size_t states_at(std::string_view text) {
    for (std::size_t at = text.find(kStatesMark); at != std::string_view::npos; at = text.find(kStatesMark, at + 1))
        if (at == 0 || text[at - 1] == '\n') return at;
    return text.size();
}

Result<record::History> read_states(std::string_view text, std::size_t at, const std::string& file_name) {
    // Blank lines in place of the spec keep the line numbers of what is complained of.
    std::string alone(static_cast<std::size_t>(std::count(text.begin(), text.begin() + static_cast<long>(at), '\n')),
                      '\n');
    alone += text.substr(at);
    Document document(alone, file_name);
    if (!document.is_readable()) return document.diagnostics();
    record::History history;
    {
        Reader root(document);
        history = read_history(root);
    }
    if (document.has_error()) return document.diagnostics();
    return {std::move(history), document.diagnostics()};
}

}  // namespace

std::string_view spec_content(std::string_view text) { return text.substr(0, states_at(text)); }

Result<record::KeptSpec> read_kept_spec(std::string_view text, const std::string& file_name,
                                        const wire::Catalogue& catalogue) {
    const std::size_t at = states_at(text);
    if (at == text.size())
        return error_in(file_name, "not-taken-in"_id, "this spec has no states, so it was never taken into the library",
                        "move it elsewhere, and take it in with `seatload specs add FILE`");
    const std::string_view content = text.substr(0, at);
    auto spec = read_spec(content, file_name, catalogue);
    auto history = read_states(text, at, file_name);
    Diagnostics said = spec.error();
    append(said, history.error());
    if (!spec || !history) return said;
    const bool is_foreign = write_kept_spec(content, *history) != text;
    return {record::KeptSpec{std::move(spec).value(), std::string(content), sha256_hex(content),
                             std::move(history).value(), is_foreign},
            said};
}

std::string write_kept_spec(std::string_view content, const record::History& history) {
    TomlWriter writer;
    write_history(writer, history);
    std::string text(spec_content(content));
    if (!text.empty() && text.back() != '\n') text += '\n';
    return text + std::string(kStatesMark) + std::move(writer).text();
}

}  // namespace seatload::io
