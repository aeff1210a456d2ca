// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <variant>
#include <vector>

#include <cli/paper_options.hpp>
#include <cli/specs_options.hpp>
#include <cli/wire_command.hpp>

namespace seatload::cli {

/// What `seatload start` was asked for.
struct StartOptions {
    std::string name;  ///< kind of file; empty: they are listed
    std::string file;  ///< where it is written; empty: under its own name, here
    bool overwrite = false;
    int width = 80;
};

/// What `seatload check` was asked for.
struct CheckOptions {
    std::vector<std::string> springs;  ///< spring or spec files
    std::string requirement;           ///< judged against this; empty: alone
    std::string wire_file;             ///< the user's own wire file; empty: none
    std::string maker_file;            ///< limits of the user's own maker; empty: those of the one the order names
    bool json = false;
    int width = 80;
};

/// What `seatload size` was asked for.
struct SizeOptions {
    std::vector<std::string> requirements;  ///< of several, what serves all of them is looked for too
    std::string output = "output";          ///< folder for the papers
    std::string wire_file;
    std::string maker_file;  ///< as of CheckOptions
    std::string what_if;     ///< "bore=8.5 mm..9.5 mm": tried at these values instead; empty: not asked
    PaperOptions look;       ///< of the sheets and the enquiry
    int alternatives = 0;    ///< 0: as many as the requirement says
    unsigned threads = 0;
    bool papers = true;
    bool overwrite = false;  ///< specs in the folder that were edited by hand too
    bool json = false;
    int width = 80;
    bool progress = false;  ///< a progress bar on the error stream
};

/// What `seatload budget` was asked for.
struct BudgetOptions {
    std::string plunger;     ///< plunger file, or a requirement that holds a plunger
    std::string spring;      ///< file of a spring that the bench found, to be looked at; may be empty
    std::string output;      ///< folder for the requirement; empty: none is written
    bool overwrite = false;  ///< a requirement in the folder that was edited by hand too
    bool json = false;
    int width = 80;
};

/// What `seatload reply` was asked for.
struct ReplyOptions {
    std::vector<std::string> replies;
    bool json = false;
    int width = 80;
};

/// What `seatload quotes` was asked for.
struct QuotesOptions {
    std::string enquiry;  ///< the enquiry's PDF, or the blank form beside it
    std::vector<std::string> replies;
    int need = 0;          ///< pieces; 0: the smallest lot enquired for
    std::string date;      ///< offers are judged on this day; empty: validity is not
    std::string currency;  ///< offers are compared in it; empty: the one they share, or the one without a rate
    std::vector<std::string> rates;  ///< "GBP=1.1725"
    bool reclaims_tax = false;
    std::string choose;  ///< "MAKER/ALTERNATIVE": its spec is written; empty: none is
    std::string output = "output";
    std::string wire_file;
    PaperOptions look;  ///< of the report; only its size counts
    bool papers = true;
    bool overwrite = false;
    bool json = false;
    int width = 80;
};

/// What `seatload sheet` was asked for.
struct SheetOptions {
    std::vector<std::string> files;  ///< specs, or PDFs with `extract`
    bool extract = false;            ///< the way back: the specs a PDF was drawn from
    std::string output = "output";
    std::string wire_file;
    PaperOptions look;
    int width = 80;
};

/// What `seatload report` was asked for.
struct ReportOptions {
    std::vector<std::string> specs;
    std::string output = "output";
    std::string wire_file;
    int width = 80;
};

/// What `seatload bench` was asked for.
struct BenchOptions {
    std::vector<std::string> readings;
    std::string output = "output";  ///< folder for the spring files and the bench sheet
    std::string wire_file;
    bool papers = true;
    bool overwrite = false;  ///< spring files in the folder that were edited by hand too
    bool details = false;    ///< readings, all wires that fit and what each ± is made of, too
    bool json = false;
    int width = 80;
};

/// What `seatload inspect` was asked for.
struct InspectOptions {
    std::string spec;
    std::string samples;
    std::string output = "output";  ///< folder for the record of the lot and the report
    std::string wire_file;
    bool papers = true;
    bool overwrite = false;  ///< a record in the folder that was edited by hand too
    bool json = false;
    int width = 80;
};

using Options = std::variant<StartOptions, InspectOptions, BenchOptions, BudgetOptions, WireOptions, CheckOptions,
                             SizeOptions, SheetOptions, ReplyOptions, QuotesOptions, ReportOptions, SpecsOptions>;

}  // namespace seatload::cli
