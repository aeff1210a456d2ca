// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "script.hpp"

namespace seatload::test {

/// One complaint whose exact text some test expects.
struct ComplaintExample {
    std::string id;       ///< "bare-number"
    std::string cause;    ///< the wrong file's path, or "$ " and the command, or the name of the test that causes it
    std::string path;     ///< of the file that expects the answer
    Lines answer;         ///< what the program says: the complaint, the line of the file, the hint
    std::size_t company;  ///< complaints in the same answer
};

/// The name a complaint ends with; empty when it has none. Its first line may be broken.
std::string id_of(const Lines& answer);

/// The answer to several complaints, one by one.
std::vector<Lines> complaints_in(const Lines& answer);

/// Every complaint that tests/bad_input, tests/cli/*.test and the tests of faults in tests/unit expect word for word,
/// below the folder of the sources, in the order of the files' names.
std::vector<ComplaintExample> complaint_examples(const std::filesystem::path& sources);

}  // namespace seatload::test
