"""What a step shows, what its sum answers and what an alert compares is one number."""

import copy

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from server.core.recipe.own import target_name
from server.core.recipe.route import route
from tests.conftest import through_json
from tests.core.builders import MAKE, Phone, at
from tests.core.figures.test_figure import HOUSE, SIZES
from tests.core.sums.asking import RULES

OTHER = "0193a5b0-0000-7000-8000-00000000000c"
ROUTE = route(HOUSE, "pasteurised")["steps"]
STEPS = [step["key"] for step in ROUTE]
# Those whose figures sums answer, and one beside them.
ASKED = ["heat", "ripen", "rennet", "set", "wash_1", "press_1", "brine_small", "store"]
EQUIPMENT = {
    "strength_imcu_per_ml": st.sampled_from([200.0, 650.0]),
    "form": st.sampled_from(["anhydrous", "dihydrate"]),
    "bore_m": st.just(0.08),
    "length_m": st.just(1.2),
    "width_m": st.just(0.6),
    "pack_units": st.just(50.0),
    "dose_units_per_l": st.just(0.1),
}
READ = {
    "milk_volume_l": [400.0, 640.0],
    "milk_mass_kg": [500.0],
    "milk_temp_c": [4.0, 31.5, 64.0],
    "curd_temp_c": [31.0, 32.5, 36.0],
    "water_temp_c": [50.0, 62.0],
    "whey_drained_l": [150.0, 200.0],
    "water_added_l": [30.0],
    "jacket_temp_c": [70.0],
    "brine_salt_frac": [0.18, 0.21],
    "cheese_salt_frac": [0.015, 0.022],
    "water_salt_ratio": [1.5],
    "bed_load_kg": [50.0],
    "press_gauge_kpa": [40.0, 120.0],
}
DOSES = {"rennet": "mL", "calcium_chloride": "g", "starter": "pack"}


@st.composite
def entries(draw, phone):
    """Return one entry of a make of the house recipe, at any minute of its day."""
    minute = draw(st.integers(1, 300))
    step = draw(st.sampled_from(ASKED))
    what = draw(
        st.sampled_from(["begin", "end", "read", "read", "dose", "set", "floc"])
    )
    if what == "begin":
        return phone.event("step_begun", minute, step=step, why="Test.")
    if what == "end":
        return phone.event("step_ended", minute, step=step, why="Test.")
    if what == "floc":
        return phone.event("curd_judged", minute, judgement="flocculated", step="set")
    if what == "set":
        key = draw(st.sampled_from(sorted(EQUIPMENT)))
        return phone.event("equipment_set", minute, key=key, value=draw(EQUIPMENT[key]))
    if what == "dose":
        key = draw(st.sampled_from(sorted(DOSES)))
        amount = draw(st.sampled_from([1.2, 90.0, 118.0, 157.5]))
        data = {"ingredient": key, "amount": amount, "unit": DOSES[key]}
        return phone.event("ingredient_added", minute, step=step, **data)
    quantity = draw(st.sampled_from(sorted(READ)))
    value = draw(st.sampled_from(READ[quantity]))
    data = {"quantity": quantity, "value": value}
    if quantity.startswith("cheese"):
        data["place"] = "small"
    named = draw(st.booleans())
    return phone.event(
        "reading_taken", minute, **data, **({"step": step} if named else {})
    )


@st.composite
def makes(draw):
    """Return the entries of two makes in one vat, as they arrive."""
    events = []
    for make in (MAKE, OTHER):
        phone = Phone(make=make)
        opened = phone.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES, vat="One")
        count = draw(st.integers(0, 14 if make == MAKE else 5))
        events += [opened, *(draw(entries(phone)) for _ in range(count))]
    return events


def kept_through(events, now_min):
    """Return a desk that was looked at after each entry."""
    desk = desk_of.new()
    desk_of.set_rules(desk, RULES)
    for event in copy.deepcopy(events):
        assert desk_of.take(desk, [event])["problems"] == []
        desk_of.view(desk, MAKE, at(now_min))
    return desk


def from_nothing(events):
    desk = desk_of.new()
    desk_of.set_rules(desk, RULES)
    assert desk_of.take(desk, copy.deepcopy(events))["problems"] == []
    return desk


def bound(step):
    """Yield (name in the Step, binding) of the figures of a step that name a sum."""
    if (step["lasts"] or {}).get("by"):
        yield "lasts", step["lasts"]["by"]
    for row in step.get("targets", []):
        if row["figure"].get("by"):
            yield target_name(row), row["figure"]["by"]
    for key in step.get("adds", []):
        (row,) = [row for row in HOUSE["ingredients"] if row["key"] == key]
        if row["dose"]["amount"].get("by"):
            yield "dose/" + key, row["dose"]["amount"]["by"]


def shown(step, name):
    """Return (value, low, high, origin) of a figure as a Step shows it."""
    if name == "lasts":
        lasts = step["lasts"]
        return [lasts[end + "_s"] for end in ("value", "low", "high")], lasts["origin"]
    kind, key, *size = name.split("/")
    if kind == "dose":
        (row,) = [add["planned"] for add in step["adds"] if add["ingredient"] == key]
    else:
        (row,) = [
            row
            for row in step["targets"]
            if (row["quantity"], row["size"]) == (key, size[0] if size else None)
        ]
    return [row[end] for end in ("value", "low", "high")], row["origin"]


def answers(desk, step, by, now_min):
    """Return what the sum of a binding answers on the screen of the step's sums."""
    size = by.get("size") or step.get("size")
    for told in desk_of.step_sums(desk, MAKE, step["key"], at(now_min), None):
        if told["key"] == by["sum"] and told["of"] in (None, size):
            names = by["value"] if isinstance(by["value"], list) else [by["value"]]
            return [
                value["value"]
                for name in names
                for value in told["values"]
                if value["name"] == name
            ]
    return None


@settings(max_examples=25, deadline=None)
@given(makes(), st.integers(1, 400))
def test_a_step_shows_what_its_sum_answers_and_alerts_compare_with_that(
    events, now_min
):
    desk = kept_through(events, now_min)
    alerts = desk_of.view(desk, MAKE, at(now_min))["alerts"]
    for step in ROUTE:
        full = desk_of.step(desk, MAKE, step["key"], at(now_min))
        for name, by in bound(step):
            (value, low, high), origin = shown(full, name)
            if origin["from"] == "sum":
                told = answers(desk, step, by, now_min)
                assert told is None or pytest.approx(value, rel=1e-12) in told
            else:
                assert (value, origin["fell_back"] is None) == (origin["own"], False)
            for alert in alerts:
                if (
                    alert["step"] == step["key"]
                    and alert["quantity"] == name.split("/")[-1]
                ) and alert["form"] == "quantity":
                    assert (alert["low"], alert["high"]) == (low, high)


@settings(max_examples=25, deadline=None)
@given(makes(), st.integers(1, 400))
def test_figures_kept_from_tap_to_tap_are_those_worked_out_from_nothing(
    events, now_min
):
    kept, fresh = kept_through(events, now_min), from_nothing(events)
    assert through_json(desk_of.view(kept, MAKE, at(now_min))) == through_json(
        desk_of.view(fresh, MAKE, at(now_min))
    )
    for key in STEPS:
        assert through_json(desk_of.step(kept, MAKE, key, at(now_min))) == through_json(
            desk_of.step(fresh, MAKE, key, at(now_min))
        )


def of_both(events, now_min, step):
    """Return one Step, of a desk looked at all along and of one from nothing."""
    return [
        through_json(desk_of.step(desk, MAKE, step, at(now_min)))
        for desk in (kept_through(events, now_min), from_nothing(events))
    ]


def test_a_wheel_analysed_in_another_make_changes_how_long_this_one_is_brined():
    other = Phone(make=OTHER)
    events = [
        Phone().opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        other.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        other.event("step_begun", 1, step="brine_small", why="Test."),
        other.reading("brine_salt_frac", 0.2, 2, "brine_small"),
        other.event("step_ended", 1081, step="brine_small"),
    ]
    before = of_both(events, 1100, "brine_small")[0]
    analysed = other.reading("cheese_salt_frac", 0.024, 1200)
    analysed["data"]["place"] = "small"
    kept, fresh = of_both([*events, analysed], 1300, "brine_small")
    # Its salt went in faster than the recipe begins with: less time is needed.
    assert kept["lasts"]["value_s"] < before["lasts"]["value_s"]
    assert kept == fresh


def test_the_strength_of_the_bottle_entered_later_judges_what_went_in():
    phone = Phone()
    events = [
        phone.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        phone.event("step_begun", 1, step="rennet", why="Test."),
        phone.event(
            "ingredient_added",
            2,
            ingredient="rennet",
            amount=157.5,
            unit="mL",
            step="rennet",
        ),
        phone.event("step_ended", 3, step="rennet"),
    ]
    desk = kept_through(events, 4)
    told = [row["key"] for row in desk_of.view(desk, MAKE, at(4))["alerts"]]
    assert "alert.dose_above" in told  # 118 mL by the recipe alone
    set_later = phone.event("equipment_set", 5, key="strength_imcu_per_ml", value=200.0)
    desk_of.take(desk, [set_later])
    told = [row["key"] for row in desk_of.view(desk, MAKE, at(6))["alerts"]]
    assert "alert.dose_above" not in told


def test_a_reading_put_right_moves_the_water_that_is_wanted():
    phone = Phone()
    warm = phone.reading("curd_temp_c", 32.0, 90)
    events = [
        phone.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        warm,
        phone.event("step_begun", 100, step="wash_1", why="Test."),
    ]
    mend = phone.event(
        "entry_corrected", 102, ref=warm["id"], set={"value": 33.0}, why="Typed wrong."
    )
    water = [
        next(row for row in told["targets"] if row["quantity"] == "water_added_l")
        for told in (
            *of_both(events, 103, "wash_1"),
            *of_both([*events, mend], 103, "wash_1"),
        )
    ]
    assert water[0] == water[1]
    assert water[2] == water[3]
    assert water[2]["value"] < water[0]["value"]


def test_a_make_that_is_over_learns_nothing_from_what_came_later():
    phone, other = Phone(), Phone(make=OTHER)
    events = [
        phone.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        phone.event("step_begun", 1, step="brine_small", why="Test."),
        phone.event("make_closed", 5),
        other.opened(recipe=HOUSE, milk_l=600.0, moulds=SIZES),
        other.event("step_begun", 1, step="brine_small", why="Test."),
        other.reading("brine_salt_frac", 0.2, 2, "brine_small"),
        other.event("step_ended", 1081, step="brine_small"),
    ]
    before = of_both(events, 1100, "brine_small")[0]
    analysed = other.reading("cheese_salt_frac", 0.024, 1200)
    analysed["data"]["place"] = "small"
    kept, fresh = of_both([*events, analysed], 1300, "brine_small")
    assert kept["lasts"] == fresh["lasts"] == before["lasts"]
