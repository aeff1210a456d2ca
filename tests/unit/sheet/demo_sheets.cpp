// SPDX-License-Identifier: MIT
#include "demo_sheets.hpp"

#include <algorithm>
#include <filesystem>

#include <seatload/check/evaluation.hpp>
#include <seatload/io/kept_spec_file.hpp>
#include <seatload/io/requirement_file.hpp>
#include <seatload/record/specify.hpp>
#include <seatload/sizing/spread.hpp>
#include <support/builtin.hpp>
#include <support/scratch_folder.hpp>

namespace seatload::test {
namespace {

namespace fs = std::filesystem;

const fs::path kSource(SEATLOAD_SOURCE_DIR);

void add_sized(std::vector<DemoSpec>& out, const std::string& name) {
    const auto requirement =
        io::read_requirement(bytes_of(kSource / "templates" / (name + ".toml")), name, wires()).value();
    const sizing::Space space = sizing::search_space(requirement, wires());
    const auto census = sizing::search(space, tolerances(), {.progress = {}, .counts_rejections = false});
    const auto count = static_cast<std::size_t>(requirement.alternatives);
    std::string letter = "A";
    for (const sizing::Alternative& alternative : sizing::spread(space, census, count)) {
        record::Spec spec = record::specify(requirement, space, alternative, letter);
        const wire::Grade& grade = space.grades[space.wires[alternative.candidate.wire].grade];
        record::order_tips(spec, check::evaluate(spec.spring, grade, requirement, tolerances()).value());
        out.push_back({name + " " + letter, spec, grade});
        ++letter[0];
    }
}

/// Specs of the library, and the earlier revisions that lie in the folders beside them.
std::vector<fs::path> kept_files() {
    std::vector<fs::path> out;
    for (const auto& entry : fs::recursive_directory_iterator(kSource / "specs")) {
        const fs::path& path = entry.path();
        const bool is_of_engine = path.parent_path().parent_path() == kSource / "specs";
        if (path.extension() == ".toml" && (is_of_engine || path.stem().string().starts_with("revision-")))
            out.push_back(path);
    }
    std::sort(out.begin(), out.end());
    return out;
}

std::vector<DemoSpec> made() {
    std::vector<DemoSpec> out;
    for (const char* name : {"ahead_latch", "astern_latch", "oil_relief_valve", "governor_detent"})
        add_sized(out, name);
    for (const fs::path& path : kept_files()) {
        record::Spec spec = io::read_kept_spec(bytes_of(path), path.string(), wires()).value().spec;
        spec.alternative.clear();
        const wire::Grade grade = spec.own_grade ? *spec.own_grade : *wires().find(spec.wire_grade);
        out.push_back({path.lexically_relative(kSource).string(), spec, grade});
    }
    return out;
}

}  // namespace

const std::vector<DemoSpec>& demo_specs() {
    static const std::vector<DemoSpec> specs = made();
    return specs;
}

}  // namespace seatload::test
