"""What can go wrong with a make, as data: a lever, where it is pulled, how far.

Steps are found by what they hold (`where.steps`), so the table fits others too.
Levers: `milk`, `equipment` (with `where`: from that step's begin and `after_s` on,
for `for_s`), `instrument`, `aim` (an act's figure), `late`, `omit`, `do` (an act on
top), `late_entry`, `typed` (read off in another unit), `clock`. Figures are invented,
each large enough to spoil a make, or to look as if it did.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

HOLD = {"heat_treatment": True}
HEAT = {"end": "reading", "quantity": "milk_temp_c", "direction": "at_least"}
COOL = {"end": "reading", "quantity": "milk_temp_c", "direction": "at_most"}
WASH = {"reads": "water_added_l"}
FLOC = {"end": "floc"}
PRESS_FIRST = {"presses": True, "nth": 0}
PRESSES = {"presses": True}
TURN_FIRST = {"turns": True, "nth": 0}
BRINE = {"place": "brine"}
STORE_LAST = {"place": "store", "reads": "store_temp_c"}
TABLE_FIRST = {"place": "table", "nth": 0}
STARTER = {"adds": "starter"}
RENNET = {"adds": "rennet"}
# Left running: water of the curd's own warmth, so that no thermometer tells.
HOSE = {"kind": "wash", "water_c": 35.0}
DAY_S = 86400.0


def _row(lever: str, field: "str | None" = None, **rest: "Any") -> "dict[str, Any]":
    row = {"lever": lever, "field": field}
    row.update(rest)
    return row


def _dip() -> "list[dict[str, Any]]":
    """Cold water gets into the jacket for a while, then it is heated again."""
    cold = {"kind": "cool", "to_c": 62.0}
    hot = {"kind": "heat", "to_c": 64.4, "air_c": 68.2}
    return [
        _row("do", where=HOLD, after_s=700.0, act=cold),
        _row("do", where=HOLD, after_s=1150.0, act=hot),
    ]


FAULTS: "dict[str, list[dict[str, Any]]]" = {
    "hold_dips": _dip(),
    "air_space_cold": [_row("equipment", "air_heat_w", times=0.15)],
    "phage": [_row("milk", "inhibitor_frac", value=0.93, where=RENNET)],
    "antibiotic": [_row("milk", "inhibitor_frac", value=0.9)],
    "slow_starter": [_row("equipment", "starter_strength", times=0.35)],
    "fast_starter": [_row("equipment", "starter_strength", times=2.5)],
    "rennet_double": [_row("equipment", "rennet_imcu_per_ml", times=2.0)],
    "rennet_third": [_row("equipment", "rennet_imcu_per_ml", times=1.0 / 3.0)],
    "half_the_milk": [_row("milk", "volume_l", times=0.5)],
    "wash_too_hot": [_row("aim", "to_c", add=16.0, where=WASH, act="temper_water")],
    "wash_too_cold": [_row("aim", "to_c", add=-22.0, where=WASH, act="temper_water")],
    "wash_too_much": [_row("do", where=WASH, after_s=200.0, act=HOSE, of_milk=0.14)],
    "turn_missed": [_row("omit", "step", where=TURN_FIRST)],
    "turn_late": [_row("late", "begin", add=5400.0, where=TURN_FIRST)],
    "store_turns_missed": [_row("omit", "turn", where={"place": "store"})],
    "thermometer_drifts": [
        _row("instrument", "milk_temp_c", of="drift_per_day", value=4.0)
    ],
    "thermometer_off": [_row("instrument", "milk_temp_c", of="offset", value=1.6)],
    "ph_meter_off": [_row("instrument", "ph", of="offset", value=0.25)],
    "weak_brine": [_row("equipment", "brine_frac", value=0.145)],
    "store_warm": [_row("equipment", "store_c", add=5.0, where=STORE_LAST)],
    "store_dry": [
        _row("equipment", "store_humidity_frac", value=0.68, where=STORE_LAST)
    ],
    "press_too_weak": [_row("aim", "gauge_kpa", times=0.3, where=PRESSES, act="press")],
    "press_heavy_early": [
        _row("aim", "gauge_kpa", times=20.0, where=PRESS_FIRST, act="press")
    ],
    "brined_too_long": [_row("late", "end", add=1.5 * DAY_S, where=BRINE)],
    "curd_cold_at_moulding": [
        _row("equipment", "room_c", value=6.0, where=TABLE_FIRST),
        _row("late", "end", add=2400.0, where=TABLE_FIRST),
    ],
    "heated_over": [
        _row("aim", "to_c", add=4.5, where=HEAT, act="heat"),
        _row("late", "end", add=1500.0, where=HEAT),
    ],
    "cooled_under": [
        _row("aim", "to_c", add=-5.0, where=COOL, act="cool"),
        _row("late", "end", add=2400.0, where=COOL),
    ],
    "cut_late": [_row("late", "end", add=1500.0, where=FLOC)],
    "calcium_forgotten": [_row("omit", "add", value="calcium_chloride")],
    "drug_test_positive": [_row("milk", "drug_residue", value=1.0)],
    "recorder_above_indicator": [_row("equipment", "recorder_off_k", value=0.8)],
    "power_cut_in_store": [
        _row(
            "equipment",
            "store_c",
            add=7.0,
            where=STORE_LAST,
            after_s=3.4 * DAY_S,
            for_s=1.2 * DAY_S,
        )
    ],
    "end_forgotten": [_row("late_entry", add=2700.0, where=TURN_FIRST)],
    "typed_fahrenheit": [
        _row("typed", "milk_temp_c", value="F", where=STARTER),
    ],
    "phone_clock_off": [_row("clock", value=-1500000, told=False)],
    "phone_clock_off_and_known": [_row("clock", value=-1500000, told=True)],
}
