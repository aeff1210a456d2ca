// SPDX-License-Identifier: MIT
#include <cli/bench_command.hpp>

#include <algorithm>
#include <filesystem>

#include <nlohmann/json.hpp>
#include <seatload/core/append.hpp>
#include <seatload/core/file_name.hpp>
#include <seatload/io/readings_file.hpp>
#include <seatload/sheet/bench_sheet.hpp>

#include <cli/bench_spring_file.hpp>
#include <cli/bench_view.hpp>
#include <cli/papers.hpp>
#include <cli/session.hpp>
#include <cli/spec_seal.hpp>
#include <cli/typed_command.hpp>

namespace seatload::cli {
namespace {

namespace fs = std::filesystem;

/// A session at the bench, worked out.
struct Benched {
    std::string file;
    bench::Readings session;
    std::vector<BenchedSpring> springs;
    std::vector<bench::Comparison> comparisons;
};

/// The spring the others are held against: the first good one, else the first.
std::size_t yardstick(const bench::Readings& session) {
    const auto good = std::find_if(session.springs.begin(), session.springs.end(),
                                   [](const bench::SpringRun& run) { return run.role == bench::Role::good; });
    return good == session.springs.end() ? 0 : static_cast<std::size_t>(good - session.springs.begin());
}

/// What may have made a suspect spring weak, against the good one and against what is stated of it.
std::vector<bench::Weakening> weakenings_of(const Benched& benched, std::size_t i, const wire::Catalogue& wires) {
    std::vector<bench::Weakening> all;
    const BenchedSpring& spring = benched.springs[i];
    const BenchedSpring& good = benched.springs[yardstick(benched.session)];
    if (spring.run.role == bench::Role::suspect && good.run.role == bench::Role::good)
        all.push_back(bench::explain(spring.run, spring.measured, good.run, good.measured));
    bench::Weakening stated = bench::explain(benched.session, spring.run, spring.measured, wires);
    if (stated.set || stated.worn_wire) all.push_back(std::move(stated));
    return all;
}

/// Measures every spring; the readings are sound, as the reader has tried them.
void work_out(Benched& benched, const wire::Catalogue& wires) {
    for (const bench::SpringRun& run : benched.session.springs) {
        bench::Measurement measurement = bench::measure(benched.session, run);
        SEATLOAD_ASSERT(measurement.spring.has_value());
        bench::WireAnswer wire = bench::infer_wire(benched.session, run, *measurement.spring, wires);
        benched.springs.push_back({run, std::move(*measurement.spring), std::move(wire), {}});
    }
    for (std::size_t i = 0; i < benched.springs.size(); ++i)
        benched.springs[i].weakenings = weakenings_of(benched, i, wires);
    const std::size_t against = yardstick(benched.session);
    for (std::size_t i = 0; i < benched.springs.size(); ++i)
        if (i != against)
            benched.comparisons.push_back(
                bench::compare(benched.springs[i].measured, benched.springs[against].measured));
}

Result<std::string> pdf_of(const Benched& benched, const References& refs) {
    sheet::BenchSheetInput input{{}, benched.comparisons, refs.english};
    for (const BenchedSpring& s : benched.springs)
        input.springs.push_back({benched.session, s.run, s.measured, s.wire, s.weakenings});
    return sheet::bench_sheet_pdf(input);
}

/// Why there is no spring file of a spring.
Diagnostic unwritten(const Benched& benched, const BenchedSpring& spring) {
    Diagnostic d =
        complaint(Severity::warning, "no-spring-file"_id, "no spring file of \"" + spring.run.name + "\" is written",
                  "it needs wire_diameter, outside_diameter, total_coils and ends, and a wire drawn that thin");
    d.place.file = benched.file;
    return d;
}

/// The spring files and the bench sheet of a session; what is said of them is added to `said`.
void make_papers(const Benched& benched, const References& refs, const BenchOptions& options, Diagnostics& said,
                 std::vector<Paper>& papers) {
    const fs::path folder = options.output;
    for (const BenchedSpring& spring : benched.springs) {
        const fs::path path = folder / (file_stem(spring.run.name) + ".toml");
        const auto text =
            bench_spring_file(benched.session, spring, fs::path(benched.file).filename().string(), refs.wires);
        if (!text) {
            append(said, {unwritten(benched, spring)});
            continue;
        }
        if (!options.overwrite) append(said, edits_in_the_way(path, "spring file", "bench"));
        papers.push_back({path, sealed(*text, "bench")});
    }
    const fs::path path = folder / (file_stem(fs::path(benched.file).stem().string()) + ".pdf");
    auto bytes = pdf_of(benched, refs);
    append(said, placed(bytes.error(), path.string()));
    if (bytes) papers.push_back({path, std::move(bytes).value()});
}

/// What to do with the spring files, or to come by one.
std::string what_next(const std::vector<Paper>& papers, const BenchOptions& options) {
    for (const Paper& paper : papers)
        if (paper.path.extension() == ".toml")
            return next_text(TypedCommand("check").name(paper.path.string()).open("-r REQUIREMENT").text() +
                                 " holds it against what is wanted; `seatload budget PLUNGER` works out "
                                 "what that is.",
                             options.width);
    TypedCommand bench("bench");
    for (const std::string& readings : options.readings) bench.name(readings);
    const std::string again = bench.option("--wire-file", options.wire_file).text();
    return next_text(options.papers
                         ? "state what the readings lack of the springs, and " + again +
                               " writes spring files, which `seatload check` judges."
                         : again + ", without --no-papers, writes spring files, which `seatload check` judges.",
                     options.width);
}

/// Two papers of one name, from files of springs that are called alike.
Diagnostics name_clashes(const std::vector<Paper>& papers) {
    Diagnostics wrong;
    for (std::size_t i = 0; i < papers.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (papers[i].path == papers[j].path)
                wrong.push_back(error_in(papers[i].path.string(), "same-name-out"_id,
                                         "two files of readings would write this",
                                         "give springs and files names of their own, or a folder with --output"));
    return wrong;
}

}  // namespace

int run_bench(const BenchOptions& options, std::ostream& out, std::ostream& err) {
    if (const Diagnostics wrong = named_twice(options.readings); !wrong.empty()) return refuse(wrong, err);
    const auto references = load_references(options.wire_file);
    if (!references) return refuse(references.error(), err);
    std::vector<Benched> all;
    all.reserve(options.readings.size());  // springs refer to the session they stand in
    Diagnostics said;
    for (const std::string& path : options.readings) {
        auto session = read_file(path, [&](std::string_view text, const std::string& name) {
            return io::read_readings(text, name, references->wires);
        });
        append(said, session.error());
        if (session) all.push_back({path, std::move(session).value(), {}, {}});
    }
    std::vector<Paper> papers;
    if (!has_error(said))
        for (Benched& benched : all) {
            work_out(benched, references->wires);
            if (options.papers) make_papers(benched, *references, options, said, papers);
        }
    append(said, name_clashes(papers));
    complain(said, err);
    if (has_error(said)) return kBadInput;
    if (!papers.empty())
        if (const Diagnostics wrong = write_papers(options.output, papers); !wrong.empty()) return refuse(wrong, err);

    nlohmann::ordered_json array = nlohmann::ordered_json::array();
    for (const Benched& benched : all) {
        const BenchView view{benched.file, benched.session, benched.springs, benched.comparisons, options.details};
        if (options.json)
            array.push_back(bench_json(view));
        else
            out << (&benched == &all.front() ? "" : "\n") << bench_text(view, options.width);
    }
    if (options.json) out << array.dump(2) << '\n';
    if (!options.json && !options.details) out << bench_more_text(options.width);
    if (!options.json && !papers.empty()) out << written_text(papers);
    if (!options.json) out << (papers.empty() ? "\n" : "") << what_next(papers, options);
    return kDone;
}

}  // namespace seatload::cli
