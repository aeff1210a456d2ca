# Reckons again what the consumer's program prints of its spring: R = G d^4 / (8 D^3 n) (EN 13906-1, clause 9.4) and
# F = R (L0 - L) at 15 mm and 9 mm, each to half a unit of the last printed digit; and that it is what was needed: the
# outside within the bore of 9 mm, 4.8 N to 6.5 N seated, at most 13.5 N at full travel. Numbers are found by the word
# before them.
function after(word, i) {
    for (i = 1; i < NF; i++) if ($i == word) return $(i + 1) + 0
    return wrong("no " word)
}
function wrong(what) { print "wrong: " what; failed = 1; return 0 }
function near(found, reckoned, within, what) {
    if (found - reckoned > within || reckoned - found > within) wrong(what ": " found " for " reckoned)
}
/combinations fit/ { fitting = $1; of = $3 }
/: d / { gsub(/,/, ""); d = after("d") ? $3 + 0 : 0; D = after("D"); n = after("n"); L0 = after("L0"); G = after("G") }
/^gives/ { R = $2 + 0; F1 = $4 + 0; F2 = $7 + 0 }
END {
    if (!(fitting > 0 && of > fitting)) wrong("counts")
    near(R, G * d^4 / (8 * D^3 * n), 0.00005, "rate")
    near(F1, R * (L0 - 15), 0.0005 + 0.00005 * (L0 - 15), "seated load")
    near(F2, R * (L0 - 9), 0.0005 + 0.00005 * (L0 - 9), "load at full travel")
    if (D + d >= 9) wrong("outside diameter")
    if (F1 < 4.8 || F1 > 6.5 || F2 > 13.5) wrong("loads")
    exit failed
}
