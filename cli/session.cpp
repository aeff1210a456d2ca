// SPDX-License-Identifier: MIT
#include <cli/session.hpp>

#include <filesystem>

#include <seatload/io/builtin.hpp>
#include <seatload/io/maker_file.hpp>
#include <seatload/io/wire_file.hpp>

#include <cli/missing_file.hpp>

namespace seatload::cli {
namespace {

constexpr std::size_t kMostShown = 20;
constexpr long kUsualColumns = 80;

/// Where a stream keeps its columns; 0 until they are told.
long& columns_of(std::ostream& stream) {
    static const int index = std::ios_base::xalloc();
    return stream.iword(index);
}

}  // namespace

Result<References> load_references(const std::string& wire_file, const PaperOptions& options,
                                   const std::string& maker_file) {
    auto catalogue = io::builtin_catalogue();
    SEATLOAD_ASSERT(catalogue.has_value());
    auto tolerances = io::builtin_tolerances();
    SEATLOAD_ASSERT(tolerances.has_value());
    auto paper = make_paper(options);
    if (!paper) return Diagnostics(paper.error());
    References references{std::move(catalogue).value(), std::move(tolerances).value(), io::builtin_makers(),
                          std::move(paper).value(), sheet::Wording(io::builtin_wording())};
    if (!maker_file.empty()) {
        auto maker = read_file(maker_file, io::read_maker);
        if (!maker) return Diagnostics(maker.error());
        references.makers.instead = references.makers.all.size();
        references.makers.all.push_back(std::move(maker).value());
    }
    if (wire_file.empty()) return references;
    auto own = read_file(wire_file, [&](std::string_view text, const std::string& name) {
        return io::read_wire_file(text, name, references.wires);
    });
    if (!own) return Diagnostics(own.error());
    references.wires = std::move(own).value();
    return references;
}

Diagnostics not_toml(const std::string& path, std::string_view text) {
    if (text.starts_with("%PDF-"))
        return {error_in(path, "pdf-given"_id, "this is a PDF, and a text file (TOML) is wanted",
                         "`seatload sheet --extract` takes the specs out of a sheet or an enquiry")};
    if (path.ends_with(".csv"))
        return {error_in(
            path, "wrong-kind-of-file"_id, "this is a table, and the text file (TOML) that names it is wanted",
            "readings and samples name theirs so: table = \"" + std::filesystem::path(path).filename().string() + '"')};
    return {};
}

Diagnostics named_twice(const std::vector<std::string>& files) {
    Diagnostics wrong;
    for (std::size_t i = 0; i < files.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            std::error_code missing;  // whoever reads the file complains of that
            if (files[i] != files[j] && !std::filesystem::equivalent(files[i], files[j], missing)) continue;
            wrong.push_back(error_in(files[i], "named-twice"_id, "this file is given twice", "leave one of them out"));
            break;
        }
    return wrong;
}

Diagnostics placed(Diagnostics diagnostics, const std::string& path) {
    for (Diagnostic& d : diagnostics)
        if (d.place.file.empty()) d.place.file = path;
    return diagnostics;
}

void set_columns(std::ostream& stream, int columns) { columns_of(stream) = columns; }

void complain(Diagnostics diagnostics, std::ostream& err) {
    for (Diagnostic& each : diagnostics)
        if (each.id == "no-such-file"_id && each.hint.empty() && each.place.line == 0)
            each.hint = hint_for_missing(each.place.file);
    const long columns = columns_of(err);
    err << render(sorted(std::move(diagnostics)), kMostShown, static_cast<int>(columns == 0 ? kUsualColumns : columns));
}

int refuse(const Diagnostics& diagnostics, std::ostream& err) {
    complain(diagnostics, err);
    return kBadInput;
}

}  // namespace seatload::cli
