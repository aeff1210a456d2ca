#!/bin/sh
# SPDX-License-Identifier: MIT
# include-what-you-use over sources of lib/ and cli/: prints the includes that nothing of a file needs, and the sources
# that do not compile by themselves; fails on any. What it wants added is left out, see the section Analysis of
# DEVELOPERS.md; so is an include it wants removed for another to be added: the source must compile without it.
# Run as: includes.sh <source folder> [<source>...]; needs iwyu and clang++.
set -eu
cd "$1"
shift
[ $# -gt 0 ] || set -- lib/seatload/*/*.cpp cli/*.cpp
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# flags SOURCE: headers of libqpdf 11 do not compile as C++20 with clang 14.
flags() {
    if grep -q '<qpdf/' "$1"; then
        echo '-std=c++17 -Wno-c++20-extensions -Dconsteval=constexpr'
    else
        echo '-std=c++20'
    fi
    echo '-Ilib -I. -DBOOST_ALL_NO_LIB -DFMT_SHARED -DTOML_HEADER_ONLY=0 -DTOML_SHARED_LIB=1 -DSEATLOAD_VERSION="0"'
}

# compiles_without SOURCE FILE INCLUDE: whether SOURCE does once FILE (itself, or a header of it) has lost that line.
compiles_without() {
    rm -rf "$scratch/tree"
    mkdir -p "$scratch/tree/$(dirname "$2")"
    grep -vF "#include $3" "$2" >"$scratch/tree/$2"
    source=$1
    [ "$1" != "$2" ] || source="$scratch/tree/$2"
    # shellcheck disable=SC2046
    "${CLANG:-clang++-14}" -fsyntax-only -I"$scratch/tree/lib" -I"$scratch/tree" $(flags "$1") "$source" 2>/dev/null
}

found=0
for source in "$@"; do
    # shellcheck disable=SC2046
    include-what-you-use -Xiwyu --no_fwd_decls -Xiwyu --mapping_file=tests/analysis/iwyu.imp $(flags "$source") \
        "$source" >"$scratch/said" 2>&1 || true
    ! grep ' error: ' "$scratch/said" || found=1
    awk '/should remove these lines:/ { file = $1 } /^$/ { file = "" } file && /^- #include/ { print file, $3 }' \
        "$scratch/said" >"$scratch/doubted"
    while read -r file include; do
        compiles_without "$source" "$file" "$include" || continue
        echo "$file: nothing needs $include"
        found=1
    done <"$scratch/doubted"
done
exit $found
