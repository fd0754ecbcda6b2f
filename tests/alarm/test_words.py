"""What pushes say, in each language."""

import json
import re

import pytest

from server.alarm import message, words
from server.core.quantities import QUANTITIES
from server.shapes.people import LANGUAGES

FILES = {
    path.stem: json.loads(path.read_text("utf-8"))
    for path in words.TEXTS_DIR.glob("*.json")
}


def alarm(**given):
    return {
        "id": "m/step_late/press",
        "make_name": "Vat one",
        "vat": "",
        "kind": "step_late",
        "key": "alert.step_late",
        "priority": 2,
        "title": {"en": "Press", "es": "Prensar"},
        "numbers": {"quantity": None},
        "escalates_ms": None,
        **given,
    }


def names(text):
    return sorted(re.findall(r"\{\w+\}", str(text)))


def test_every_language_of_the_page_has_its_texts():
    assert set(FILES) == set(LANGUAGES)


@pytest.mark.parametrize("code", [code for code in LANGUAGES if code != "en"])
def test_every_language_has_each_text_with_its_names_and_none_in_english(code):
    english, other = FILES["en"], FILES[code]
    assert set(other) == set(english)
    assert {key: names(other[key]) for key in other if key != "what"} == {
        key: names(english[key]) for key in english if key != "what"
    }
    same = [key for key in other if key != "what" and other[key] == english[key]]
    assert same == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_quantity_has_a_name(code):
    assert set(QUANTITIES) - set(FILES[code]["what"]) == set()


def test_a_push_is_in_the_language_of_who_reads_it():
    late = [alarm()]
    assert message.of_alarms(late, 0, "en").body == "Press is late"
    assert message.of_alarms(late, 0, "es").body == "«Prensar» lleva retraso"
    # The recipe says nothing in French: its English is better than nothing.
    assert message.of_alarms(late, 0, "fr").body == "«\u00a0Press\u00a0» est en retard"
    assert message.of_alarms(late, 0, None) == message.of_alarms(late, 0, "en")
    assert message.of_nobody(late, 600, "es").title == "Nadie ha respondido en 10 min"


def test_a_quantity_is_named_and_another_matter_is_not_guessed():
    numbers = {"quantity": "curd_temp_c"}
    told = alarm(kind="reading_overdue", numbers=numbers)
    assert words.sentence(told, "en") == "Curd temperature is overdue in Press"
    assert words.sentence(told, "es").startswith("Temperatura de la cuajada: ")
    dose = alarm(kind="alert", key="alert.dose_below", numbers={"quantity": "rennet"})
    assert words.sentence(dose, "en") == "Press asks to be acted on"
    warm = alarm(kind="alert", key="alert.reading_above", numbers=numbers)
    assert words.sentence(warm, "en") == "Press: curd temperature asks to be acted on"


def test_many_alarms_are_counted_and_the_most_urgent_word_leads():
    many = [alarm(priority=1), *[alarm() for _ in range(5)]]
    assert words.title(many, None, "es") == "ACTÚE YA: 6 alarmas"
    assert words.body(many, False, "es").splitlines()[-1] == "y 2 más"


def test_an_unknown_language_is_english():
    assert words.texts("tlh") == FILES["en"]
