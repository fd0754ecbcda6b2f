"""The check of a hold's thermometer, by the interval that the creamery has set.

Every how many days one is wanted is the creamery's own: common practice, no source.
"""

import pytest

from tests.core.builders import MAKE, Phone, at
from tests.core.matters.gated import DAY, GATES, HELPER, RULES, Make, gated_recipe
from tests.core.matters.test_hold import passed

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
WEEKLY = {"plant_name": "Quernbeck", "check_every_days": 7}
HOLD = [one for one in GATES if one["key"] == "heat_hold"]


def make_of(equipment=WEEKLY, **body):
    make = Make("heat_hold")
    data = {"equipment": equipment, "vat": "Vat 1", **body}
    make.events[0]["data"].update(data)
    return make


def checked(minute, make=OTHER, vat="Vat 1", **body):
    """Another make, in which the thermometer was checked at a minute of this one."""
    phone = Phone(1, make=make)
    opened = phone.opened(recipe=gated_recipe(HOLD), vat=vat, **body)
    opened["at_ms"] = opened["entered_ms"] = at(minute - 1)
    typed = {"value": 0.0, "typed": "0.0", "typed_unit": "C"}
    return [
        opened,
        phone.event("reading_taken", minute, quantity="check_temp_c", **typed),
    ]


def overdue(ask, make, minute, *others):
    """By what reason and since when the check is told as overdue, or None."""
    calls = ("set_rules", RULES), ("take", sum(others, make.events))
    told = ask.desk(*calls, ("view", MAKE, at(minute)))
    assert told[1]["problems"] == []
    found = [one for one in told[2]["matters"] if one["kind"] == "check_due"]
    if not found:
        return None
    (matter,) = found
    assert (matter["key"], matter["level"]) == ("check_overdue", "check")
    assert (matter["step"], matter["stops"], matter["ways"]) == ("hold", [], [])
    (reason,) = matter["reasons"]
    assert reason["since_ms"] == matter["since_ms"]
    assert reason["limit"] == 7
    return (reason["key"], matter["since_ms"])


def test_no_check_is_overdue_until_an_interval_is_set(ask):
    assert overdue(ask, make_of({"plant_name": "Quernbeck"}), 1) is None


def test_a_check_within_its_days_is_no_matter(ask):
    assert overdue(ask, make_of(), 1, checked(-6 * DAY)) is None


def test_an_overdue_check_is_told_from_the_opening_until_the_hold(ask):
    late = checked(-9 * DAY)
    told = ("check_overdue", at(-2 * DAY))
    make = make_of()
    assert overdue(ask, make, 1, late) == told
    make.received()
    assert overdue(ask, make, 59, late) == told
    make.held()
    assert overdue(ask, make, 93, late) is None


def test_it_stops_nothing(ask):
    make = make_of().received()
    make.events += checked(-9 * DAY)
    assert passed(make.tap(ask, "step_begun", 60, HELPER, step="hold"))


def test_where_no_check_is_on_record_one_is_wanted_since_the_opening(ask):
    told = ("check_not_on_record", at(0))
    assert overdue(ask, make_of(), 1) == told


def test_a_check_in_this_make_ends_it(ask):
    make = make_of()
    make.read("check_temp_c", 0.0, 5)
    assert overdue(ask, make, 6, checked(-9 * DAY)) is None
    struck = make.events[-1]["id"]
    make.events.append(make.phone.event("entry_struck", 7, struck, why="Not this one"))
    assert overdue(ask, make, 8, checked(-9 * DAY)) is not None


@pytest.mark.parametrize(
    ("body", "counts"),
    [({}, True), ({"vat": "Vat 2"}, False), ({"practice": True}, False)],
)
def test_a_check_counts_in_the_real_makes_of_its_vat(ask, body, counts):
    told = overdue(ask, make_of(), 1, checked(-DAY, **body))
    assert (told is None) is counts


def test_the_record_of_a_hold_says_so_and_its_verdict_stays(ask):
    def verdict(*others, equipment=WEEKLY):
        make = make_of(equipment).received().held()
        # A check after the hold makes no earlier one.
        make.read("check_temp_c", 0.0, 95)
        calls = ("set_rules", RULES), ("take", sum(others, make.events))
        return ask.desk(*calls, ("step", MAKE, "hold", at(96)))[2]["verdict"]

    late, good = verdict(checked(-9 * DAY)), verdict(checked(-DAY))
    (warning,) = [row for row in late["warnings"] if row not in good["warnings"]]
    assert warning == {"key": "check_overdue", "since_ms": at(-2 * DAY), "limit": 7}
    for name in ("class", "meaning", "reasons", "hold"):
        assert late[name] == good[name]
    assert verdict(equipment={"plant_name": "Quernbeck"}) == good


def test_a_kept_view_learns_of_a_check_in_another_make(ask):
    make = make_of()
    first, second = checked(-9 * DAY)
    calls = [("set_rules", RULES), ("take", [*make.events, first, second])]
    calls += [("view", MAKE, at(2)), ("take", checked(1, MAKE[:-1] + "9"))]
    told = ask.desk(*calls, ("view", MAKE, at(2)))
    kinds = [[one["kind"] for one in told[index]["matters"]] for index in (2, 4)]
    assert ("check_due" in kinds[0], "check_due" in kinds[1]) == (True, False)


def test_a_view_changes_when_the_check_falls_due(ask):
    make = make_of()
    make.add("step_begun", 1, step="receive")
    events = make.events + checked(-7 * DAY + 2)
    calls = ("set_rules", RULES), ("take", events), ("view", MAKE, at(1.9))
    assert ask.desk(*calls)[2]["next_change_ms"] == at(2)
    assert overdue(ask, make, 1.9, checked(-7 * DAY + 2)) is None
    assert overdue(ask, make, 2, checked(-7 * DAY + 2)) == ("check_overdue", at(2))


@pytest.mark.parametrize(("value", "key"), [(0, "low"), (367, "high"), (7.5, None)])
def test_an_interval_is_whole_days_of_a_year(core, value, key):
    (problem,) = core("sums.equipment", "check_value", "check_every_days", value)
    assert problem["field"] == "check_every_days"
    expected = {"low": 1, "high": 366, None: None}[key]
    assert problem["limit"] == expected
    assert core("sums.equipment", "check_value", "check_every_days", 7) == []
