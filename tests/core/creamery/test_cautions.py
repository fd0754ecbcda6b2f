"""Who is shown which cautions, when: each person, each day, each hazard."""

from tests.core.builders import MAKE, Phone, at, figure, recipe, step
from tests.core.matters.gated import RULES
from tests.core.step.parts.test_step_parts import wanted
from tests.core.step.test_steps import one_step

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
DAY_TZ = -420  # the builders' day starts at 14:13 UTC, there 07:13
NIGHT_TZ = 480  # there it is 22:13
WASH = {"hazard": "hot_water", "do": {"en": "Mix it in the jug, not in the vat."}}


def rows(ask, events, at_min, person="ida", tz_min=DAY_TZ):
    """Return {step or quantity: (where it stands, ids owed)}."""
    reader = {"person": person, "tz_min": tz_min}
    calls = (("set_rules", RULES), ("take", events))
    view = ask.desk(*calls, ("view", MAKE, at(at_min), reader))[2]
    return {
        row["step"] or row["quantity"]: (
            row["stands"],
            [one["id"] for one in row["owed"]],
        )
        for row in view["cautions"]
    }


def owed(ask, events, at_min, key="work", **whose):
    return rows(ask, events, at_min, **whose).get(key, (None, []))[1]


def making(phone, *steps):
    """Return a make of these steps, opened."""
    made = dict(recipe(), steps=[dict(one) for one in steps])
    made["ingredients"] = []
    return phone.opened(recipe=made)


def work(key, cautions, after=(), **rest):
    return step(key, after, cautions=cautions, **rest)


def seen(phone, at_min, *cautions):
    return phone.event("cautions_seen", at_min, cautions=list(cautions), step="work")


def test_a_person_is_shown_the_cautions_of_the_step_at_hand_with_their_signs(ask):
    events = [making(Phone(), work("work", ["knife", "lifting"]))]
    reader = {"person": "ida", "tz_min": DAY_TZ}
    view = ask.desk(("take", events), ("view", MAKE, at(1), reader))[1]
    row = view["cautions"][0]
    assert (row["step"], row["stands"]) == ("work", "before")
    assert row["owed"][0] == {
        "id": "knife",
        "hazard": "knife",
        "signs": [
            {"kind": "warning", "pictogram": "blade"},
            {"kind": "mandatory", "pictogram": "gloves"},
        ],
        "do": None,
    }


def test_a_view_for_nobody_and_of_a_make_that_is_over_shows_no_cautions(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"]))]
    assert "cautions" not in ask.view(events, 1)
    events.append(phone.event("make_closed", 2))
    reader = {"person": "ida", "tz_min": DAY_TZ}
    view = ask.desk(("take", events), ("view", MAKE, at(3), reader))[1]
    assert "cautions" not in view


def test_what_was_seen_is_not_shown_again_and_a_new_hazard_is(ask):
    phone = Phone()
    opened = making(
        phone,
        work("work", ["lifting", "wet_floor"]),
        work("next", ["wet_floor", "pinch"], ["work"]),
    )
    events = [opened, seen(phone, 1, "lifting", "wet_floor")]
    assert owed(ask, events, 2) == []
    events += [phone.event("step_begun", 2, step="work")]
    events += [phone.event("step_ended", 3, step="work")]
    assert owed(ask, events, 4, "next") == ["pinch"]


def test_who_takes_over_a_shared_phone_sees_what_the_one_before_has_seen(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"])), seen(phone, 1, "lifting")]
    assert owed(ask, events, 2, person="ida") == []
    assert owed(ask, events, 2, person="bo") == ["lifting"]


def test_what_was_seen_at_another_make_counts_for_the_person(ask):
    other = Phone(1, make=OTHER)
    events = [
        making(Phone(), work("work", ["lifting", "pinch"])),
        making(other, work("work", ["pinch"])),
        seen(other, 1, "pinch"),
    ]
    assert owed(ask, events, 2) == ["lifting"]


def test_a_new_day_sees_the_cautions_again(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"])), seen(phone, 1, "lifting")]
    by_day = {"tz_min": 60}  # at night being alone would be owed as well
    assert owed(ask, events, 1 + 16 * 60 - 1, **by_day) == []
    assert owed(ask, events, 1 + 16 * 60, **by_day) == ["lifting"]


def test_a_sight_that_was_struck_out_does_not_count(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"])), seen(phone, 1, "lifting")]
    struck = phone.event("entry_struck", 2, ref=events[1]["id"], why="Not me")
    assert owed(ask, [*events, struck], 3) == ["lifting"]


def test_a_step_s_own_words_for_a_hazard_are_seen_apart_from_the_usual_ones(ask):
    phone = Phone()
    opened = making(phone, work("work", ["lifting"], own_cautions=[WASH]))
    events = [opened, seen(phone, 1, "hot_water", "lifting")]
    assert owed(ask, events, 2) == ["hot_water/work"]
    assert owed(ask, [*events, seen(phone, 3, "hot_water/work")], 4) == []


def test_a_hazard_that_a_step_names_twice_is_shown_once(ask):
    opened = making(Phone(), work("work", ["lifting", "lifting"]))
    assert owed(ask, [opened], 1) == ["lifting"]


def test_work_that_runs_is_never_covered(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"]))]
    assert rows(ask, events, 1)["work"] == ("before", ["lifting"])
    events.append(phone.event("step_begun", 1, step="work"))
    assert rows(ask, events, 2)["work"] == ("beside", ["lifting"])


def test_a_step_is_not_covered_while_another_of_its_make_is_over_and_rings(ask):
    phone = Phone()
    runs = work("runs", [], lasts=figure(1800, "s", 1500, 2100), end={"by": "time"})
    events = [making(phone, runs, work("work", ["lifting"]))]
    events.append(phone.event("step_begun", 0, step="runs"))
    assert rows(ask, events, 29)["work"][0] == "before"
    assert rows(ask, events, 30)["work"][0] == "beside"
    # Eight hours asleep: it is late, and stays in sight.
    assert rows(ask, events, 480)["work"][0] == "beside"


def test_a_step_is_not_covered_while_a_timer_is_over(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"]))]
    timer = phone.event("timer_started", 1, label="Rinse", lasts_s=60.0)
    events.append(timer)
    assert rows(ask, events, 1.5)["work"][0] == "before"
    assert rows(ask, events, 2)["work"][0] == "beside"
    events.append(phone.event("timer_stopped", 3, ref=timer["id"]))
    assert rows(ask, events, 4)["work"][0] == "before"


def test_who_is_alone_at_night_is_told_so_once_a_shift(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"]))]
    night = {"tz_min": NIGHT_TZ}
    assert owed(ask, events, 1, **night) == ["lifting", "alone"]
    assert owed(ask, events, 1) == ["lifting"]
    events.append(seen(phone, 2, "alone"))
    assert owed(ask, events, 3, **night) == ["lifting"]


def test_who_has_somebody_else_at_work_within_the_hour_is_not_alone(ask):
    bo = Phone(1, person="bo", make=OTHER)
    events = [making(Phone(), work("work", ["lifting"])), making(bo, work("work", []))]
    assert owed(ask, events, 59, tz_min=NIGHT_TZ) == ["lifting"]
    assert owed(ask, events, 61, tz_min=NIGHT_TZ) == ["lifting", "alone"]


def test_whom_titrates_acid_is_told_of_lye_and_only_who_has_silver_of_silver(ask):
    phone = Phone()
    acid = one_step(
        phone, readings=[wanted("during", quantity="titratable_acidity_frac")]
    )
    assert owed(ask, acid, 1) == ["lye"]
    assert owed(ask, acid, 1, "titratable_acidity_frac") == ["lye"]
    phone = Phone()
    salt = one_step(phone, readings=[wanted("during", quantity="brine_salt_frac")])
    assert owed(ask, salt, 1) == []
    silver = phone.event("equipment_set", 1, key="silver_mol_l", value=0.1)
    assert owed(ask, [*salt, silver], 2) == ["silver_nitrate"]


def test_a_tap_answers_with_what_its_person_has_still_to_see(ask):
    phone = Phone()
    opened = making(phone, work("work", ["lifting", "pinch"]))
    reader = {"person": "ida", "tz_min": DAY_TZ}
    now = seen(phone, 1, "lifting")
    tapped = ("tap", now, ["helper"], MAKE, at(1), reader)
    answer = ask.desk(("take", [opened]), tapped)[1]
    assert [one["id"] for one in answer["view"]["cautions"][0]["owed"]] == ["pinch"]


def test_the_record_says_who_was_shown_what(ask):
    phone = Phone()
    events = [making(phone, work("work", ["lifting"])), seen(phone, 1, "lifting")]
    line = ask.desk(("take", events), ("record", MAKE))[1][-1]
    assert (line["kind"], line["by"], line["step"]) == ("cautions_seen", "ida", "work")
    assert line["data"]["cautions"] == ["lifting"]


def test_what_asks_to_act_now_is_not_covered_by_cautions(ask):
    phone = Phone()
    untested = [
        making(
            phone,
            work("receive", [], readings=[wanted("begin", quantity="drug_test")]),
            work("pump", ["lifting"], ["receive"]),
            work("work", ["knife"], ["pump"]),
        ),
        phone.event("step_begun", 1, step="receive"),
        phone.event("step_ended", 2, step="receive", why="no test at hand"),
        phone.event("step_begun", 3, step="pump"),
        phone.event("step_ended", 4, step="pump"),
    ]
    assert rows(ask, untested, 5)["work"] == ("beside", ["knife"])
    (matter,) = ask.desk(
        ("set_rules", RULES), ("take", untested), ("view", MAKE, at(5))
    )[2]["matters"]
    answer = phone.event("alert_acknowledged", 5, alert="matter/" + matter["id"])
    assert rows(ask, [*untested, answer], 6)["work"] == ("before", ["knife"])
    tested = [*untested, phone.reading("drug_test", "negative", 3, "receive")]
    assert rows(ask, tested, 5)["work"] == ("before", ["knife"])
