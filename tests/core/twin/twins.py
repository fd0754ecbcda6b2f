"""Builders for twins; all figures are invented but where a test names a source."""

import json

from server.core.twin import acts, begin, course
from tests.conftest import ROOT

RECIPE = json.loads((ROOT / "server" / "recipes" / "washed-wheel.json").read_text())
START_MS = 1_790_000_000_000
MIN_MS = 60_000
MILK_KG_L = 1.031
BULK_KG_KG = 0.0075  # GOUDA: 0.75 % of bulk starter
MOULDS = RECIPE["moulds"]


def twin(milk_l=500.0, temp_c=31.0, equipment=None, **milk):
    """Return a twin with milk in the vat."""
    of = {"volume_l": milk_l, "temp_c": temp_c, "ph": 6.6, **milk}
    made = begin.begin(equipment or {}, of, {}, 1, START_MS)
    acts.act(made, {"kind": "to_vat"})
    return made


def do(made, kind, at_min=None, **figures):
    """Let a twin go on until a minute after its begin, then do an act to it."""
    if at_min is not None:
        go(made, at_min)
    acts.act(made, {"kind": kind, **figures})


def go(made, at_min):
    course.advance(made, made["start_ms"] + int(at_min * MIN_MS))
    return made


def milk_kg(made):
    return made["milk"]["volume_l"] * MILK_KG_L


def started(made, times=1.0):
    """Add bulk starter, so many times the usual."""
    amount = milk_kg(made) * BULK_KG_KG * times
    do(made, "add", ingredient="starter_bulk", amount=amount, unit="kg")
    return made


def water_kg(made):
    return made["curd"]["water_kg"] + made["curd"]["whey_kg"]


def lactose_kg(made):
    return made["curd"]["lactose_kg"] + made["curd"]["whey_lactose_kg"]


def wheels(diameter_m, height_m, mass_kg, moisture_frac, mould=None):
    """Return one wheel without salt, of these very figures."""
    from server.core.twin.laws import pressing

    mould = mould or {
        "size": "one",
        "diameter_m": {"value": diameter_m},
    }
    wet_kg = mass_kg * moisture_frac
    row = pressing.fill(mould, 1, mass_kg - wet_kg, wet_kg, 13.0, START_MS)
    row["half_m"] = height_m / 2
    return row


def gouda():
    """Return a twin led as the published washed-curd make, and its pH by minute.

    A. Hill, University of Guelph, Gouda: 0.75 % starter, 190 mL of rennet for 1000
    kg after an hour, cut at 90 min, stirred 25 min, a third of the whey off, 22.5 %
    of water at 60 °C over 15 min, stirred, pressed at 210 min.
    """
    made = started(twin(temp_c=31.0))
    litres = made["milk"]["volume_l"]
    do(made, "add", ingredient="calcium_chloride", amount=0.15 * litres, unit="g")
    phs = {0: made["acid"]["ph"], 60: go(made, 60)["acid"]["ph"]}
    do(made, "add", ingredient="rennet", amount=0.19 * milk_kg(made), unit="mL")
    phs[90] = go(made, 90)["acid"]["ph"]
    do(made, "cut", size_mm=8.0)
    do(made, "drain", 115, l=0.3 * litres)
    drained_l = made["drained_l"]
    for part in range(10):
        do(made, "wash", 116 + 1.5 * part, l=0.0225 * litres, water_c=60.0)
    washed_c = made["vat"]["milk_c"]
    phs[180] = go(made, 180)["acid"]["ph"]
    do(made, "table")
    do(made, "bed", load_kg=0.06 * litres)
    rows = [{"mould": MOULDS[0], "count": 10}, {"mould": MOULDS[1], "count": 5}]
    do(made, "mould", 200, moulds=rows)
    for size, kpa in (("small", 30.0), ("large", 120.0)):
        do(made, "press", 210, size=size, gauge_kpa=kpa)
    phs[480] = go(made, 480)["acid"]["ph"]
    do(made, "brine", 16 * 60)
    do(made, "shelf", 16 * 60 + 48 * 60)
    phs["week"] = go(made, 7 * 24 * 60)["acid"]["ph"]
    return made, phs, washed_c, drained_l
