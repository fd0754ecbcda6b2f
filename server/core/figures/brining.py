"""What a tank owes the wheels in it: their strength, and until when they stay.

Both are figures of the step that brines them, so a tank asks for them here, as that
step itself does, and reads no recipe.
"""

from ..log import run
from ..log.opening import opening
from ..recipe.own import target_name
from .context import of_make
from .due import span_ms
from .figure import figure
from .person import DAY_S

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from server.shapes.core.brine import Tank
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, Desk, Entry

    Asked = Callable[[Context, RecipeStep], "float | None"]


def wants(desk: "Desk", account: "Tank", now_ms: int) -> None:
    """Say of a tank when its wheels come out, and what its brine wants.

    Args:
        desk: Desk.
        account: account of the tank; changed in place.
        now_ms: now, by the server's clock [ms].
    """
    # Loaded with the cellar: the board asks when wheels come out, and no more.
    from ..brine.loads import forecast
    from ..brine.top_up import USUAL_SALT_FRAC, top_up

    due_ms = {
        entry["id"]: load_due_ms(desk, entry, now_ms)
        for entry in run.entries(desk["makes"][account["id"]], "tank_loaded")
    }
    for load in account["loads"]:
        load["due_ms"] = due_ms[load["id"]]
    wanted = _wanted_frac(desk, account, now_ms)
    frac = USUAL_SALT_FRAC if wanted is None else wanted
    top_up(account, frac, desk.get("rules") or {})
    forecast(account, desk["makes"], now_ms)


def load_due_ms(desk: "Desk", entry: "Entry", now_ms: int) -> "int | None":
    """Return when wheels are to come out of the brine [ms], or None.

    What was said of these very wheels goes before how long their step lasts.

    Args:
        desk: Desk.
        entry: tank_loaded, which put them in.
        now_ms: now, by the server's clock [ms].
    """
    data = entry["data"]
    days = data.get("days")
    if days is not None:
        lasts_s = days * DAY_S
    else:
        make, size = data["load_make"], data["size"]
        lasts_s = _of_brine_step(desk, make, size, now_ms, _lasts_s)
    return None if lasts_s is None else entry["t_ms"] + span_ms(lasts_s)


def _wanted_frac(desk: "Desk", account: "Tank", now_ms: int) -> "float | None":
    """Return the strength that the step of the newest load asks for."""
    for load in reversed(account["loads"]):
        make, size = load["make"], load["size"]
        wanted = _of_brine_step(desk, make, size, now_ms, _salt_frac)
        if wanted is not None:
            return wanted
    return None


def _of_brine_step(
    desk: "Desk", make: str, size: str, now_ms: int, asked: "Asked"
) -> "float | None":
    """Return a figure of the first step of a make that brines wheels of a size."""
    state = desk["makes"].get(make)
    opened = None if state is None else opening(state)
    if state is None or opened is None:
        return None
    context = of_make(state, opened, now_ms, desk.get("rules"), desk)
    for step in context["recipe"]["steps"]:
        if step["place"] == "brine" and step.get("size") in (None, size):
            value = asked(context, step)
            if value is not None:
                return value
    return None


def _lasts_s(context: "Context", step: "RecipeStep") -> "float | None":
    told = figure(context, step, "lasts")
    return None if told is None else told["value"]


def _salt_frac(context: "Context", step: "RecipeStep") -> "float | None":
    for target in step.get("targets", []):
        if target["quantity"] == "brine_salt_frac":
            told = figure(context, step, target_name(target))
            return None if told is None else told["value"]
    return None
