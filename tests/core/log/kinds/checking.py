"""Builders for the checks of an event."""

from tests.core.builders import Phone

BIG = 9007199254740991  # the largest whole number that JSON keeps exactly


def problem(field, key, limit=None):
    return {"field": field, "key": key, "limit": limit}


def a_note():
    return Phone().event("note_added", 1, text="Curd looks fine.")


def refused(ask, event, *problems):
    """Assert that an event is refused with these problems and counts for nothing."""
    told, kept = ask.desk(("take", [event]), ("desk",))
    event_id = event.get("id") if isinstance(event, dict) else None
    assert told["problems"] == [{"id": event_id, "why": list(problems)}]
    assert kept["views"] == {}
    # Kept as it came, where its envelope says of which make it is.
    for state in kept["makes"].values():
        assert (state["lists"], state["events"]) == ({}, {})
        assert [raw["event"] for raw in state["raw"].values()] == [event]


def body(kind, **data):
    return Phone().event(kind, 1, **data)
