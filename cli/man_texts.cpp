// SPDX-License-Identifier: MIT
#include <cli/man_texts.hpp>

namespace seatload::cli {
namespace {

ManText program_page() {
    return {
        "",
        {"A workshop that rebuilds engines and gearboxes finds a spring that is too weak where it sits, and must have "
         "a better one wound to order. seatload tells from readings of a bench what the old one gives, and from "
         "pressures and friction what a better one must give; finds every combination of wire and coil that gives "
         "it without yielding, going solid, binding in its bore or buckling; and writes the papers a spring maker "
         "quotes and winds from.",
         "Each command reads and writes plain TOML that a person can read, edit and keep. Every quantity is a text "
         "with its unit: \"9.00 mm\", \"1/4 in\", \"4.8 N .. 6.5 N\", \"490 gf\". What is wrong in a file is told "
         "all at once, by line and column.",
         "Equal files and options give equal papers, byte for byte: neither clock, locale, number of threads nor "
         "home folder is asked.",
         "A spring stores energy and may hold an engine together: papers are to be checked by a competent person, "
         "and local codes and licensed practice govern."},
        {{"<prefix>/share/seatload/templates/", "requirements, readings, plungers, lots and replies to start from"},
         {"<prefix>/share/seatload/specs/", "a library of kept specs, invented, to look at"},
         {"<prefix>/share/seatload/schema/", "JSON Schemas of the files, for editors that complete and check TOML"},
         {"<prefix>/share/seatload/schema/output/", "JSON Schemas of what --json writes"},
         {"<prefix>/share/doc/seatload/", "README, manual and licences"}},
        {{"seatload size templates/ahead_latch.toml", "find the springs for a requirement, and write the papers"},
         {"seatload help size", "the help of a command"},
         {"seatload --version --json", "the versions of program and data, for a record"}},
        {}};
}

ManText start_page() {
    return {"start",
            {"Writes a file of the kind named, in which every line says what to measure or look up and how it is "
             "written. Without a kind, all are listed."},
            {{"NAME.toml",
              "the file written, in the current folder unless --output says otherwise; one that is there "
              "is kept"}},
            {{"seatload start", "list the kinds"}, {"seatload start requirement -o latch.toml", "begin a requirement"}},
            {"bench", "budget", "size", "check", "reply", "inspect"}};
}

ManText bench_page() {
    return {"bench",
            {"Springs are pressed on a scale and their heights read off an indicator or gauge. From the readings come "
             "rate, free length and the loads at the heights of interest, each with its uncertainty; which readings "
             "were left out; what wire it may be; and how two springs differ. With --details every reading is told, "
             "too, why any was left out, hysteresis, all wires that fit, and what each uncertainty is made of."},
            {{"READINGS", "TOML that holds the readings, or names a CSV table beside it"},
             {"FOLDER/*.toml", "a spring file for each spring, which check takes"},
             {"FOLDER/*.pdf", "a bench sheet, one page a spring"}},
            {{"seatload bench templates/ahead_latch_readings.toml", "a weak spring beside a good one"},
             {"seatload bench templates/astern_latch_readings.toml --no-papers", "readings in a table; only tell"}},
            {"check", "budget", "inspect"}};
}

ManText budget_page() {
    return {"budget",
            {"A plunger must stay shut against leaking oil and the side load of its taper, and give way to the weakest "
             "oil that is to release it. Diameters, pressures and friction are stated as ranges; over all their "
             "corners the loads are found which its spring may have, each bound with its formula."},
            {{"PLUNGER", "TOML with the plunger"},
             {"FOLDER/*-requirement.toml", "a requirement to go on with, which size takes"},
             {"FOLDER/*-pressure.pdf", "the pressure sheet"}},
            {{"seatload budget templates/ahead_latch_plunger.toml --output output", "the loads, and the papers"},
             {"seatload budget templates/ahead_latch_plunger.toml --spring output/ahead-latch-weak.toml",
              "is the spring enough that bench found? It is not", 1}},
            {"bench", "size"}};
}

ManText size_page() {
    return {"size",
            {"Counts every combination of wire, mean diameter, coils, ends and free length that meets all limits, "
             "exactly; says what rejects the rest; offers a spread of alternatives, so that a maker finds one that "
             "suits the wire he holds; and tells what a maker's tolerances will do to each. When nothing fits, it says "
             "which limits are in each other's way, and the least change that lets a spring in.",
             "Papers are written anew, but never over a spec that was edited by hand, unless --overwrite is given."},
            {{"REQUIREMENT", "TOML: space, loads, surroundings, wire, limits, order"},
             {"FOLDER/*-a.toml, *-a.pdf", "spec and drawing-and-tolerance sheet of alternative A, and so on"},
             {"FOLDER/*-enquiry.pdf", "one enquiry for all, with the form for the reply attached"},
             {"FOLDER/*-reply.toml", "the form for the reply"},
             {"FOLDER/*-calculation.pdf", "the calculation, for the workshop's own use"}},
            {{"seatload size templates/ahead_latch.toml", "the springs, and the papers in output/"},
             {"seatload size templates/ahead_latch.toml -n 2 --language de --paper letter --output abroad",
              "two alternatives, papers in German"},
             {"seatload size templates/ahead_latch.toml --what-if \"bore = 8.5 mm .. 9.5 mm\"",
              "what fits as the bore varies"}},
            {"check", "sheet", "quotes", "wire"}};
}

ManText check_page() {
    return {"check",
            {"Evaluates springs in full: rate, loads, stresses, solid length, gaps, buckling, growth, mass; alone, or "
             "against a requirement with --requirement. A spec is judged by its own loads and limits. For a spring "
             "that bench measured, what was measured stands beside what its dimensions give."},
            {{"FILE", "TOML: a spring or a spec"}},
            {{"seatload check output/ottermere-m14-ahead-latch-plunger-a.toml", "a spec, by its own limits"},
             {"seatload check output/ahead-latch-weak.toml -r templates/ahead_latch.toml",
              "the old spring, which fails", 1}},
            {"size", "bench", "report"}};
}

ManText wire_page() {
    return {
        "wire",
        {"Lists the wire grades known, or shows one with its sizes, strengths and moduli, where each value was seen "
         "and how far it can be trusted: seen in a carrier of the standard, fitted, remembered or estimated."},
        {{"FILE", "TOML with wire of your own, for --wire-file"}},
        {{"seatload wire", "all grades"},
         {"seatload wire ASTM-A401 --diameter \"1.00 mm\"", "one, and its strength at a diameter"}},
        {"size"}};
}

ManText sheet_page() {
    return {"sheet",
            {"Draws the drawing-and-tolerance sheet of a spec again, in another language or on other paper if wanted. "
             "Each sheet carries the maker's copy of its spec as an attachment and prints its SHA-256; --extract takes "
             "it out again and says when it is not the one of the mark."},
            {{"FILE", "a spec (TOML), or a PDF with --extract"}, {"FOLDER/*.pdf", "the sheet, under the spec's name"}},
            {{"seatload sheet specs/ottermere-m14/ahead-latch-plunger.toml --units inch", "inches and pounds first"},
             {"seatload sheet --extract output/ottermere-m14-ahead-latch-plunger-a.pdf", "the spec out of a sheet"}},
            {"size", "report", "specs"}};
}

ManText report_page() {
    return {
        "report",
        {"Writes the calculation of specs, some ten pages each, so that every number can be checked by hand: inputs, "
         "each step with formula, numbers and source, limits and margins, the loads of simulated springs."},
        {{"SPEC", "TOML, as size writes it"}, {"FOLDER/*-calculation.pdf", "the calculation"}},
        {{"seatload report specs/ottermere-m14/ahead-latch-plunger.toml", "the calculation of a kept spec"}},
        {"size", "check"}};
}

ManText reply_page() {
    return {"reply",
            {"Reads makers' replies, in the form that came with the enquiry or typed in from a letter, and lists what "
             "they offer: prices, delivery, what they ask to change."},
            {{"FILE", "TOML: a reply"}},
            {{"seatload reply templates/replies/maker_a.toml", "one reply"}},
            {"quotes"}};
}

ManText quotes_page() {
    return {"quotes",
            {"Builds each offered spring anew as the maker asks for it, holds it to every limit, and ranks those that "
             "fit by what they cost until they lie on the bench. Expired and late offers are told by --date, never by "
             "the clock. The specs that the enquiry was written with must lie beside it."},
            {{"ENQUIRY", "the enquiry's PDF, or the blank form beside it"},
             {"REPLY", "TOML: a reply"},
             {"FOLDER/*-quotes.pdf", "the report"},
             {"FOLDER/*.toml", "with --choose, the chosen spec as a draft"}},
            {{"seatload size templates/ahead_latch.toml --output output", "the enquiry the replies answer"},
             {"seatload quotes output/ottermere-m14-ahead-latch-plunger-enquiry.pdf templates/replies/maker_a.toml "
              "templates/replies/maker_c.toml --need 50 --date 2026-12-15",
              "two offers for fifty pieces"}},
            {"size", "reply", "specs"}};
}

ManText inspect_page() {
    return {"inspect",
            {"Judges a lot by what was measured of its pieces. Each value is held against the limits that the spec's "
             "sheet prints; the uncertainty of measuring counts, and what lies nearer to a limit than that proves "
             "nothing. Small lots are judged by every piece, larger ones by the single sampling plans of ISO 2859-1; "
             "what such a sample protects from is told as a number."},
            {{"SPEC", "TOML, as size writes it"},
             {"SAMPLES", "TOML that holds what was measured, or names a CSV table beside it"},
             {"FOLDER/*.toml", "a record of the lot, which specs takes as evidence"},
             {"FOLDER/*.pdf", "the report, with run charts and histograms"}},
            {{"seatload inspect specs/ottermere-m14/ahead-latch-plunger.toml templates/ahead_lot_good.toml",
              "a lot that is accepted"},
             {"seatload inspect specs/ottermere-m14/ahead-latch-plunger.toml templates/ahead_lot_bad.toml --no-papers",
              "one that is rejected", 1}},
            {"bench", "specs"}};
}

ManText specs_page() {
    return {
        "specs",
        {"Keeps approved specs by engine and position. A spec comes in as a draft, is frozen for a trial, and is "
         "approved on a lot that was accepted or for a stated reason; a change is a new revision, and the old one "
         "stays in force until that is approved. Frozen contents are sealed by their SHA-256.",
         "SPEC names a kept spec by engine and position (ottermere-m14/ahead-latch-plunger), by its path, or by its "
         "part number."},
        {{"specs/", "the library; --library names another folder"},
         {"specs/ENGINE/POSITION.toml", "the revision last made, with the states it went through"},
         {"specs/ENGINE/POSITION/", "earlier revisions and the evidence"},
         {"specs/.lock", "held while the library is written"}},
        {{"seatload specs list", "what is kept"},
         {"seatload specs find --gives \"5 N .. 6 N\" --at \"15 mm\" --bore \"9 mm\"", "is there one already?"},
         {"seatload specs verify", "was anything changed, and does every spring still come out as approved?"},
         {"seatload specs order ottermere-m14/ahead-latch-plunger --quantity 50", "the papers to order it again"}},
        {"size", "inspect", "quotes"}};
}

}  // namespace

const std::vector<ManText>& man_texts() {
    static const std::vector<ManText> texts{program_page(), start_page(),   bench_page(), budget_page(), size_page(),
                                            check_page(),   wire_page(),    sheet_page(), report_page(), reply_page(),
                                            quotes_page(),  inspect_page(), specs_page()};
    return texts;
}

}  // namespace seatload::cli
