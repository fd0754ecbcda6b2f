"""What is kept of a hold that is over never differs from a fresh fold."""

from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from server.core.log import run
from server.core.step.view import view as view_of
from tests.conftest import through_json
from tests.core.builders import MAKE, Phone, a_day, at
from tests.core.heat.holding import RULES, hold_recipe

NAMED = ["receive", "heat", "hold", "fans", "rennet"]
STEPS = st.none() | st.sampled_from(NAMED)
# Around the hold of the small make, which runs from minute 61 to minute 91.
MINUTES = st.integers(55, 100) | st.sampled_from([60.9, 61, 75, 91, 91.1])
READ = {
    "milk_temp_c": [60.0, 62.8, 64.0, 67.0],
    "air_space_temp_c": [60.0, 66.0, 70.0],
    "recorder_temp_c": [63.0, 68.0],
    "fat_frac": [0.04, 0.12],
    "milk_volume_l": [480.0],
    "milk_mass_kg": [517.0],
    "ph": [6.6],
}
EQUIPMENT = {
    "plant_name": "Quernbeck",
    "sweetened": "yes",
    "extra_hold_s": 600,
    "gap_max_s": 900,
}


def hold_day():
    """Return the day of the small make with a hold that a rule judges.

    Its last reading is 145 °F, which the rule lets pass and the recipe's band,
    from 63.0 °C, does not.
    """
    events = a_day(Phone())
    events[0]["data"]["recipe"] = hold_recipe()
    for event in events:
        if event["data"].get("step") == "hold" and event["kind"] == "reading_taken":
            event["data"].update(value=62.8, typed="145", typed_unit="F")
    return events


@st.composite
def readings(draw, phone):
    quantity = draw(st.sampled_from(sorted(READ)))
    value = draw(st.sampled_from(READ[quantity]))
    data = {"quantity": quantity, "value": value}
    step = draw(STEPS)
    if step is not None:
        data["step"] = step
    if quantity.endswith("_temp_c") and draw(st.booleans()):
        data.update(typed="%g" % (value * 1.8 + 32), typed_unit="F")
    return phone.event("reading_taken", draw(MINUTES), **data)


@st.composite
def late_events(draw, day):
    """Return one event that comes when the hold is over and was looked at."""
    phone = Phone(1)
    kind = draw(st.sampled_from(["fat", "read", "set", "strike", "correct"]))
    if kind == "fat":
        data = {
            "quantity": "fat_frac",
            "value": 0.12,
            "step": draw(st.sampled_from(NAMED)),
        }
        return phone.event("reading_taken", draw(MINUTES), **data)
    if kind == "read":
        return draw(readings(phone))
    if kind == "set":
        key = draw(st.sampled_from(sorted(EQUIPMENT)))
        data = {"key": key, "value": EQUIPMENT[key], "agreed_with": "Inspector"}
        return phone.event("equipment_set", 110, **data)
    about = draw(st.sampled_from([row for row in day if row["kind"] != "make_opened"]))
    if kind == "strike":
        return phone.event("entry_struck", 110, about["id"], why="x")
    change = draw(
        st.fixed_dictionaries(
            {},
            optional={
                "at_ms": MINUTES.map(at),
                "value": st.sampled_from([62.0, 64.5, 480.0]),
            },
        ).filter(bool)
    )
    return phone.event("entry_corrected", 110, about["id"], set=change, why="x")


@settings(max_examples=200)
@given(st.data())
def test_one_late_event_leaves_the_view_that_a_fresh_fold_gives(data):
    phone = Phone(1)
    phone.seq = 500
    more = [data.draw(readings(phone)) for _ in range(data.draw(st.integers(0, 4)))]
    day = hold_day() + more
    late = data.draw(late_events(day))
    now_ms = at(200)
    kept = desk_of.new()
    desk_of.set_rules(kept, RULES)
    desk_of.take(kept, day)
    desk_of.view(kept, MAKE, now_ms)  # from here on, what is over is kept
    told = desk_of.take(kept, [late])
    assert told["problems"] == []
    state = run.new_state(MAKE)
    for event in [*day, late]:
        run.take(state, event)
    shown = through_json(desk_of.view(kept, MAKE, now_ms))
    assert shown == through_json(view_of(state, now_ms, RULES))


def alerts(ask, *pieces):
    calls = [("set_rules", RULES)]
    for events in pieces:
        calls += [("take", events), ("view", MAKE, at(200))]
    return [(row["key"], row["step"]) for row in ask.desk(*calls)[-1]["alerts"]]


def test_fat_entered_late_may_change_the_hold(ask):
    # 145 °F is enough at 4 % fat and not at 12 % (21 CFR 1240.61, footnote 1).
    day = hold_day()
    assert ("alert.reading_below", "hold") not in alerts(ask, day)
    fat = Phone(1).event(
        "reading_taken", 3, quantity="fat_frac", value=0.12, step="receive"
    )
    assert ("alert.reading_below", "hold") in alerts(ask, [*day, fat])
    assert alerts(ask, day, [fat]) == alerts(ask, [*day, fat])


def test_what_names_another_step_changes_the_hold_all_the_same(ask):
    # Milk that is sweetened is asked 150 °F too; the entry names no step at all.
    day = hold_day()
    sweet = Phone(1).event("equipment_set", 110, key="sweetened", value="yes")
    assert alerts(ask, day, [sweet]) == alerts(ask, [*day, sweet])
    assert ("alert.reading_below", "hold") in alerts(ask, day, [sweet])


def test_what_is_kept_of_the_steps_shows_each_entry_as_a_fresh_desk_does(ask):
    day = hold_day()
    begin = next(row for row in day if row["data"].get("step") == "heat")
    phone = Phone(1)
    # A begin moved, a begin struck, and a dip that begins the hold's clock again.
    day += [
        phone.event("entry_corrected", 166, begin["id"], set={"at_ms": at(7)}, why="x"),
        phone.reading("milk_temp_c", 60.0, 80, "hold"),
        phone.event("entry_struck", 168, day[-1]["id"], why="x"),
    ]
    one_by_one = [("set_rules", RULES)]
    for event in day:
        one_by_one += [("take", [event]), ("view", MAKE, at(200))]
    shown = ask.desk(*one_by_one)[2::2]
    for count in (7, 12, 13, len(day) - 2, len(day) - 1, len(day)):
        fresh = ask.desk(
            ("set_rules", RULES), ("take", day[:count]), ("view", MAKE, at(200))
        )[-1]
        assert shown[count - 1] == fresh
