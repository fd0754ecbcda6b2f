"""Which step a screen opens on: the one that wants a hand next."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Step


def focus(shown: "list[Step]", left: "list[str]", now_ms: int) -> "str | None":
    """Return the step to open on: what wants a hand first, running before ready.

    What was left open behind a running step comes after all that runs: whoever
    is at the later step has passed it by, and must not lose sight of a timer.

    Args:
        shown: all steps of the View.
        left: answer of `left_open`.
        now_ms: now [ms].
    """
    best = None
    for index, step in enumerate(shown):
        if step["status"] not in ("running", "ready"):
            continue
        wants_ms = next_thing_ms(step, now_ms)
        is_running = step["status"] == "running"
        is_left = step["key"] in left
        rank = (1 if is_left else 0, wants_ms, 0 if is_running else 1, index)
        if best is None or rank < best[0]:
            best = (rank, step["key"])
    return None if best is None else best[1]


def left_open(shown: "list[Step]") -> "list[str]":
    """Return the keys of steps that could begin although a later one runs already.

    Args:
        shown: all steps of the View.
    """
    running = [n for n, step in enumerate(shown) if step["status"] == "running"]
    if not running:
        return []
    return [step["key"] for step in shown[: running[-1]] if step["status"] == "ready"]


def next_thing_ms(step: "Step", now_ms: int) -> int:
    """Return when a step next wants a hand: now, or the instant it will [ms].

    Args:
        step: Step of the View, running or ready.
        now_ms: now [ms].
    """
    act = step["button"]["act"]
    # A step that ends by a reading offers one at any time; it wants one when due.
    # What is stopped wants a decision, which its matter asks for.
    if act not in ("none", "reading", "stopped") or (
        act == "reading" and _is_due(step, now_ms)
    ):
        return now_ms
    instants = [reading["due_ms"] for reading in step["readings"]]
    instants.append(step["due_ms"])
    if step["judge"]:
        instants.append(step["judge"]["from_ms"])
    ahead = [ms for ms in instants if ms is not None and ms > now_ms]
    return min(ahead) if ahead else now_ms


def _is_due(step: "Step", now_ms: int) -> bool:
    return any(
        reading["due_ms"] is not None and reading["due_ms"] <= now_ms
        for reading in step["readings"]
        if reading["quantity"] == step["button"]["arg"]
    )
