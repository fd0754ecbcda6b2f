from tests.core.builders import Phone, at
from tests.core.step.curve.course import curve, curve_recipe, heated, series


def test_the_acid_curve_begins_when_its_step_really_began(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 100, step="rennet"),
    ]
    acid = curve(ask, events, 130)["acid"]
    assert (acid["start_ms"], acid["is_real"]) == (at(100), True)
    # 0, 3 and 8 h after the 100th minute, as the recipe's curve has it.
    assert [row["at_ms"] for row in acid["points"]] == [at(100), at(280), at(580)]
    assert [row["ph"] for row in acid["points"]] == [6.60, 6.35, 5.40]
    for row in acid["points"]:  # the band of the acid alert: 0.1 to either side
        assert abs(row["high_ph"] - row["ph"] - 0.1) < 1e-9
        assert abs(row["ph"] - row["low_ph"] - 0.1) < 1e-9


def test_before_its_step_begins_the_acid_curve_is_only_expected(ask):
    found = curve(ask, heated(Phone()), 70)
    # Holding takes 30 min from now on, cooling none, so rennet comes at 100 min.
    assert (found["acid"]["start_ms"], found["acid"]["is_real"]) == (at(100), False)


def test_without_a_curve_or_its_step_there_is_no_acid_line(ask):
    phone = Phone()
    assert curve(ask, [phone.opened()], 5)["acid"] is None
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_skipped", 3, step="rennet", why="acid set"),
    ]
    assert curve(ask, events, 5)["acid"] is None


def test_a_ph_without_a_band_of_its_step_is_judged_by_the_acid_curve(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.event("step_begun", 0, step="rennet"),
        phone.reading("ph", 6.35, 180, "cut"),
        phone.reading("ph", 6.35, 240, "cut"),
    ]
    (points,) = series(curve(ask, events, 241), "ph")
    # At 3 h the curve has 6.35; at 4 h 6.35 - 0.95 / 5 = 6.16, thus at most 6.26.
    assert [row["verdict"] for row in points] == ["in_band", "above"]
    assert abs(points[1]["high"] - 6.26) < 1e-9


def test_a_ph_off_the_curves_time_is_not_judged(ask):
    phone = Phone()
    events = [
        phone.opened(recipe=curve_recipe()),
        phone.reading("ph", 6.7, 10, "receive"),
        phone.event("step_begun", 60, step="rennet"),
        phone.reading("ph", 5.2, 60 + 481, "fill"),
    ]
    (points,) = series(curve(ask, events, 600), "ph")
    assert [row["verdict"] for row in points] == [None, None]
