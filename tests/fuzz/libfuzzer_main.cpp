// SPDX-License-Identifier: MIT
// One libFuzzer program for all targets. Environment: SEATLOAD_FUZZ_TARGET names the target; with SEATLOAD_FUZZ_SEEDS
// it writes the seeds of that target into the folder named so and ends.
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>

#include "fuzz/seeds.hpp"
#include "fuzz/targets.hpp"

namespace {

const seatload::fuzz::Target& chosen() {
    static const seatload::fuzz::Target& target = [&]() -> const seatload::fuzz::Target& {
        const char* name = std::getenv("SEATLOAD_FUZZ_TARGET");
        return seatload::fuzz::target(name == nullptr ? "" : name);
    }();
    return target;
}

void write_seeds(const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    int number = 0;
    for (const auto& seed : seatload::fuzz::seeds(chosen().name))
        std::ofstream(folder / ("seed-" + std::to_string(++number)), std::ios::binary) << seed.bytes;
}

}  // namespace

extern "C" int LLVMFuzzerInitialize(int*, char***) {
    if (const char* folder = std::getenv("SEATLOAD_FUZZ_SEEDS")) {
        write_seeds(folder);
        std::exit(0);
    }
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    try {
        chosen().run({reinterpret_cast<const char*>(bytes), size});
    } catch (const std::exception& wrong) {
        std::cerr << chosen().name << ": " << wrong.what() << '\n';
        std::abort();
    }
    return 0;
}
