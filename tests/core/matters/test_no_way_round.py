"""No sequence of a helper's taps reaches past a standing gate."""

from hypothesis import given, settings
from hypothesis import strategies as st

from server.core import desk as desk_of
from tests.core.builders import MAKE, at
from tests.core.matters.gated import HELPER, RULES, Make, gated_recipe

STEPS = [one["key"] for one in gated_recipe()["steps"]]
# Behind the gate of the test, and behind that of the hold.
PAST_TEST = STEPS[STEPS.index("heat") :]
PAST_HOLD = STEPS[STEPS.index("fans") :]

STEP = st.sampled_from(STEPS)
TAPS = st.one_of(
    st.tuples(st.just("step_begun"), STEP),
    st.tuples(st.just("step_ended"), STEP),
    st.tuples(st.just("step_skipped"), STEP),
    st.tuples(st.just("ingredient_added"), STEP),
    st.tuples(st.just("wheels_moulded"), STEP),
    st.tuples(st.just("reading_taken"), st.sampled_from(["positive", "negative"])),
    st.tuples(st.just("hot"), st.sampled_from([144.0, 145.0])),
    st.tuples(st.just("matter_decided"), st.sampled_from(["discard", "chart_shows"])),
    st.tuples(st.just("entry_struck"), st.integers(0, 30)),
    st.tuples(st.just("alert_acknowledged"), st.just("matter/drug")),
    st.tuples(st.just("make_closed"), st.none()),
)


def body(kind, what):
    if kind in ("step_begun", "step_ended", "step_skipped"):
        return {"step": what, "why": "Hurry"}
    if kind == "ingredient_added":
        return {"step": what, "ingredient": "rennet", "amount": 1.0, "unit": "mL"}
    if kind == "wheels_moulded":
        return {"step": what, "size": "small", "count": 1}
    if kind == "reading_taken":
        return {"quantity": "drug_test", "value": what, "step": "receive"}
    if kind == "matter_decided":
        return {"matter": "heat_hold", "way": what, "why": "Hurry"}
    if kind == "alert_acknowledged":
        return {"alert": what}
    return {"why": "Hurry"}


def events_of(make, number, kind, what):
    minute = 10 + number
    if kind == "hot":
        pair = (("milk_temp_c", what), ("air_space_temp_c", what + 5))
        return [
            make.phone.event(
                "reading_taken",
                minute,
                quantity=quantity,
                value=(typed - 32) / 1.8,
                typed=str(typed),
                typed_unit="F",
                step="hold",
            )
            for quantity, typed in pair
        ]
    data = body(kind, what)
    if kind == "entry_struck":
        ref = make.events[what % len(make.events)]["id"]
        return [make.phone.event(kind, minute, ref=ref, **data)]
    return [make.phone.event(kind, minute, **data)]


def touched(make, keys):
    """Return what stands of these steps that was done by a tap."""
    struck = [one["ref"] for one in make.events if one["kind"] == "entry_struck"]
    done = ("step_begun", "step_ended", "ingredient_added", "wheels_moulded")
    return [
        one
        for one in make.events
        if one["kind"] in done
        and one["data"].get("step") in keys
        and one["id"] not in struck
    ]


@settings(max_examples=25, deadline=None)
@given(st.lists(TAPS, max_size=30), st.booleans())
def test_no_sequence_of_a_helper_s_taps_passes_a_gate(taps, is_tested):
    make = Make("drug", "heat_hold")
    if is_tested:
        make.read("drug_test", "negative", 1, "receive")
    desk = desk_of.new()
    desk_of.set_rules(desk, RULES)
    desk_of.take(desk, make.events)
    for number, (kind, what) in enumerate(taps):
        for event in events_of(make, number, kind, what):
            now_ms = at(11 + number)
            before = len(touched(make, PAST_HOLD))
            told = desk_of.tap(desk, event, HELPER, MAKE, now_ms)
            if told["problems"]:
                continue
            make.events.append(event)
            after = desk_of.view(desk, MAKE, now_ms)["matters"]
            shut = {one["id"]: one for one in after if one["stops"]}
            if kind in ("entry_struck", "reading_taken", "hot"):
                continue  # a fact may come late; what has begun goes to its end
            # A hold of at most 30 taps is never met: nothing is done behind it.
            assert "heat_hold" in shut
            assert len(touched(make, PAST_HOLD)) == before == 0
            if "drug" in shut and kind in ("step_begun", "ingredient_added"):
                assert event["data"]["step"] not in PAST_TEST or any(
                    one["data"].get("step") == event["data"]["step"]
                    for one in touched(make, PAST_TEST)
                    if one["id"] != event["id"] and one["kind"] == "step_begun"
                )
    assert not [one for one in make.events if one["kind"] == "matter_decided"]
    assert not [one for one in make.events if one["kind"] == "make_closed"]
