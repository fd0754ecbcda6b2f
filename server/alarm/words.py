"""The few sentences of pushes and calendar files: no page words them.

Short, since a lock screen cuts; without times of day, since the server does not
know the phone's zone. The page says the rest once it is opened. Each language is
a file in `texts/`, with the same keys and {names}.
"""

import json
from functools import cache
from pathlib import Path
from typing import Any

TEXTS_DIR = Path(__file__).resolve().parent / "texts"
FALLBACK = "en"
MOST_LINES = 4


@cache
def texts(language: str | None) -> dict[str, Any]:
    """Return every text of a language; those of English when there is none.

    Args:
        language: its code; None is English.
    """
    path = TEXTS_DIR / f"{language or FALLBACK}.json"
    if not path.is_file():
        return texts(FALLBACK)
    found: dict[str, Any] = json.loads(path.read_text("utf-8"))
    return found


def own(text: dict[str, str] | None, language: str | None) -> str:
    """Return a step's title: its own words in this language, ours, English, any.

    Ours are those of the recipes that come with the house.

    Args:
        text: language to words.
        language: the language wanted.
    """
    if not text:
        return ""
    english = text.get("en", "")
    ours = texts(language)["steps"].get(english)
    return (
        text.get(language or FALLBACK) or ours or english or next(iter(text.values()))
    )


def sentence(alarm: dict[str, Any], language: str | None) -> str:
    """Return what an alarm says, in one line.

    Args:
        alarm: Alarm.
        language: of who reads it.
    """
    words = texts(language)
    numbers = alarm["numbers"]
    what = words["what"].get(numbers.get("quantity"))
    kind = alarm["kind"]
    if kind == "matter":
        return str(words["matters"][alarm["key"].removeprefix("matter.")])
    if kind == "alert" and what is None:
        kind = "alert_plain"
    if alarm["key"] == "alert.readings_overdue":
        kind = "readings_overdue"
    text = str(words[kind]).format(
        label=numbers.get("value") or words["a_timer"],
        n=numbers.get("value"),
        step=own(alarm["title"], language) or words["the_make"],
        what=what or numbers.get("quantity"),
    )
    return text[:1].upper() + text[1:]


def place(alarm: dict[str, Any]) -> str:
    """Return the make and vat that an alarm is about.

    Args:
        alarm: Alarm.
    """
    return " · ".join(name for name in (alarm["make_name"], alarm["vat"]) if name)


def title(
    alarms: list[dict[str, Any]], nobody_min: int | None, language: str | None
) -> str:
    """Return a push's first line.

    Args:
        alarms: list of Alarm, the most urgent first.
        nobody_min: for the owner, after how long nobody had answered [min].
        language: of who reads it.
    """
    words = texts(language)
    if nobody_min is not None:
        return str(words["nobody"]).format(n=nobody_min)
    begin = words["act_now"] if alarms[0]["priority"] == 1 else "Vatside"
    if len(alarms) > 1:
        return f"{begin}: {words['alarms'].format(n=len(alarms))}"
    return f"{begin}: {place(alarms[0])}"


def body(alarms: list[dict[str, Any]], nobody: bool, language: str | None) -> str:
    """Return a push's further lines.

    Args:
        alarms: list of Alarm, the most urgent first.
        nobody: whether it is for the owner, because nobody had answered.
        language: of who reads it.
    """
    if len(alarms) == 1 and not nobody:
        return sentence(alarms[0], language)
    lines = [f"{place(row)}: {sentence(row, language)}" for row in alarms[:MOST_LINES]]
    if len(alarms) > MOST_LINES:
        lines.append(texts(language)["more"].format(n=len(alarms) - MOST_LINES))
    return "\n".join(lines)
