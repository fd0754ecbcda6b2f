"""What is kept of a hold that is over never differs from a fresh fold."""

from tests.core.builders import MAKE, Phone, a_day, at
from tests.core.heat.holding import RULES, hold_recipe


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
