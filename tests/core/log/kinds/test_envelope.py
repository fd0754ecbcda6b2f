"""What the check says of each thing that can be wrong in an envelope."""

import pytest

from server.core.log.kinds.event import check_event
from tests.core.builders import MAKE, START_MS
from tests.core.log.kinds.checking import BIG, a_note, problem, refused


@pytest.mark.parametrize(
    ("name", "value", "expected"),
    [
        ("id", "7", problem("id", "not_a_uuid")),
        ("id", None, problem("id", "not_a_uuid")),
        ("make", MAKE.upper(), problem("make", "not_a_uuid")),
        ("device", MAKE.replace("-", "0"), problem("device", "not_a_uuid")),
        (
            "device",
            MAKE[:8] + MAKE[9:14] + "-" + MAKE[14:],
            problem("device", "not_a_uuid"),
        ),
        ("make", MAKE[:20] + "g" + MAKE[21:], problem("make", "not_a_uuid")),
        ("make", MAKE + "\n", problem("make", "not_a_uuid")),
        ("boot", 5, problem("boot", "not_a_uuid")),
        ("ref", "that one", problem("ref", "not_a_uuid")),
        ("person", "", problem("person", "missing", 64)),
        ("person", "x" * 65, problem("person", "missing", 64)),
        ("person", 7, problem("person", "missing", 64)),
        ("at_ms", 946684799999, problem("at_ms", "below", 946684800000)),
        ("at_ms", 4102444800001, problem("at_ms", "above", 4102444800000)),
        ("at_ms", START_MS + 0.5, problem("at_ms", "not_whole")),
        ("at_ms", True, problem("at_ms", "not_a_number")),
        ("at_ms", "now", problem("at_ms", "not_a_number")),
        ("entered_ms", None, problem("entered_ms", "not_a_number")),
        ("seq", 0, problem("seq", "below", 1)),
        ("seq", BIG + 1, problem("seq", "above", BIG)),
        ("seq", 1.5, problem("seq", "not_whole")),
        ("v", 0, problem("v", "below", 1)),
        ("v", 2, problem("v", "newer_version", 1)),
        ("tz_min", 841, problem("tz_min", "above", 840)),
        ("tz_min", -841, problem("tz_min", "below", -840)),
        ("off_ms", "slow", problem("off_ms", "not_a_number")),
        # A century is 4102444800000 - 946684800000 ms.
        ("off_ms", 3155760000001, problem("off_ms", "above", 3155760000000)),
        ("mono_ms", -1, problem("mono_ms", "below", 0)),
        ("off_q_ms", -1, problem("off_q_ms", "below", 0)),
        ("kind", "moon_seen", problem("kind", "unknown_kind")),
        ("kind", None, problem("kind", "unknown_kind")),
        # A list cannot be looked up in a table; this once raised.
        ("kind", ["note_added"], problem("kind", "unknown_kind")),
        ("data", None, problem("data", "not_a_mapping")),
        ("data", [], problem("data", "not_a_mapping")),
    ],
)
def test_what_is_wrong_in_the_envelope_is_named(ask, name, value, expected):
    refused(ask, {**a_note(), name: value}, expected)


@pytest.mark.parametrize("value", [float("inf"), float("-inf"), float("nan")])
@pytest.mark.parametrize(
    "name", ["at_ms", "entered_ms", "seq", "v", "tz_min", "off_ms", "mono_ms"]
)
def test_a_number_without_end_is_no_number(name, value):
    # A parser makes 1e999 endless, and this once raised. JSON cannot carry it
    # to the phone, so this runs on the server alone.
    found = check_event({**a_note(), name: value})
    assert found == [problem(name, "not_a_number")]


@pytest.mark.parametrize("event", [None, 7, "note", [], [[]]])
def test_what_is_no_event_is_refused(ask, event):
    refused(ask, event, problem("event", "not_a_mapping"))


def test_a_whole_number_may_come_with_a_point(core):
    event = {**a_note(), "at_ms": float(START_MS), "seq": 1.0, "v": 1.0}
    assert core("log.kinds.event", "check_event", event) == []


def test_version_two_with_a_point_is_newer_too(core):
    found = core("log.kinds.event", "check_event", {**a_note(), "v": 2.0})
    assert found == [problem("v", "newer_version", 1)]


def test_a_never_measured_clock_is_sound(core):
    assert core("log.kinds.event", "check_event", {**a_note(), "off_q_ms": None}) == []
