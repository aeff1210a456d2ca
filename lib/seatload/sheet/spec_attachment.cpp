// SPDX-License-Identifier: MIT
#include <seatload/sheet/spec_attachment.hpp>

#include <algorithm>

#include <seatload/core/file_name.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/core/text.hpp>

namespace seatload::sheet {
namespace {

constexpr std::string_view kBefore = "seatload spec sha256 ";
constexpr std::string_view kEnding = ".toml";
constexpr std::size_t kLongestStem = 80;  // leaves room for a number and the ending in a plain file name
constexpr std::size_t kHexDigits = 64;

std::string stem(const record::Spec& spec) {
    std::string out = spec.identity.number.empty() ? "spec" : file_stem(spec.identity.number);
    out.resize(std::min(out.size(), kLongestStem - 2));
    if (!spec.alternative.empty()) out += '-' + file_stem(spec.alternative).substr(0, 1);
    return out;
}

std::string mark_line(const Attachment& attachment) {
    return std::string(kBefore) + attachment.name + ' ' + sha256_hex(attachment.bytes);
}

}  // namespace

Attachment spec_attachment(const record::Spec& spec, std::string spec_text) {
    return {stem(spec) + std::string(kEnding), std::move(spec_text), "The spec its sheet was drawn from",
            "application/toml"};
}

void make_names_differ(std::vector<Attachment>& attachments) {
    for (auto current = attachments.begin(); current != attachments.end(); ++current) {
        const std::string first = current->name.substr(0, current->name.size() - kEnding.size());
        const auto is_taken = [&] {
            return std::any_of(attachments.begin(), current,
                               [&](const Attachment& earlier) { return earlier.name == current->name; });
        };
        for (int number = 2; is_taken(); ++number)
            current->name = first + '-' + std::to_string(number) + std::string(kEnding);
    }
}

std::string marks_of(std::span<const Attachment> attachments) {
    std::vector<std::string> lines;
    for (const Attachment& attachment : attachments) lines.push_back(mark_line(attachment));
    return join(lines, "; ");
}

std::optional<std::string> mark_in(std::string_view keywords, std::string_view name) {
    const std::string before = std::string(kBefore) + std::string(name) + ' ';
    for (const std::string_view piece : split(keywords, ';')) {
        const std::string_view line = trim(piece);
        if (line.starts_with(before) && line.size() == before.size() + kHexDigits)
            return std::string(line.substr(before.size()));
    }
    return std::nullopt;
}

}  // namespace seatload::sheet
