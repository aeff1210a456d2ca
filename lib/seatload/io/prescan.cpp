// SPDX-License-Identifier: MIT
#include <seatload/io/prescan.hpp>

#include <algorithm>

#include <seatload/core/file.hpp>
#include <seatload/core/text.hpp>
#include <seatload/io/unquoted.hpp>

namespace seatload::io {
namespace {

/// Lays the mended value beside the one as written: what is new in it are quotes alone.
Mend mend_of(Position at, const Unquoted& unquoted) {
    const std::vector<std::string> before = code_points(unquoted.value);
    Mend mend{at, {}, at.column + static_cast<unsigned>(before.size())};
    std::size_t place = 0;
    for (const std::string& letter : code_points(unquoted.quoted)) {
        mend.columns.push_back(at.column + static_cast<unsigned>(place));
        const bool is_new = place < before.size() && letter == "\"" && letter != before[place] &&
                            static_cast<unsigned char>(before[place].front()) < 0x80;
        if (!is_new && place < before.size()) ++place;
    }
    return mend;
}

constexpr std::size_t kMostComplaints = 100;  // a text with more is not a file of ours at all

/// Walks a TOML text once, minding strings and comments, and notes what is too deep or out of place.
class Walker {
  public:
    Walker(const SourceText& source, Prescan& found) : source_(source), text_(source.text()), found_(found) {}

    void walk() {
        while (at_ < text_.size() && found_.is_safe) {
            if (at_line_start() && depth_ == 0 && mend_line()) continue;
            step();
        }
        found_.mended += text_.substr(copied_);
    }

  private:
    bool at_line_start() const { return at_ == 0 || text_[at_ - 1] == '\n'; }
    std::size_t line_end() const { return std::min(text_.find('\n', at_), text_.size()); }

    /// Sets missing quotes in the line that starts here and steps over it; false when none are missing.
    bool mend_line() {
        const auto unquoted = find_unquoted(text_.substr(at_, line_end() - at_));
        if (!unquoted) return false;
        const std::size_t from = at_ + unquoted->offset;
        complain(from, unquoted->is_curly ? "typographic-quotes"_id : "unquoted"_id,
                 unquoted->is_curly    ? "typographic quotes, and plain ones are wanted"
                 : unquoted->has_digit ? "a value with a unit belongs in quotes"
                                       : "a word belongs in quotes",
                 "write " + unquoted->assignment);
        found_.mended += text_.substr(copied_, from - copied_);
        found_.mended += unquoted->quoted;
        found_.mends.push_back(mend_of(source_.position_of_byte(from), *unquoted));
        copied_ = from + unquoted->value.size();
        at_ = line_end();
        return true;
    }

    void step() {
        const char c = text_[at_];
        if (c == '#') {
            skip_remark();
        } else if (c == '"' || c == '\'') {
            skip_string(c);
        } else if (static_cast<unsigned char>(c) >= 0x80) {
            skip_foreign();
        } else {
            count(c);
            ++at_;
        }
    }

    /// Leaves out of `mended` what any parser would pass over: in ten thousand specs remarks are half of the text.
    void skip_remark() {
        const std::size_t end = line_end();
        const std::string_view remark = text_.substr(at_, end - at_);
        const bool is_plain =
            std::all_of(remark.begin(), remark.end(), [](char c) { return (c >= ' ' && c <= '~') || c == '\t'; });
        if (is_plain) {
            found_.mended += text_.substr(copied_, at_ - copied_);
            copied_ = end;
        }
        at_ = end;
    }

    void count(char c) {
        if (c == '.') {
            if (++dots_ > kDeepest) give_up("too-deep"_id, "a key of more than 32 parts");
            return;
        }
        if (c == '[' || c == '{') {
            if (++depth_ > kDeepest) give_up("too-deep"_id, "more than 32 brackets inside one another");
        }
        if ((c == ']' || c == '}') && depth_ > 0) --depth_;
        if (std::string_view("[]{}=,\n").find(c) != std::string_view::npos) dots_ = 0;
    }

    void skip_string(char quote) {
        const std::string triple(3, quote);
        const bool is_long = text_.substr(at_, 3) == triple;
        at_ += is_long ? 3 : 1;
        while (at_ < text_.size()) {
            if (quote == '"' && text_[at_] == '\\') {
                at_ += 2;
            } else if (is_long && text_.substr(at_, 3) == triple) {
                at_ += 3;
                while (at_ < text_.size() && text_[at_] == quote)
                    ++at_;  // quotes may stand right before the closing three
                return;
            } else if (!is_long && (text_[at_] == quote || text_[at_] == '\n')) {
                at_ += text_[at_] == quote ? 1 : 0;  // a line end closes a string that was never closed
                return;
            } else {
                ++at_;
            }
        }
        at_ = std::min(at_, text_.size());
    }

    /// A run of non-ASCII characters outside quotes.
    void skip_foreign() {
        const std::size_t from = at_;
        while (at_ < text_.size() && static_cast<unsigned char>(text_[at_]) >= 0x80) ++at_;
        const std::string_view foreign = text_.substr(from, at_ - from);
        if (with_plain_quotes(foreign) != foreign)
            complain(from, "typographic-quotes"_id, "typographic quotes, and plain ones are wanted",
                     "write \" with the key for it, in a plain text editor: firm = \"Spring works\"");
        else
            complain(from, "outside-quotes"_id, "\"" + std::string(foreign) + "\" stands outside quotes",
                     "keys are plain letters; units and texts belong in quotes: temperature = \"120 °C\"");
        has_foreign_ = true;
    }

    void complain(std::size_t offset, DiagnosticId id, std::string message, std::string hint) {
        if (found_.errors.size() >= kMostComplaints) {
            found_.is_safe = false;
            return;
        }
        found_.errors.push_back(
            source_.error(source_.position_of_byte(offset), id, std::move(message), std::move(hint)));
    }
    void give_up(DiagnosticId id, std::string message) {
        complain(at_, id, std::move(message), "no file of ours needs that; is this the right file?");
        found_.is_safe = false;
    }

  public:
    bool has_foreign() const { return has_foreign_; }

  private:
    const SourceText& source_;
    std::string_view text_;
    Prescan& found_;
    std::size_t at_ = 0;
    std::size_t copied_ = 0;  ///< how much of the text stands in `mended` already
    unsigned depth_ = 0;
    unsigned dots_ = 0;
    bool has_foreign_ = false;
};

Prescan unreadable(Diagnostic error) { return {{std::move(error)}, false, {}, {}}; }

}  // namespace

Position Prescan::as_written(Position at) const {
    const auto mend = std::find_if(mends.begin(), mends.end(), [&](const Mend& m) { return m.at.line == at.line; });
    if (mend == mends.end() || at.column < mend->at.column) return at;
    const std::size_t letter = at.column - mend->at.column;
    if (letter < mend->columns.size()) return {at.line, mend->columns[letter]};
    return {at.line, mend->end_before + static_cast<unsigned>(letter - mend->columns.size())};
}

Prescan prescan(const SourceText& source) {
    const std::string_view text = source.text();
    if (text.size() > kLargestInput) {
        Diagnostic d;
        d.place.file = source.file_name();
        d.id = "too-large"_id;
        d.message = "the text is larger than 1 MiB, far more than a spring file needs";
        d.hint = "is this the right file?";
        return unreadable(d);
    }
    if (const auto bad = first_invalid_utf8(text))
        return unreadable(source.error(source.position_of_byte(*bad), "not-utf8"_id, "this byte is not UTF-8 text",
                                       "save the file as UTF-8 (older editors may write ° or µ in another encoding)"));
    if (const auto nul = text.find('\0'); nul != std::string_view::npos)
        return unreadable(
            source.error(source.position_of_byte(nul), "not-text"_id, "a NUL byte: this is not a text file"));
    Prescan found;
    Walker walker(source, found);
    walker.walk();
    if (walker.has_foreign()) found.is_safe = false;
    return found;
}

}  // namespace seatload::io
