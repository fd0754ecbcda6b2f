"""Each fault is seen where it should be, and nowhere before it."""

import pytest

from server.core.twin import where
from server.core.twin.faults.table import FAULTS
from tests.core.twin.plays import (
    at_min,
    desk_of,
    entries,
    t_ms,
    truth,
    values,
    whole,
)
from tests.core.twin.twins import RECIPE


def test_there_are_more_than_25_kinds_of_fault():
    assert len(FAULTS) > 25


@pytest.mark.parametrize("name", FAULTS)
def test_a_fault_finds_its_steps_and_its_entries_are_taken(name):
    for row in FAULTS[name]:
        if row.get("where"):
            assert where.steps(RECIPE, row["where"]), row
    made = whole(name)
    assert desk_of(made["events"])[1] == []
    told = [(row["kind"], row["data"], t_ms(row)) for row in made["events"]]
    usual = [(row["kind"], row["data"], t_ms(row)) for row in whole()["events"]]
    clocks = [(row["at_ms"], row["off_ms"]) for row in made["events"]]
    usual_clocks = [(row["at_ms"], row["off_ms"]) for row in whole()["events"]]
    assert (told, made["course"], clocks) != (usual, whole()["course"], usual_clocks)


def salt(made):
    return min(made["course"][-1]["salt_frac"].values())


def lost(made):
    masses = made["course"][-1]["wheel_kg"]["large"], truth(made, "dry")["wheel_kg"]
    return 1 - masses[0] / masses[1]["large"]


def floc_min(made):
    (row,) = [
        row for row in made["events"] if row["data"].get("judgement") == "flocculated"
    ]
    (dose,) = [
        row for row in made["events"] if row["data"].get("ingredient") == "rennet"
    ]
    return (t_ms(row) - t_ms(dose)) / 60_000


def hold_min(made):
    return at_min(made, "step_ended", "hold") - at_min(made, "step_begun", "hold")


# What each does to the truth, or to what is read, against the same make without it:
# (fault, what is looked at, least and most of the difference).
SEEN = [
    ("hold_dips", lambda m: min(values(m, "milk_temp_c", step="hold")), -4.0, -1.0),
    ("hold_dips", hold_min, 15.0, 60.0),
    ("air_space_cold", lambda m: max(values(m, "air_space_temp_c")), -30.0, -5.0),
    ("phage", lambda m: truth(m, "unmould")["ph"], 0.5, 1.4),
    ("phage", lambda m: truth(m, "ripen")["ph"], 0.0, 0.0),
    ("antibiotic", lambda m: truth(m, "ripen")["ph"], 0.02, 0.2),
    ("slow_starter", lambda m: truth(m, "turn_2")["ph"], 0.1, 0.5),
    ("fast_starter", lambda m: truth(m, "turn_2")["ph"], -0.5, -0.1),
    ("rennet_double", floc_min, -10.0, -3.0),
    ("rennet_third", floc_min, 12.0, 40.0),
    ("half_the_milk", lambda m: values(m, "milk_volume_l")[0], -510.0, -490.0),
    ("half_the_milk", lambda m: truth(m, "unmould")["wheel_kg"]["large"], -0.5, 0.5),
    ("wash_too_hot", lambda m: values(m, "water_temp_c", step="wash_1")[0], 12.0, 18.0),
    ("wash_too_cold", lambda m: truth(m, "stir_2")["milk_c"], -9.0, -3.0),
    (
        "wash_too_much",
        lambda m: values(m, "water_added_l", step="wash_1")[0],
        60.0,
        300,
    ),
    ("wash_too_much", lambda m: m["course"][-1]["ph"], 0.04, 0.4),
    ("turn_missed", lambda m: len(entries(m, "step_begun", step="turn_1")), -1, -1),
    ("turn_late", lambda m: at_min(m, "step_begun", "turn_1"), 90.0, 90.0),
    ("store_turns_missed", lambda m: len(entries(m, "wheel_turned")), -9, -5),
    ("thermometer_drifts", lambda m: truth(m, "cool")["milk_c"], -5.0, -0.4),
    ("thermometer_off", lambda m: truth(m, "cool")["milk_c"], -3.0, -0.4),
    ("thermometer_off", lambda m: values(m, "milk_temp_c")[0], 1.5, 1.7),
    ("ph_meter_off", lambda m: values(m, "ph")[0], 0.24, 0.26),
    ("ph_meter_off", lambda m: truth(m, "unmould")["ph"], 0.0, 0.0),
    ("weak_brine", salt, -0.008, -0.003),
    ("store_warm", lambda m: values(m, "store_temp_c")[0], 4.9, 5.1),
    ("store_warm", lambda m: values(m, "store_humidity_frac")[0], 0.0, 0.0),
    ("store_dry", lost, 0.008, 0.04),
    ("press_too_weak", lambda m: truth(m, "unmould")["moisture_frac"], 0.005, 0.05),
    ("press_heavy_early", lambda m: values(m, "press_gauge_kpa")[0], 50.0, 300.0),
    ("press_heavy_early", lambda m: truth(m, "press_3")["moisture_frac"], 0.001, 0.03),
    ("brined_too_long", salt, 0.003, 0.02),
    ("curd_cold_at_moulding", lambda m: truth(m, "fill_moulds")["milk_c"], -12.0, -4.0),
    ("heated_over", lambda m: truth(m, "heat")["milk_c"], 2.5, 7.0),
    ("cooled_under", lambda m: truth(m, "cool")["milk_c"], -8.0, -3.0),
    ("cut_late", lambda m: at_min(m, "step_ended", "set"), 24.9, 25.1),
    ("calcium_forgotten", floc_min, 0.5, 12.0),
    ("calcium_forgotten", lambda m: len(entries(m, "ingredient_added")), -1, -1),
    ("recorder_above_indicator", lambda m: values(m, "recorder_temp_c")[0], 0.9, 1.1),
    ("power_cut_in_store", lambda m: max(values(m, "store_temp_c")), 6.0, 8.0),
    ("power_cut_in_store", lambda m: values(m, "store_temp_c")[-1], -0.5, 0.5),
    ("end_forgotten", lambda m: at_min(m, "step_ended", "turn_1"), 44.9, 45.1),
    ("end_forgotten", lambda m: at_min(m, "step_begun", "turn_1"), 0.0, 0.0),
    ("typed_fahrenheit", lambda m: values(m, "milk_temp_c", step="starter")[0], 50, 62),
    ("typed_fahrenheit", lambda m: m["course"][-1]["ph"], 0.0, 0.0),
]


@pytest.mark.parametrize(
    ("fault", "looked_at", "least", "most"),
    SEEN,
    ids=[f"{row[0]}-{n}" for n, row in enumerate(SEEN)],
)
def test_a_fault_shows_where_it_should(fault, looked_at, least, most):
    difference = looked_at(whole(fault)) - looked_at(whole())
    assert least - 1e-9 <= difference <= most + 1e-9


def test_every_fault_of_the_table_is_looked_at():
    clocks = {"phone_clock_off", "phone_clock_off_and_known"}
    looked_at = {row[0] for row in SEEN} | clocks | {"drug_test_positive"}
    assert looked_at == set(FAULTS)


def test_a_positive_drug_test_is_written_down_and_no_cheese_is_made():
    made = whole("drug_test_positive")
    assert values(made, "drug_test") == ["positive"]
    assert [row["step"] for row in entries(made, "step_ended")] == ["receive"]


def test_a_phone_s_clock_is_off_and_the_phone_knows_it_or_does_not():
    known, unknown = whole("phone_clock_off_and_known"), whole("phone_clock_off")
    usual = [t_ms(row) for row in whole()["events"]]
    assert [t_ms(row) for row in known["events"]] == usual
    assert [row["at_ms"] for row in known["events"]] == [ms + 1500000 for ms in usual]
    assert [t_ms(row) for row in unknown["events"]] == [ms + 1500000 for ms in usual]
    assert {row["off_q_ms"] for row in unknown["events"]} == {None}


def test_a_fault_changes_nothing_before_it_happens():
    # The same noise and the same people until the fault's own step.
    for fault, step in (("cut_late", "set"), ("weak_brine", "unmould")):
        ended = at_min(whole(), "step_begun", step)
        early = [row["data"] for row in whole()["events"] if t_ms(row) < ended]
        found = [row["data"] for row in whole(fault)["events"]][: len(early)]
        assert found == early


def test_two_faults_happen_in_one_make():
    made = whole("weak_brine", "cut_late")
    assert salt(made) < salt(whole()) - 0.003
    assert at_min(made, "step_ended", "set") > at_min(whole(), "step_ended", "set") + 20
