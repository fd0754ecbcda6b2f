"""Until when each fault can still be mended, and which matter should tell of it.

A row says the words of the matters that are the right ones ("reading/ph", "late/set"),
and a step until whose begin or end (and so much longer) telling still helps, with why.
A fault that nothing in a creamery could tell of, or that the tool makes harmless, has
no matter: it must be told of nothing.
"""

DAY_S = 86400.0


def _row(
    matters: "list[str]", until: "str | None", moment: str, add_s: float, why: str
) -> "dict[str, object]":
    return {
        "matters": matters,
        "until": until,
        "moment": moment,
        "add_s": add_s,
        "why": why,
    }


# Steps are found by what they hold, as in `table`, or named where none other is meant.
MENDABLE = {
    "hold_dips": _row(
        ["milk_temp_c", "air_space_temp_c", "hold"],
        "hold",
        "end",
        0.0,
        "The hold begins again while the milk is still in the vat.",
    ),
    "air_space_cold": _row(
        ["air_space_temp_c", "hold"],
        "hold",
        "end",
        0.0,
        "The air space is heated and the hold begins again.",
    ),
    "phage": _row(
        ["ph", "acid"],
        "turn_2",
        "begin",
        0.0,
        "A second starter helps until the curd is pressed for the night.",
    ),
    "antibiotic": _row(
        ["ph", "acid"],
        "turn_2",
        "begin",
        0.0,
        "Nothing sours it; it is kept apart before the night.",
    ),
    "slow_starter": _row(
        ["ph", "acid"], "turn_2", "begin", 0.0, "Kept warm, it comes up by the night."
    ),
    "fast_starter": _row(
        ["ph", "acid"],
        "wash_2",
        "end",
        0.0,
        "More water takes the sugar that would be acid.",
    ),
    "rennet_double": _row(
        ["floc", "past_it", "late/set"],
        "set",
        "end",
        0.0,
        "It is cut when it is firm, not when the clock says so.",
    ),
    "rennet_third": _row(
        ["floc", "late/set"], "set", "end", 0.0, "It is given time before it is cut."
    ),
    "half_the_milk": _row(
        ["milk_volume_l"],
        "starter",
        "begin",
        0.0,
        "Doses and moulds follow the milk that is there.",
    ),
    "wash_too_hot": _row(
        ["water_temp_c"], "wash_1", "end", 0.0, "Cold water goes in before more hot."
    ),
    "wash_too_cold": _row(
        ["water_temp_c"], "wash_2", "begin", 0.0, "The second wash makes up for it."
    ),
    "wash_too_much": _row(
        ["water_added_l", "curd_temp_c"],
        "wash_2",
        "begin",
        0.0,
        "The second wash is left smaller.",
    ),
    "turn_missed": _row(["begin_late"], "press_2", "end", 0.0, "It is turned then."),
    "turn_late": _row(["begin_late"], "press_2", "begin", 0.0, "It is turned then."),
    "store_turns_missed": _row(
        ["turn_late"],
        "store",
        "begin",
        4 * DAY_S,
        "A wheel that lies on one side for days flattens and spots.",
    ),
    "thermometer_drifts": _row(
        ["milk_temp_c", "thermometer"],
        "hold",
        "end",
        0.0,
        "Another thermometer is read before the hold is called good.",
    ),
    "thermometer_off": _row(
        ["milk_temp_c", "thermometer"],
        "hold",
        "end",
        0.0,
        "Another thermometer is read before the hold is called good.",
    ),
    "ph_meter_off": _row(
        ["ph", "acid"], "rennet", "begin", 0.0, "It is set on its standard."
    ),
    "weak_brine": _row(
        ["brine_salt_frac"],
        "brine_small",
        "begin",
        14400.0,
        "Salt is added before the rind softens.",
    ),
    "store_warm": _row(
        ["store_temp_c"],
        "store",
        "begin",
        2 * DAY_S,
        "The store is cooled before gas forms.",
    ),
    "store_dry": _row(
        ["store_humidity_frac"],
        "store",
        "begin",
        2 * DAY_S,
        "The air is wetted before the coat cracks.",
    ),
    "press_too_weak": _row(
        ["press_gauge_kpa"], "press_1", "end", 0.0, "The pressure is raised then."
    ),
    "press_heavy_early": _row(
        ["press_gauge_kpa"],
        "press_1",
        "begin",
        600.0,
        "A skin that closes early keeps the whey in.",
    ),
    "brined_too_long": _row(
        ["late/brine"],
        "brine_small",
        "end",
        0.0,
        "The wheels come out before the salt is too much.",
    ),
    "curd_cold_at_moulding": _row(
        ["late/to_table"], "to_table", "end", 0.0, "The bed is covered while warm."
    ),
    "heated_over": _row(
        ["milk_temp_c", "late/heat"], "hold", "end", 0.0, "The heat is turned down."
    ),
    "cooled_under": _row(
        ["late/cool", "milk_temp_c"],
        "starter",
        "end",
        0.0,
        "The milk is warmed before the starter goes in.",
    ),
    "cut_late": _row(
        ["late/set", "past_it"], "set", "end", 0.0, "It is cut before it tears."
    ),
    "calcium_forgotten": _row(
        ["calcium_chloride", "dose"],
        "rennet",
        "end",
        0.0,
        "It goes in before the rennet does.",
    ),
    "drug_test_positive": _row(
        ["drug_test"], "to_vat", "begin", 0.0, "The milk is kept apart."
    ),
    "recorder_above_indicator": _row(
        ["recorder"], "mark_chart", "end", 0.0, "The recorder is set and the hold read."
    ),
    "power_cut_in_store": _row(
        ["store_temp_c"],
        "store",
        "begin",
        5.5 * DAY_S,
        "Two days of warmth before gas forms; it began on the fourth day.",
    ),
    "end_forgotten": _row(
        ["late/turn_1"], "turn_1", "end", 0.0, "The end is written down by its time."
    ),
    "typed_fahrenheit": _row(
        ["milk_temp_c"], "starter", "end", 0.0, "It is corrected before starter."
    ),
    # A phone says itself that its clock is off, and nothing rings for the make.
    "phone_clock_off": _row([], None, "end", 0.0, "It is told by the phone."),
    "phone_clock_off_and_known": _row([], None, "end", 0.0, "It is corrected."),
}
