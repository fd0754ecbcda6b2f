"""How late a reading may come before somebody is called: what it is for says it.

Rules first.
1. A reading at a begin is one of several things that hands do then: some minutes.
2. One that is taken again and again may come late by a share of its interval; what
   changes in days, by some hours.
3. A round of a hold counts only until the rule's gap is over: half of the time until
   then, so that it can still be read.
4. A pH may wait until the recipe's curve has moved by half of its band.
5. A step that stands ready may wait by its place: minutes where curd sours, cools or
   closes on one side, hours where salt and air work on it for days.

The figures are our own judgement from how people work, no source: a person at a vat
is half a minute to two minutes late with each of several things.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeReading, RecipeStep
    from server.shapes.core.state import Context


LEAST_S = 600.0
SHARE = 0.5  # of the interval
MOST_S = 21600.0
PH_MOVES = 0.05
PH_MOST_S = 7200.0
# What a place does to it in ten minutes nobody could read: [s].
SLOW_S = {
    "brine_salt_frac": 14400.0,
    "brine_ph": 14400.0,
    "brine_temp_c": 14400.0,
    "store_temp_c": 21600.0,
    "store_humidity_frac": 21600.0,
    "wheel_mass_kg": 3600.0,
}
BEGIN_S = {
    "tank": 1800.0,
    "vat": 900.0,
    "table": 600.0,
    "press": 900.0,
    "brine": 7200.0,
    "store": 43200.0,
}
BEGIN_ANYWHERE_S = 1800.0


def begin_s(step: "RecipeStep") -> float:
    """Return how long a step may stand ready before somebody is called [s].

    Args:
        step: step of the recipe.
    """
    return BEGIN_S.get(step.get("place") or "", BEGIN_ANYWHERE_S)


def grace_s(context: "Context", wanted: "RecipeReading", due_ms: "int | None") -> float:
    """Return how late a reading may come before it is an alert [s].

    Args:
        context: see `context.of_make`.
        wanted: the recipe's reading.
        due_ms: when it is due [ms], or None.
    """
    every_s = wanted.get("every_s")
    if every_s:
        return min(MOST_S, SHARE * every_s)
    if wanted["quantity"] == "ph" and due_ms is not None:
        return _ph_s(context, due_ms)
    return SLOW_S.get(wanted["quantity"], LEAST_S)


def of_round_s(due_ms: "int | None", lost_ms: "int | None") -> float:
    """Return how late a round of a hold may come before it is an alert [s].

    Args:
        due_ms: when it is due [ms], or None.
        lost_ms: until when it counts [ms]; None before the first.
    """
    if due_ms is None or lost_ms is None:
        return LEAST_S
    return max(0, lost_ms - due_ms) / 2000.0


def _ph_s(context: "Context", due_ms: int) -> float:
    """Return how long the recipe's curve needs for what a pH may be off [s]."""
    curve = context["recipe"].get("curve")
    begun_ms = None
    if curve:
        begun_ms = context["facts"][curve["start_step"]]["begun_ms"]
    if not curve or begun_ms is None:
        return LEAST_S
    elapsed_s = (due_ms - begun_ms) / 1000.0
    times_s, phs = curve["times_s"], curve["phs"]
    for index in range(len(times_s) - 1):
        if times_s[index] <= elapsed_s < times_s[index + 1]:
            fall = phs[index] - phs[index + 1]
            span_s: float = times_s[index + 1] - times_s[index]
            if fall * PH_MOST_S <= PH_MOVES * span_s:
                return PH_MOST_S
            return max(LEAST_S, PH_MOVES * span_s / fall)
    return LEAST_S
