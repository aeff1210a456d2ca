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

Attachment toml_attachment(std::string name, std::string text, std::string description) {
    return {std::move(name), std::move(text), std::move(description), "application/toml"};
}

Attachment spec_attachment(const record::Spec& spec, std::string spec_text, const Wording& words) {
    return toml_attachment(stem(spec) + std::string(kEnding), std::move(spec_text), words.say("mark.attached_spec"));
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

std::vector<NamedMark> marks_in(std::string_view keywords) {
    std::vector<NamedMark> marks;
    for (const std::string_view piece : split(keywords, ';')) {
        const std::string_view line = trim(piece);
        const std::size_t blank = line.rfind(' ');
        if (!line.starts_with(kBefore) || blank < kBefore.size() || line.size() != blank + 1 + kHexDigits) continue;
        marks.push_back(
            {std::string(line.substr(kBefore.size(), blank - kBefore.size())), std::string(line.substr(blank + 1))});
    }
    return marks;
}

}  // namespace seatload::sheet
