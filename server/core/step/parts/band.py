"""The make as one band: its stages, one after the other, without gap or overlap.

Begins and ends are those of the steps of a View; nothing is timed anew.
1. A stage ends with the last step of it and of all before it, or where a step of a
   later stage begins, whichever comes first. Waiting belongs to what is waited for.
2. The make stands in the furthest stage that was begun, and in the next one with open
   steps once that is over. What lies before it and is not over was left open.
3. Steps that are skipped are of no stage.
"""

from ...recipe.steps.stages import STAGES, stages_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.step import BriefStep
    from server.shapes.core.view import BandHow, BandStage, TimeSpan


HOUR_MS = 3600000
# So much of a stage is drawn at most: neither the night that milk rests nor the weeks
# in the store may squeeze the day. Our own judgement, no source.
DRAWN_MS = 4 * HOUR_MS
DRAWN_AFTER_MS = HOUR_MS
AFTER_DAY = ("brine", "store")


def band(
    recipe_steps: "list[RecipeStep]",
    shown: "list[Any]",
    opened_ms: int,
    now_ms: int,
    day: "TimeSpan",
) -> "list[BandStage]":
    """Return the stages of a make that runs, in order; each ends where the next begins.

    Args:
        recipe_steps: steps of its recipe.
        shown: its steps as in the View, brief or full, in the same order.
        opened_ms: when it was opened [ms].
        now_ms: now [ms].
        day: how its day stands, see `view.view`.

    Returns:
        List of BandStage; empty where every step is skipped. The stage that the make
        stands in, where now lies, is "running", and alone may be late: by as much as
        the day, or, once that is over, by as much as its own steps.
    """
    stages = stages_of(recipe_steps)
    found: "list[tuple[str, list[BriefStep]]]" = []
    for key in STAGES:
        of_it = [step for step in shown if stages[step["key"]] == key]
        of_it = [step for step in of_it if step["status"] != "skipped"]
        if of_it:
            found.append((key, of_it))
    parts = [steps for _, steps in found]
    here = _here(parts)
    ends_ms = _ends_ms(parts, here, now_ms)
    begin_ms = min([opened_ms, now_ms] + [_begin_ms(steps) for steps in parts])
    told: "list[BandStage]" = []
    for index, (key, steps) in enumerate(found):
        told.append(
            {
                "key": key,
                "how": _how(steps, index, here),
                "begin_ms": begin_ms,
                "end_ms": ends_ms[index],
                "has_end": key != STAGES[-1],
                "share_frac": 0.0,
                "late_s": _late_s(steps, day, now_ms) if index == here else 0.0,
            }
        )
        begin_ms = ends_ms[index]
    _share(told)
    return told


def _here(parts: "list[list[BriefStep]]") -> int:
    """Return which stage the make stands in; their number where it is past them all."""
    here = 0
    for index, steps in enumerate(parts):
        if any(step["status"] in ("running", "ended") for step in steps):
            here = index
    while here < len(parts) and _is_over(parts[here]):
        here += 1
    return here


def _is_over(steps: "list[BriefStep]") -> bool:
    return all(step["status"] == "ended" for step in steps)


def _how(steps: "list[BriefStep]", index: int, here: int) -> "BandHow":
    if index < here:
        return "done" if _is_over(steps) else "left_open"
    return "running" if index == here else "to_come"


def _begin_ms(steps: "list[BriefStep]") -> int:
    return min(step["expected_begin_ms"] for step in steps)


def _ends_ms(parts: "list[list[BriefStep]]", here: int, now_ms: int) -> "list[int]":
    lasts_ms = [max(step["expected_end_ms"] for step in steps) for steps in parts]
    begins_ms = [_begin_ms(steps) for steps in parts]
    told = []
    for index in range(len(parts)):
        end_ms = min([max(lasts_ms[: index + 1])] + begins_ms[index + 1 :])
        # What a phone entered whose clock is ahead moves now to no other stage.
        told.append(min(end_ms, now_ms) if index < here else max(end_ms, now_ms))
    return told


def _late_s(steps: "list[BriefStep]", day: "TimeSpan", now_ms: int) -> float:
    if day["expected_end_ms"] >= now_ms:
        return day["late_s"] if day["state"] == "late" else 0.0
    late = [step for step in steps if step["status"] == "running"]
    return max([0.0] + [_by_s(step) for step in late])


def _by_s(step: "BriefStep") -> float:
    return step["timing"]["by_s"] if step["timing"]["state"] == "late" else 0.0


def _share(told: "list[BandStage]") -> None:
    drawn_ms = []
    for stage in told:
        most_ms = DRAWN_AFTER_MS if stage["key"] in AFTER_DAY else DRAWN_MS
        drawn_ms.append(min(stage["end_ms"] - stage["begin_ms"], most_ms))
    whole_ms = sum(drawn_ms)
    for stage, its_ms in zip(told, drawn_ms):
        stage["share_frac"] = its_ms / whole_ms if whole_ms else 1.0 / len(told)
