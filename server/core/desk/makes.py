"""One make: what to do now, one step of it, its course and its record."""

from ..creamery.kept import file as file
from ..creamery.kept import new as new
from ..creamery.kept import take as take
from ..creamery.kept import view as view
from ..log.touches import forget
from ..step import record as batch_record
from ..step.view import step as step_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import Curve
    from server.shapes.core.record import LogLine
    from server.shapes.core.state import Desk, Rules
    from server.shapes.core.step import Step


def step(desk: "Desk", make_id: str, key: str, now_ms: int) -> "Step | None":
    """Return one Step in full, whatever its status; None when it is not known.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        key: key of the step.
        now_ms: now, by the server's clock [ms].
    """
    state = desk["makes"].get(make_id)
    if state is None:
        return None
    return step_of(state, key, now_ms, desk.get("rules"), desk)


def curve(desk: "Desk", make_id: str, now_ms: int) -> "Curve | None":
    """Return the course of one make over time, see `curve.curve`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        now_ms: now, by the server's clock [ms].
    """
    # Loaded when first looked at: the app starts without it.
    from ..step.curve.curve import curve as course

    state = desk["makes"].get(make_id)
    if state is None:
        return None
    return course(state, now_ms, desk.get("rules"), desk)


def record(desk: "Desk", make_id: str) -> "list[LogLine]":
    """Return the whole batch record of a make, oldest line first.

    Args:
        desk: Desk.
        make_id: UUID of the make.
    """
    state = desk["makes"].get(make_id)
    return [] if state is None else batch_record.lines(state)


def set_rules(desk: "Desk", rules: "Rules") -> None:
    """Hand the legal figures to a desk; what was kept and rests on them is forgotten.

    On a phone most rules come after the first views: those judge no hold, and what
    was worked out without them stands.

    Args:
        desk: Desk; changed in place.
        rules: {rule id: the rule}, as the files of server/rules.
    """
    known = desk.get("rules", {})
    desk["rules"] = rules
    if not _are_holds_judged_alike(known, rules):
        desk["views"] = {}
        for state in desk["makes"].values():
            forget(state)


def _are_holds_judged_alike(known: "Rules", rules: "Rules") -> bool:
    if any(rules.get(key) != known[key] for key in known):
        return False
    return all(
        key in known or rules[key].get("topic") != "heat_treatment" for key in rules
    )
