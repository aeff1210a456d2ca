// SPDX-License-Identifier: MIT
#include "process.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <stdexcept>

namespace seatload::test {
namespace {

constexpr unsigned kPatienceSeconds = 120;
constexpr int kNotStarted = 126;

struct Pipe {
    int read_end = -1;
    int write_end = -1;
};

Pipe make_pipe() {
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no pipe can be made");
    return {ends[0], ends[1]};
}

std::vector<char*> pointers(std::vector<std::string>& texts) {
    std::vector<char*> all;
    for (std::string& text : texts) all.push_back(text.data());
    all.push_back(nullptr);
    return all;
}

/// The child's side of the fork: only calls that are safe there.
[[noreturn]] void become(char* const* words, const char* folder, char* const* environment, const Pipe& out,
                         const Pipe& err) {
    const int nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
    ::dup2(nothing, STDIN_FILENO);
    ::dup2(out.write_end, STDOUT_FILENO);
    ::dup2(err.write_end, STDERR_FILENO);
    ::alarm(kPatienceSeconds);
    if (::chdir(folder) == 0) ::execve(words[0], words, environment);
    ::_exit(kNotStarted);
}

/// Reads both pipes until both are closed.
void read_all(int out_end, int err_end, Ended& ended) {
    std::array<pollfd, 2> ends{pollfd{out_end, POLLIN, 0}, pollfd{err_end, POLLIN, 0}};
    std::array<std::string*, 2> texts{&ended.out, &ended.err};
    std::array<char, 65536> buffer{};
    while (ends[0].fd >= 0 || ends[1].fd >= 0) {
        if (::poll(ends.data(), ends.size(), -1) < 0 && errno != EINTR) return;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            if (ends[i].fd < 0 || ends[i].revents == 0) continue;
            const ssize_t count = ::read(ends[i].fd, buffer.data(), buffer.size());
            if (count > 0) texts[i]->append(buffer.data(), static_cast<std::size_t>(count));
            if (count > 0 || (count < 0 && errno == EINTR)) continue;
            ::close(ends[i].fd);
            ends[i].fd = -1;
        }
    }
}

}  // namespace

Ended run_program(const std::vector<std::string>& words, const std::filesystem::path& folder,
                  const std::vector<std::string>& environment) {
    std::vector<std::string> word_texts = words, environment_texts = environment;
    const auto word_list = pointers(word_texts), environment_list = pointers(environment_texts);
    const Pipe out = make_pipe(), err = make_pipe();
    const pid_t child = ::fork();
    if (child < 0) throw std::runtime_error("no process can be made");
    if (child == 0) become(word_list.data(), folder.c_str(), environment_list.data(), out, err);
    ::close(out.write_end);
    ::close(err.write_end);
    Ended ended;
    read_all(out.read_end, err.read_end, ended);
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    ended.code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    if (ended.code == kNotStarted) throw std::runtime_error("cannot start " + words.front());
    return ended;
}

}  // namespace seatload::test
