#!/bin/sh
# SPDX-License-Identifier: MIT
# Line coverage of lib/: builds without optimisation, runs the tests that are not slow, prints a line a file.
# Run as: coverage.sh <source folder> <build folder> [<percent that must be reached, 92>]; needs gcovr.
set -eu
CXXFLAGS="--coverage -O0 -g0 -fprofile-update=atomic" LDFLAGS="--coverage" \
    cmake -S "$1" -B "$2" -DCMAKE_BUILD_TYPE=Coverage >/dev/null
cmake --build "$2" -j 2
ctest --test-dir "$2" -j 2 -LE slow --output-on-failure || echo "some tests failed: coverage is of what ran" >&2
exec gcovr -r "$1" --object-directory "$2" --filter "$1/lib/seatload/" --exclude-throw-branches \
    --fail-under-line "${3:-92}" "$2"
