#!/bin/sh
# SPDX-License-Identifier: MIT
# clang-tidy over lib/ and cli/ by .clang-tidy, the sources of a folder as one, as most of the time goes into headers; a
# second program of a folder (*_main.cpp) is looked at alone.
# A source that includes libqpdf is looked at alone and as C++17, as clang 14 does not compile those headers as C++20.
# Run as: clang_tidy.sh <source folder> <scratch folder> [<folder below the source folder>...]; fails on any finding.
set -eu
root=$1 scratch=$2
shift 2
cd "$root"
[ $# -gt 0 ] || set -- lib/seatload/*/ cli/
mkdir -p "$scratch"
found=0
# look SOURCE [FLAG...]
look() {
    source=$1
    shift
    "${CLANG_TIDY:-clang-tidy-14}" --quiet --config-file=.clang-tidy --warnings-as-errors='*' "$source" -- -std=c++20 "$@" \
        -I. -Ilib -DBOOST_ALL_NO_LIB -DFMT_SHARED -DTOML_HEADER_ONLY=0 -DTOML_SHARED_LIB=1 \
        '-DSEATLOAD_VERSION="0"' 2>/dev/null || found=1
}
for folder in "$@"; do
    ls "$folder"/*.cpp >/dev/null 2>&1 || continue
    all="$scratch/$(echo "${folder%/}" | tr / _).cpp"
    grep -L '<qpdf/' "$root/${folder%/}"/*.cpp | grep -v '_main[.]cpp$' | sed 's/.*/#include "&"/' >"$all"
    look "$all"
    for source in $(grep -l '<qpdf/' "$root/${folder%/}"/*.cpp); do
        look "$source" -std=c++17 -Wno-c++20-extensions -Dconsteval=constexpr
    done
    for program in "$root/${folder%/}"/*_main.cpp; do
        [ ! -e "$program" ] || look "$program"
    done
done
exit $found
