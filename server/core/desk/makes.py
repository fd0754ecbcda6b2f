"""One make: what to do now, one step of it, its course and its record."""

from ..creamery.kept import check_recipes
from ..creamery.kept import file as file
from ..creamery.kept import new as new
from ..creamery.kept import take as take
from ..log.touches import forget
from ..step import record as batch_record
from ..step.view import step as step_of
from .shown import view_for

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.curve import Curve
    from server.shapes.core.record import LogLine
    from server.shapes.core.state import Desk, Rules
    from server.shapes.core.step import Add, Step
    from server.shapes.core.view import Reader, View


def view(
    desk: "Desk", make_id: str, now_ms: int, reader: "Reader | None" = None
) -> "View | None":
    """Return the View of one make, or None when it cannot be shown.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        now_ms: now, by the server's clock [ms].
        reader: {"person", "tz_min"} of who is to see the cautions of the steps at
            hand, see `cautions.owed`; None for a View without them.
    """
    return view_for(desk, make_id, now_ms, reader)


# Topics of the rules that lead a make: a phone has them from its start.
LEADING = (
    "heat_treatment",
    "milk_class",
    "matters",
    "curing",
    "slow_make",
    "microbiology",
)


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


def add_from_lot(
    desk: "Desk", make_id: str, key: str, ingredient: str, lot: str, now_ms: int
) -> "Add | None":
    """Return what a step adds of an ingredient if it comes from the lot in hand.

    It is the answer that the step gives once an entry has named this lot.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        key: key of the step.
        ingredient: key of the ingredient.
        lot: the lot as it was typed; blank for what the make knows.
        now_ms: now, by the server's clock [ms].

    Returns:
        Add of the Step; None where make, step or ingredient is not known.
    """
    state = desk["makes"].get(make_id)
    if state is None:
        return None
    trial = state.copy()
    trial["kept"] = {}  # what was worked out rests on the lot before
    if lot.strip():
        trial["in_hand"] = {ingredient: lot.strip()}
    # The make itself must not teach its trial as if it were another.
    beside = desk.copy()
    beside["makes"] = desk["makes"].copy()
    beside["makes"][make_id] = trial
    beside["views"] = {}
    told = step_of(trial, key, now_ms, desk.get("rules"), beside)
    for add in [] if told is None else told["adds"]:
        if add["ingredient"] == ingredient:
            return add
    return None


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

    On a phone most rules come after the first views: those lead no make, and what
    was worked out without them stands. The check of recipes comes with them.

    Args:
        desk: Desk; changed in place.
        rules: {rule id: the rule}, as the files of server/rules.
    """
    known = desk.get("rules", {})
    desk["rules"] = rules
    if not _lead_alike(known, rules):
        desk["views"] = {}
        for state in desk["makes"].values():
            forget(state)
    check_recipes(desk)


def _lead_alike(known: "Rules", rules: "Rules") -> bool:
    if any(rules.get(key) != known[key] for key in known):
        return False
    return all(key in known or rules[key].get("topic") not in LEADING for key in rules)
