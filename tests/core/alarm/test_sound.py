"""The budget of a listener: few rings, the urgent first, nothing lost."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

START_MS = 1_790_000_000_000
SECOND = 1000
MINUTE = 60 * SECOND
HOUR = 60 * MINUTE
QUIET = {"soundings": [], "ids": []}
KINDS = ("timer", "step_due", "step_late", "reading_overdue", "alert")
INSTANT = ("timer", "step_due")


def alarm(name, kind="alert", priority=1, state="unacknowledged", rings_ms=START_MS):
    return {
        "id": name,
        "kind": kind,
        "priority": priority,
        "state": state,
        "rings_ms": rings_ms,
    }


def sounding(core, alarms, memory, real_ms):
    return core("alarm.sound", "sounding", alarms, memory, real_ms)


class Listener:
    """Someone who answers each ring at once, so that each next one is new."""

    def __init__(self, core):
        self.core = core
        self.memory = QUIET

    def hear(self, alarms, real_ms):
        found = sounding(self.core, alarms, self.memory, real_ms)
        self.memory = found["memory"]
        return found

    def hear_and_answer(self, alarms, real_ms):
        found = self.hear(alarms, real_ms)
        self.hear([], real_ms)
        return found


def test_nothing_rings_when_nothing_stands(core):
    found = sounding(core, [], QUIET, START_MS)
    assert (found["ids"], found["begins"], found["waits_ms"]) == ([], False, None)


def test_the_quiet_memory_is_empty(core):
    assert core("alarm.sound", "quiet") == QUIET


def test_a_ring_goes_on_until_it_is_answered_and_counts_once(core):
    ear = Listener(core)
    assert ear.hear([alarm("a")], START_MS)["begins"]
    later = ear.hear([alarm("a")], START_MS + 40 * MINUTE)
    assert (later["ids"], later["begins"]) == (["a"], False)
    assert len(later["memory"]["soundings"]) == 1


@pytest.mark.parametrize("state", ["acknowledged", "shelved", "returned"])
def test_what_is_answered_shelved_or_over_is_silent(core, state):
    assert sounding(core, [alarm("a", state=state)], QUIET, START_MS)["ids"] == []


def test_what_comes_meanwhile_joins_the_ring_the_urgent_on_top(core):
    ear = Listener(core)
    low = alarm("low", "reading_overdue", 3)
    ear.hear([low], START_MS)
    found = ear.hear([low, alarm("high")], START_MS + SECOND)
    assert (found["ids"], found["priority"]) == (["high", "low"], 1)
    assert not found["begins"]


def test_a_third_ring_within_a_minute_waits_and_takes_all_with_it(core):
    ear = Listener(core)
    for place in (0, 1):
        timer = alarm(f"t{place}", "timer", 2)
        assert ear.hear_and_answer([timer], START_MS + place * SECOND)["begins"]
    rest = [alarm("t3", "timer", 2), alarm("t4", "timer", 2)]
    found = ear.hear(rest, START_MS + 2 * SECOND)
    assert (found["ids"], found["waits_ms"]) == ([], START_MS + MINUTE)
    assert not ear.hear(rest, START_MS + MINUTE - 1)["begins"]
    found = ear.hear(rest, START_MS + MINUTE)
    assert (found["ids"], found["begins"]) == (["t3", "t4"], True)


@pytest.mark.parametrize(("priority", "most"), [(1, 6), (2, 5), (3, 3)])
def test_an_hour_holds_so_many_rings_of_what_nobody_set(core, priority, most):
    ear = Listener(core)
    begun = [
        ear.hear_and_answer(
            [alarm(f"a{place}", "alert", priority)], START_MS + place * MINUTE
        )["begins"]
        for place in range(8)
    ]
    assert begun == [True] * most + [False] * (8 - most)
    found = ear.hear([alarm("last", "alert", priority)], START_MS + 8 * MINUTE)
    assert found["waits_ms"] == START_MS + HOUR


def test_a_timer_rings_at_its_instant_however_many_rang_before(core):
    ear = Listener(core)
    for place in range(6):
        ear.hear_and_answer([alarm(f"a{place}")], START_MS + place * MINUTE)
    timer = alarm("t", "timer", 2)
    assert ear.hear([timer], START_MS + 10 * MINUTE)["ids"] == ["t"]


ROWS = st.lists(
    st.tuples(
        st.integers(0, 9),  # which alarm
        st.sampled_from(KINDS),
        st.integers(1, 3),
        st.booleans(),  # whether it is answered before the next
        st.integers(0, 8 * MINUTE),  # until the next one
    ),
    min_size=1,
    max_size=60,
)


@settings(max_examples=40)
@given(rows=ROWS)
def test_no_minute_and_no_hour_rings_more_often_than_its_budget(core, rows):
    ear = Listener(core)
    now_ms, standing, begun = START_MS, {}, []
    for place, (number, kind, priority, answered, gap_ms) in enumerate(rows):
        standing[number] = alarm(f"{number}/{place}", kind, priority)
        found = ear.hear(list(standing.values()), now_ms)
        if found["begins"]:
            asked = any(row["kind"] in INSTANT for row in standing.values())
            begun.append((now_ms, asked))
        # Whatever does not ring has an instant at which it will.
        assert set(found["ids"]) == {row["id"] for row in standing.values()} or (
            found["ids"] == [] and found["waits_ms"] > now_ms
        )
        if answered:
            standing = {}
            ear.hear([], now_ms)
        now_ms += gap_ms
    for at_ms, _ in begun:
        assert sum(at_ms <= one < at_ms + MINUTE for one, _ in begun) <= 2
        hour = [
            one for one, asked in begun if not asked and at_ms <= one < at_ms + HOUR
        ]
        assert len(hour) <= 6
