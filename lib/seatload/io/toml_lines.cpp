// SPDX-License-Identifier: MIT
#include <seatload/io/toml_lines.hpp>

#include <map>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

/// Where a text in quotes that starts at `at` ends.
std::size_t end_of_quoted(std::string_view text, std::size_t at) {
    const char quote = text[at];
    const std::string triple(3, quote);
    const bool is_long = text.substr(at).starts_with(triple);
    std::size_t i = at + (is_long ? 3 : 1);
    for (; i < text.size(); ++i) {
        if (quote == '"' && text[i] == '\\') {
            ++i;
        } else if (is_long ? text.substr(i).starts_with(triple) : text[i] == quote) {
            i += is_long ? 3 : 1;
            while (is_long && i < text.size() && text[i] == quote) ++i;  // quotes may stand just inside the end
            return i;
        }
    }
    return i;
}

/// Goes over a key with its value, or the head of a table, to the end of its last line.
class PieceScan {
  public:
    PieceScan(std::string_view text, std::size_t at) : text_(text), at_(at) {}

    /// The piece; its id is not known here.
    TomlPiece scan() {
        TomlPiece piece;
        const std::size_t start = at_;
        std::size_t end = start;
        int depth = 0;
        while (at_ < text_.size() && (depth > 0 || text_[at_] != '\n')) {
            const char c = text_[at_];
            if (c == '#') {
                const std::string remark = rest_of_line();
                if (depth == 0)
                    piece.behind = remark;
                else
                    piece.above.push_back(remark);
                continue;
            }
            if (c == '[' || c == '{') ++depth;
            if (c == ']' || c == '}') --depth;
            at_ = c == '"' || c == '\'' ? end_of_quoted(text_, at_) : at_ + 1;
            if (c != ' ' && c != '\t' && c != '\r' && c != '\n') end = at_;
        }
        piece.text = std::string(text_.substr(start, end - start));
        return piece;
    }
    std::size_t at() const { return at_; }

  private:
    std::string rest_of_line() {
        const std::size_t end = std::min(text_.find('\n', at_), text_.size());
        std::string remark(trim(text_.substr(at_, end - at_)));
        at_ = end;
        return remark;
    }

    std::string_view text_;
    std::size_t at_;
};

/// Names pieces by the tables they stand in.
class PieceNames {
  public:
    std::string name(const std::string& text) {
        if (text.starts_with("[[")) {
            const std::string table(trim(std::string_view(text).substr(2, text.find("]]") - 2)));
            table_ = table + '#' + std::to_string(++counts_[table]);
            return '[' + table_ + ']';
        }
        if (text.starts_with("[")) {
            table_ = trim(std::string_view(text).substr(1, text.find(']') - 1));
            return '[' + table_ + ']';
        }
        return table_ + '.' + std::string(trim(std::string_view(text).substr(0, text.find('='))));
    }

  private:
    std::string table_;
    std::map<std::string, int> counts_;
};

}  // namespace

std::vector<TomlPiece> toml_pieces(std::string_view text) {
    std::vector<TomlPiece> pieces;
    PieceNames names;
    std::vector<std::string> remarks;
    bool after_blank_line = false;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string_view line = trim(text.substr(at, end - at));
        if (line.empty() || line == "\r") {
            after_blank_line = true;
            at = end + 1;
        } else if (line.front() == '#') {
            remarks.emplace_back(trim(line));
            at = end + 1;
        } else {
            PieceScan scan(text, at + text.substr(at).find_first_not_of(" \t"));
            TomlPiece piece = scan.scan();
            piece.above.insert(piece.above.begin(), remarks.begin(), remarks.end());
            piece.id = names.name(piece.text);
            piece.after_blank_line = after_blank_line;
            pieces.push_back(std::move(piece));
            remarks.clear();
            after_blank_line = false;
            at = scan.at() + 1;
        }
    }
    pieces.push_back({{}, std::move(remarks), {}, {}, after_blank_line});
    return pieces;
}

}  // namespace seatload::io
