#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Races `seatload size` against a vectorised numpy loop over the same limits on the same requirement.

The loop tests every combination of a slice of the grid (one wire, one kind of ends); the program decides the same slice
and must count the same. Then the program decides the whole grid, and the two rates are compared, by the clock and by
processor time, which other programs on the machine disturb less. Of the program's processes the largest memory is told,
at most: Linux counts with it what this script had when it started them.

    race.py SEATLOAD [REQUIREMENT]
"""
import json
import math
import pathlib
import re
import resource
import subprocess
import sys
import tempfile
import time
import tomllib

import numpy as np

HERE = pathlib.Path(__file__).parent
GRADE, WIRE_MM = "EN10270-2-FDSiCr", 1.2
INCLUSIVE = 1e-9  # bounds are inclusive, with this slack of the bound
GOAL = 300.0
MOST_MB = 300.0


def run(seatload, requirement):
    """What `seatload size` says: combinations looked at, those that fit, and its own seconds for that."""
    command = [seatload, "size", "--no-papers", "-n", "1", str(requirement)]
    out = subprocess.run(command, capture_output=True, text=True, env={"COLUMNS": "200"})
    said = re.search(r"([\d ]+) combinations .*; ([\d ]+) fits? \(([\d.]+) s\)", out.stdout)
    if not said:
        sys.exit(out.stdout + out.stderr)
    return int(said[1].replace(" ", "")), int(said[2].replace(" ", "")), float(said[3])


def processor_seconds(who):
    used = resource.getrusage(who)
    return used.ru_utime + used.ru_stime


def number(text):
    return float(text.split()[0])


def band(text):
    low, _, high = text.partition(" .. ")
    return number(low), number(high)


def multiples(low, high, step):
    first, last = math.ceil(low / step - 1e-6), math.floor(high / step + 1e-6)
    return np.round(np.arange(first, last + 1) * step * 1e9) / 1e9


def tolerance_of_diameter(D, w):
    """EN 15800, grade 2, from the project's data file."""
    with open(HERE.parents[1] / "lib/data/en_15800.toml", "rb") as file:
        rows = tomllib.load(file)["coil_diameter"]["rows"]
    column = 5 if w <= 8.0 else 6 if w <= 14.0 else 7
    for row in rows:
        if number(row[0]) <= D <= number(row[1]):
            return number(row[column])
    return 0.0


def at_least(value, limit):
    return value >= limit - INCLUSIVE * abs(limit)


def at_most(value, limit):
    return value <= limit + INCLUSIVE * abs(limit)


class Loop:
    """The limits of the race's requirement on one wire, closed and ground."""

    def __init__(self, req, seatload):
        wire = json.loads(subprocess.run([seatload, "wire", GRADE, "--json"], capture_output=True, text=True).stdout)
        space, load, limits, grid = req["space"], req["load"], req["limits"], req["grid"]
        self.d = WIRE_MM
        rows = wire["strength"]["rows"]
        self.Rm = next(r["minimum_mpa"] for r in rows if r["wire_diameter_mm"] >= self.d - 1e-9)
        self.G, self.E = wire["moduli"][0]["shear_modulus_mpa"], wire["moduli"][0]["young_modulus_mpa"]
        self.d_plus = next(r["plus_minus_mm"] for r in wire["diameter_tolerance"] if r["up_to_mm"] >= self.d)
        T = number(req["surroundings"]["temperature"])
        self.in_service = T <= wire["service_limit_c"]
        self.hot = (1.0 - wire["shear_modulus_loss_per_kelvin"] * (T - 20.0)) * (1.0 - number(limits["load_loss"]) / 100)
        self.bore = band(space["bore"])[0] - number(limits["bore_clearance"])
        self.L1, self.L2 = number(space["seated_height"]), number(space["full_travel_height"])
        self.seated, self.full = band(load["seated"]), band(load["full_travel"])
        self.free = band(space["free_length"])
        self.margin = limits["buckling_margin"]
        self.D = multiples(max(0.63, 3.0 * self.d), min(200.0, 25.0 * self.d, band(space["bore"])[0] - self.d),
                           number(grid["mean_diameter_step"]))
        self.nt = multiples(3.0, 30.0, grid["total_coils_step"])
        self.L0 = multiples(max(self.free[0], self.L1), min(self.free[1], 3.0 * self.L1),
                            number(grid["free_length_step"]))

    def size(self):
        return len(self.D) * len(self.nt) * len(self.L0)

    def fit(self):
        return sum(int(np.count_nonzero(self.fitting(D))) for D in self.D)

    def fitting(self, D):
        d, w, G = self.d, D / self.d, self.G
        nt, L0 = self.nt[:, None], self.L0[None, :]
        n = nt - 2.0
        with np.errstate(divide="ignore", invalid="ignore"):
            rate = G * d**4 / (8.0 * D**3 * n)
            solid = nt * (d + self.d_plus)
            pitch = (L0 - 2.0 * d) / n
            growth = np.where(pitch > d, 0.1 * (pitch**2 - 0.8 * pitch * d - 0.2 * d**2) / D, 0.0)
            seated, full = rate * (L0 - self.L1), rate * (L0 - self.L2)
            stress = rate * (L0 - solid) * 8.0 * D / (math.pi * d**3)
            moduli = G / self.E
            nu, slender = 0.7, L0 / D
            root = 1.0 - (1.0 - moduli) / (0.5 + moduli) * (math.pi / (nu * slender)) ** 2
            buckling = np.where(root < 0.0, np.inf, L0 * 0.5 / (1.0 - moduli) * (1.0 - np.sqrt(np.maximum(root, 0.0))))
            reserve = np.where(L0 > self.L2, buckling / (L0 - self.L2), np.inf)
        good = (n > 0.0) & at_least(n, 2.0) & at_most(n, 1000.0)
        good = good & (self.in_service and at_least(w, 4.0) and at_most(w, 20.0) and at_most(w, 15.0) and d >= 0.5)
        good = good & at_most(D + d + tolerance_of_diameter(D, w) + growth, self.bore)
        good = good & at_least(L0, self.free[0]) & at_most(L0, self.free[1]) & at_least(L0, self.L1)
        good = good & at_least(L0, solid)
        good = good & at_least(seated * self.hot, self.seated[0]) & at_most(seated, self.seated[1])
        good = good & at_least(full * self.hot, self.full[0]) & at_most(full, self.full[1])
        good = good & at_least(self.L2 - solid, n * (0.0015 * D**2 / d + 0.1 * d))
        good = good & at_most(stress, 0.56 * self.Rm)
        return good & at_least(reserve, self.margin)


def slice_of(text, folder):
    """The requirement cut down to the loop's wire and ends."""
    wire = f'[wire]\ngrades = ["{GRADE}"]\ndiameters = ["{WIRE_MM:.2f} mm"]\n\n[coil]'
    part = text.replace("[coil]", wire).replace('["closed and ground", "closed"]', '["closed and ground"]')
    path = pathlib.Path(folder) / "slice.toml"
    path.write_text(part)
    return path


def main():
    seatload = sys.argv[1]
    requirement = pathlib.Path(sys.argv[2] if len(sys.argv) > 2 else HERE / "race.toml")
    text = requirement.read_text()
    loop = Loop(tomllib.loads(text), seatload)
    with tempfile.TemporaryDirectory() as folder:
        looked_at, counted, _ = run(seatload, slice_of(text, folder))
    start, started = time.perf_counter(), processor_seconds(resource.RUSAGE_SELF)
    fit = loop.fit()
    seconds, busy = time.perf_counter() - start, processor_seconds(resource.RUSAGE_SELF) - started
    if (loop.size(), fit) != (looked_at, counted):
        sys.exit(f"the loop counts {fit} of {loop.size()}, the program {counted} of {looked_at}")
    loop_rate, loop_busy_rate = loop.size() / seconds, loop.size() / busy
    print(f"numpy     {loop.size():.3g} combinations, {fit} fit, {seconds:.2f} s: {loop_rate:.3g} a second")
    started = processor_seconds(resource.RUSAGE_CHILDREN)
    looked_at, counted, seconds = run(seatload, requirement)
    busy = processor_seconds(resource.RUSAGE_CHILDREN) - started
    rate = looked_at / seconds
    print(f"seatload  {looked_at:.3g} combinations, {counted} fit, {seconds:.2f} s: {rate:.3g} a second")
    memory = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss * 1024 / 1e6
    print(f"ratio     {rate / loop_rate:.0f} (goal {GOAL:.0f})")
    print(f"processor {busy:.2f} s for all of seatload, its start and its simulation too: "
          f"{looked_at / busy / loop_busy_rate:.0f} times the loop's rate")
    print(f"memory    {memory:.0f} MB at most (goal {MOST_MB:.0f})")
    return 0 if rate >= GOAL * loop_rate and memory < MOST_MB else 1


if __name__ == "__main__":
    sys.exit(main())
