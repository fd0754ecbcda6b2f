"""What an entry makes stale, and what stays kept."""

import pytest

from server.core.log import touches
from tests.core.builders import Phone, at
from tests.core.log.test_run import NEVER, corrected, struck

ALERTS = {
    "receive": [],
    "heat": [],
    "set": ["step_begun/rennet"],  # its floc clock runs from that begin
}


def with_kept(state):
    """Return a state in which alerts are kept, resting on their steps and the milk."""
    kept = {}
    for key, words in ALERTS.items():
        words = [*touches.of_step(key), "milk", "doses", *words]
        kept[key] = {"rests_on": words, "answer": []}
    return {**state, "kept": {"alerts": kept}}


def left(asked):
    """Return the keys of the alerts that are still kept, after a call of `take`."""
    return sorted(asked["args"][0]["kept"].get("alerts", {}))


@pytest.mark.parametrize(
    ("event", "stay"),
    [
        # What cannot change a step that is over leaves it kept.
        (("note_added", {"text": "Warm day."}), ["heat", "receive", "set"]),
        (
            ("timer_started", {"label": "Tea", "lasts_s": 60}),
            ["heat", "receive", "set"],
        ),
        # A newest entry that names its step changes that step alone.
        (("step_ended", {"step": "heat"}), ["receive", "set"]),
        (("step_begun", {"step": "hold"}), ["heat", "receive", "set"]),
        (
            ("reading_taken", {"quantity": "ph", "value": 6.5, "step": "heat"}),
            ["receive", "set"],
        ),
        # A floc clock runs from that begin.
        (("step_begun", {"step": "rennet"}), ["heat", "receive"]),
        # Without a step it may belong to any that ran; a dose or an opening
        # may change all.
        (("reading_taken", {"quantity": "ph", "value": 6.5}), []),
        (
            (
                "reading_taken",
                {"quantity": "milk_volume_l", "value": 480.0, "step": "receive"},
            ),
            [],
        ),
        (
            (
                "ingredient_added",
                {"ingredient": "rennet", "amount": 1, "unit": "mL", "step": "rennet"},
            ),
            [],
        ),
        # What it is about has not come yet: it is asked again when that comes.
        (("entry_struck", {"why": "Wrong."}), ["heat", "receive", "set"]),
    ],
)
def test_what_is_kept_is_forgotten_where_it_may_have_changed(ask, event, stay):
    phone = Phone()
    state = ask.state([phone.reading("ph", 6.6, 1)], ("", "state"))[0]
    state = with_kept(state)
    kind, data = event
    ref = NEVER if kind == "entry_struck" else None
    after = ask.changed("log.run", "take", state, phone.event(kind, 5, ref=ref, **data))
    assert left(after) == stay


def test_a_strike_forgets_the_step_of_what_it_strikes(ask):
    phone = Phone()
    reading = phone.reading("ph", 6.6, 1, "heat")
    state = ask.state([reading], ("", "state"))[0]
    state = with_kept(state)
    struck = phone.event("entry_struck", 5, ref=reading["id"], why="Wrong.")
    after = ask.changed("log.run", "take", state, struck)
    assert left(after) == ["receive", "set"]


def test_an_entry_that_comes_late_forgets_its_own_step(ask):
    phone = Phone()
    state = ask.state([phone.reading("ph", 6.6, 10)], ("", "state"))[0]
    state = with_kept(state)
    late = phone.event("step_ended", 5, step="heat")
    after = ask.changed("log.run", "take", state, late)
    assert left(after) == ["receive", "set"]


@pytest.mark.parametrize(
    ("at_min", "stay"), [(62, []), (63, ["heat", "receive", "set"])]
)
def test_a_temperature_near_the_metered_volume_may_change_every_dose(ask, at_min, stay):
    # Seen: the dose of a step that was over kept its old verdict when the
    # volume's temperature came in. It belongs to the volume for an hour.
    phone = Phone()
    volume = phone.reading("milk_volume_l", 500.0, 2, "receive")
    state = ask.state([volume], ("", "state"))[0]
    state = with_kept(state)
    reading = phone.reading("milk_temp_c", 35.0, at_min, "rennet")
    assert left(ask.changed("log.run", "take", state, reading)) == stay


def test_a_temperature_moved_to_the_metered_volume_may_change_every_dose(ask):
    phone = Phone()
    volume = phone.reading("milk_volume_l", 500.0, 2, "receive")
    reading = phone.reading("milk_temp_c", 35.0, 300, "rennet")
    moved = corrected(phone, reading["id"], 301, at_ms=at(3))
    back = struck(phone, moved["id"], 302)
    again = struck(phone, back["id"], 303)
    taken = [volume, reading]
    for event in (moved, back, again):
        state = ask.state(taken, ("", "state"))[0]
        state = with_kept(state)
        assert left(ask.changed("log.run", "take", state, event)) == []
        taken.append(event)
    # A plain undo far from the volume changes its own step alone.
    state = ask.state([volume, reading], ("", "state"))[0]
    state = with_kept(state)
    undo = struck(phone, reading["id"], 301)
    assert left(ask.changed("log.run", "take", state, undo)) == [
        "heat",
        "receive",
        "set",
    ]


def test_a_strike_too_deep_to_follow_makes_all_stale(ask):
    phone = Phone()
    chain = [phone.event("note_added", 1, text="Warm day.")]
    for minute in range(2, 14):
        chain.append(struck(phone, chain[-1]["id"], minute))
    state = with_kept(ask.state(chain[:-1], ("", "state"))[0])
    assert left(ask.changed("log.run", "take", state, chain[-1])) == []
    # A note that can be followed touches nothing.
    state = with_kept(ask.state(chain[:1], ("", "state"))[0])
    after = ask.changed("log.run", "take", state, chain[1])
    assert left(after) == ["heat", "receive", "set"]


def test_a_corrected_size_makes_stale_what_rests_on_the_new_size(ask):
    phone = Phone()
    wheels = phone.event("wheels_moulded", 5, size="large", count=28, step="fill")
    state = ask.state([wheels], ("", "state"))[0]
    for size in ("large", "small"):
        kept = {"rests_on": ["wheels_moulded/" + size], "answer": 28}
        state["kept"].setdefault("counted", {})[size] = kept
    mend = corrected(phone, wheels["id"], 6, size="small")
    after = ask.changed("log.run", "take", state, mend)["args"][0]
    assert after["kept"] == {"counted": {}}
