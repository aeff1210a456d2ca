#!/bin/sh
# SPDX-License-Identifier: MIT
# run.sh PROGRAM TARGET SECONDS [FOLDER]: fuzzes one target for so long, beginning with its seeds; finds and what was
# learnt lie in FOLDER (else a scratch folder that is thrown away when nothing was found). SEATLOAD_FUZZ_SEED in the
# environment makes the same bytes up in every run.
set -eu
program=$1 target=$2 seconds=$3
folder=${4:-$(mktemp -d)}
here=$(cd "$(dirname "$0")" && pwd)
export SEATLOAD_FUZZ_TARGET="$target"
mkdir -p "$folder/learnt"
SEATLOAD_FUZZ_SEEDS="$folder/seeds" "$program"
"$program" -max_total_time="$seconds" -seed="${SEATLOAD_FUZZ_SEED:-0}" -timeout=60 -rss_limit_mb=2048 -max_len=20000 \
    -dict="$here/words.dict" -artifact_prefix="$folder/" -print_final_stats=1 "$folder/learnt" "$folder/seeds"
[ $# -ge 4 ] || rm -r "$folder"
