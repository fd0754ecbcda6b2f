from tests.core.builders import Phone, at, figure
from tests.core.step.curve.course import curve, curve_recipe, heated, step


def test_a_band_stands_at_the_steps_real_or_expected_time(ask):
    found = curve(ask, heated(Phone()), 70)
    heat, hold = found["bands"]
    assert (heat["step"], heat["low"], heat["high"]) == ("heat", 63.0, 66.0)
    assert (heat["begin_ms"], heat["end_ms"], heat["is_real"]) == (at(5), at(61), True)
    # Not begun at 70 min: it can begin now at the earliest and takes 30 min.
    assert (hold["begin_ms"], hold["end_ms"]) == (at(70), at(100))
    assert hold["is_real"] is False


def test_a_skipped_step_and_a_target_without_limits_have_no_band(ask):
    phone = Phone()
    body = curve_recipe()
    body["steps"][5]["targets"] = [
        {"quantity": "milk_temp_c", "figure": figure(31.0, "C")}
    ]
    events = [
        phone.opened(recipe=body),
        phone.event("step_skipped", 5, step="heat", why="milk came hot"),
    ]
    assert [row["step"] for row in curve(ask, events, 6)["bands"]] == ["hold"]


def test_boundaries_tell_the_plan_beside_what_is_expected(ask):
    found = curve(ask, heated(Phone()), 70)
    assert [row["key"] for row in found["steps"]][:3] == ["receive", "heat", "hold"]
    # By plan receiving takes no time and heating 60 min; holding 30 min after it.
    heat, hold = step(found, "heat"), step(found, "hold")
    assert (heat["planned_begin_ms"], heat["planned_end_ms"]) == (at(0), at(60))
    assert (heat["begin_ms"], heat["end_ms"]) == (at(5), at(61))
    assert (hold["planned_begin_ms"], hold["planned_end_ms"]) == (at(60), at(90))
    assert (heat["status"], hold["status"]) == ("ended", "ready")
