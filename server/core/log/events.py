"""The one table of what can happen in a make, and the check that reads it.

An event is an immutable fact. The envelope is the same for every kind; `data`
depends on the kind. Server, phone, tests, documentation and fuzzing read KINDS.

Envelope:
    id        UUID, version 7, made on the phone; the only unique key
    make      UUID of the make it belongs to
    device    UUID of the installed copy of the app
    seq       1, 2, 3 ... counted by that device
    person    id of the person who tapped
    at_ms     when it was observed, by the phone's clock [ms since 1970 UTC]
    entered_ms when it was entered, by the phone's clock [ms]
    tz_min    the phone's time zone, minutes east of UTC
    mono_ms   the page's monotonic clock at entry [ms]
    boot      UUID of the page's session (mono_ms only compares within it)
    off_ms    estimated server time minus phone time [ms]
    off_q_ms  half round trip of that estimate [ms], None if never measured
    kind, v   row of KINDS and its version
    ref       id of the event that this one is about, or None
    data      fields of the kind
    proof     how the person proved to be it, or absent; see `proof`
"""

from ..recipe.checks import MAX_KEY, too_much
from ..recipe.recipe import DEEPEST, check_recipe
from ..recipe.steps import JUDGEMENTS
from ..units.quantities import check_number, check_value
from .equipment_form import check_entry, check_mapping

ROLES = ("viewer", "helper", "maker", "owner")  # each may do what those before may

# A clock may be wrong by hours and is corrected; outside 2000..2100 it is noise.
EARLIEST_MS = 946684800000
LATEST_MS = 4102444800000
SIG_LETTERS = 86  # 64 bytes in base64url

MOST_MOULDS = 20
MOST_SET = 20  # fields of one correction
# Of an entry whole, beside the recipe that an opening carries: the longest note in
# letters of four bytes, with room. Every phone of the creamery keeps every entry.
MOST_BYTES = 16384


def _field(name, kind, required=True, low=None, high=None, choices=None, unit=None):
    return {
        "name": name,
        "type": kind,
        "required": required,
        "low": low,
        "high": high,
        "choices": choices,
        "unit": unit,
    }


def _text(name, high, required=True):
    return _field(name, "text", required, 1 if required else 0, high)


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

READ_TOUCHES = {
    "milk_volume_l": (MILK,),
    "milk_mass_kg": (MILK,),
    "milk_temp_c": (HEAT, NEAR_VOLUME),
    "air_space_temp_c": (HEAT,),
    "recorder_temp_c": (HEAT,),
    "fat_frac": (HEAT,),  # rich milk is asked more heat
}


def _kind(role, fields, touches, topic=None, ref="none", proof=None):
    return {
        "v": 1,
        "role": role,
        "ref": ref,
        "fields": fields,
        "touches": touches,
        "topic": topic,  # field of the body that files it under a topic of its own
        "proof": proof,
    }


_STEP = _field("step", "key", low=1, high=60)
_STEP_OPTIONAL = _field("step", "key", required=False, high=60)
# What was typed, where the value was worked out from it: a volume, another unit.
_TYPED = _text("typed", 24, required=False)
_TYPED_UNIT = _text("typed_unit", 12, required=False)
_WHY = _text("why", 400)
_WHY_OPTIONAL = _text("why", 400, required=False)

KINDS = {
    "make_opened": _kind(
        "maker",
        [
            _text("name", 80),
            _text("batch", 20),
            _field("recipe", "recipe"),
            _field("milk_l", "number", low=1.0, high=50000.0, unit="L"),
            _text("vat", 60, required=False),
            _field("moulds", "moulds", required=False),
            _field("equipment", "equipment_of_make", required=False),
            _field("practice", "bool", required=False),
        ],
        (ANYTHING,),
    ),
    "step_begun": _kind("helper", [_STEP, _WHY_OPTIONAL], (FACTS, STEP), topic="step"),
    "step_ended": _kind("helper", [_STEP, _WHY_OPTIONAL], (FACTS, STEP), topic="step"),
    "step_skipped": _kind("maker", [_STEP, _WHY], (FACTS, STEP), topic="step"),
    "reading_taken": _kind(
        "helper",
        [
            _field("quantity", "quantity"),
            _field("value", "reading"),
            _text("typed", 24, required=False),
            _text("typed_unit", 12, required=False),
            _STEP_OPTIONAL,
            _text("place", 60, required=False),
        ],
        (STEP, READING),
        topic="quantity",
    ),
    "ingredient_added": _kind(
        "helper",
        [
            _field("ingredient", "key", low=1, high=60),
            _field("amount", "number", low=0.0, high=100000.0),
            _text("unit", 12),
            _field("planned", "number", required=False, low=0.0, high=100000.0),
            _text("lot", 40, required=False),
            _text("use_by", 10, required=False),
            _STEP_OPTIONAL,
        ],
        (STEP, DOSES),
        topic="ingredient",
    ),
    "curd_judged": _kind(
        "helper",
        [_field("judgement", "choice", choices=JUDGEMENTS), _STEP_OPTIONAL],
        (FACTS, STEP),
        topic="step",
    ),
    "timer_started": _kind(
        "helper",
        [
            _text("label", 60),
            _field("lasts_s", "number", low=1.0, high=31536000.0, unit="s"),
            _STEP_OPTIONAL,
        ],
        (TIMERS,),
    ),
    "timer_stopped": _kind("helper", [_WHY_OPTIONAL], (TIMERS,), ref="required"),
    "wheels_moulded": _kind(
        "helper",
        [
            _field("size", "key", low=1, high=60),
            _field("count", "int", low=0, high=5000),
            _field("mass_kg", "number", False, low=0.0, high=50000.0, unit="kg"),
            _STEP_OPTIONAL,
        ],
        (STEP, WHEELS),
        topic="size",
    ),
    "wheel_turned": _kind(
        "helper",
        [
            _field("size", "key", required=False, high=60),
            _field("count", "int", required=False, low=0, high=5000),
            _STEP_OPTIONAL,
        ],
        (STEP,),
    ),
    "note_added": _kind("helper", [_text("text", 2000), _STEP_OPTIONAL], (LOG,)),
    "entry_corrected": _kind(
        "helper", [_field("set", "set"), _WHY], (ABOUT,), ref="required"
    ),
    "entry_struck": _kind("helper", [_WHY], (ABOUT,), ref="required"),
    "duplicate_judged": _kind(
        "maker", [_field("same", "bool")], (ABOUT,), ref="required"
    ),
    "alert_acknowledged": _kind(
        "helper", [_text("alert", 160), _WHY_OPTIONAL], (ALARMS,), topic="alert"
    ),
    # At most one shift; it comes back by itself.
    "alarm_shelved": _kind(
        "maker",
        [
            _text("alert", 160),
            _field("for_s", "number", low=60.0, high=28800.0, unit="s"),
            _WHY,
        ],
        (ALARMS,),
        topic="alert",
    ),
    "task_taken": _kind("helper", [_STEP], (STEP, TASKS), topic="step"),
    "task_released": _kind("helper", [_STEP], (STEP, TASKS), topic="step"),
    # What the creamery has, once it is known: see `equipment`.
    "equipment_set": _kind(
        "maker",
        [
            _field("key", "key", low=1, high=60),
            _field("value", "equipment"),
            _text("typed", 24, required=False),
            _text("typed_unit", 12, required=False),
            _text("agreed_with", 80, required=False),
            _WHY_OPTIONAL,
        ],
        (EQUIPMENT,),
    ),
    "hold_placed": _kind("maker", [_WHY], (STANDING,), proof=PHONE),
    "hold_lifted": _kind("maker", [_WHY], (STANDING,), ref="required", proof=PERSON),
    "signed_off": _kind("maker", [_text("statement", 400)], (STANDING,), proof=PERSON),
    "make_closed": _kind("maker", [_WHY_OPTIONAL], (STANDING,)),
    "make_abandoned": _kind("maker", [_WHY], (STANDING,)),
    # A brine tank is a stream of its own: its id stands in the place of the make's.
    "tank_opened": _kind(
        "maker",
        [
            _text("name", 80),
            _field("mass_kg", "number", low=1.0, high=100000.0, unit="kg"),
            _field("salt_frac", "number", low=0.0, high=0.2660, unit="fraction"),
            _TYPED,
            _TYPED_UNIT,
        ],
        (TANK,),
    ),
    "tank_loaded": _kind(
        "helper",
        [
            _text("load_make", 36),
            _field("size", "key", low=1, high=60),
            _field("wheels", "int", low=1, high=5000),
            _field("mass_kg", "number", low=0.01, high=50000.0, unit="kg"),
            _field("days", "number", required=False, low=0.0, high=365.0, unit="d"),
            _TYPED,
            _TYPED_UNIT,
        ],
        (TANK,),
    ),
    "tank_unloaded": _kind(
        "helper",
        [
            _text("load", 36),
            _field("mass_kg", "number", low=0.01, high=50000.0, unit="kg"),
            _TYPED,
            _TYPED_UNIT,
        ],
        (TANK,),
    ),
    "salt_added": _kind(
        "helper",
        [
            _field("mass_kg", "number", low=0.001, high=10000.0, unit="kg"),
            _TYPED,
            _TYPED_UNIT,
        ],
        (TANK,),
    ),
    "water_added_to_tank": _kind(
        "helper",
        [
            _field("mass_kg", "number", low=0.001, high=100000.0, unit="kg"),
            _TYPED,
            _TYPED_UNIT,
        ],
        (TANK,),
    ),
}

# Kinds that touch what they are about, by their row.
ABOUT_ANOTHER = tuple(kind for kind in KINDS if ABOUT in KINDS[kind]["touches"])
# Those of them that change what it says.
CHANGING = ("entry_corrected", "entry_struck")
# In place of its kind, for a reading that only a maker may change: see `legal`.
LEGAL_READING = "legal_reading"

# Fields of the envelope that a correction may set besides those of `data`.
CORRECTABLE_ENVELOPE = ("at_ms",)
# What a correction may never touch: what the entry is about.
UNCORRECTABLE = ("recipe", "step", "quantity", "ingredient", "key", "practice")


def may(role: str, kind: str, about: "str | None" = None) -> bool:
    """Tell whether a role may record a kind of event.

    Who may not place a hold may not strike one out either: a correction and a
    strike ask for the role of what they are about, too.

    Args:
        role: one of ROLES.
        kind: a key of KINDS.
        about: kind of the entry that the event is about, LEGAL_READING, or None if
            it is not known; see `legal.about_of`.

    Returns:
        True when the role is at least the one the kind asks for.
    """
    if role not in ROLES or kind not in KINDS:
        return False
    is_known = about is None or about == LEGAL_READING or about in KINDS
    if not is_known and kind in CHANGING:
        return False  # who may record it is not known to this app
    return ROLES.index(role) >= ROLES.index(role_for(kind, about))


def role_for(kind: str, about: "str | None" = None) -> str:
    """Return the least role that may record a kind of event.

    Args:
        kind: a key of KINDS.
        about: kind of the entry that the event is about, LEGAL_READING, or None if
            it is not known; see `legal.about_of`.

    Returns:
        One of ROLES.
    """
    needed = KINDS[kind]["role"]
    if kind not in CHANGING:
        return needed
    if about == LEGAL_READING:
        other = "maker"
    elif about in KINDS:
        other = KINDS[about]["role"]
    else:
        return needed
    return max(needed, other, key=ROLES.index)


def check_event(event: dict) -> "list[dict]":
    """Return everything that is wrong with one event on its own.

    Whether the make exists or the step is in its recipe is not asked here:
    events may arrive in any order.

    Args:
        event: dict as in the module's envelope; JSON types only.

    Returns:
        List of {"field", "key", "limit"}; empty for a sound event. The single
        problem {"key": "unknown_kind"} or {"key": "newer_version"} marks an
        event from a newer app, which is kept raw.
    """
    if not isinstance(event, dict):
        return [{"field": "event", "key": "not_a_mapping", "limit": None}]
    name = event.get("kind")
    problems = _check_size(event)
    if problems:
        return problems  # nothing else of it is worth the time
    problems = _check_envelope(event)
    if not isinstance(name, str) or name not in KINDS:
        problems.append({"field": "kind", "key": "unknown_kind", "limit": None})
        return problems
    kind = KINDS[name]
    version = event.get("v")
    # 2.0 is newer than 1 too: JSON has one sort of number.
    if not check_number("v", version, kind["v"] + 1, None):
        problems.append({"field": "v", "key": "newer_version", "limit": kind["v"]})
        return problems
    if kind["ref"] == "required" and not event.get("ref"):
        problems.append({"field": "ref", "key": "missing", "limit": None})
    data = event.get("data")
    if not isinstance(data, dict):
        problems.append({"field": "data", "key": "not_a_mapping", "limit": None})
        return problems
    return problems + check_data(name, data)


def can_be_kept(event: dict) -> bool:
    """Tell whether an event that is not sound can be kept with those of its make.

    Args:
        event: as received.

    Returns:
        True when its envelope is sound, whatever it holds.
    """
    is_named = isinstance(event, dict) and isinstance(event.get("kind"), str)
    return is_named and not _check_envelope(event)


def is_newer(event: dict) -> bool:
    """Tell whether an event with a sound envelope is of a newer app than this one.

    Args:
        event: see `can_be_kept`.
    """
    kind = KINDS.get(event["kind"])
    return kind is None or event["v"] > kind["v"]


def check_data(kind: str, data: dict, only: "dict | None" = None) -> "list[dict]":
    """Return everything that is wrong with the body of one kind.

    Args:
        kind: a key of KINDS.
        data: the event's body.
        only: look at fields of these names alone; None for all. A correction
            of a name need not read a whole recipe again.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems = []
    known = []
    for field in KINDS[kind]["fields"]:
        name = field["name"]
        known.append(name)
        if only is not None and name not in only:
            continue
        value = data.get(name)
        if value is None:
            if field["required"]:
                problems.append({"field": name, "key": "missing", "limit": None})
            continue
        problems.extend(_check_field(field, value, data))
    for name in data:
        if name not in known:
            problems.append({"field": name, "key": "unknown_field", "limit": None})
    return problems


def _check_size(event):
    """Check all but the recipe, which is checked on its own."""
    rest = event
    data = event.get("data")
    if event.get("kind") == "make_opened" and isinstance(data, dict):
        rest = dict(event)
        rest["data"] = {name: data[name] for name in data if name != "recipe"}
    beyond = too_much(rest, MOST_BYTES, DEEPEST)
    if beyond is None:
        return []
    limit = MOST_BYTES if beyond == "too_large" else DEEPEST
    return [{"field": "event", "key": beyond, "limit": limit}]


def _check_envelope(event):
    problems: "list[dict]" = []
    for name in ("id", "make", "device", "boot"):
        if not _is_uuid(event.get(name)):
            problems.append({"field": name, "key": "not_a_uuid", "limit": None})
    ref = event.get("ref")
    if ref is not None and not _is_uuid(ref):
        problems.append({"field": "ref", "key": "not_a_uuid", "limit": None})
    person = event.get("person")
    if not isinstance(person, str) or not 1 <= len(person) <= 64:
        problems.append({"field": "person", "key": "missing", "limit": 64})
    for name in ("at_ms", "entered_ms"):
        problems.extend(_check_int(name, event.get(name), EARLIEST_MS, LATEST_MS))
    problems.extend(_check_int("seq", event.get("seq"), 1, 9007199254740991))
    problems.extend(_check_int("v", event.get("v"), 1, 1000))
    problems.extend(_check_int("tz_min", event.get("tz_min"), -840, 840))
    century_ms = LATEST_MS - EARLIEST_MS
    problems.extend(_check_int("off_ms", event.get("off_ms"), -century_ms, century_ms))
    problems.extend(check_number("mono_ms", event.get("mono_ms"), 0, None))
    if event.get("off_q_ms") is not None:
        problems.extend(check_number("off_q_ms", event.get("off_q_ms"), 0, None))
    if event.get("proof") is not None:
        problems.extend(_check_proof(event["proof"]))
    return problems


def _check_proof(proof):
    """Return a problem unless a proof has its form; whether it holds is not known."""
    is_sound = False
    if isinstance(proof, dict) and proof.get("by") == "phone":
        is_sound = len(proof) == 1
    elif isinstance(proof, dict) and proof.get("by") == "pin":
        sig = proof.get("sig")
        is_sound = len(proof) == 3 and _is_uuid(proof.get("key"))
        is_sound = is_sound and isinstance(sig, str) and len(sig) == SIG_LETTERS
    return [] if is_sound else [{"field": "proof", "key": "bad_proof", "limit": None}]


def _check_int(field, value, low, high):
    problems = check_number(field, value, low, high)
    if not problems and value != int(value):
        return [{"field": field, "key": "not_whole", "limit": None}]
    return problems


def _is_uuid(value):
    if not isinstance(value, str) or len(value) != 36:
        return False
    for index, letter in enumerate(value):
        if index in (8, 13, 18, 23):
            if letter != "-":
                return False
        elif letter not in "0123456789abcdef":
            return False
    return True


def _check_text(field, value):
    name = field["name"]
    if not isinstance(value, str):
        return [{"field": name, "key": "not_text", "limit": None}]
    if field["low"] and len(value.strip()) < field["low"]:
        return [{"field": name, "key": "missing", "limit": field["low"]}]
    if field["high"] is not None and len(value) > field["high"]:
        return [{"field": name, "key": "too_long", "limit": field["high"]}]
    return []


def _check_moulds(name, value):
    if not isinstance(value, list):
        return [{"field": name, "key": "not_a_list", "limit": None}]
    if len(value) > MOST_MOULDS:
        return [{"field": name, "key": "too_many", "limit": MOST_MOULDS}]
    problems = []
    for row in value:
        if not isinstance(row, dict) or not isinstance(row.get("size"), str):
            problems.append({"field": name + ".size", "key": "missing", "limit": None})
            continue
        if len(row["size"]) > MAX_KEY:
            field = name + ".size"
            problems.append({"field": field, "key": "too_long", "limit": MAX_KEY})
        problems.extend(_check_int(name + ".count", row.get("count"), 0, 5000))
    return problems


def _check_set(name, value):
    if len(value) > MOST_SET:
        return [{"field": name, "key": "too_many", "limit": MOST_SET}]
    for field in value:
        if len(field) > MAX_KEY:
            return [{"field": name, "key": "too_long", "limit": MAX_KEY}]
    return []


def _check_equipment(data):
    if not isinstance(data.get("key"), str):
        return []  # told already
    return check_entry(data)


def _check_field(field, value, data):
    name = field["name"]
    kind = field["type"]
    if kind in ("text", "key"):
        return _check_text(field, value)
    if kind == "number":
        return check_number(name, value, field["low"], field["high"])
    if kind == "int":
        return _check_int(name, value, field["low"], field["high"])
    if kind == "bool":
        if value is True or value is False:
            return []
        return [{"field": name, "key": "not_yes_or_no", "limit": None}]
    if kind == "choice":
        if value in field["choices"]:
            return []
        return [{"field": name, "key": "not_a_choice", "limit": list(field["choices"])}]
    if kind == "quantity":
        return []  # checked together with the value, under "reading"
    if kind == "reading":
        if data.get("quantity") is None:
            return []  # told as missing already
        return check_value(data.get("quantity"), value)
    if kind == "moulds":
        return _check_moulds(name, value)
    if kind == "equipment":
        return _check_equipment(data)
    if not isinstance(value, dict):
        return [{"field": name, "key": "not_a_mapping", "limit": None}]
    if kind == "recipe":
        return check_recipe(value)
    if kind == "equipment_of_make":
        return check_mapping(name, value)
    return _check_set(name, value)
