// SPDX-License-Identifier: MIT
#include <seatload/io/spec_remarks.hpp>

#include <algorithm>
#include <map>
#include <set>

#include <seatload/io/spec_file.hpp>
#include <seatload/io/toml_lines.hpp>

namespace seatload::io {
namespace {

struct Remarks {
    std::vector<std::string> above;
    std::string behind;
};

/// The remarks of a text by the pieces of another that they go to; those of pieces it does not have go to the next.
std::map<std::string, Remarks> remarks_for(const std::vector<TomlPiece>& from, const std::set<std::string>& ids) {
    std::map<std::string, Remarks> found;
    std::vector<std::string> homeless;
    for (const TomlPiece& piece : from) {
        homeless.insert(homeless.end(), piece.above.begin(), piece.above.end());
        if (!ids.contains(piece.id)) {
            if (!piece.behind.empty()) homeless.push_back(piece.behind);
            continue;
        }
        Remarks& remarks = found[piece.id];
        remarks.above.insert(remarks.above.end(), homeless.begin(), homeless.end());
        remarks.behind = piece.behind;
        homeless.clear();
    }
    return found;
}

/// Where the remark behind stands on the last line of a piece as it was written, or two blanks on.
std::string with_remark_behind(const std::string& line, const TomlPiece& piece, const std::string& remark) {
    const std::size_t at = piece.behind.empty() ? std::string::npos : line.rfind(piece.behind);
    return (at == std::string::npos ? piece.text + "  " : line.substr(0, at)) + remark;
}

/// Whether the keys of a text stand in the order of another, though some may be missing.
bool is_in_order(std::string_view text, std::string_view written) {
    const std::vector<TomlPiece> wanted = toml_pieces(written);
    auto at = wanted.begin();
    for (const TomlPiece& piece : toml_pieces(text)) {
        at = std::find_if(at, wanted.end(), [&](const TomlPiece& w) { return w.id == piece.id; });
        if (at == wanted.end()) return false;
        ++at;
    }
    return true;
}

}  // namespace

std::string with_remarks_of(std::string_view from, std::string_view to) {
    const std::vector<TomlPiece> pieces = toml_pieces(to);
    std::set<std::string> ids;
    for (const TomlPiece& piece : pieces) ids.insert(piece.id);
    const auto remarks = remarks_for(toml_pieces(from), ids);
    std::string out;
    std::size_t at = 0;
    for (const TomlPiece& piece : pieces) {
        const std::size_t start = std::min(to.find(piece.text, at), to.size());
        const std::size_t end = std::min(to.find('\n', start + piece.text.size()), to.size());
        const std::string line(to.substr(start, end - start));
        at = end;
        if (piece.after_blank_line && !piece.id.empty()) out += '\n';
        const auto found = remarks.find(piece.id);
        if (found != remarks.end())
            for (const std::string& remark : found->second.above) out += remark + '\n';
        if (piece.id.empty()) break;
        const bool is_own = found != remarks.end() && !found->second.behind.empty();
        out += (is_own ? with_remark_behind(line, piece, found->second.behind) : line) + '\n';
    }
    return out;
}

std::string written_with_remarks(const record::Spec& spec, std::string_view remarks_of) {
    return with_remarks_of(remarks_of, write_spec(spec));
}

Result<std::string> arranged_spec(std::string_view text, const std::string& file_name,
                                  const wire::Catalogue& catalogue) {
    const auto spec = read_spec(text, file_name, catalogue);
    if (!spec) return Diagnostics(spec.error());
    const Diagnostics& said = spec.error();
    if (is_in_order(text, write_spec(*spec))) return {std::string(text), said};
    return {written_with_remarks(*spec, text), said};
}

}  // namespace seatload::io
