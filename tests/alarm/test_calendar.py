"""The calendar file, read by another library's reader and by RFC 5545's rules."""

from datetime import UTC, datetime, timedelta

import icalendar
import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.alarm.calendar import calendar, escaped, folded, utc
from tests.core.builders import MAKE, START_MS

MAKE_VIEW = {
    "now_ms": START_MS + 3_600_000,
    "make": {
        "id": MAKE,
        "name": "Käse; grün, alt",
        "batch": "B7",
        "vat": "Vat 1",
        "opened_ms": START_MS,
    },
}


def entry(**given):
    return {
        "name": "step_end/press",
        "what": "step_end",
        "title": {"en": "Press overnight"},
        "label": None,
        "at_ms": START_MS + 43_200_000,
        "late_ms": None,
        "sure": True,
        **given,
    }


def read(*entries, view=MAKE_VIEW):
    found = icalendar.Calendar.from_ical(calendar(view, list(entries)))
    return list(found.walk("VEVENT"))


def test_an_entry_rings_at_its_instant_in_utc():
    (event,) = read(entry())
    # 1,790,043,200 s since 1970 is 2026-09-22 02:13:20 UTC.
    assert event.start == datetime(2026, 9, 22, 2, 13, 20, tzinfo=UTC)
    assert event["SUMMARY"] == "Press overnight: the time is up"
    assert event["LOCATION"] == "Käse; grün, alt · Vat 1"
    assert "batch B7" in event["DESCRIPTION"]
    (alarm,) = event.walk("VALARM")
    assert alarm["ACTION"] == "DISPLAY"
    assert alarm["TRIGGER"].dt == timedelta(0)
    assert alarm["DESCRIPTION"] == "Press overnight: the time is up"


def test_a_band_rings_at_its_end_once_more():
    late_ms = START_MS + 43_200_000 + 7_200_000
    (event,) = read(entry(late_ms=late_ms))
    alarms = [row["TRIGGER"].dt for row in event.walk("VALARM")]
    assert alarms == [timedelta(0), timedelta(hours=2)]


def test_a_forecast_says_that_it_is_one():
    (event,) = read(entry(what="step_begin", name="step_begin/turn", sure=False))
    assert "can begin" in event["SUMMARY"]
    assert "forecast" in event["DESCRIPTION"]


def test_a_timer_says_its_label():
    (event,) = read(
        entry(what="timer", name="timer/1", title=None, label="Turn, then salt")
    )
    assert event["SUMMARY"] == "Turn, then salt: the time is up"


def test_the_same_deadline_keeps_its_uid_and_counts_up():
    later = {**MAKE_VIEW, "now_ms": MAKE_VIEW["now_ms"] + 600_000}
    (first,) = read(entry())
    (moved,) = read(entry(at_ms=START_MS + 50_000_000), view=later)
    (other,) = read(entry(name="step_end/brine"))
    assert first["UID"] == moved["UID"] != other["UID"]
    assert moved["SEQUENCE"] > first["SEQUENCE"]


def test_a_file_has_what_the_standard_asks_for():
    found = icalendar.Calendar.from_ical(calendar(MAKE_VIEW, [entry()]))
    assert (found["VERSION"], found["METHOD"]) == ("2.0", "PUBLISH")
    assert found["PRODID"]
    (event,) = found.walk("VEVENT")
    assert {"UID", "DTSTAMP", "DTSTART"} <= set(event)


@given(st.text(max_size=200))
def test_no_line_is_over_75_bytes_and_unfolding_gives_it_back(text):
    line = "SUMMARY:" + escaped(text)
    data = folded(line)
    assert data.endswith(b"\r\n")
    lines = data[:-2].split(b"\r\n")
    assert all(len(one) <= 75 for one in lines)
    for one in lines:
        one.decode()  # never cut within a letter
    # RFC 5545 section 3.1: a line break and the one blank after it go.
    assert data[:-2].replace(b"\r\n ", b"").decode() == line


@given(st.text(st.characters(blacklist_categories=["Cs", "Cc"]), max_size=60))
def test_any_name_of_a_make_survives_the_file(name):
    make = {**MAKE_VIEW["make"], "name": "x" + name, "vat": None}
    (event,) = read(entry(), view={**MAKE_VIEW, "make": make})
    assert event["LOCATION"] == "x" + name


@pytest.mark.parametrize(
    ("text", "written"),
    [("a,b;c\\d", "a\\,b\\;c\\\\d"), ("a\nb", "a\\nb"), ("a\x07b\r", "ab")],
)
def test_signs_with_a_meaning_are_escaped(text, written):
    assert escaped(text) == written


def test_an_instant_is_written_in_utc():
    assert utc(0) == "19700101T000000Z"


def test_a_calendar_is_in_the_language_of_who_opens_it():
    late_ms = START_MS + 43_200_000 + 7_200_000
    french = entry(title={"en": "Press", "fr": "Presser"}, late_ms=late_ms, sure=False)
    found = icalendar.Calendar.from_ical(calendar(MAKE_VIEW, [french], "fr"))
    (event,) = found.walk("VEVENT")
    assert event["SUMMARY"] == "«\u00a0Presser\u00a0»\u00a0: c’est l’heure"
    assert "lot B7" in event["DESCRIPTION"]
    assert "Une prévision" in event["DESCRIPTION"]
    last = event.walk("VALARM")[1]["DESCRIPTION"]
    assert last.startswith("Dernier moment. «")
