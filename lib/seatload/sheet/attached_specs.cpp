// SPDX-License-Identifier: MIT
#include <seatload/sheet/attached_specs.hpp>

#include <algorithm>

#include <seatload/core/diagnostic.hpp>
#include <seatload/core/sha256.hpp>
#include <seatload/sheet/spec_attachment.hpp>

namespace seatload::sheet {
namespace {

constexpr std::string_view kSpecBegins = "format = \"seatload spec ";
constexpr std::string_view kHexadecimal = "0123456789abcdef";

/// Whether as many hexadecimal digits as a mark has stand next to each other anywhere.
bool has_printed_mark(std::string_view letters) {
    constexpr std::size_t kDigits = 64;
    std::size_t run = 0;
    return std::any_of(letters.begin(), letters.end(), [&](char c) {
        run = kHexadecimal.find(c) == std::string_view::npos ? 0 : run + 1;
        return run == kDigits;
    });
}

Diagnostic tampered(const std::string& what) {
    return error("tampered"_id, "tampered: " + what, "trust neither sheet nor spec, and ask for both again");
}

/// What is wrong with a spec's mark, or nothing.
Diagnostics doubts(const Attachment& spec, const std::vector<NamedMark>& marks, std::string_view letters) {
    const std::string quoted = "attached spec " + spec.name;
    const std::string hex = sha256_hex(spec.bytes);
    const auto mark = std::find_if(marks.begin(), marks.end(), [&](const NamedMark& m) { return m.name == spec.name; });
    if (mark == marks.end()) return {tampered(quoted + " has no mark")};
    if (mark->hex != hex) return {tampered(quoted + " does not match the mark")};
    if (has_printed_mark(letters) && letters.find(hex) == std::string_view::npos)
        return {tampered(quoted + " does not match the mark printed on the sheet")};
    return {};
}

}  // namespace

AttachedSpecs attached_specs(const PdfAttachments& carried) {
    AttachedSpecs out;
    const std::vector<NamedMark> marks = marks_in(carried.keywords);
    const auto has_mark = [&](const Attachment& file) {
        return std::any_of(marks.begin(), marks.end(), [&](const NamedMark& m) { return m.name == file.name; });
    };
    for (const Attachment& file : carried.files) {
        if (!has_mark(file) && !file.bytes.starts_with(kSpecBegins)) continue;
        out.specs.push_back(file);
        for (Diagnostic& doubt : doubts(file, marks, carried.letters)) out.tampered.push_back(std::move(doubt));
    }
    for (const NamedMark& mark : marks)
        if (std::none_of(carried.files.begin(), carried.files.end(),
                         [&](const Attachment& file) { return file.name == mark.name; }))
            out.tampered.push_back(tampered("the spec " + mark.name + " is no longer attached"));
    return out;
}

}  // namespace seatload::sheet
