"""Settings of one's own tell the next; a warmer vat needs less rennet."""

import pytest

from tests.core.sums.asking import answer, typed, values


def own(*settings, dose=30):
    rows = [
        {"given_imcu_per_l": each, "set_min": set_min} for each, set_min in settings
    ]
    return {"settings": {"rows": rows, "sure": True}, "given_imcu_per_l": dose}


def test_a_setting_is_forecast_from_those_of_the_creamery(core):
    # Work of 240 IMCU min/L and 2 minutes that no dose saves: 14, 8, so 10 minutes.
    found = values(core, "setting_own", own((20, 14), (40, 8)))
    assert found[("set_s", None)]["value"] == pytest.approx(600)
    assert found[("own_delay_s", None)]["value"] == pytest.approx(120)


def test_makes_of_one_dose_count_by_their_mean_in_any_order(core):
    found = values(core, "setting_own", own((40, 7), (20, 14), (40, 9)))
    assert found[("set_s", None)]["value"] == pytest.approx(600)


def test_few_settings_are_told_to_be_few(core):
    few = answer(core, "setting_own", own((20, 14), (40, 8)))
    assert [note["key"] for note in few["notes"]] == ["note.few_settings"]
    enough = own((10, 26), (20, 14), (30, 10), (40, 8))
    assert answer(core, "setting_own", enough)["notes"] == []


def test_settings_that_leave_no_delay_go_by_dose_times_time_and_say_so(core):
    # 10 and 4 minutes: a line through them sets before the rennet is in, at -2. The
    # mean of 20 × 10 and 40 × 4 is 180 IMCU min/L: 6 minutes at 30.
    found = answer(core, "setting_own", own((20, 10), (40, 4)))
    told = {row["name"]: row["value"] for row in found["values"]}
    assert told == {"set_s": pytest.approx(360), "own_delay_s": 0}
    assert "note.settings_differ" in [note["key"] for note in found["notes"]]


@pytest.mark.parametrize(
    ("settings", "key"),
    [(((20, 14), (20, 15)), "too_few"), (((20, 8), (40, 9)), "not_falling")],
)
def test_settings_that_tell_nothing_of_the_dose_are_refused(core, settings, key):
    found = answer(core, "setting_own", own(*settings))
    assert [(row["field"], row["key"]) for row in found["problems"]] == [
        ("settings", key)
    ]


def test_a_next_setting_two_degrees_warmer_takes_less_rennet(core):
    given = {
        "floc_s": typed("16", "min"),
        "target_floc_s": typed("13", "min"),
        "rennet_ml": 100,
        "set_temp_c": 30,
        "next_set_temp_c": 32,
    }
    found = values(core, "rennet_next", given)
    # 16 min would be 2.5 ** -0.2 of that: (13.321 - 2) / (13 - 2), of 2 and 3 the ends.
    factor = found[("dose_factor", None)]
    assert factor["value"] == pytest.approx((16 * 2.5**-0.2 - 2) / 11)
    assert factor["low"] == pytest.approx((16 * 3**-0.2 - 2) / 11)
    assert factor["high"] == pytest.approx((16 * 2**-0.2 - 2) / 11)
    assert found[("next_rennet_ml", None)]["value"] == 100 * factor["value"]


def test_what_warmth_does_is_told_to_be_from_memory(core):
    warm = {"set_temp_c": 30, "next_set_temp_c": 32}
    times = {"floc_s": typed("16", "min"), "target_floc_s": typed("13", "min")}
    assert answer(core, "rennet_next", {**times, **warm})["status"] == "memory"
    assert answer(core, "rennet_next", times)["status"] != "memory"
