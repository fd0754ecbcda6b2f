"""What the room's display lists: of each make what comes next, then what else does."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.alarms import Alarm, Deadline, WallRow
    from server.shapes.core.view import Make

ROWS = 5  # more could not be read from across the room
OF_TIME = ("timer", "step_due", "step_late", "begin_late")


def wall_rows(
    makes: "list[Make]", deadlines: "list[Deadline]", standing: "list[Alarm]"
) -> "list[WallRow]":
    """Return the rows of the room's display, by their instant.

    Every make has one, though it waits for nothing; what is left of the room goes to
    what is next. Alarms that stand take rows of their own; what is late keeps one
    once its alarm was answered, else silence would look like all being well.

    Args:
        makes: those that are open.
        deadlines: what falls due in them, the next first.
        standing: the alarms that stand.

    Returns:
        List of {"id", "make", "make_name", "vat", "kind", "mark", "title", "label",
        "due_ms"}; of a make that waits for nothing, the last five are None. A row
        of what is late has the id of its alarm.
    """
    late = [
        _late(alarm)
        for alarm in standing
        if not alarm["is_open"] and alarm["kind"] in OF_TIME
    ]
    told = [row["id"] for row in late]
    ahead = [deadline for deadline in deadlines if deadline["id"] not in told]
    most = max(1, ROWS - len(standing))
    first = [_first_of(make, ahead) for make in makes]
    # What is late tells of its make already.
    makes_late = [row["make"] for row in late]
    first = [
        row
        for row in first
        if row["due_ms"] is not None or row["make"] not in makes_late
    ]
    told = [row["id"] for row in first]
    rest = [_row(deadline) for deadline in ahead if deadline["id"] not in told]
    rows = late + first + rest[: max(0, most - len(first))]
    return sorted(rows, key=_rank)


def _late(alarm: "Alarm") -> "WallRow":
    is_timer = alarm["kind"] == "timer"
    return {
        "id": alarm["id"],
        "make": alarm["make"],
        "make_name": alarm["make_name"],
        "vat": alarm["vat"],
        "kind": alarm["kind"],
        "mark": "late",
        "title": alarm["title"],
        "label": alarm["numbers"].get("value") if is_timer else None,
        "due_ms": alarm["due_ms"],
    }


def _first_of(make: "Make", deadlines: "list[Deadline]") -> "WallRow":
    for deadline in deadlines:
        if deadline["make"] == make["id"]:
            return _row(deadline)
    return {
        "id": make["id"],
        "make": make["id"],
        "make_name": make["name"],
        "vat": make["vat"],
        "kind": None,
        "mark": None,
        "title": None,
        "label": None,
        "due_ms": None,
    }


def _row(deadline: "Deadline") -> "WallRow":
    return {
        "id": deadline["id"],
        "make": deadline["make"],
        "make_name": deadline["make_name"],
        "vat": deadline["vat"],
        "kind": deadline["kind"],
        "mark": deadline["mark"],
        "title": deadline["title"],
        "label": deadline["label"],
        "due_ms": deadline["due_ms"],
    }


def _rank(row: "WallRow") -> "tuple[bool, int, str]":
    return (row["due_ms"] is None, row["due_ms"] or 0, row["id"])
