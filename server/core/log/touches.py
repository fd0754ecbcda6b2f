"""What an entry makes stale: which kept answers have to be worked out again.

Rules first.
1. What was worked out of a make may be kept in its state together with what it
   rests on, in words: `keep`. An entry that touches one of these things makes it
   be forgotten; it is worked out again when next asked for.
2. What an entry touches stands in its row of KINDS, of a reading in READ_TOUCHES.
   A correction, a strike and a judgement of doubles touch what the entry touches
   that they are about in the end.
3. In doubt everything is forgotten: a wrong "unchanged" would show a wrong record,
   a wrong "changed" costs 20 ms.
4. An entry also touches its topic, as `run.entries` names it: "step_begun/rennet".
5. Words of steps come in two: "step/heat" is touched by an entry that names the
   step, EVERY_STEP by one that names none and may belong to any. ANY_STEP is
   touched by both. `of_step` puts together what belongs to one step.
"""

from .kinds.columns import ANYTHING, MILK, NEAR_VOLUME, READ_TOUCHES, READING, STEP
from .kinds.table import ABOUT_ANOTHER, KINDS
from .order import corrected_ms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Event, State

DEEPEST = 8  # as many entries about entries are followed

ANY_STEP = "any_step"
EVERY_STEP = "every_step"

# A temperature read this near to the metered volume belongs to it, see
# `plan.milk_in`, and then changes every dose that goes by mass.
WITH_VOLUME_MS = 3600000


def of_step(key: str) -> "list[str]":
    """Return the words for all that is entered of one step."""
    return [EVERY_STEP, "step/" + key]


def topic(kind: str, name: "str | None" = None) -> str:
    """Return the name of a topic.

    Args:
        kind: key of KINDS.
        name: the step, quantity, ... where the kind is filed by one.
    """
    return kind if name is None else kind + "/" + name


def keep(
    state: "State", name: str, key: str, answer: object, rests_on: "list[str]"
) -> None:
    """Keep an answer until an entry touches what it rests on.

    Args:
        state: State; changed in place.
        name: what the answer is of: "facts", "alerts", "figures", ...
        key: which of these: key of a step, or any other text.
        answer: JSON types only; not to be changed from here on.
        rests_on: list of words: of the column `touches` of KINDS, `of_step`, `topic`,
            ANY_STEP. ANYTHING is added, as a new opening changes all.
    """
    state["kept"].setdefault(name, {})[key] = {
        "rests_on": list(rests_on) + [ANYTHING],
        "answer": answer,
    }


def kept(state: "State", name: str, key: str) -> "Any":
    """Return an answer that is kept and still holds, or None.

    Args:
        state: State.
        name: as for `keep`.
        key: as for `keep`.
    """
    held = state["kept"].get(name, {}).get(key)
    return None if held is None else held["answer"]


def forget(state: "State") -> None:
    """Forget all kept answers of a make; for what no entry tells, such as new rules.

    Args:
        state: State; changed in place.
    """
    state["kept"] = {}


def touch(state: "State", event: "Event") -> None:
    """Forget what an event that was just taken makes stale.

    Args:
        state: State with the event filed; changed in place.
        event: the event.
    """
    if not state["kept"]:
        return  # as when a phone starts, and reads its whole log
    words = touched(state, event)
    if ANYTHING in words:
        forget(state)
        return
    for answers in state["kept"].values():
        for key in list(answers):
            # No generator: each tap of a slow phone comes by here.
            for word in answers[key]["rests_on"]:
                if word in words:
                    answers.pop(key)
                    break


def touched(state: "State", event: "Event") -> "list[str]":
    """Return the words for all that an event of a make changes.

    Args:
        state: State with the event filed.
        event: the event.

    Returns:
        List of words; empty while what it is about is not here yet, since that
        will touch the same when it comes.
    """
    about = _about(state, event)
    if about is None:
        return []
    if about["kind"] in ABOUT_ANOTHER:
        return [ANYTHING]  # too deep to be followed
    words = _topics(state, about)
    for word in KINDS[about["kind"]]["touches"]:
        words.extend(_words_of(word, state, event, about))
    return words


def _topics(state: "State", about: "Event") -> "list[str]":
    """Return the topics that an entry is or was filed under, by any correction."""
    kind, field = about["kind"], KINDS[about["kind"]]["topic"]
    if field is None:
        return [kind]
    names = [about["data"].get(field)]
    for line in state["amends"].get(about["id"], []):
        changes = state["events"][line["id"]]["data"]["set"]
        if field in changes:
            names.append(changes[field])
    return [topic(kind, name or "") for name in names]


def _about(state: "State", event: "Event | None") -> "Event | None":
    """Return the entry that an event changes in the end, or None if not here yet."""
    for _ in range(DEEPEST):
        if event is None or event["kind"] not in ABOUT_ANOTHER:
            return event
        event = state["events"].get(event.get("ref") or "")
    return event


def _words_of(word: str, state: "State", event: "Event", about: "Event") -> "list[str]":
    if word == STEP:
        step = about["data"].get("step")
        return [ANY_STEP, EVERY_STEP if step is None else "step/" + step]
    if word == READING:
        quantity = about["data"]["quantity"]
        return _of_quantity(quantity, state, event, about)
    return [word]


def _of_quantity(
    quantity: str, state: "State", event: "Event", about: "Event"
) -> "list[str]":
    words = list(READ_TOUCHES.get(quantity, ()))
    if NEAR_VOLUME in words:
        words.remove(NEAR_VOLUME)
        if _may_belong_to_volume(state, event, about):
            words.append(MILK)
    return words


def _may_belong_to_volume(state: "State", event: "Event", about: "Event") -> bool:
    if event["kind"] == "entry_corrected" or about["id"] in state["amends"]:
        return True  # its instant may have been another
    volumes = state["lists"].get("reading_taken/milk_volume_l")
    if not volumes:
        return False
    return abs(corrected_ms(about) - volumes[-1]["t_ms"]) <= WITH_VOLUME_MS
