// SPDX-License-Identifier: MIT
#include <seatload/sheet/bench_printable.hpp>

#include <algorithm>

#include <seatload/sheet/lettering.hpp>
#include <seatload/sheet/true_minus.hpp>

namespace seatload::sheet {
namespace {

/// Makes texts readable and keeps each complaint once: names stand in many places.
class Cleaner {
  public:
    explicit Cleaner(Diagnostics& diagnostics) : diagnostics_(diagnostics) {}

    void clean(std::string& text, std::string_view what) {
        Diagnostics found;
        text = readable(text, what, found);
        for (Diagnostic& d : found) {
            const auto is_same = [&](const Diagnostic& known) { return known.message == d.message; };
            if (std::none_of(diagnostics_.begin(), diagnostics_.end(), is_same)) diagnostics_.push_back(std::move(d));
        }
    }

  private:
    Diagnostics& diagnostics_;
};

void clean_session(bench::Readings& session, Cleaner& cleaner) {
    cleaner.clean(session.title, "title");
    cleaner.clean(session.date, "date");
    cleaner.clean(session.fixture, "fixture");
}

/// Texts of ours that hold names of the user's are cleaned without a word: the names were complained of before.
void clean_result(bench::MeasuredSpring& measured, Cleaner& cleaner, Cleaner& silent) {
    cleaner.clean(measured.name, "name of the spring");
    for (bench::LoadAtHeight& load : measured.loads) cleaner.clean(load.asked.name, "name of the height");
    for (std::string& remark : measured.remarks) {
        silent.clean(remark, "remark");
        remark = with_true_minus(remark);
    }
    for (bench::Point& point : measured.points) point.why = with_true_minus(point.why);
}

}  // namespace

std::vector<PrintedSpring> printable(const std::vector<BenchSpring>& springs, Diagnostics& diagnostics) {
    Diagnostics ignored;
    Cleaner cleaner(diagnostics);
    Cleaner silent(ignored);
    std::vector<PrintedSpring> out;
    for (const BenchSpring& s : springs) {
        PrintedSpring& one = out.emplace_back(PrintedSpring{s.session, s.run, s.measured, s.wire, s.weakenings});
        clean_session(one.session, cleaner);
        clean_result(one.measured, cleaner, silent);
        for (bench::Weakening& w : one.weakenings)
            for (std::string* text : {&w.set_against, &w.worn_against}) silent.clean(*text, "name of the spring");
        if (one.wire.wire) silent.clean(one.wire.wire->verdict, "kinds of wire");
    }
    return out;
}

std::vector<bench::Comparison> printable(std::vector<bench::Comparison> comparisons) {
    Diagnostics ignored;
    Cleaner silent(ignored);
    for (bench::Comparison& c : comparisons) {
        for (std::string* name : {&c.first, &c.second}) silent.clean(*name, "name of the spring");
        for (bench::LoadDifference& load : c.loads) silent.clean(load.asked.name, "name of the height");
    }
    return comparisons;
}

}  // namespace seatload::sheet
