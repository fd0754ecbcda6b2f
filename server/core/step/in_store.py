"""Whether a make's wheels are out of the press, and the step that they ripen in."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Step
    from server.shapes.core.view import BeforeStore, Make

OUT_OF_PRESS = ("brine", "store")
GONE = ("abandoned", "discarded")
OPEN = ("waiting", "ready", "running")


def store_step(state: str, steps: "list[Step]") -> "str | None":
    """Return the key of the step that a make's wheels ripen in.

    Args:
        state: how the make stands, see `run.make_state`.
        steps: its steps, brief or full, in the order of the recipe.

    Returns:
        The last step in the store; None before the wheels are out of the press, of
        a make that was abandoned or discarded, and where the recipe has no such
        step.
    """
    ripening = [step["key"] for step in steps if step["place"] == "store"]
    if not ripening or state in GONE:
        return None
    return ripening[-1] if state == "closed" or _is_out_of_press(steps) else None


def before_store(store: "str | None", steps: "list[Step]") -> "BeforeStore | None":
    """Return what wheels out of the press lie in before they ripen, or None.

    Args:
        store: key of the step that they ripen in, see `store_step`.
        steps: the steps of the make, brief or full, in the order of the recipe.

    Returns:
        {"step", "begins_ms"}: the step that runs, or else can begin, and when the
        ripening is expected to begin; None once it has begun or may begin.
    """
    found = [step for step in steps if step["key"] == store]
    if not found or found[0]["status"] != "waiting":
        return None
    for status in ("running", "ready"):
        for step in steps:
            if step["place"] in OUT_OF_PRESS and step["status"] == status:
                begins_ms = found[0]["expected_begin_ms"]
                return {"step": step["key"], "begins_ms": begins_ms}
    return None


def can_brine(make: "Make") -> bool:
    """Tell whether wheels of a make may go into a brine tank.

    Those of a closed one may: it is signed off while they still lie in the cellar.

    Args:
        make: the make of a View.
    """
    return make["state"] not in GONE and not make["practice"]


def _is_out_of_press(steps: "list[Step]") -> bool:
    """Tell it by what was begun; what is ready alone may have lost a step before it."""
    after = [step["status"] for step in steps if step["place"] in OUT_OF_PRESS]
    if "running" in after or "ended" in after:
        return True
    pressing = [step["status"] for step in steps if step["place"] == "press"]
    return "ready" in after and not any(status in OPEN for status in pressing)
