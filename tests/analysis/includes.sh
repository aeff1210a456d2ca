#!/bin/sh
# SPDX-License-Identifier: MIT
# include-what-you-use over sources of lib/ and cli/: prints the includes that nothing of a file needs, and fails on any.
# What it wants added is left out, see the section Analysis of DEVELOPERS.md. Needs iwyu.
# Run as: includes.sh <source folder> [<source>...]
set -eu
cd "$1"
shift
[ $# -gt 0 ] || set -- lib/seatload/*/*.cpp cli/*.cpp
for source in "$@"; do
    include-what-you-use -Xiwyu --no_fwd_decls -Xiwyu --mapping_file=tests/analysis/iwyu.imp -std=c++20 -Ilib -I. \
        -DBOOST_ALL_NO_LIB -DFMT_SHARED -DTOML_HEADER_ONLY=0 -DTOML_SHARED_LIB=1 "$source" 2>&1 |
        sed -n '/should remove these lines:/,/^$/p'
done | awk '/should remove/ { file = $1 } /^- #include/ { print file ": " $0; found = 1 } END { exit found }'
