// SPDX-License-Identifier: MIT
#include <cli/papers.hpp>

#include <seatload/core/file.hpp>

namespace seatload::cli {

Diagnostics write_papers(const std::filesystem::path& folder, const std::vector<Paper>& papers) {
    if (Diagnostics wrong = make_folder(folder); !wrong.empty()) return wrong;
    for (const Paper& paper : papers)
        if (Diagnostics wrong = replace_file(paper.path, paper.bytes); !wrong.empty()) return wrong;
    return {};
}

}  // namespace seatload::cli
