// SPDX-License-Identifier: MIT
#include <cli/spec_extract.hpp>

#include <algorithm>

#include <seatload/core/append.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/io/spec_file.hpp>
#include <seatload/sheet/attached_specs.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

constexpr std::string_view kEnding = ".toml";

/// A name that leads nowhere out of the folder, whatever the PDF says.
std::string safe_name(const std::string& name) {
    if (is_plain_file_name(name) && name.ends_with(kEnding)) return name;
    const std::string last = name.substr(name.find_last_of("/\\") + 1);
    return file_stem(last.substr(0, last.rfind('.'))) + std::string(kEnding);
}

/// The specs of one PDF, or what stands in the way.
Result<sheet::AttachedSpecs> specs_of(const std::string& path) {
    const auto bytes = read_text_file(path, kLargestPdf);
    if (!bytes) return Diagnostics(bytes.error());
    const auto carried = sheet::pdf_attachments(*bytes);
    if (!carried) return placed(carried.error(), path);
    sheet::AttachedSpecs found = sheet::attached_specs(*carried);
    if (found.specs.empty() && found.tampered.empty())
        return error_in(path, "no-spec-attached"_id, "no spec is attached to this PDF",
                        "sheets and enquiries of seatload carry theirs; printing one to a new PDF loses it");
    return found;
}

/// Keeps a spec unless another one of its name is in the way; what is wrong, or nothing.
Diagnostics keep(std::vector<Paper>& papers, Paper spec, const std::string& pdf) {
    const auto same =
        std::find_if(papers.begin(), papers.end(), [&](const Paper& paper) { return paper.path == spec.path; });
    const std::string name = spec.path.filename().string();
    if (same != papers.end()) {
        if (same->bytes == spec.bytes) return {};
        return {error_in(pdf, "same-name-out"_id, "another spec named " + name + " comes out of these PDFs",
                         "extract them one by one")};
    }
    std::error_code none;
    if (std::filesystem::exists(std::filesystem::symlink_status(spec.path, none))) {
        const auto there = read_text_file(spec.path);
        if (!there || *there != spec.bytes)
            return {error_in(spec.path.string(), "file-in-the-way"_id,
                             "a file with other contents stands here, and is not overwritten",
                             "give another folder with --output")};
    }
    papers.push_back(std::move(spec));
    return {};
}

void extract(const std::string& path, const std::filesystem::path& folder, const wire::Catalogue& wires,
             Extracted& out) {
    const auto found = specs_of(path);
    if (!found) return append(out.said, found.error());
    append(out.tampered, placed(found->tampered, path));
    if (!found->tampered.empty()) return;
    for (const sheet::Attachment& spec : found->specs) {
        append(out.said, io::read_spec(spec.bytes, path + '/' + spec.name, wires).error());
        append(out.said, keep(out.papers, {folder / safe_name(spec.name), spec.bytes}, path));
    }
}

}  // namespace

Extracted extract_specs(const std::vector<std::string>& pdfs, const std::filesystem::path& folder,
                        const wire::Catalogue& wires) {
    Extracted out;
    for (const std::string& path : pdfs) extract(path, folder, wires, out);
    return out;
}

}  // namespace seatload::cli
