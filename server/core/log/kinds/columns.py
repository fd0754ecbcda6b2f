"""What the columns of the table of kinds may hold, and how a row is written.

`role` is the least that may record it; `ref` says whether it is about another entry;
`fields` are those of its body, with their limits; `touches` is what it changes;
`topic` the field of the body that files it under a topic of its own; `proof` how its
person proves to be it; `mends` the fields that are put right one by one; `passes` what
it passes of a make, which a gate may stop.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ROLES = ("viewer", "helper", "maker", "owner")  # each may do what those before may

# How a person proves to be it: with the PIN; or, where waiting for a forgotten one
# would do harm, by recording it on their own phone. See `proof`.
PERSON = "person"
PHONE = "phone"

# What an entry changes, in words that kept answers rest on: see `touches`.
ANYTHING = "anything"  # all that was worked out of the make
FACTS = "facts"  # when steps began, ended or were skipped; floc points
STEP = "step"  # what is entered of the step that it names, or of any if it names none
READING = "reading"  # readings of its quantity, and what READ_TOUCHES says of that
MILK = "milk"  # how much milk there is, so what every dose must be
HEAT = "heat"  # what a hold's clock and verdict go by, whatever step it names
DOSES = "doses"  # what went into the milk
WHEELS = "wheels"  # how many wheels there are of each size
EQUIPMENT = "equipment"
TIMERS = "timers"  # stand-alone ones
TASKS = "tasks"  # who has a step in hand
ALARMS = "alarms"  # what was seen, or put aside
STANDING = "standing"  # whether the make is held, signed, over
TANK = "tank"
LOG = "log"  # nothing but the log itself
ABOUT = "about"  # what the entry touches that it is about
# The milk's temperature belongs to the metered volume if it was read near it.
NEAR_VOLUME = "near_volume"

# What an entry passes: see `recipe.check.gates`.
BEGIN = "begin"  # of the step that it names, or work done in it
END = "end"  # of that step
CLOSE = "close"  # of the whole make
LOAD = "load"  # wheels into brine, of the make that `load_make` names

READ_TOUCHES = {
    "milk_volume_l": (MILK,),
    "milk_mass_kg": (MILK,),
    "milk_temp_c": (HEAT, NEAR_VOLUME),
    "air_space_temp_c": (HEAT,),
    "recorder_temp_c": (HEAT,),
    "fat_frac": (HEAT,),  # rich milk is asked more heat
}


def kind(
    role: str,
    fields: "list[dict[str, Any]]",
    touches: "tuple[Any, ...]",
    topic: "str | None" = None,
    ref: str = "none",
    proof: "str | None" = None,
    mends: "tuple[str, ...]" = (),
    passes: "str | None" = None,
) -> "dict[str, Any]":
    """Return a row of the table.

    Args:
        role: one of ROLES.
        fields: rows of `field`.
        touches: words of this module.
        topic: name of a field, or None where entries lie under their kind alone.
        ref: "required" or "none".
        proof: PERSON, PHONE or None.
        mends: names of fields.
        passes: BEGIN, END, CLOSE, LOAD or None.
    """
    return {
        "v": 1,
        "role": role,
        "ref": ref,
        "fields": fields,
        "touches": touches,
        "topic": topic,
        "proof": proof,
        "mends": mends,
        "passes": passes,
    }


def field(
    name: str,
    form: str,
    required: bool = True,
    low: "float | None" = None,
    high: "float | None" = None,
    choices: "tuple[Any, ...] | None" = None,
    unit: "str | None" = None,
) -> "dict[str, Any]":
    """Return a field of a body.

    Args:
        name: name of the field.
        form: key of `body.FORMS`.
        required: whether it must be there.
        low: least number, or letters of a text.
        high: greatest number, or letters of a text.
        choices: what it may be, of a choice.
        unit: unit of a number.
    """
    return {
        "name": name,
        "type": form,
        "required": required,
        "low": low,
        "high": high,
        "choices": choices,
        "unit": unit,
    }


def text(name: str, high: int, required: bool = True) -> "dict[str, Any]":
    """Return a field that holds words.

    Args:
        name: name of the field.
        high: most letters.
        required: whether it must be there, with a letter at least.
    """
    return field(name, "text", required, 1 if required else 0, high)


THE_STEP = field("step", "key", low=1, high=60)
MAYBE_STEP = field("step", "key", required=False, high=60)
# What was typed, where the value was worked out from it: a volume, another unit.
TYPED = text("typed", 24, required=False)
TYPED_UNIT = text("typed_unit", 12, required=False)
WHY = text("why", 400)
MAYBE_WHY = text("why", 400, required=False)
