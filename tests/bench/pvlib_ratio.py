"""The same work in NumPy and pvlib, and how many times faster or slower it is.

Needs: pip install pvlib (0.16.1 was used). Run: python3 tests/bench/pvlib_ratio.py
Not part of the checks; prints figures only.

Work: the sun of 14 nights at 50 N 8 E for a flat 150 W panel at sixteen clearness values, then 2,000
weather sequences of daily clearness, each played hour by hour through an AGM battery in half-hour
steps with rested voltage, resistance, charge efficiency and absorption taper. NumPy steps all
sequences at once; the project's own benchmark plays them one after the other.
"""

import re
import subprocess
import sys
import time

import numpy as np
import pandas as pd
import pvlib

NIGHTS, SEQUENCES, BINS = 14, 2000, 16
HOURS = 8 + 24 + 24 * (NIGHTS - 1) - 16 + 2
DAYS = (16 + HOURS + 23) // 24
CAPACITY, R, BULK, ABS = 100.0, 0.009, 30.0, 14.5
OCV = np.interp(np.linspace(0, 1, 21), [0, 0.25, 0.5, 0.75, 1.0], [11.65, 11.95, 12.24, 12.53, 12.85])
ETA = np.interp(np.linspace(0, 1, 21), [0, 0.8, 0.9, 0.95, 1.0], [0.985, 0.985, 0.93, 0.88, 0.80])
GRID = np.linspace(0, 1, 21)


def sun_table():
    """Power of the panel by day, hour and clearness, from four samples an hour."""
    start = pd.Timestamp("2026-06-15", tz="UTC") - pd.Timedelta(minutes=60)
    times = pd.DatetimeIndex([start + pd.Timedelta(minutes=15 * (i + 0.5)) for i in range(DAYS * 96)])
    sun = pvlib.solarposition.spa_python(times, 50.0, 8.0, altitude=100)
    extra = pvlib.irradiance.get_extra_radiation(times)
    clear = pvlib.clearsky.haurwitz(sun.apparent_zenith).ghi.to_numpy().reshape(DAYS, 96)
    top = (extra * np.cos(np.radians(sun.zenith)).clip(lower=0)).to_numpy().reshape(DAYS, 96)
    table = np.zeros((DAYS, BINS, 24))
    for bin_ in range(1, BINS):
        scale = bin_ * 0.06 * top.sum(1) / clear.sum(1)
        ghi = pd.Series((clear * scale[:, None]).ravel(), index=times)
        split = pvlib.irradiance.erbs(ghi, sun.zenith, times)
        plane = pvlib.irradiance.get_total_irradiance(
            0, 180, sun.apparent_zenith, sun.azimuth, split["dni"], ghi, split["dhi"], dni_extra=extra,
            model="haydavies", albedo=0.2,
        )["poa_global"].fillna(0.0)
        cell = pvlib.temperature.sapm_cell(plane, 14.0, 2.0, **pvlib.temperature.TEMPERATURE_MODEL_PARAMETERS["sapm"]["close_mount_glass_glass"])
        power = 150.0 * plane / 1000 * (1 - 0.0035 * (cell - 25)) * 0.89
        table[:, bin_, :] = power.to_numpy().reshape(DAYS, 24, 4).mean(2)
    return table


def play(table, load_w=60.0):
    """All sequences at once; returns the share that lasts each night."""
    rng = np.random.default_rng(1)
    z = np.zeros((SEQUENCES, DAYS))
    z[:, 0] = rng.standard_normal(SEQUENCES)
    for day in range(1, DAYS):
        z[:, day] = 0.36 * z[:, day - 1] + np.sqrt(1 - 0.36**2) * rng.standard_normal(SEQUENCES)
    k = np.interp(z, [-2.5, -1, 0, 1, 2.5], [0.06, 0.22, 0.42, 0.61, 0.72])
    soc = np.ones(SEQUENCES)
    low_at = np.full(SEQUENCES, HOURS)
    for hour in range(HOURS):
        day, of_day = divmod(16 + hour, 24)
        place = np.clip(k[:, day] / 0.06, 0, BINS - 1.001)
        below = place.astype(int)
        part = place - below
        power = table[day, below, of_day] * (1 - part) + table[day, below + 1, of_day] * part
        for _ in range(2):
            surplus = power - load_w
            volts = np.interp(soc, GRID, OCV)
            eta = np.interp(soc, GRID, ETA)
            draw = np.maximum(-surplus, 0)
            out = 2 * draw / (volts + np.sqrt(np.maximum(volts**2 - 4 * R * draw, 0)))
            missing = (1 - soc) * CAPACITY
            most = np.minimum(missing / 1.0, BULK)
            rp = np.maximum(ABS - volts, 0.02) / np.maximum(most, 1e-9)
            into = 2 * np.maximum(surplus, 0) / (volts + np.sqrt(volts**2 + 4 * rp * np.maximum(surplus, 0)))
            gain = np.minimum(eta * np.minimum(into, most) * 0.5, missing * (1 - np.exp(-eta * 0.5)))
            soc = np.clip(soc + np.where(surplus > 0, gain, -out * 0.5) / CAPACITY, 0, 1)
        low_at = np.where((low_at == HOURS) & (soc < 0.5), hour, low_at)
    mornings = 16 + 24 * np.arange(NIGHTS)
    return [(low_at >= m).mean() for m in mornings]


def best(times, work):
    spans = []
    for _ in range(times):
        start = time.perf_counter()
        result = work()
        spans.append(time.perf_counter() - start)
    return min(spans), result


def main():
    sun_s, table = best(2, sun_table)
    play_s, _ = best(3, lambda: play(table))
    hours = SEQUENCES * HOURS
    print(f"NumPy {np.__version__}, pvlib {pvlib.__version__}")
    print(f"sun table, 14 nights:            {sun_s * 1e3:8.1f} ms")
    print(f"{SEQUENCES} sequences, 14 nights:     {play_s * 1e3:8.1f} ms, {hours / play_s / 1e6:.2f} million hours a second")
    run = subprocess.run(["cargo", "bench", "--bench", "odds"], capture_output=True, text=True)
    figures = dict(re.findall(r"^(.*?):\s+([\d.]+)", run.stdout, re.M))
    own_sun = next((float(v) for key, v in figures.items() if key.startswith("sun table")), None)
    own_odds = next((float(v) for key, v in figures.items() if key.startswith("odds, ")), None)
    if own_sun is None or own_odds is None:
        sys.exit("cargo bench --bench odds did not print its figures:\n" + run.stderr[-2000:])
    print(run.stdout.strip())
    print(f"ratio, sun table:                {sun_s * 1e3 / own_sun:8.1f} times faster here")
    print(f"ratio, odds:                     {play_s * 1e3 / own_odds:8.1f} times faster here")


if __name__ == "__main__":
    main()
