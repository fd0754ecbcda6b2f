"""Which makes an entry of another one may teach something, or tell something of.

What a make shows may rest on others: on the salt of wheels that were analysed, on how
its vat warmed before, on the tank that holds its wheels. Such entries are few.
"""

from ..log.equipment import in_effect
from ..log.kinds.columns import ANYTHING, EQUIPMENT, FACTS, MILK
from ..log.labels import LABELS
from ..log.opening import ending, opening, recipe_of, tank_opening
from ..log.order import corrected_ms
from ..log.touches import topic, touched

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Desk, Event, State


def _read(*quantities: str) -> "list[str]":
    return [topic("reading_taken", quantity) for quantity in quantities]


OF_SALT = _read("cheese_salt_frac", "water_salt_ratio")
# Without an analysed wheel these teach nothing; nor a vat whose jacket nobody read.
WITH_SALT = _read("brine_salt_frac") + [FACTS]
OF_VAT = _read("jacket_temp_c", "milk_temp_c", "curd_temp_c", "water_temp_c")
# How a make set: what it got of which bottle, when, and when it flocculated.
OF_SETTING = [topic("ingredient_added", "rennet"), MILK, EQUIPMENT]
OF_CHECK = _read("check_temp_c")
OF_FILL = _read("whey_drained_l", "water_added_l") + [FACTS, MILK]


def taught(desk: "Desk", event: "Event") -> "list[str]":
    """Return the ids of other makes whose figures an entry just filed may change.

    A make that is over stands as it stood then: what came later changes nothing of it.

    Args:
        desk: Desk with the event filed.
        event: the event.
    """
    if len(desk["makes"]) < 2:
        return []
    source = desk["makes"][event["make"]]
    if event["id"] not in source["events"]:
        return []  # it cannot be read here, and changes nothing but the log
    words = touched(source, event)
    if tank_opening(source) is not None or event["kind"] == "tank_opened":
        return _of_tank(desk, source, event, words)
    if (
        _teaches_salt(source, words)
        or _teaches_setting(source, words)
        or _teaches_label(source, words)
    ):
        return _others(desk, event, None)
    is_check = any(word in words for word in OF_CHECK)
    if is_check or _teaches_vat(source, words):
        opened = opening(source)
        vat = None if opened is None else opened["data"].get("vat")
        return [] if vat is None and not is_check else _others(desk, event, vat)
    return []


def _has(state: "State", topics: "list[str]") -> bool:
    return any(state["lists"].get(name) for name in topics)


def _any_of(words: "list[str]", wanted: "list[str]") -> bool:
    return ANYTHING in words or any(word in words for word in wanted)


def _teaches_salt(state: "State", words: "list[str]") -> bool:
    if any(word in words for word in OF_SALT):
        return True
    return _has(state, OF_SALT[:1]) and _any_of(words, WITH_SALT)


def _teaches_setting(state: "State", words: "list[str]") -> bool:
    if not _has(state, OF_SETTING[:1]):
        return False
    recipe = recipe_of(state)
    wanted = list(OF_SETTING)
    for step in recipe["steps"] if recipe else []:
        if step["end"]["by"] == "floc":
            wanted.append(topic("curd_judged", step["key"]))
            wanted.append(topic("step_begun", step["end"]["from_step"]))
    return _any_of(words, wanted)


def _teaches_label(state: "State", words: "list[str]") -> bool:
    if not _any_of(words, [EQUIPMENT]):
        return False
    equipment = in_effect(state)
    return any(equipment.get(lot) for lot, _ in LABELS.values())


def _teaches_vat(state: "State", words: "list[str]") -> bool:
    if any(word in words for word in OF_VAT[:1]):
        return True
    return _has(state, OF_VAT[:1]) and _any_of(words, OF_VAT + OF_FILL)


def _of_tank(
    desk: "Desk", tank: "State", event: "Event", words: "list[str]"
) -> "list[str]":
    if _any_of(words, OF_SALT):
        return _others(desk, event, None)
    loads = tank["lists"].get("tank_loaded", [])
    makes = [entry["data"]["load_make"] for entry in loads]
    makes.append(event["data"].get("load_make"))
    return [make for make in desk["makes"] if make in makes]


def _others(desk: "Desk", event: "Event", vat: "str | None") -> "list[str]":
    """Return the other makes, of one vat or of all, that this may still change."""
    at_ms = corrected_ms(event)
    makes = []
    for make_id in desk["makes"]:
        opened = opening(desk["makes"][make_id])
        if opened is None or make_id == event["make"]:
            continue
        over = ending(desk["makes"][make_id])
        is_open = over is None or at_ms <= over["t_ms"]
        if is_open and vat in (None, opened["data"].get("vat")):
            makes.append(make_id)
    return makes
