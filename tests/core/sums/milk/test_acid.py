import pytest

from tests.core.sums.asking import amount, answer, band, table, values


def readings(*rows):
    return table(["at_min", "ph"], *rows)


def notes(found):
    return [row["key"] for row in found["notes"]]


def test_without_readings_the_recipes_own_time_is_shown_and_said_so(core):
    # Hill and Ferrer, Gouda: 5.40 at 8 h.
    found = answer(core, "acid_forecast", {"target_ph": 5.4})
    reach = found["values"][0]
    assert reach["value"] == pytest.approx(8 * 3600)
    assert reach["low"] < 8 * 3600 < reach["high"]
    assert "note.acid.no_readings_yet" in notes(found)


def test_too_small_a_fall_is_said(core):
    given = {"target_ph": 5.4, "ph_readings": readings([0, 6.6], [60, 6.56])}
    assert "note.acid.too_little_fall" in notes(answer(core, "acid_forecast", given))


def test_a_make_on_the_curve_is_forecast_on_the_curve(core):
    rows = [[0, 6.6], [60, 6.55], [90, 6.45], [180, 6.35], [330, 5.875]]
    given = {"target_ph": 5.4, "ph_readings": readings(*rows)}
    found = values(core, "acid_forecast", given)
    low, value, high = band(found[("reach_s", None)])
    assert value == pytest.approx(8 * 3600, rel=0.01)
    assert low < 8 * 3600 < high
    assert found[("left_s", None)]["value"] == pytest.approx(value - 330 * 60)


def test_a_late_make_is_forecast_late(core):
    # The curve's own points, each half an hour later.
    rows = [[30, 6.6], [90, 6.55], [120, 6.45], [210, 6.35], [360, 5.875]]
    given = {"target_ph": 5.4, "ph_readings": readings(*rows)}
    low, value, high = band(values(core, "acid_forecast", given)[("late_s", None)])
    assert low < 30 * 60 < high
    assert value == pytest.approx(30 * 60, abs=15 * 60)


def stood(*rows):
    """A make at 6.10 after 4 h 15 min, as the curve has it, and what came after."""
    start = [[0, 6.6], [60, 6.55], [90, 6.45], [180, 6.35], [259, 6.1]]
    return {"target_ph": 5.4, "ph_readings": readings(*start, *rows)}


def test_a_stall_ends_what_the_forecast_promised(core):
    given = stood([319, 6.1], [379, 6.1], [439, 6.1])
    found = answer(core, "acid_forecast", given)
    told = {row["name"]: row["value"] for row in found["values"]}
    assert set(told) == {"flat_s"}
    assert told["flat_s"] == pytest.approx(3 * 3600)
    assert "note.acid.range_of_nine_in_ten" not in notes(found)
    assert notes(found) == ["note.acid.stalled", "note.acid.stalled_ways"]


def test_a_make_that_runs_again_is_forecast_again(core):
    # Half an hour on it fell by more than a quarter of what the curve falls.
    given = stood([319, 6.1], [379, 5.9])
    found = values(core, "acid_forecast", given)
    low, value, high = band(found[("reach_s", None)])
    assert value > 379 * 60
    assert low < value < high


def test_a_target_off_the_curve_is_refused(core):
    found = answer(core, "acid_forecast", {"target_ph": 5.0})
    assert found["problems"][0]["field"] == "target_ph"


@pytest.mark.parametrize(
    ("rows", "state"),
    [
        ([[0, 6.6], [180, 6.35]], "on_curve"),
        # At 4 h the straight line from 6.35 at 3 h to 5.40 at 8 h has 6.16.
        ([[0, 6.6], [180, 6.35], [240, 6.27]], "slow"),
        ([[0, 6.6], [240, 5.9]], "fast"),
        ([[0, 6.6], [180, 6.35], [240, 6.34]], "stalled"),
    ],
)
def test_a_make_is_told_on_its_curve_slow_fast_or_stalled(core, rows, state):
    curve = table(["at_min", "ph"], [0, 6.6], [180, 6.35], [480, 5.4])
    given = {"ph_readings": readings(*rows), "curve": curve}
    assert amount(core, "acid_band", given, "state") == state


def test_a_meter_that_wavers_early_is_no_stall(core):
    # The curve itself falls by 0.05 only in its first hour.
    given = {"ph_readings": readings([0, 6.6], [50, 6.6])}
    assert amount(core, "acid_band", given, "state") == "on_curve"


def test_how_far_behind_is_read_off_the_curve(core):
    # 6.35 belongs to 180 min; read at 210 min it is 30 min behind.
    given = {"ph_readings": readings([0, 6.6], [210, 6.35])}
    got = amount(core, "acid_band", given, "behind_s")
    assert got == pytest.approx(1800)


def test_an_hour_at_the_reference_is_worth_an_hour(core):
    rows = [[0, 32], [60, 32]]
    given = {"curd_temps": table(["at_min", "value"], *rows)}
    found = values(core, "acid_temperature", given)
    assert found[("worth_s", None)]["value"] == pytest.approx(3600)
    assert found[("speed_now", None)]["value"] == pytest.approx(1)


def test_a_warmer_vat_runs_ahead_as_published(core):
    # Medvedova et al.: 1.5281 per hour at 36 °C against 1.3604 at 32 °C.
    given = {"curd_temps": table(["at_min", "value"], [0, 36], [60, 36])}
    got = amount(core, "acid_temperature", given, "worth_s")
    assert got / 3600 == pytest.approx(1.5281 / 1.3604, rel=3e-4)


def test_a_mesophilic_starter_rests_on_memory(core):
    given = {
        "curd_temps": table(["at_min", "value"], [0, 32], [60, 37]),
        "starter_kind": "mesophilic",
    }
    assert answer(core, "acid_temperature", given)["status"] == "memory"


def test_no_target_is_asked_for(core):
    assert answer(core, "acid_forecast", {})["missing"] == ["target_ph"]


def test_readings_past_the_curve_are_not_judged(core):
    curve = table(["at_min", "ph"], [0, 6.6], [180, 6.35])
    given = {"ph_readings": readings([0, 6.6], [300, 6.0]), "curve": curve}
    found = answer(core, "acid_band", given)
    assert found["values"][0]["value"] == "not_known"
    assert "note.acid.off_the_curve" in notes(found)


def test_milk_sweeter_than_the_curve_begins_has_no_time_on_it(core):
    given = {"ph_readings": readings([10, 6.68])}
    found = values(core, "acid_band", given)
    assert found[("behind_s", None)]["value"] is None
    assert found[("state", None)]["value"] == "on_curve"
