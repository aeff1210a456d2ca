#!/bin/sh
# debian_packages.sh BUILD SCRATCH VERSION: packs the build as Debian packages; looks at their contents and what they
# depend on; unpacks the program into a folder and runs it from there. lintian looks too where it is installed.
set -eu
build=$1 scratch=$2 version=$3
fail() { echo "debian_packages: $*" >&2; exit 1; }

rm -rf "$scratch"
mkdir -p "$scratch"
cd "$scratch"
cpack --config "$build/CPackConfig.cmake" -G DEB -B "$scratch/packed" >cpack.log 2>&1 || { cat cpack.log; fail "cpack"; }
architecture=$(dpkg --print-architecture)
program=packed/seatload_${version}_$architecture.deb
library=packed/libseatload-dev_${version}_$architecture.deb
for package in "$program" "$library"; do [ -f "$package" ] || fail "no $package"; done

field() { dpkg-deb -f "$1" "$2"; }
[ "$(field "$program" Section)" = science ] || fail "section"
[ "$(field "$library" Section)" = libdevel ] || fail "section of the library"
field "$program" Maintainer | grep -q '^[^<]* <[^@>]*@[^>]*>$' || fail "maintainer"
[ "$(field "$program" Description | wc -l)" -ge 4 ] || fail "description"
field "$program" Description | sed 1d | grep -qv '^ [^ ]' && fail "description is set in"
# What the program is linked with, as the dynamic linker names it, is what it must depend on.
depends=$(field "$program" Depends)
for wanted in libc6 libstdc++6 libqpdf libhpdf libssl libfmt; do
    case $depends in *$wanted*) ;; *) fail "does not depend on $wanted: $depends" ;; esac
done
case $depends in *-dev*) fail "depends on headers: $depends" ;; esac
depends=$(field "$library" Depends)
for wanted in libboost-dev libfmt-dev libhpdf-dev libqpdf-dev libssl-dev nlohmann-json3-dev libtomlplusplus-dev; do
    case $depends in *$wanted*) ;; *) fail "the library does not depend on $wanted" ;; esac
done

dpkg-deb -x "$program" root
dpkg-deb -x "$library" library
for file in bin/seatload share/man/man1/seatload.1.gz share/man/man1/seatload-specs.1.gz \
    share/bash-completion/completions/seatload share/zsh/vendor-completions/_seatload \
    share/fish/vendor_completions.d/seatload.fish share/seatload/templates/ahead_latch.toml \
    share/seatload/specs/README.md share/doc/seatload/copyright share/doc/seatload/changelog.gz \
    share/doc/seatload/README.md; do
    [ -f "root/usr/$file" ] || fail "$file is missing"
done
for file in lib/libseatload.a lib/cmake/seatload/seatload-config.cmake include/seatload/spring/rate.hpp \
    share/doc/libseatload-dev/copyright; do
    [ -f "library/usr/$file" ] || fail "$file is missing in the library's package"
done
[ ! -e root/usr/include ] && [ ! -e root/usr/share/doc/seatload/LICENSE ] || fail "the program's package holds too much"
grep -q 'SIL OPEN FONT LICENSE' root/usr/share/doc/seatload/copyright || fail "copyright lacks the fonts' licence"
gzip -t root/usr/share/man/man1/*.gz || fail "a manual page is broken"
[ -z "$(find root library ! -type l -perm /022)" ] || fail "files that others may write"

[ "$(root/usr/bin/seatload --version | head -n 1)" = "seatload $version" ] || fail "version"
root/usr/bin/seatload size root/usr/share/seatload/templates/ahead_latch.toml -n 1 --output papers >size.txt
ls papers/*-a.pdf papers/*-enquiry.pdf >/dev/null || fail "no papers"

if command -v lintian >/dev/null; then
    # Left out: that no bug of Debian's asks for the package.
    lintian --fail-on error,warning --suppress-tags initial-upload-closes-no-bugs "$program" "$library" || fail "lintian"
fi
