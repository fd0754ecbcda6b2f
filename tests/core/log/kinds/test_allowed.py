"""Who may record what."""

import pytest

from server.core.log.kinds.columns import ROLES
from server.core.log.kinds.table import KINDS


@pytest.mark.parametrize(
    ("role", "kind", "allowed"),
    [
        ("viewer", "note_added", False),
        ("helper", "note_added", True),
        ("helper", "step_skipped", False),
        ("maker", "step_skipped", True),
        ("owner", "make_opened", True),
        ("stranger", "note_added", False),
        ("owner", "moon_seen", False),
    ],
)
def test_a_role_may_do_what_the_table_says(core, role, kind, allowed):
    assert core("log.kinds.allowed", "may", role, kind) is allowed


@pytest.mark.parametrize("kind", ["entry_struck", "entry_corrected"])
@pytest.mark.parametrize(
    ("role", "about", "allowed"),
    [
        ("helper", "reading_taken", True),
        ("helper", None, True),  # not known here: its own kind decides
        # Seen: a helper, who may not lift a hold, could strike it out.
        ("helper", "hold_placed", False),
        ("helper", "make_opened", False),
        ("maker", "hold_placed", True),
        ("owner", "moon_seen", False),
    ],
)
def test_changing_an_entry_asks_for_its_role_too(core, kind, role, about, allowed):
    assert core("log.kinds.allowed", "may", role, kind, about) is allowed


def test_a_stop_asks_for_its_own_role_alone(core):
    assert (
        core("log.kinds.allowed", "may", "helper", "timer_stopped", "hold_placed")
        is True
    )


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_nobody_may_do_more_than_who_stands_above(core, kind):
    may = [core("log.kinds.allowed", "may", role, kind) for role in ROLES]
    # Once allowed, allowed for every role after it; never for who only looks.
    assert may == sorted(may)
    assert may[0] is False
    assert may[-1] is True
