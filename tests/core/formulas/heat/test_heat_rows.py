import pytest


def figure(value, status="read"):
    return {"value": value, "status": status}


ROW = {
    "key": "vat_30_min",
    "vessels": figure(["vat"]),
    "min_temp": {"C": figure(63)},
    "hold_s": figure(1800),
    "supplement": "applies",
}
RULE = {
    "rows": [ROW],
    "supplement": {
        "fat_min_frac": figure(0.10),
        "sweetened": True,
        "rise": {"C": figure(3)},
    },
    "gap_max_s": figure(120, "setting"),
}


def readings(temp, minutes):
    return [{"at_ms": m * 60000, "temp": temp} for m in range(minutes + 1)]


def judge(core, rows, row=ROW, rule=RULE, unit="C", **product):
    product = {"vessel": "vat", "fat_frac": 0.04, **product}
    return core("formulas.heat.heat_rows", "judge_row", row, rows, unit, product, rule)


@pytest.mark.parametrize(
    ("temp", "minutes", "state"),
    [(63, 30, "met"), (63, 29, "not_met"), (62.9, 60, "not_met")],
)
def test_a_row_is_met_at_its_figures_and_not_below(core, temp, minutes, state):
    assert judge(core, readings(temp, minutes))["state"] == state


def test_the_hold_that_was_judged_is_shown(core):
    found = judge(core, readings(64, 31))
    assert found["hold"] == {
        "row": "vat_30_min",
        "min_temp": 63,
        "air_min_temp": None,
        "start_ms": 0,
        "end_ms": 1860000,
        "held_s": 1860,
        "needed_s": 1800,
    }


def test_a_rule_without_airspace_asks_none(core):
    assert judge(core, readings(63, 30))["reasons"] == []


def test_rich_milk_is_tried_at_the_raised_temperature(core):
    found = judge(core, readings(65, 30), fat_frac=0.10)
    assert found["state"] == "not_met"
    assert judge(core, readings(66, 30), fat_frac=0.10)["hold"]["min_temp"] == 66


def test_a_row_that_was_never_reached_gives_no_reason_of_its_own(core):
    assert judge(core, readings(40, 60))["reasons"] == []


def test_another_vessel_can_leave_a_row_open_but_never_meet_it(core):
    row = dict(ROW, vessels=figure(["flow"]))
    assert judge(core, readings(63, 30), row=row)["state"] == "unknown"
    assert judge(core, readings(63, 20), row=row)["state"] == "not_met"


def test_a_setting_of_the_tool_counts_as_known(core):
    assert judge(core, readings(63, 30))["state"] == "met"


@pytest.mark.parametrize("status", ["read", "secondary"])
def test_a_figure_read_elsewhere_counts(core, status):
    row = dict(ROW, hold_s=figure(1800, status))
    assert judge(core, readings(63, 30), row=row)["state"] == "met"


def test_a_unit_that_is_not_printed_is_unknown(core):
    found = judge(core, readings(150, 30), unit="F")
    assert found["state"] == "unknown"
    assert found["reasons"] == [
        {"key": "rule_not_printed_in_unit", "row": "vat_30_min"}
    ]
