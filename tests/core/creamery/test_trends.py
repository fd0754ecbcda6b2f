"""Charts over makes of one recipe; limits by the handbook's worked example."""

import uuid

import pytest

from tests.core.builders import Phone, recipe

# NIST/SEMATECH e-Handbook 6.3.2.2: mean 50.81, limits 45.8159 and 55.8041.
FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]


def drained_recipe():
    found = recipe()
    for step in found["steps"]:
        if step["key"] == "cut":
            step["readings"] = [
                {"quantity": "ph", "when": "begin", "required": True},
                {"quantity": "whey_drained_l", "when": "end", "required": True},
            ]
    return found


def one_make(number, ph=None, salt=None, kg=None, floc_min=None):
    phone = Phone(make=str(uuid.uuid5(uuid.NAMESPACE_OID, str(number))))
    day = number * 1440
    opened = phone.opened(recipe=drained_recipe(), batch=f"B{number}")
    opened["at_ms"] += day * 60000
    events = [opened]
    if ph is not None:
        events.append(phone.reading("ph", ph, day + 60, "cut"))
    if salt is not None:
        events.append(phone.reading("cheese_salt_frac", salt, day + 90))
    if kg is not None:
        count = phone.event(
            "wheels_moulded", day + 70, size="small", count=30, mass_kg=kg
        )
        events.append(count)
    if floc_min is not None:
        events.append(phone.event("step_begun", day + 10, step="rennet"))
        sign = phone.event(
            "curd_judged", day + 10 + floc_min, judgement="flocculated", step="set"
        )
        events.append(sign)
    return events


def charts(ask, makes, recipe_id="small-wheel"):
    events = [event for make in makes for event in make]
    answers = ask.desk(("take", events), ("trends", recipe_id))
    assert answers[0]["problems"] == []
    return {row["key"]: row for row in answers[1]}


def test_points_come_in_the_order_of_the_makes(ask):
    makes = [one_make(number, ph=6.4 + number / 100) for number in (3, 1, 2)]
    points = charts(ask, makes)["ph_at_drain"]["points"]
    assert [point["batch"] for point in points] == ["B1", "B2", "B3"]
    assert [point["value"] for point in points] == pytest.approx([6.41, 6.42, 6.43])


def test_ten_makes_have_the_handbooks_limits(ask):
    makes = [one_make(n, salt=value / 1000) for n, value in enumerate(FLOW)]
    chart = charts(ask, makes)["salt"]["chart"]
    assert chart["limits"]["mean"] * 1000 == pytest.approx(50.81)
    assert chart["limits"]["low"] * 1000 == pytest.approx(45.8159, abs=2e-3)
    assert chart["verdict"] == "like_the_others"


def test_a_weighted_average_runs_beside_the_single_makes(ask):
    makes = [one_make(n, salt=value / 1000) for n, value in enumerate(FLOW)]
    average = charts(ask, makes)["salt"]["average"]
    # 0.3 × 49.6 + 0.7 × 50.81, then 0.3 × 47.6 of that, by hand.
    assert average["values"][0] * 1000 == pytest.approx(50.447)
    assert average["values"][1] * 1000 == pytest.approx(49.5929)
    # The single values' 4.9941 either way, times the root of 0.3 / 1.7: 2.0980.
    assert average["low"] * 1000 == pytest.approx(50.81 - 2.0980, abs=2e-3)
    assert average["high"] * 1000 == pytest.approx(50.81 + 2.0980, abs=2e-3)
    assert average["beyond"] == []


def test_a_small_shift_that_lasts_shows_in_the_average_alone(ask):
    # Nine makes about 50, then five of 52: the ranges suggest a spread near 1.
    values = [50, 51, 50, 49, 50, 51, 50, 49, 50, 52, 52, 52, 52, 52]
    makes = [one_make(n, salt=value / 1000) for n, value in enumerate(values)]
    row = charts(ask, makes)["salt"]
    assert row["chart"]["beyond"] == []
    assert row["average"]["beyond"][-1] == 13


def test_without_limits_or_spread_there_is_no_average(ask):
    few = [one_make(n, salt=value / 1000) for n, value in enumerate(FLOW[:9])]
    assert charts(ask, few)["salt"]["average"] is None
    alike = [one_make(n, salt=0.0178) for n in range(10)]
    assert charts(ask, alike)["salt"]["average"] is None
    assert charts(ask, few)["yield"]["average"] is None


def test_nine_makes_have_points_and_no_limits(ask):
    makes = [one_make(n, salt=value / 1000) for n, value in enumerate(FLOW[:9])]
    row = charts(ask, makes)["salt"]
    assert len(row["points"]) == 9
    assert row["chart"]["limits"] is None
    assert row["chart"]["verdict"] == "not_assessed"


def test_the_yield_is_cheese_over_milk(ask):
    # 51.5 kg from 500 L of 1.0350 kg/L (Goff: 4.00 % fat, 4.4 °C, printed 1.035).
    row = charts(ask, [one_make(1, kg=51.5)])["yield"]
    assert row["points"][0]["value"] == pytest.approx(51.5 / 517.5, rel=2e-3)


def test_the_floc_time_is_from_the_rennet(ask):
    row = charts(ask, [one_make(1, floc_min=11)])["floc_time"]
    assert row["points"][0]["value"] == 660


def test_makes_of_another_recipe_and_abandoned_ones_are_left_out(ask):
    makes = [one_make(1, ph=6.4), one_make(2, ph=6.4)]
    makes[1].append(
        Phone(device=1, make=makes[1][0]["make"]).event(
            "make_abandoned", 3000, why="drug test"
        )
    )
    assert len(charts(ask, makes)["ph_at_drain"]["points"]) == 1
    assert charts(ask, makes, "other")["ph_at_drain"]["chart"] is None


def test_a_make_whose_wheels_were_not_weighed_has_no_yield(ask):
    make = one_make(1)
    phone = Phone(device=1, make=make[0]["make"])
    make.append(phone.event("wheels_moulded", 1510, size="small", count=30))
    assert charts(ask, [make])["yield"]["points"] == []


def test_a_make_of_no_wheels_has_no_yield(ask):
    make = one_make(1)
    phone = Phone(device=1, make=make[0]["make"])
    make.append(phone.event("wheels_moulded", 1510, size="small", count=0, mass_kg=0.0))
    assert charts(ask, [make])["yield"]["points"] == []
