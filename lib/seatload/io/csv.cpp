// SPDX-License-Identifier: MIT
// A reader of our own: the packaged CSV libraries for C and C++ do not tell where a cell stands.
#include <seatload/io/csv.hpp>

#include <algorithm>
#include <optional>
#include <utility>

#include <seatload/core/text.hpp>

namespace seatload::io {
namespace {

struct Complaint {
    Position at;
    DiagnosticId id;
    std::string message;
    std::string hint;
};

/// Walks through the bytes and keeps count of lines and columns.
class Walk {
  public:
    explicit Walk(std::string_view text) : text_(text) {}

    bool is_over() const { return next_ == text_.size(); }
    Position at() const { return at_; }
    char peek() const { return is_over() ? '\0' : text_[next_]; }
    bool is_line_end() const { return is_over() || peek() == '\n' || text_.substr(next_).starts_with("\r\n"); }

    char take() {
        const char c = text_[next_++];
        const bool goes_on = next_ < text_.size() && (static_cast<unsigned char>(text_[next_]) & 0xC0U) == 0x80U;
        if (c == '\n')
            at_ = {at_.line + 1, 1};
        else if (!goes_on)
            ++at_.column;
        return c;
    }
    void take_line_end() {
        if (peek() == '\r') take();
        if (!is_over()) take();
    }

  private:
    std::string_view text_;
    std::size_t next_ = 0;
    Position at_;
};

/// Cuts a text into rows of cells, up to the first place where that cannot be done.
class Cutter {
  public:
    explicit Cutter(std::string_view text) : walk_(text) {}

    std::vector<CsvRow> rows() {
        std::vector<CsvRow> rows;
        while (!walk_.is_over() && !complaint) {
            CsvRow row = take_row();
            const bool is_blank = std::all_of(row.begin(), row.end(), [](const CsvCell& c) { return c.text.empty(); });
            if (!is_blank) rows.push_back(std::move(row));
        }
        return rows;
    }

    std::optional<Complaint> complaint;

  private:
    CsvRow take_row() {
        CsvRow row{take_cell()};
        while (walk_.peek() == ',' && !complaint) {
            walk_.take();
            row.push_back(take_cell());
        }
        walk_.take_line_end();
        return row;
    }

    CsvCell take_cell() {
        while (walk_.peek() == ' ' || walk_.peek() == '\t') walk_.take();
        return walk_.peek() == '"' ? take_quoted() : take_plain();
    }

    CsvCell take_plain() {
        CsvCell cell{{}, walk_.at()};
        while (!walk_.is_line_end() && walk_.peek() != ',') {
            if (walk_.peek() == '"') {
                complain(walk_.at(), "stray-quote"_id, "a quote inside a cell that does not begin with one",
                         "leave it out, or put the whole cell in quotes and double it there");
                return cell;
            }
            cell.text += walk_.take();
        }
        cell.text = std::string(trim(cell.text));
        return cell;
    }

    CsvCell take_quoted() {
        const Position quote = walk_.at();
        walk_.take();
        CsvCell cell{{}, walk_.at()};
        for (;;) {
            if (walk_.is_over()) {
                complain(quote, "unclosed-quote"_id, "this quote is not closed",
                         "close it with a second one before the next comma");
                return cell;
            }
            const char c = walk_.take();
            if (c == '"' && walk_.peek() != '"') break;
            if (c == '"') walk_.take();  // two of them stand for one
            cell.text += c;
        }
        while (walk_.peek() == ' ' || walk_.peek() == '\t') walk_.take();
        if (!walk_.is_line_end() && walk_.peek() != ',')
            complain(walk_.at(), "stray-quote"_id, "there is more behind the quote that closes the cell",
                     "a comma or the line end follows");
        cell.text = std::string(trim(cell.text));
        return cell;
    }

    void complain(Position at, DiagnosticId id, std::string message, std::string hint) {
        complaint = Complaint{at, id, std::move(message), std::move(hint)};
    }

    Walk walk_;
};

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte < 0x20 && c != '\t' && c != '\n' && c != '\r') || byte == 0x7F;
}

/// The first carriage return without a line feed behind it.
std::size_t lone_carriage_return(std::string_view text) {
    for (std::size_t at = text.find('\r'); at != std::string_view::npos; at = text.find('\r', at + 1))
        if (at + 1 == text.size() || text[at + 1] != '\n') return at;
    return std::string_view::npos;
}

/// What keeps a text from being read at all.
std::optional<Complaint> unreadable(const SourceText& source) {
    const std::string_view text = source.text();
    if (const auto invalid = first_invalid_utf8(text))
        return Complaint{source.position_of_byte(*invalid), "not-utf8"_id, "this byte is not UTF-8",
                         "save the table as \"CSV UTF-8\""};
    if (const auto control = std::find_if(text.begin(), text.end(), is_control); control != text.end())
        return Complaint{source.position_of_byte(static_cast<std::size_t>(control - text.begin())), "not-text"_id,
                         "a character that cannot be seen stands here", "this may not be a CSV file"};
    if (const std::size_t at = lone_carriage_return(text); at != std::string_view::npos)
        return Complaint{source.position_of_byte(at), "bad-line-end"_id, "this line ends in a carriage return alone",
                         "save the table with line ends of Unix (LF) or Windows (CR LF)"};
    return std::nullopt;
}

}  // namespace

CsvText::CsvText(std::string_view text, std::string file_name)
    : bytes_(without_byte_order_mark(text)), source_(bytes_, std::move(file_name)) {
    std::optional<Complaint> complaint = unreadable(source_);
    if (!complaint) {
        Cutter cutter(bytes_);
        rows_ = cutter.rows();
        complaint = std::move(cutter.complaint);
    }
    if (!complaint) return;
    error(complaint->at, complaint->id, std::move(complaint->message), std::move(complaint->hint));
    rows_.clear();
    is_readable_ = false;
}

void CsvText::error(Position at, DiagnosticId id, std::string message, std::string hint) {
    diagnostics_.push_back(source_.error(at, id, std::move(message), std::move(hint)));
}

void CsvText::warning(Position at, DiagnosticId id, std::string message, std::string hint) {
    error(at, id, std::move(message), std::move(hint));
    diagnostics_.back().severity = Severity::warning;
}

}  // namespace seatload::io
