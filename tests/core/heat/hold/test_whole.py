"""A hold that is whole stays whole, whatever is read afterwards."""

import pytest

from tests.core.builders import MAKE, at
from tests.core.heat.holding import RULES, every_two_minutes, led

# 21 CFR 1240.61(b): 145 °F held continuously for 30 minutes; 3 CCR 584(b): the air
# 5 °F above it. The gap of 2 min between readings is this tool's own figure.


def whole_at_30(equipment=None):
    hold = led(equipment)
    every_two_minutes(hold, 0, 30)
    return hold


def stands(ask, hold, minute):
    """What every reader says of a hold that ended whole at minute 30."""
    step = hold.step(ask, minute)
    assert step["due_ms"] == at(30)
    assert step["hold"]["is_whole"]
    assert [row["key"] for row in step["hold"]["says"]] == ["whole"]
    assert not any(row["is_low"] for row in step["hold"]["last"])
    assert step["button"]["act"] == "end"
    assert step["end_blockers"] == []
    hold.add("step_ended", minute, step="hold")
    step = hold.step(ask, minute + 1)
    assert step["due_ms"] == at(30)
    verdict = step["verdict"]
    assert verdict["class"] == "reads_as_pasteurised"
    assert (verdict["hold"]["start_ms"], verdict["start_ms"]) == (at(0), at(0))
    return verdict


# Minutes and what milk and air showed after the last round of a whole hold.
LATER = {
    "hot, within the gap": [(31, 145.0, 150.0)],
    "hot, after the gap": [(35, 145.0, 150.0)],
    "milk cold within the gap": [(31, 140.0, 150.0)],
    "milk cold after the gap": [(38, 120.0, 125.0)],
    "air cold by itself": [(31, None, 148.0)],
    "air cold by itself, milk later": [(31, None, 148.0), (35, 143.0, None)],
    "cooled and hot again": [(33, 130.0, 130.0), (40, 146.0, 151.0)],
    "hot on, then a gap": [(32, 145.0, 150.0), (34, 145.0, 150.0), (41, 145.0, None)],
    "in the other unit": [(33, 50.0, 50.0, "C"), (34, 49.0, 48.0, "C")],
}


@pytest.mark.parametrize("later", LATER.values(), ids=LATER)
def test_what_is_read_after_a_whole_hold_does_not_undo_it(ask, later):
    hold = whole_at_30()
    for row in later:
        hold.read(*row)
    stands(ask, hold, 42)


def cold(ask, hold, minute):
    """What is told as too cold, and how urgently."""
    calls = ("set_rules", RULES), ("take", hold.events), ("view", MAKE, at(minute))
    told = ask.desk(*calls)[2]["alerts"]
    told = [row for row in told if row["key"] == "alert.reading_below"]
    return [(row["quantity"], row["level"]) for row in told]


@pytest.mark.parametrize("later", LATER.values(), ids=LATER)
def test_milk_that_cools_after_a_whole_hold_is_no_alert(ask, later):
    hold = whole_at_30()
    for row in later:
        hold.read(*row)
    assert cold(ask, hold, 42) == []
    hold.add("step_ended", 42, step="hold")
    assert cold(ask, hold, 43) == []


def test_milk_that_cools_before_its_hold_is_whole_is_an_alert(ask):
    hold = led()
    every_two_minutes(hold, 0, 28)
    hold.read(29, 144.8, 150.0)
    assert cold(ask, hold, 30) == [("milk_temp_c", "act")]
    hold.add("step_ended", 31, step="hold", why="No more steam.")
    assert cold(ask, hold, 32) == [("milk_temp_c", "check")]


def test_a_cold_reading_once_the_time_is_up_but_not_read_is_an_alert(ask):
    hold = led()
    every_two_minutes(hold, 0, 28)
    hold.read(31, 143.0, 150.0)
    assert cold(ask, hold, 32) == [("milk_temp_c", "act")]


def test_milk_read_too_hot_after_a_whole_hold_is_still_told(ask):
    hold = whole_at_30()
    hold.read(31, 152.0, 157.0)
    (row,) = [
        target
        for target in hold.step(ask, 32)["targets"]
        if target["quantity"] == "milk_temp_c"
    ]
    assert (row["last"]["at_ms"], row["last"]["verdict"]) == (at(31), "above")


@pytest.mark.parametrize("drop_f", [0.0, 0.1, 5.0, 60.0])
def test_no_instant_of_a_later_reading_undoes_it(ask, drop_f):
    for half in range(61, 90, 4):
        hold = whole_at_30()
        hold.read(half / 2, 145.0 - drop_f, 150.0 - drop_f)
        stands(ask, hold, 46)


def test_it_stands_with_filling_time_too(ask):
    hold = led({"extra_hold_s": 240})
    every_two_minutes(hold, 0, 34)
    hold.read(40, 120.0, 125.0)
    assert hold.step(ask, 41)["due_ms"] == at(34)
    hold = led({"extra_hold_s": 240})
    every_two_minutes(hold, 0, 30)
    hold.read(40, 145.0, 150.0)
    assert hold.step(ask, 41)["due_ms"] == at(74)


def test_what_goes_on_counts_until_it_breaks(ask):
    hold = whole_at_30()
    every_two_minutes(hold, 32, 36)
    hold.read(38, 130.0, 135.0)
    verdict = stands(ask, hold, 40)
    assert (verdict["hold"]["end_ms"], verdict["hold"]["held_s"]) == (at(36), 2160)


def test_the_chart_ends_with_the_hold_and_not_with_the_cooling(ask):
    hold = whole_at_30()
    hold.read(38, 110.0, 112.0)
    fields = stands(ask, hold, 40)["chart"]
    told = {row["field"]: row["value"] for row in fields}
    assert told["hold_extent"] == {"from_ms": at(0), "until_ms": at(30)}
    assert told["indicating_reading"] == {"at_ms": at(30), "reading": 145, "unit": "F"}
    assert told["airspace_reading"]["reading"] == 150


def test_a_hold_a_reading_short_is_not_whole(ask):
    hold = led()
    every_two_minutes(hold, 0, 28)
    hold.read(35, 145.0, 150.0)
    assert hold.step(ask, 36)["due_ms"] == at(65)


def test_a_last_round_without_its_air_is_not_whole(ask):
    hold = led()
    every_two_minutes(hold, 0, 28)
    hold.read(30, 145.0)
    hold.read(31, None, 149.0)
    step = hold.step(ask, 32)
    assert not step["hold"]["is_whole"]
    assert step["due_ms"] > at(30)


def test_a_reading_of_the_hold_itself_corrected_undoes_it(ask):
    hold = whole_at_30()
    hold.read(38, 120.0, 125.0)
    dip = next(
        event
        for event in hold.events
        if event["data"].get("typed") == "145.0" and event["at_ms"] == at(20)
    )
    change = {"value": 62.0, "typed": "143.6", "typed_unit": "F"}
    hold.events.append(
        hold.phone.event("entry_corrected", 39, dip["id"], set=change, why="misread")
    )
    step = hold.step(ask, 40)
    assert not step["hold"]["is_whole"]
    assert step["due_ms"] == at(68)  # the reading at 38 is low: from there, 30 min
    hold.add("step_ended", 41, step="hold", why="No more steam.")
    assert hold.step(ask, 42)["verdict"]["class"] == "heat_treated_only"


def test_a_struck_reading_of_the_hold_itself_undoes_it(ask):
    hold = whole_at_30()
    gone = [event for event in hold.events if event["at_ms"] == at(20)]
    for event in gone:
        hold.events.append(
            hold.phone.event("entry_struck", 39, event["id"], why="not this vat")
        )
    step = hold.step(ask, 40)
    assert not step["hold"]["is_whole"]
    assert step["due_ms"] == at(52)  # 18 to 22 is more than 2 min: again from 22
