// SPDX-License-Identifier: MIT
#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <initializer_list>
#include <string>
#include <string_view>

#include <support/check.hpp>
#include <support/scratch_folder.hpp>

namespace seatload::test {

/// What came of a command line.
struct ToolRun {
    int code = -1;
    std::string out;
    std::string err;
};

/// Runs a command line of the shell; its streams are caught in files of the folder.
inline ToolRun run_tool(const ScratchFolder& folder, const std::string& command) {
    const std::string out = (folder / "stdout").string(), err = (folder / "stderr").string();
    const int status = std::system((command + " >" + out + " 2>" + err).c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, bytes_of(out), bytes_of(err)};
}

/// True when the tools that read PDFs (qpdf, poppler-utils) are there. A missing one fails the test: the README's
/// second command installs them. Where they cannot be had, SEATLOAD_WITHOUT_PDF_TOOLS=1 passes over what needs them.
inline bool has_pdf_tools(std::initializer_list<std::string_view> names) {
    const char* waived = std::getenv("SEATLOAD_WITHOUT_PDF_TOOLS");
    if (waived != nullptr && std::string_view(waived) == "1") return false;
    for (const std::string_view name : names)
        if (std::system(("command -v " + std::string(name) + " >/dev/null 2>&1").c_str()) != 0)
            FAIL(name
                 << " is not installed (packages qpdf and poppler-utils); SEATLOAD_WITHOUT_PDF_TOOLS=1 does without");
    return true;
}

/// Checks that qpdf and poppler read a PDF without a complaint, and that all its typefaces are embedded.
inline void check_clean_pdf(const ScratchFolder& folder, std::string_view bytes) {
    const std::string pdf = (folder / "checked.pdf").string();
    write_bytes(pdf, bytes);
    for (const std::string& command : {"qpdf --check " + pdf, "pdftotext " + pdf + " -", "pdfinfo " + pdf}) {
        const ToolRun read = run_tool(folder, command);
        INFO(command);
        CHECK(read.code == 0);
        CHECK(read.err == "");
    }
    const std::string fonts = run_tool(folder, "pdffonts " + pdf).out;
    CHECK_THAT(fonts, ContainsSubstring("yes yes yes"));
    CHECK(fonts.find(" no ") == std::string::npos);
}

}  // namespace seatload::test
