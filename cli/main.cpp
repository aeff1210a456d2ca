// SPDX-License-Identifier: MIT
#include <sys/ioctl.h>
#include <unistd.h>

#include <cstdlib>
#include <exception>
#include <iostream>
#include <new>

#include <cli/arguments.hpp>
#include <cli/bench_command.hpp>
#include <cli/budget_command.hpp>
#include <cli/check_command.hpp>
#include <cli/inspect_command.hpp>
#include <cli/quotes_command.hpp>
#include <cli/reply_command.hpp>
#include <cli/report_command.hpp>
#include <cli/session.hpp>
#include <cli/sheet_command.hpp>
#include <cli/size_command.hpp>
#include <cli/specs_command.hpp>
#include <cli/standard_streams.hpp>
#include <cli/start_command.hpp>

#if defined(__SANITIZE_ADDRESS__)
/// glibc keeps a list of paths (argz) for a library below libqpdf until the end of the process: not a leak of ours.
extern "C" const char* __lsan_default_suppressions() { return "leak:__argz_add_sep\n"; }
extern "C" const char* __lsan_default_options() { return "print_suppressions=0"; }
#endif

namespace {

using namespace seatload;

constexpr int kOurBug = 3;
constexpr int kNarrowest = 60;

/// Columns of the terminal behind a stream, or of what COLUMNS says; 80 when neither tells.
int columns(int stream) {
    constexpr int kUsual = 80;
    constexpr int kWidest = 1000;
    const char* const said = std::getenv("COLUMNS");
    if (const int wanted = said == nullptr ? 0 : std::atoi(said); wanted >= kNarrowest && wanted <= kWidest)
        return wanted;
    winsize size{};
    if (::ioctl(stream, TIOCGWINSZ, &size) == 0 && size.ws_col >= kNarrowest) return size.ws_col;
    return kUsual;
}

cli::Terminal terminal() { return {columns(STDOUT_FILENO), columns(STDERR_FILENO), ::isatty(STDERR_FILENO) == 1}; }

int run(const cli::Options& options) {
    return std::visit(
        [](const auto& o) {
            using O = std::decay_t<decltype(o)>;
            if constexpr (std::is_same_v<O, cli::StartOptions>) return cli::run_start(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::WireOptions>) return cli::run_wire(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::CheckOptions>) return cli::run_check(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::InspectOptions>) return cli::run_inspect(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::BenchOptions>) return cli::run_bench(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::BudgetOptions>) return cli::run_budget(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::SizeOptions>) return cli::run_size(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::SheetOptions>) return cli::run_sheet(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::SpecsOptions>) return cli::run_specs(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::ReportOptions>) return cli::run_report(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::ReplyOptions>) return cli::run_reply(o, std::cout, std::cerr);
            if constexpr (std::is_same_v<O, cli::QuotesOptions>) return cli::run_quotes(o, std::cout, std::cerr);
        },
        options);
}

}  // namespace

int main(int argc, char** argv) {
    try {
        cli::hold_standard_streams();
        const cli::Terminal screen = terminal();
        cli::set_columns(std::cerr, screen.error_width);
        const cli::Arguments arguments = cli::parse_arguments(argc, argv, screen, std::cout, std::cerr);
        const int code = arguments.options ? run(*arguments.options) : arguments.exit_code;
        std::cout.flush();
        if (!std::cout) {
            if (cli::is_output_abandoned()) cli::end_as_abandoned();
            return cli::refuse({error("cannot-write"_id, "the output could not be written",
                                      "is the disk full, or was what reads it closed?")},
                               std::cerr);
        }
        return code;
    } catch (const std::bad_alloc&) {
        return cli::refuse(
            {error("out-of-memory"_id, "there is too little memory for this",
                   "end other programs or raise the limit (`ulimit -v`); with --threads 1 less is needed")},
            std::cerr);
    } catch (const std::exception& bug) {
        std::cerr << "seatload: this is a fault of the program, not of your files: " << bug.what() << '\n';
        return kOurBug;
    }
}
