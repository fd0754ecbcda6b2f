"""The few sentences of a push: a phone shows them with no page to word them.

Short, since a lock screen cuts; without times of day, since the server does not
know the phone's zone. The page says the rest once it is opened.
"""

from typing import Any

TITLES = {1: "ACT NOW", 2: "Vatside", 3: "Vatside"}
WORDS = {
    "timer": "{label}: the time is up",
    "step_due": "{step}: the time is up",
    "step_late": "{step} is late",
    "reading_overdue": "{what} is overdue in {step}",
    "alert": "{step}: {what} asks to be acted on",
}
MOST_LINES = 4


def sentence(alarm: dict[str, Any]) -> str:
    """Return what an alarm says, in one line.

    Args:
        alarm: Alarm.
    """
    numbers = alarm["numbers"]
    title = alarm["title"] or {}
    what = numbers.get("quantity") or alarm["key"].removeprefix("alert.")
    text = WORDS[alarm["kind"]].format(
        label=numbers.get("value") or "Timer",
        step=title.get("en") or next(iter(title.values()), "the make"),
        what=_readable(str(what)),
    )
    return text[:1].upper() + text[1:]


def _readable(key: str) -> str:
    words = [word for word in key.split("_") if word not in ("c", "frac", "l", "kg")]
    return " ".join("pH" if word == "ph" else word for word in words)


def place(alarm: dict[str, Any]) -> str:
    """Return the make and vat that an alarm is about.

    Args:
        alarm: Alarm.
    """
    return " · ".join(name for name in (alarm["make_name"], alarm["vat"]) if name)


def title(alarms: list[dict[str, Any]], nobody_min: int | None) -> str:
    """Return a push's first line.

    Args:
        alarms: list of Alarm, the most urgent first.
        nobody_min: for the owner, after how long nobody had answered [min].
    """
    if nobody_min is not None:
        return f"Nobody has answered for {nobody_min} min"
    if len(alarms) > 1:
        return f"{TITLES[alarms[0]['priority']]}: {len(alarms)} alarms"
    return f"{TITLES[alarms[0]['priority']]}: {place(alarms[0])}"


def body(alarms: list[dict[str, Any]], nobody: bool) -> str:
    """Return a push's further lines.

    Args:
        alarms: list of Alarm, the most urgent first.
        nobody: whether it is for the owner, because nobody had answered.
    """
    if len(alarms) == 1 and not nobody:
        return sentence(alarms[0])
    lines = [f"{place(row)}: {sentence(row)}" for row in alarms[:MOST_LINES]]
    if len(alarms) > MOST_LINES:
        lines.append(f"and {len(alarms) - MOST_LINES} more")
    return "\n".join(lines)
