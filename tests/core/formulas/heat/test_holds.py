import pytest


def rows(*temps, air=None, every_ms=60000):
    return [
        {"at_ms": i * every_ms, "temp": temp, "air_temp": air}
        for i, temp in enumerate(temps)
    ]


def hold(core, readings, min_temp=63, air=None, gap_s=60, lenient=False):
    return core(
        "formulas.heat.holds", "longest_hold", readings, min_temp, air, gap_s, lenient
    )


def test_one_reading_is_no_time(core):
    assert hold(core, rows(64))["held_s"] == 0


def test_nothing_held_has_no_instants(core):
    found = hold(core, rows(60, 61))
    assert (found["start_ms"], found["end_ms"], found["held_s"]) == (None, None, 0)


def test_the_longer_of_two_holds_is_kept(core):
    found = hold(core, rows(63, 63, 62, 63, 63, 63))
    assert (found["start_ms"], found["held_s"]) == (180000, 120)


def test_a_gap_breaks_a_hold_and_any_gap_may_be_allowed(core):
    readings = rows(63, 63, every_ms=90000)
    assert hold(core, readings)["held_s"] == 0
    assert hold(core, readings, gap_s=None)["held_s"] == 90


def test_a_hold_with_the_air_known_goes_before_a_longer_one(core):
    readings = rows(*[63] * 10, 60, 63, 63)
    readings[11]["air_temp"] = 66
    found = hold(core, readings, air=66)
    assert (found["held_s"], found["air_missing"]) == (60, False)


def test_lenient_takes_the_unknown_for_good_and_the_known_as_it_is(core):
    readings = rows(63, None, 63, 62.9, None)
    assert hold(core, readings, lenient=True)["held_s"] == 120
    assert hold(core, readings)["held_s"] == 0
    assert hold(core, readings, gap_s=120)["held_s"] == 120


@pytest.mark.parametrize(
    ("temps", "count"),
    [
        ([60, 63, 63], 0),
        ([63, 62, 63], 1),
        ([63, 62, 61, 63, 62], 1),
        ([63, None, 63], 0),
        ([63, 62, 63, None, 62, 63], 2),
        ([], 0),
    ],
)
def test_restarts_are_counted_when_the_hold_begins_again(core, temps, count):
    assert core("formulas.heat.holds", "restarts", rows(*temps), 63) == count


def test_the_longest_gap(core):
    readings = [{"at_ms": t, "temp": 63} for t in (0, 1000, 61000, 70000)]
    assert core("formulas.heat.holds", "longest_gap_s", readings) == 60
    assert core("formulas.heat.holds", "longest_gap_s", []) == 0
    readings[1]["temp"] = None
    assert core("formulas.heat.holds", "longest_gap_s", readings) == 61
