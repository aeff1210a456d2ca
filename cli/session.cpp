// SPDX-License-Identifier: MIT
#include <cli/session.hpp>

#include <seatload/io/builtin.hpp>
#include <seatload/io/wire_file.hpp>

namespace seatload::cli {

Result<References> load_references(const std::string& wire_file, const PaperOptions& options) {
    auto catalogue = io::builtin_catalogue();
    SEATLOAD_ASSERT(catalogue.has_value());
    auto tolerances = io::builtin_tolerances();
    SEATLOAD_ASSERT(tolerances.has_value());
    auto paper = make_paper(options);
    if (!paper) return Diagnostics(paper.error());
    References references{std::move(catalogue).value(), std::move(tolerances).value(), std::move(paper).value()};
    if (wire_file.empty()) return references;
    auto own = read_file(wire_file, [&](std::string_view text, const std::string& name) {
        return io::read_wire_file(text, name, references.wires);
    });
    if (!own) return Diagnostics(own.error());
    references.wires = std::move(own).value();
    return references;
}

Diagnostics placed(Diagnostics diagnostics, const std::string& path) {
    for (Diagnostic& d : diagnostics)
        if (d.place.file.empty()) d.place.file = path;
    return diagnostics;
}

int refuse(const Diagnostics& diagnostics, std::ostream& err) {
    err << render(sorted(diagnostics));
    return kBadInput;
}

}  // namespace seatload::cli
