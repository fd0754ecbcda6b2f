"""What a guest may read: roles in place of people, in every text there is.

Rules. Only what the core itself says goes out as it is (PLAIN). Where an answer
carries what people typed, every text is free text, whatever its field is called:
each known name in it becomes the person's role in square brackets. A field that
is new tomorrow is therefore masked until someone decides otherwise.

How. Text and names are compared without case, accents and invisible signs, and
a name's words count each for themselves, since people call each other by half
of a name. A name that is also a word of the language is masked as well: a guest
who reads "[maker] cut at pH 6.2" loses little, a person who is named loses more.
"""

import re
import unicodedata
from collections.abc import Iterable
from typing import Any, NamedTuple

PERSON_FIELDS = ("by", "person", "opened_by")
DEVICE_FIELDS = ("device",)
# Names by their very meaning, of people who need not be known here.
OUTSIDER_FIELDS = ("agreed_with", "gap_agreed_with")
OUTSIDER = "[authority]"
# Words that come from the core's own tables.
PLAIN = frozenset(
    "act class form judgement kind level quantity state status treatment verdict "
    "when".split()
)
# Below these people typed: only fields that the check holds to a table are plain.
TYPED_BELOW = ("data", "original", "corrections", "equipment")
CHECKED = frozenset(("judgement", "kind", "quantity", "treatment"))
# Mappings whose keys, too, come from people.
KEYED_BY_PEOPLE = ("equipment", "typed", "set", "title", "recipe_title", "do")

SHORT = 2  # letters: "al" is a word, "Al" a name
_APART = {"ß": "ss", "ø": "o", "ł": "l", "đ": "d", "æ": "ae", "œ": "oe", "ı": "i"}
_UNSEEN = ("Mn", "Me", "Cf")
_LETTER = r"[^\W\d_]"


class Known(NamedTuple):
    """Someone whose name must not be read: id, name and role."""

    id: str
    name: str
    role: str


class Mask:
    """Puts roles in the place of people.

    Args:
        people: everyone known here, also those who left.
    """

    def __init__(self, people: Iterable[Known]) -> None:
        known = list(people)
        self._roles = {one.id: one.role for one in known}
        self._words: dict[str, str] = {}
        self._short: dict[str, str] = {}
        for one in known:
            # Of two people with one name the first is as good as the second.
            for name in _names(one.name):
                spoken = folded(name)[0]
                into = self._short if _is_short(spoken, one.name) else self._words
                if spoken:
                    into.setdefault(spoken, f"[{one.role}]")
        self._pattern = _pattern(self._words) if self._words else None
        self._short_pattern = _pattern(self._short) if self._short else None

    def answer(self, value: Any, field: str = "", is_typed: bool = False) -> Any:
        """Return an answer of the core as a guest may read it.

        Args:
            value: the answer, or a part of it; it is not changed.
            field: name of the field that holds it.
            is_typed: True below a field that holds what people typed.
        """
        if isinstance(value, dict):
            return self._mapping(value, field, is_typed or field in TYPED_BELOW)
        if isinstance(value, list):
            return [self.answer(one, field, is_typed) for one in value]
        if not isinstance(value, str):
            return value
        return self._text(value, field, is_typed)

    def _mapping(self, value: dict[str, Any], field: str, is_typed: bool) -> Any:
        if field in KEYED_BY_PEOPLE:
            value = {key: value[key] for key in value if self.text(key) == key}
        return {key: self.answer(one, key, is_typed) for key, one in value.items()}

    def _text(self, value: str, field: str, is_typed: bool) -> str | None:
        if field in DEVICE_FIELDS:
            return None
        if value in self._roles:
            return self._roles[value]
        if field in PERSON_FIELDS:
            return "unknown"
        if field in OUTSIDER_FIELDS:
            return OUTSIDER
        if field in (CHECKED if is_typed else PLAIN):
            return value
        return self.text(value)

    def text(self, value: str) -> str:
        """Return a text with every known name replaced by a role.

        Args:
            value: the text.
        """
        if self._pattern is not None:
            value = _replaced(value, self._pattern, self._words, needs_capital=False)
        if self._short_pattern is not None:
            value = _replaced(
                value, self._short_pattern, self._short, needs_capital=True
            )
        return value


def folded(text: str) -> tuple[str, list[int]]:
    """Return a text without case, accents and invisible signs.

    Args:
        text: the text.

    Returns:
        The bare text, and for each of its signs the place it had in `text`.

    >>> folded("Édouard Groß")[0]
    'edouard gross'
    """
    signs: list[str] = []
    places: list[int] = []
    for place, sign in enumerate(text):
        for part in unicodedata.normalize("NFKD", sign.casefold()):
            if unicodedata.category(part) not in _UNSEEN:
                for plain in _APART.get(part, part):
                    signs.append(plain)
                    places.append(place)
    return "".join(signs), places


def _names(name: str) -> list[str]:
    parts = re.findall(rf"{_LETTER}+", name)
    # "de", "van", "del": small words between the names are not names.
    called = [one for one in parts if one[0] != one[0].lower()] or parts
    return [name.strip(), *called]


def _is_short(spoken: str, whole: str) -> bool:
    return len(spoken) <= SHORT and spoken != folded(whole.strip())[0]


def _pattern(words: dict[str, str]) -> re.Pattern[str]:
    longest_first = sorted(words, key=lambda word: (-len(word), word))
    # "Maren's" and "Marens" name Maren too. Scripts without case put no space
    # between words, so there a name is found wherever it stands.
    found = [
        rf"(?<!{_LETTER}){re.escape(word)}(?:['’]?s)?(?!{_LETTER})"
        if word.upper() != word
        else re.escape(word)
        for word in longest_first
    ]
    return re.compile("|".join(f"({one})" for one in found))


def _replaced(
    text: str, pattern: re.Pattern[str], words: dict[str, str], needs_capital: bool
) -> str:
    bare, places = folded(text)
    longest_first = sorted(words, key=lambda word: (-len(word), word))
    done, out = 0, []
    for found in pattern.finditer(bare):
        start = places[found.start()]
        end = places[found.end()] if found.end() < len(places) else len(text)
        if needs_capital and text[start] == text[start].lower():
            continue
        assert found.lastindex is not None
        out += [text[done:start], words[longest_first[found.lastindex - 1]]]
        done = end
    return "".join([*out, text[done:]])
