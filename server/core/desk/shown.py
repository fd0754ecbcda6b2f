"""The View of a make as one person sees it."""

from ..creamery.kept import view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Desk
    from server.shapes.core.view import Reader, View


def view_for(
    desk: "Desk", make_id: str, now_ms: int, reader: "Reader | None"
) -> "View | None":
    """Return the View of a make with the cautions that its reader has still to see.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        now_ms: now, by the server's clock [ms].
        reader: {"person", "tz_min"} of who looks at it and may work; None for a View
            without cautions.
    """
    shown = view(desk, make_id, now_ms)
    if shown is None or not reader or not shown["make"]["is_open"]:
        return shown
    # Loaded with the first make that is looked at: the app starts without it.
    from ..creamery.cautions import owed

    told = shown.copy()  # the kept View is everybody's
    told["cautions"] = owed(desk, shown, now_ms, reader)
    return told
