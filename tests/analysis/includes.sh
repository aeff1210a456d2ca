#!/bin/sh
# SPDX-License-Identifier: MIT
# include-what-you-use over sources of lib/ and cli/: prints the includes that nothing of a file needs, and the sources
# that do not compile by themselves; fails on any.
# What it wants added is left out, see the section Analysis of DEVELOPERS.md. Needs iwyu.
# Run as: includes.sh <source folder> [<source>...]
set -eu
cd "$1"
shift
[ $# -gt 0 ] || set -- lib/seatload/*/*.cpp cli/*.cpp
for source in "$@"; do
    # Headers of libqpdf 11 do not compile as C++20 with clang 14.
    standard=-std=c++20
    ! grep -q '<qpdf/' "$source" || standard='-std=c++17 -Wno-c++20-extensions -Dconsteval=constexpr'
    include-what-you-use -Xiwyu --no_fwd_decls -Xiwyu --mapping_file=tests/analysis/iwyu.imp $standard -Ilib -I. \
        -DBOOST_ALL_NO_LIB -DFMT_SHARED -DTOML_HEADER_ONLY=0 -DTOML_SHARED_LIB=1 '-DSEATLOAD_VERSION="0"' "$source" 2>&1 |
        sed -n -e '/should remove these lines:/,/^$/p' -e '/ error: /p'
done | awk '/should remove/ { file = $1 } /^- #include/ { print file ": " $0; found = 1 } / error: / { print; found = 1 }
            END { exit found }'
