#!/bin/sh
# SPDX-License-Identifier: MIT
# cppcheck over lib/ and cli/, less what .cppcheck-suppressions leaves with its reasons; fails on any finding.
# Run as: cppcheck.sh <source folder> <scratch folder>
set -eu
cd "$1"
mkdir -p "$2"
exec cppcheck -q --enable=warning,style,performance,portability --std=c++20 --language=c++ -I lib \
    --cppcheck-build-dir="$2" --suppressions-list=.cppcheck-suppressions --error-exitcode=1 lib/seatload cli
