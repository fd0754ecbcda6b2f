"""What a make knows of its warming: the jacket, and how slow this vat is.

A vat's time constant is learnt from the last makes in it that did the same step.
"""

from ...log import run
from ...log.apart import ask
from ...log.opening import opening
from ...make import plan
from ...make.facts import readings_in
from ...make.practice import is_practice
from ..origins import from_make
from .temps import temp_entries
from .wash import kg_in_vat, vat_kg_now

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene


MOST_MAKES = 5  # a vat changes little; more would only cost the phone time
# Fills this near to each other count as one: less than a tank's dip stick tells.
SAME_FILL = 0.1


def _jacket_temp_c(scene: "Scene") -> "KnownValue | None":
    """Return the jacket's temperature: as read now, or as in the last such step."""
    here = {"state": scene["state"], "fact": scene["fact"]}
    for made in [here] + _earlier_makes(scene):
        entries = readings_in(made["state"], made["fact"], "jacket_temp_c")
        if entries:
            return from_make(entries[-1]["data"]["value"])
    return None


def _earlier_makes(scene: "Scene") -> "list[dict[str, Any]]":
    """Return the last makes in this vat that did this step, newest first."""
    kept = scene["kept"]
    if "earlier" not in kept:
        makes = [_earlier(scene, stream) for stream in sorted(scene["desk"]["makes"])]
        earlier = [made for made in makes if made is not None]
        earlier.sort(key=_newest_first)
        kept["earlier"] = earlier[:MOST_MAKES]
    return list(kept["earlier"])


def _newest_first(made: "dict[str, Any]") -> "tuple[int, str]":
    return (-made["fact"]["begun_ms"], made["state"]["make"])


def _earlier(scene: "Scene", stream: str) -> "dict[str, Any] | None":
    """Return another make in this vat that did this step before, or None."""
    vat = scene["opened"].get("vat")
    state = scene["desk"]["makes"][stream]
    opened = opening(state)
    if vat is None or stream == scene["state"]["make"] or opened is None:
        return None
    # Practice is played through, not warmed.
    if opened["data"].get("vat") != vat or is_practice(state):
        return None
    begun = run.entries(state, "step_begun", scene["step"]["key"])
    ended = run.entries(state, "step_ended", scene["step"]["key"])
    if not begun or not ended or begun[0]["t_ms"] >= scene["now_ms"]:
        return None
    fact = {
        "begun": begun[0],
        "begun_ms": begun[0]["t_ms"],
        "ended_ms": ended[0]["t_ms"],
    }
    return {"state": state, "fact": fact, "opened": opened["data"]}


def _tau_s(scene: "Scene") -> "KnownValue | None":
    """Return the time constant that this vat showed before, for this much milk."""
    shown = _shown_before(scene)
    if not shown:
        return None
    # Loaded when there is something to learn from.
    from ...formulas.heat import vat_pace

    contents_kg = vat_kg_now(scene)
    fitted = [
        vat_pace.tau_at_fill(tau_s, fill_kg, contents_kg) for tau_s, fill_kg in shown
    ]
    # What another fill says is a guess while this one has been measured.
    fitted = [told for told in fitted if _is_same_fill(told)] or fitted
    middle = sorted([told["value_s"] for told in fitted])[len(fitted) // 2]
    low = min([told["low_s"] for told in fitted])
    high = max([told["high_s"] for told in fitted])
    # Even at one fill a vat is not known better than a tenth.
    return from_make(middle, min(low, 0.9 * middle), max(high, 1.1 * middle))


def _shown_before(scene: "Scene") -> "list[tuple[float, float]]":
    shown = []
    for earlier in _earlier_makes(scene):
        make_id = earlier["state"]["make"]
        told = ask(scene["desk"], make_id, "learnt", None, _tau_of, scene, earlier)
        if told is not None:
            shown.append(told)
    return shown


def _tau_of(scene: "Scene", earlier: "dict[str, Any]") -> "tuple[float, float] | None":
    """Return (time constant [s], what was in the vat [kg]) of an earlier make."""
    try:
        tau_s = _fitted_tau_s(scene, earlier)
        return None if tau_s is None else (tau_s, _fill_kg(earlier))
    except (ValueError, ArithmeticError):
        return None  # entries that contradict each other teach nothing


def _fill_kg(earlier: "dict[str, Any]") -> float:
    """Return what was in the vat in an earlier make when the step was over."""
    milk_kg = plan.milk_in(earlier["state"], earlier["opened"])["milk_kg"]
    return kg_in_vat(earlier["state"], milk_kg, earlier["fact"]["ended_ms"])


def _is_same_fill(told: "dict[str, Any]") -> bool:
    return bool(told["high_s"] <= (1 + SAME_FILL) * told["low_s"])


def _fitted_tau_s(scene: "Scene", earlier: "dict[str, Any]") -> "float | None":
    from ...formulas.heat import heat_forecast

    temps = temp_entries(scene, earlier["fact"], earlier["state"])
    jackets = readings_in(earlier["state"], earlier["fact"], "jacket_temp_c")
    if len(temps) < 3 or not jackets:
        return None
    start_ms = temps[0]["t_ms"]
    fitted = heat_forecast.fit_tau_robust(
        [(entry["t_ms"] - start_ms) / 1000.0 for entry in temps],
        [entry["data"]["value"] for entry in temps],
        jackets[-1]["data"]["value"],
    )
    return float(fitted["tau_s"])


KNOWN = {"jacket_temp_c": _jacket_temp_c, "tau_s": _tau_s}
