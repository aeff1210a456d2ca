// SPDX-License-Identifier: MIT
#include <cli/papers.hpp>

#include <algorithm>
#include <csignal>

#include <seatload/core/append.hpp>
#include <seatload/core/file.hpp>
#include <seatload/core/line_wrap.hpp>

#include <cli/session.hpp>

namespace seatload::cli {
namespace {

/// Puts off an interrupt (Ctrl-C, a closed terminal, kill) until the scope ends: a set of papers is written in a
/// moment, and half of a new one beside half of an old one is worse than the wait.
class InterruptsPutOff {
  public:
    InterruptsPutOff() {
        sigset_t signals;
        sigemptyset(&signals);
        for (const int signal : {SIGINT, SIGTERM, SIGHUP}) sigaddset(&signals, signal);
        pthread_sigmask(SIG_BLOCK, &signals, &before_);
    }
    InterruptsPutOff(const InterruptsPutOff&) = delete;
    InterruptsPutOff& operator=(const InterruptsPutOff&) = delete;
    ~InterruptsPutOff() { pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

  private:
    sigset_t before_{};
};

Diagnostics failed(Diagnostics wrong, std::size_t written, std::size_t wanted) {
    if (written != 0)
        wrong.back().hint = "the first " + std::to_string(written) + " of " + std::to_string(wanted) +
                            " papers were written, the rest not: send none before this is mended and run again";
    return wrong;
}

}  // namespace

Diagnostics write_papers(const std::filesystem::path& folder, const std::vector<Paper>& papers) {
    if (Diagnostics wrong = make_folder(folder); !wrong.empty()) return wrong;
    const InterruptsPutOff scope;
    for (std::size_t i = 0; i < papers.size(); ++i)
        if (Diagnostics wrong = replace_file(papers[i].path, papers[i].bytes); !wrong.empty())
            return failed(std::move(wrong), i, papers.size());
    return {};
}

std::vector<std::filesystem::path> stale_papers(const std::filesystem::path& folder, const std::string& stem,
                                                const std::vector<Paper>& papers) {
    std::vector<std::string> names;
    for (char letter = 'a'; letter <= 'z'; ++letter)
        for (const char* ending : {".toml", ".pdf"}) names.push_back(stem + '-' + letter + ending);
    for (const char* ending : {"-enquiry.pdf", "-reply.toml", "-calculation.pdf"}) names.push_back(stem + ending);
    std::vector<std::filesystem::path> stale;
    for (const std::string& name : names) {
        const std::filesystem::path path = folder / name;
        std::error_code unreadable;
        const bool is_new = std::any_of(papers.begin(), papers.end(), [&](const Paper& p) { return p.path == path; });
        if (!is_new && std::filesystem::exists(path, unreadable)) stale.push_back(path);
    }
    return stale;
}

std::string written_text(const std::vector<Paper>& papers) {
    std::string text = "\nWritten:\n";
    for (const Paper& paper : papers) text += "  " + paper.path.string() + '\n';
    return text;
}

std::string next_text(const std::string& what, int width) { return wrapped("Next: ", what, width, 2); }

int write_each(const std::vector<std::string>& files, const std::filesystem::path& folder,
               const std::function<Result<Paper>(const std::string&)>& make, std::ostream& out, std::ostream& err) {
    std::vector<Paper> papers;
    Diagnostics said;
    for (const std::string& file : files) {
        auto paper = make(file);
        append(said, paper.error());
        if (paper) papers.push_back(std::move(paper).value());
    }
    complain(said, err);
    if (has_error(said)) return kBadInput;
    if (const Diagnostics wrong = write_papers(folder, papers); !wrong.empty()) return refuse(wrong, err);
    for (const Paper& paper : papers) out << paper.path.string() << '\n';
    return kDone;
}

}  // namespace seatload::cli
