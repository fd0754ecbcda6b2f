"""What a desk keeps never differs from what is worked out from nothing."""

from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from tests.conftest import through_json
from tests.core.brine.test_tanks import BRINE, TANK
from tests.core.builders import MAKE, Phone, a_day, at, three_ways
from tests.core.heat.holding import RULES
from tests.core.test_kept_holds import hold_day
from tests.core.test_properties import LAST_MIN, NOWS, STEPS, logs

NAMED = ["receive", "heat", "hold", "fans", "rennet"]
OF_STEPS = st.none() | st.sampled_from(NAMED)
# Around the hold of the small make, which runs from minute 61 to minute 91.
MINUTES = st.integers(55, 100) | st.sampled_from([60.9, 61, 75, 91, 91.1])
READ = {
    "milk_temp_c": [60.0, 62.8, 64.0, 67.0],
    "air_space_temp_c": [60.0, 66.0, 70.0],
    "recorder_temp_c": [63.0, 68.0],
    "fat_frac": [0.04, 0.12],
    "milk_volume_l": [250.0, 480.0],
    "milk_mass_kg": [250.0, 517.0],
    "ph": [6.6],
}
EQUIPMENT = {
    "plant_name": "Quernbeck",
    "sweetened": "yes",
    "extra_hold_s": 600,
    "gap_max_s": 900,
}


# 108 mL is within 5 % of the dose for cold milk of 500 L, not for warm milk.
DOSES = st.sampled_from([40.0, 103.0, 108.0, 200.0])
LATE = (
    "fat",
    "read",
    "set",
    "strike",
    "correct",
    "move",
    "warm",
    "step_begun",
    "step_ended",
    "curd_judged",
    "ingredient_added",
)

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
ALL_RULES = {**RULES, "brine": BRINE}
LOADS = st.tuples(st.sampled_from([MAKE, OTHER]), st.sampled_from(["small", "huge"]))


@st.composite
def readings(draw, phone):
    quantity = draw(st.sampled_from(sorted(READ)))
    value = draw(st.sampled_from(READ[quantity]))
    data = {"quantity": quantity, "value": value}
    step = draw(OF_STEPS)
    if step is not None:
        data["step"] = step
    if quantity.endswith("_temp_c") and draw(st.booleans()):
        data.update(typed="%g" % (value * 1.8 + 32), typed_unit="F")
    return phone.event("reading_taken", draw(MINUTES), **data)


@st.composite
def late_events(draw, day):
    """Return one event that comes when the hold is over and was looked at."""
    phone = Phone(1)
    kind = draw(st.sampled_from(LATE))
    if kind == "fat":
        data = {
            "quantity": "fat_frac",
            "value": 0.12,
            "step": draw(st.sampled_from(NAMED)),
        }
        return phone.event("reading_taken", draw(MINUTES), **data)
    if kind == "read":
        return draw(readings(phone))
    if kind in ("step_begun", "step_ended"):
        return phone.event(kind, draw(MINUTES), step=draw(st.sampled_from(NAMED)))
    if kind == "curd_judged":
        looked = draw(st.sampled_from(["flocculated", "clean_break"]))
        return phone.event(kind, 112, judgement=looked, step="set")
    if kind == "ingredient_added":
        step = draw(st.sampled_from(NAMED))
        dose = {"ingredient": "rennet", "unit": "mL", "step": step}
        return phone.event(kind, 103, amount=draw(DOSES), **dose)
    if kind == "warm":
        return phone.reading("milk_temp_c", 38.0, 3, draw(st.sampled_from(NAMED)))
    if kind == "move":
        acts = [row for row in day if row["kind"] in ("step_begun", "step_ended")]
        moved = {"at_ms": at(draw(MINUTES | st.just(104)))}
        about = draw(st.sampled_from(acts))["id"]
        return phone.event("entry_corrected", 110, about, set=moved, why="x")
    if kind == "set":
        key = draw(st.sampled_from(sorted(EQUIPMENT)))
        data = {"key": key, "value": EQUIPMENT[key], "agreed_with": "Inspector"}
        return phone.event("equipment_set", 110, **data)
    about = draw(st.sampled_from([row for row in day if row["kind"] != "make_opened"]))
    if kind == "strike":
        return phone.event("entry_struck", 110, about["id"], why="x")
    change = draw(
        st.fixed_dictionaries(
            {},
            optional={
                "at_ms": MINUTES.map(at),
                "value": st.sampled_from([62.0, 64.5, 250.0, 480.0]),
                "amount": DOSES,
            },
        ).filter(bool)
    )
    return phone.event("entry_corrected", 110, about["id"], set=change, why="x")


def tank_events(draw):
    """Return a tank's opening and some of what can happen to it."""
    phone = Phone(make=TANK)
    opened = phone.event("tank_opened", 0, name="Tank", mass_kg=500.0, salt_frac=0.2)
    told = [opened]
    for make, size in draw(st.lists(LOADS, max_size=3)):
        minute = draw(st.integers(0, LAST_MIN))
        wheels = {"size": size, "wheels": 3, "mass_kg": 4.5, "days": 0.05}
        load = phone.event("tank_loaded", minute, load_make=make, **wheels)
        told.append(load)
        if draw(st.booleans()):
            out = {"load": load["id"], "mass_kg": 4.4}
            told.append(phone.event("tank_unloaded", minute + 60, **out))
        if draw(st.booleans()):
            about = draw(st.sampled_from(told))
            told.append(phone.event("entry_struck", 199, about["id"], why="x"))
    return told


@st.composite
def histories(draw):
    """Return a log of two makes and a tank, in any order or with its end shuffled."""
    first = draw(logs(8))
    for event in first:
        if event["kind"] == "make_opened":
            event["data"]["recipe"] = three_ways()
    day = hold_day()
    first += draw(st.lists(late_events(day), max_size=2))
    second = a_day(Phone(1, make=OTHER))[: draw(st.integers(0, 31))]
    log = first + second + tank_events(draw)
    unlike = {event["id"]: event for event in log}  # two may be drawn with one id
    log = list(unlike.values())
    cut = draw(st.sampled_from([0, 0, len(log) // 2, max(0, len(log) - 4)]))
    return log[:cut] + draw(st.permutations(log[cut:]))


def of_rules():
    desk = desk_of.new()
    desk_of.set_rules(desk, ALL_RULES)
    return desk


def answers(desk, now_ms):
    """Return all that the desk answers about its makes and tanks at an instant."""
    shown = {"board": desk_of.board(desk, now_ms), "tanks": desk_of.tanks(desk, now_ms)}
    for make in (MAKE, OTHER):
        shown[make] = {
            "view": desk_of.view(desk, make, now_ms),
            "record": desk_of.record(desk, make),
            "steps": [desk_of.step(desk, make, key, now_ms) for key in STEPS],
            "curve": desk_of.curve(desk, make, now_ms),
        }
    return through_json(shown)


@settings(max_examples=60)
@given(histories(), st.data())
def test_all_answers_are_those_of_a_desk_that_kept_nothing(log, data):
    kept = of_rules()
    looks = data.draw(st.lists(st.integers(1, len(log)), max_size=4))
    for count, event in enumerate(log, start=1):
        assert desk_of.take(kept, [event])["problems"] == []
        if count in looks:
            desk_of.board(kept, at(data.draw(NOWS)))  # from here on, answers are kept
    now_ms = at(data.draw(NOWS))
    fresh = of_rules()
    desk_of.take(fresh, log)
    # A View that is fresh still stands as it was when it was asked for.
    for make, view in kept["views"].items():
        if view["now_ms"] <= now_ms < (view["next_change_ms"] or now_ms + 1):
            desk_of.view(fresh, make, view["now_ms"])
    assert answers(kept, now_ms) == answers(fresh, now_ms)


@settings(max_examples=250)
@given(st.data())
def test_a_late_entry_leaves_what_a_desk_that_kept_nothing_answers(data):
    phone = Phone(1)
    phone.seq = 500
    more = [data.draw(readings(phone)) for _ in range(data.draw(st.integers(0, 4)))]
    day = hold_day() + more
    for event in day:
        if event["kind"] == "ingredient_added":
            event["data"]["amount"] = data.draw(DOSES)
    late = data.draw(late_events(day))
    kept = of_rules()
    desk_of.take(kept, day)
    answers(kept, at(200))  # from here on, what is over is kept
    assert desk_of.take(kept, [late])["problems"] == []
    fresh = of_rules()
    desk_of.take(fresh, [*day, late])
    assert answers(kept, at(200)) == answers(fresh, at(200))


def test_rules_that_come_late_change_what_was_kept_by_others(ask):
    # 145 °F is enough by the rule (21 CFR 1240.61), and below the recipe's own band,
    # which judges where no rule does.
    day = hold_day()
    asked = ("view", MAKE, at(200))
    late = ask.desk(("take", day), asked, ("set_rules", RULES), asked)
    first = ask.desk(("set_rules", RULES), ("take", day), asked)
    assert late[-1]["alerts"] == first[-1]["alerts"]
    assert late[-1]["alerts"] != late[1]["alerts"]
