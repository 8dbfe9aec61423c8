#!/usr/bin/env python3
"""One climate of several sources, packed into climate.bin.

    python3 make_climate.py FOLDER            the table of errors, and climate.bin beside this script

FOLDER holds world_clearness_1deg.csv, world_air_1deg.csv (MERRA-2, WMO normals, SILO),
climate_central_europe_1deg.csv (CM SAF), debilt_..., dublin_..., hamilton_au_daily_ghi*.csv. Needs numpy;
brotli, where it is there, for the weight.

How the sources are weighed: the world table is the first guess. Its error, as a share, is a random field: as wide as
`table_error` says, alike within some 500 km, partly the same all year and partly of a month. Every other figure is
an observation of that field with an error of its own. Optimal interpolation (Gaussian regression) gives the
correction of each cell, and what remains is the cell's own error. What each source is worth was chosen by leaving
stations out, see `validate`.
"""
import csv
import math
import re
import sys
from pathlib import Path

import numpy as np

HERE = Path(__file__).resolve().parent
SUN_STEPS = (0.01,) * 7
AIR_STEPS_K = (0.5,) * 5
RANGE_STEPS_K = (1.0, 1.0, 1.0)
HEIGHT_STEP_M = 100
ERROR_STEP = 0.01
SOUTH, WEST, ROWS, COLUMNS = -57, -180, 130, 360
MONTHS = np.arange(12)

# Level ground, kWh/m2 a day, January first: monthly means 1961-1990 of the National Solar Radiation Data Base (NREL,
# Solar Radiation Data Manual for Flat-Plate and Concentrating Collectors, 1994), from memory.
FLAT_PLATE_MANUAL = """
Phoenix 33.43 -112.02 3.2 4.3 5.5 7.1 8.0 8.4 7.6 7.1 6.1 4.9 3.6 3.0
Tucson 32.12 -110.93 3.4 4.3 5.5 7.1 7.9 8.1 7.0 6.6 6.0 5.0 3.8 3.1
Boulder 40.02 -105.25 2.4 3.3 4.4 5.6 6.2 6.9 6.7 6.0 5.0 3.8 2.6 2.1
Miami 25.80 -80.27 3.5 4.2 5.2 6.0 6.0 5.6 5.8 5.6 4.9 4.4 3.7 3.3
Albuquerque 35.05 -106.62 3.2 4.2 5.4 6.8 7.7 8.1 7.5 6.9 5.9 4.7 3.5 2.9
Las_Vegas 36.08 -115.17 3.0 4.0 5.4 6.9 7.8 8.4 7.9 7.2 6.2 4.7 3.4 2.8
Los_Angeles 33.93 -118.40 2.8 3.6 4.8 6.1 6.4 6.6 7.1 6.5 5.3 4.2 3.2 2.6
San_Francisco 37.62 -122.38 2.2 3.0 4.2 5.7 6.7 7.2 7.3 6.5 5.4 3.9 2.5 2.0
Portland 45.60 -122.60 1.1 1.8 3.0 4.2 5.3 5.9 6.3 5.4 4.1 2.5 1.3 1.0
Salt_Lake_City 40.77 -111.97 1.9 2.9 4.1 5.4 6.6 7.3 7.3 6.4 5.2 3.7 2.2 1.7
Boise 43.57 -116.22 1.6 2.5 3.9 5.3 6.5 7.2 7.5 6.4 5.1 3.4 1.8 1.4
Chicago 41.78 -87.75 1.8 2.6 3.5 4.6 5.7 6.3 6.1 5.4 4.2 3.0 1.9 1.5
Minneapolis 44.88 -93.22 1.8 2.7 3.9 4.8 5.7 6.3 6.3 5.4 4.1 2.7 1.7 1.4
New_York 40.78 -73.97 1.9 2.7 3.8 4.9 5.7 6.1 6.0 5.4 4.3 3.2 2.0 1.6
Boston 42.37 -71.03 1.9 2.7 3.7 4.7 5.6 6.1 6.1 5.4 4.3 3.0 1.9 1.5
Sterling 38.95 -77.45 2.1 2.9 3.9 4.9 5.6 6.2 6.0 5.4 4.5 3.4 2.3 1.8
Atlanta 33.65 -84.43 2.6 3.4 4.5 5.7 6.2 6.4 6.2 5.7 4.9 4.1 2.9 2.4
Houston 29.98 -95.37 2.7 3.4 4.2 5.0 5.6 6.0 5.9 5.6 4.9 4.3 3.1 2.5
Madison 43.13 -89.33 1.63 2.54 3.58 4.41 5.49 6.14 6.1 5.39 4.1 2.87 1.59 1.23
"""
# Typical years that pvlib-python 0.16.1 ships (pvlib/data, tests/data): sums over the months of the files. One chosen
# year for each month, so single months stray by some 10 %.
TYPICAL_YEARS = """
Sand_Point 55.32 -160.52 0.58 1.05 1.85 3.06 3.28 3.81 5.00 2.70 3.04 1.61 0.74 0.46
Greensboro 36.10 -79.95 2.41 3.06 4.25 5.41 5.64 6.25 6.08 5.61 4.43 3.59 2.43 2.24
Fairbanks 64.84 -147.70 0.17 0.73 2.59 4.37 5.56 5.99 4.76 3.71 2.32 0.94 0.24 0.06
Piedmont 45.00 8.00 1.54 2.39 3.82 4.05 4.83 7.21 6.62 5.76 4.52 2.87 2.02 1.49
Amsterdam 52.30 4.77 0.64 1.36 2.48 3.43 4.81 4.93 4.93 4.07 2.72 1.55 0.82 0.46
"""
# Bias of the world table by region on stations that had no part in it, as its makers state it, as share: middle of the
# region, bias, and how far to trust it (few stations; one series is older and darker; one is a single year).
STATED_BIAS = """
Argentina -34 -61 0.041 0.06
Brazil -15 -47 0.034 0.06
Canadian_prairie 51 -106 -0.031 0.05
Colombia 5 -74 0.028 0.06
South_Africa -30 25 -0.024 0.06
South_east_Asia 10 102 0.026 0.06
South_Asia 22 78 0.005 0.05
Spain 40 -4 0.039 0.05
United_Kingdom 53 -1.5 0.090 0.10
US_Midwest 41 -90 0.094 0.06
US_north_west 45 -120 -0.011 0.07
US_south_east 33 -85 0.049 0.04
US_south_west 35 -112 -0.038 0.07
US_in_2020 39 -97 0.081 0.10
"""
# The satellite table of central Europe above 18 measured stations of 1991-2020, January first, as stated with it.
SATELLITE_ABOVE = np.array([7, 5, 10, 8, 3, 6, 4, 4, 7, 4, 13, 12]) / 100
# Central Europe has grown brighter: recent years above the mean of 1991-2020 (De Bilt, `recent_mean`).
RECENT = 0.015
# Years ago that count half.
HALF_WEIGHT_YEARS = 15.0


def irradiation_above(latitude):
    """Mean daily irradiation above the atmosphere by month, Wh/m2 (Astronomical Almanac, low precision; 2025)."""
    la, days, out, day = math.radians(latitude), [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31], [], 9131.5
    for length in days:
        total = 0.0
        for _ in range(length):
            day += 1
            g = math.radians(357.528 + 0.9856003 * day)
            lon = math.radians(280.46 + 0.9856474 * day + 1.915 * math.sin(g) + 0.02 * math.sin(2 * g))
            dec = math.asin(math.sin(math.radians(23.439)) * math.sin(lon))
            r = 1.00014 - 0.01671 * math.cos(g)
            ws = math.acos(max(-1.0, min(1.0, -math.tan(la) * math.tan(dec))))
            total += 24 / math.pi * 1361.1 / r**2 * (
                math.cos(la) * math.cos(dec) * math.sin(ws) + ws * math.sin(la) * math.sin(dec))
        out.append(total / length)
    return np.array(out)


def rows(path):
    with open(path) as f:
        return np.array([[float(x) for x in row] for row in list(csv.reader(f))[1:]])


def distance_km(lat_a, lon_a, lat_b, lon_b):
    lat_a, lon_a, lat_b, lon_b = map(np.radians, (lat_a, lon_a, lat_b, lon_b))
    h = np.sin((lat_b - lat_a) / 2) ** 2 + np.cos(lat_a) * np.cos(lat_b) * np.sin((lon_b - lon_a) / 2) ** 2
    return 2 * 6371 * np.arcsin(np.sqrt(np.clip(h, 0, 1)))


class Cells:
    """Figures of 1-degree cells, read straight between their centres; sea counts a fifth of land."""

    def __init__(self, lat, lon, land, figures):
        self.at = {(math.floor(a), math.floor(o)): i for i, (a, o) in enumerate(zip(lat, lon))}
        self.land, self.figures = land, figures

    def read(self, lat, lon):
        y, x = lat - 0.5, lon - 0.5
        total, weights = 0.0, 0.0
        for row, up in ((math.floor(y), 1 - (y - math.floor(y))), (math.floor(y) + 1, y - math.floor(y))):
            for column, right in ((math.floor(x), 1 - (x - math.floor(x))), (math.floor(x) + 1, x - math.floor(x))):
                cell = self.at.get((row, (column + 180) % 360 - 180))
                if cell is not None:
                    weight = up * right * (1.0 if self.land[cell] else 0.2)
                    total, weights = total + weight * self.figures[cell], weights + weight
        return total / weights if weights > 1e-9 else None


def area(lat, lon):
    """A rough part of the world, for errors and for the table of them."""
    if lat < -10 and 112 < lon < 155:
        return "Australia"
    if lat < -30 and lon > 160:
        return "New Zealand"
    if 24 < lat < 50 and -127 < lon < -60 and not (lat < 26.5 and lon < -97):
        return "United States"
    if lat >= 48 and -170 < lon < -50:
        return "Canada, Alaska"
    if lon < -30 and lat >= 7:
        return "Central America"
    if lon < -30:
        return "South America"
    if 49.5 < lat < 61 and -11 < lon < 2:
        return "Britain, Ireland"
    if lat >= 54.5 and lon < 32:
        return "Nordic, Baltic"
    if 45 <= lat and lon < 25:
        return "Central Europe"
    if 35 <= lat and lon < 30:
        return "Southern Europe"
    if lat < -15 and lon < 60:
        return "Southern Africa"
    if lat < 38 and lon < 60:
        return "Africa, Arabia"
    return "Asia"


# Error of the world table and of the regions from memory, as shares of a month: what its makers found where they
# left stations out, and the regions against the stations below. Widened by 3 % for each kilometre of height.
TABLE_ERROR = {
    "Australia": 0.045, "New Zealand": 0.06, "United States": 0.085, "Canada, Alaska": 0.08, "Central America": 0.075,
    "South America": 0.065, "Britain, Ireland": 0.06, "Nordic, Baltic": 0.06, "Central Europe": 0.045,
    "Southern Europe": 0.065, "Southern Africa": 0.06, "Africa, Arabia": 0.08, "Asia": 0.075,
}
REGION_ERROR = {
    "Australia": 0.10, "New Zealand": 0.09, "United States": 0.06, "Canada, Alaska": 0.11, "Central America": 0.09,
    "South America": 0.12, "Britain, Ireland": 0.06, "Nordic, Baltic": 0.08, "Central Europe": 0.07,
    "Southern Europe": 0.06, "Southern Africa": 0.13, "Africa, Arabia": 0.10, "Asia": 0.09,
}
REACH_KM = 500.0
# Of the error's variance, what is the same all year.
ALL_YEAR = 0.65
# A cell is not a place: what neither source knows of a valley or a coast, as share.
PLACE_ERROR = 0.03


def regions():
    pattern = re.compile(r'r\("([^"]+)", (-?\d+), (-?\d+), (-?\d+), \[([\d,]+)\], \[([-\d,]+)\]')
    for path in sorted((HERE.parent / "regions").glob("*.rs")):
        for name, lat, lon, height, clearness, air in pattern.findall(path.read_text()):
            clearness, air = (np.array(figures.split(","), float) for figures in (clearness, air))
            yield name, int(lat) / 10, int(lon) / 10, int(height), clearness / 100, air


def recent_mean(path, lat, first_year):
    """Monthly mean clearness of daily sums, recent years counted as recent."""
    days = [(int(d[:4]), int(d[4:6]), float(v)) for d, v in list(csv.reader(open(path)))[1:]]
    last = max(year for year, _, _ in days)
    out = []
    for month in range(1, 13):
        kept = [(0.5 ** ((last - year) / HALF_WEIGHT_YEARS), v) for year, m, v in days if m == month and year >= first_year]
        out.append(sum(w * v for w, v in kept) / sum(w for w, _ in kept))
    return np.array(out) / irradiation_above(lat)


class Evidence:
    """Figures to hold the table against: place, log of the ratio by month, error as share, kind."""

    def __init__(self, folder):
        table = rows(folder / "world_clearness_1deg.csv")
        air = rows(folder / "world_air_1deg.csv")
        height = {(a, o): h for a, o, h in air[:, [0, 1, 3]]}
        self.lat, self.lon, self.land, self.table = table[:, 0], table[:, 1], table[:, 2] > 0.5, table[:, 3:15]
        self.height = np.array([height.get((a, o), 0.0) for a, o in zip(self.lat, self.lon)])
        self.cells = Cells(self.lat, self.lon, self.land, self.table)
        self.points = []

        def stations(text, error, kind):
            for line in text.split("\n"):
                name, *figures = line.split() or [""]
                if figures:
                    lat, lon, *sun = map(float, figures)
                    self.add(name, lat, lon, np.array(sun) * 1000 / irradiation_above(lat), error, kind)

        for name, lat, lon, _, clearness, _ in regions():
            self.add(name, lat, lon, clearness, REGION_ERROR[area(lat, lon)], "region")
        stations(FLAT_PLATE_MANUAL, 0.06, "station")
        stations(TYPICAL_YEARS, 0.09, "typical year")
        for name, file, lat, lon, first in (
            ("De_Bilt", "debilt_daily_ghi_even_years.csv", 52.10, 5.18, 1980),
            ("Dublin", "dublin_daily_ghi_even_years.csv", 53.43, -6.24, 1980),
            ("Hamilton", "hamilton_au_daily_ghi.csv", -37.65, 142.06, 2000),
        ):
            found = [p for p in (folder / file, folder / "world" / file, folder.parent / file) if p.exists()]
            self.add(name, lat, lon, recent_mean(found[0], lat, first), 0.025, "station")
        for line in STATED_BIAS.strip().split("\n"):
            name, lat, lon, bias, error = line.split()
            ratio = np.full(12, -math.log1p(float(bias)))
            self.points.append((name, float(lat), float(lon), ratio, float(error), "stated"))
        satellite = [p for p in (folder / "climate_central_europe_1deg.csv", folder.parent / "climate_central_europe_1deg.csv") if p.exists()]
        for row in rows(satellite[0]):
            lat, lon = row[:2]
            # The highest cells are where a cell says least of its valleys.
            self.add("satellite", lat, lon, row[2:] / (1 + SATELLITE_ABOVE) * (1 + RECENT), 0.08, "satellite")

    def add(self, name, lat, lon, clearness, error, kind):
        table = self.cells.read(lat, lon)
        lit = irradiation_above(lat) > 500
        if table is not None:
            ratio = np.where(lit, np.log(clearness / table), 0.0)
            self.points.append((name, lat, lon, np.clip(ratio, -0.4, 0.4), error, kind))

    def width(self, lat, lon, height):
        return math.hypot(TABLE_ERROR[area(lat, lon)], 0.03 * max(height, 0) / 1000)

    def weighed(self, points, lats, lons, heights):
        """Log of the correction by month, and the error that stays, at many places."""
        cells = self.cells
        lat = np.array([p[1] for p in points])
        lon = np.array([p[2] for p in points])
        height = Cells(self.lat, self.lon, self.land, self.height)
        wide = np.array([self.width(p[1], p[2], height.read(p[1], p[2]) or 0.0) for p in points])
        error = np.array([p[4] for p in points])
        ratio = np.array([p[3] for p in points])
        near = np.exp(-distance_km(lat[:, None], lon[:, None], lat[None], lon[None]) / REACH_KM)
        # Neighbouring cells of one table err together, so their error counts as a field of its own.
        satellite = np.array([p[5] == "satellite" for p in points])
        noise = np.diag(np.where(satellite, 0.03, error) ** 2)
        if satellite.any():
            noise += np.outer(satellite * error, satellite * error) * near
        prior = np.outer(wide, wide) * near
        year, month = ratio.mean(1), ratio - ratio.mean(1, keepdims=True)
        solve_year = np.linalg.inv(ALL_YEAR * prior + noise * 0.6)
        solve_month = np.linalg.inv((1 - ALL_YEAR) * prior + noise * 0.4)
        out, left = [], []
        for a, o, h in zip(lats, lons, heights):
            w = self.width(a, o, h)
            k = w * wide * np.exp(-distance_km(a, o, lat, lon) / REACH_KM)
            year_gain, month_gain = ALL_YEAR * k @ solve_year, (1 - ALL_YEAR) * k @ solve_month
            out.append(year_gain @ year + month_gain @ month)
            variance = w * w - ALL_YEAR * year_gain @ k - (1 - ALL_YEAR) * month_gain @ k
            left.append(math.sqrt(max(variance, 0.0) + PLACE_ERROR**2))
        return np.array(out), np.array(left)


# Where weather stations are many the table of air is right within 1.2 K; elsewhere, and on high plains far from any,
# it is not: Windhoek came out 5 K too cold. Error of the regions' air from memory, K.
MANY_STATIONS = ("Australia", "New Zealand", "United States", "Britain, Ireland", "Nordic, Baltic", "Central Europe", "Southern Europe")
REGION_AIR_ERROR_K = 1.5
# Coast and high plain differ within a day's drive.
AIR_REACH_KM = 300.0


def weighed_air(air):
    """The table of air at sea level corrected by the regions, in the same way as the sun."""
    lat, lon, land, height, sea = air[:, 0], air[:, 1], air[:, 2] > 0.5, air[:, 3], air[:, 4:16]
    cells, heights = Cells(lat, lon, land, sea), Cells(lat, lon, land, height)

    def width(a, o, h):
        return 1.2 if area(a, o) in MANY_STATIONS else 2.0 + 2.5 * max(h, 0) / 1000

    points = []
    for _, a, o, h, _, region in regions():
        table = cells.read(a, o)
        if table is not None:
            points.append((a, o, width(a, o, heights.read(a, o)), region + 6.5 * h / 1000 - table))
    p_lat, p_lon, p_width = (np.array([p[k] for p in points]) for k in range(3))
    off = np.array([p[3] for p in points])
    near = np.exp(-(distance_km(p_lat[:, None], p_lon[:, None], p_lat[None], p_lon[None]) / AIR_REACH_KM) ** 2)
    gain = np.linalg.inv(np.outer(p_width, p_width) * near + np.eye(len(points)) * REGION_AIR_ERROR_K**2) @ off
    out = sea.copy()
    for i in range(len(air)):
        k = width(lat[i], lon[i], height[i]) * p_width * np.exp(-(distance_km(lat[i], lon[i], p_lat, p_lon) / AIR_REACH_KM) ** 2)
        out[i] += k @ gain
    moved = np.abs(out - sea).mean(1)
    print(f"air moved by the regions: {moved.mean():.1f} K on average, {np.percentile(moved, 99):.1f} K at most but for 1 % of the cells")
    return out


def validate(evidence):
    """Every station left out in turn: errors of the table, of the nearest region, and of the weighed climate."""
    print(f"{'':20}{'table':>16}{'region':>16}{'weighed':>16}  stated")
    by_area = {}
    for station in [p for p in evidence.points if p[5] in ("station", "typical year")]:
        name, lat, lon, truth = station[:4]
        # A city's neighbours in the same book go with it: they would tell too much.
        kept = [p for p in evidence.points if p is not station and not (p[5] == "station" and distance_km(lat, lon, p[1], p[2]) < 150)]
        height = Cells(evidence.lat, evidence.lon, evidence.land, evidence.height).read(lat, lon) or 0.0
        fixed, left = evidence.weighed(kept, [lat], [lon], [height])
        near = min((p for p in evidence.points if p[5] == "region"), key=lambda p: distance_km(lat, lon, p[1], p[2]))
        lit = irradiation_above(lat) > 500
        table = -truth
        region = (near[3] + np.log(evidence.cells.read(near[1], near[2]) / evidence.cells.read(lat, lon)) - truth
                  if distance_km(lat, lon, near[1], near[2]) < 400 else None)
        line = f"{name:20}"
        entry = by_area.setdefault(area(lat, lon) if station[5] == "station" else "(typical years)", [])
        figures = []
        for error in (table, region, fixed[0] - truth):
            if error is None:
                line += f"{'-':>16}"
                figures.append(None)
                continue
            e = np.expm1(error[lit])
            figures.append((e.mean(), math.sqrt((e**2).mean())))
            line += f"{e.mean() * 100:+7.1f}{math.sqrt((e**2).mean()) * 100:7.1f} %"
        entry.append(figures)
        print(line + f"  {left[0] * 100:5.1f} %")
    print("\nby part of the world: mean, rms of a month; a typical year is one chosen year for each month, no truth")
    for name, entries in by_area.items():
        line = f"{name:20}"
        for source in range(3):
            found = [e[source] for e in entries if e[source]]
            line += (f"{np.mean([b for b, _ in found]) * 100:+7.1f}{math.sqrt(np.mean([r * r for _, r in found])) * 100:7.1f} %"
                     if found else f"{'-':>16}")
        print(line + f"  {len(entries)} stations")
    for source, label in enumerate(("table", "region", "weighed")):
        groups = [[e[source] for e in entries if e[source]] for name, entries in by_area.items() if name[0] != "("]
        groups = [g for g in groups if g]
        rms = math.sqrt(np.mean([np.mean([r * r for _, r in g]) for g in groups]))
        bias = np.mean([abs(np.mean([b for b, _ in g])) for g in groups])
        print(f"{label:8} groups equal: rms {rms * 100:.1f} %, mean |bias| {bias * 100:.1f} %")


def harmonics(figures, count):
    """Coefficients of 1, cos, sin, cos 2, sin 2 ... over the months."""
    base = [np.ones(12)]
    for k in range(1, 7):
        base += [np.cos(2 * np.pi * k * MONTHS / 12), np.sin(2 * np.pi * k * MONTHS / 12)]
    base = np.array(base[:count])
    return figures @ np.linalg.pinv(base), base


def plane(grid, known):
    """One byte a known cell, row by row from the south-west: zigzag of the step from what the neighbours let expect."""
    out = bytearray()
    for y in range(ROWS):
        for x in range(COLUMNS):
            if not known[y, x]:
                continue
            west = grid[y, x - 1] if x and known[y, x - 1] else None
            south = grid[y - 1, x] if y and known[y - 1, x] else None
            corner = grid[y - 1, x - 1] if x and y and known[y - 1, x - 1] else None
            if west is not None and south is not None and corner is not None:
                expected = max(min(west, south), min(max(west, south), west + south - corner))
            else:
                expected = next((v for v in (west, south, corner) if v is not None), 0)
            step = int(grid[y, x] - expected)
            code = 2 * step if step >= 0 else -2 * step - 1
            assert code < 256, (y, x, step)
            out.append(code)
    return bytes(out)


def runs(known):
    """Lengths of the runs of unknown and known cells in turn, row by row, low seven bits first."""
    out, now, length = bytearray(), False, 0

    def put(n):
        while n > 127:
            out.append(n & 127 | 128)
            n >>= 7
        out.append(n)

    for cell in known.ravel():
        if bool(cell) != now:
            put(length)
            now, length = not now, 0
        length += 1
    put(length)
    return bytes(out)


def pack(evidence, folder):
    air = rows(folder / "world_air_1deg.csv")
    air[:, 4:16] = weighed_air(air)
    air_at = {(a, o): row for a, o, row in zip(air[:, 0], air[:, 1], air)}
    fixed, left = evidence.weighed(evidence.points, evidence.lat, evidence.lon, evidence.height)
    clearness = evidence.table * np.exp(fixed)
    keep = np.array([(a, o) in air_at for a, o in zip(evidence.lat, evidence.lon)])
    lat, lon, clearness, left, land = (v[keep] for v in (evidence.lat, evidence.lon, clearness, left, evidence.land))
    sea_level = np.array([air_at[key] for key in zip(lat, lon)])
    y, x = np.floor(lat).astype(int) - SOUTH, np.floor(lon).astype(int) - WEST
    known = np.zeros((ROWS, COLUMNS), bool)
    known[y, x] = True

    def grid(figures):
        out = np.zeros((ROWS, COLUMNS), int)
        out[y, x] = figures
        return out

    planes, checks = [], []
    for figures, steps in ((clearness, SUN_STEPS), (sea_level[:, 4:16], AIR_STEPS_K), (sea_level[:, 16:28], RANGE_STEPS_K)):
        coefficients, base = harmonics(figures, len(steps))
        whole = np.round(coefficients / steps).astype(int)
        planes += [plane(grid(whole[:, k]), known) for k in range(len(steps))]
        checks.append((whole * steps) @ base - figures)
    planes.append(plane(grid(np.round(sea_level[:, 3] / HEIGHT_STEP_M)), known))
    planes.append(plane(grid(np.round(left / ERROR_STEP)), known))
    planes.append(plane(grid(land.astype(int)), known))
    mask = runs(known)
    body = b"NBC2" + len(mask).to_bytes(4, "little") + mask + b"".join(planes)
    (HERE / "climate.bin").write_bytes(body)
    print(f"\n{len(lat)} cells, {len(body)} bytes", end="")
    try:
        import brotli
        print(f", {len(brotli.compress(body, quality=11))} with brotli", end="")
    except ImportError:
        pass
    print(f"\npacking adds: sun {np.sqrt(np.mean((checks[0] / clearness) ** 2)) * 100:.1f} % rms, air {np.sqrt(np.mean(checks[1]**2)):.2f} K, "
          f"range {np.sqrt(np.mean(checks[2]**2)):.2f} K; stated error {left.min() * 100:.1f} to {left.max() * 100:.1f} %")
    print(f"corrections: {np.percentile(fixed.mean(1), [1, 25, 50, 75, 99]).round(3)}")


def main():
    folder = Path(sys.argv[1])
    evidence = Evidence(folder)
    validate(evidence)
    pack(evidence, folder)


main()
