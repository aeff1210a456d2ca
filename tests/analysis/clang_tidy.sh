#!/bin/sh
# SPDX-License-Identifier: MIT
# clang-tidy over lib/ and cli/ by .clang-tidy, the sources of a folder as one, as most of the time goes into headers.
# Run as: clang_tidy.sh <source folder> <scratch folder> [<folder below the source folder>...]; fails on any finding.
set -eu
root=$1 scratch=$2
shift 2
cd "$root"
[ $# -gt 0 ] || set -- lib/seatload/*/ cli/
mkdir -p "$scratch"
found=0
for folder in "$@"; do
    ls "$folder"/*.cpp >/dev/null 2>&1 || continue
    all="$scratch/$(echo "${folder%/}" | tr / _).cpp"
    printf '#include "%s"\n' "$root/${folder%/}"/*.cpp >"$all"
    "${CLANG_TIDY:-clang-tidy-14}" --quiet --config-file=.clang-tidy --warnings-as-errors='*' "$all" -- -std=c++20 \
        -I. -Ilib -DBOOST_ALL_NO_LIB -DFMT_SHARED -DTOML_HEADER_ONLY=0 -DTOML_SHARED_LIB=1 2>/dev/null || found=1
done
exit $found
