"""What pushes say, in each language."""

import json
import re
import subprocess
from pathlib import Path

import pytest

from deploy.fetch_modules import find_node
from server.alarm import message, words
from server.config import RECIPES_DIR
from server.core.units.quantities import QUANTITIES
from server.shapes.people import LANGUAGES

FILES = {
    path.stem: json.loads(path.read_text("utf-8"))
    for path in words.TEXTS_DIR.glob("*.json")
}


TABLES = ("what", "steps")
STEPS = {
    step["title"]["en"]
    for path in RECIPES_DIR.glob("*.json")
    for step in json.loads(path.read_text("utf-8"))["steps"]
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
    assert {key: names(other[key]) for key in other if key not in TABLES} == {
        key: names(english[key]) for key in english if key not in TABLES
    }
    same = [k for k in other if k not in TABLES and other[k] == english[k]]
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


def on_the_page(code):
    """Return the page's texts of the recipes in a language."""
    pack = Path(__file__).parents[2] / "static/js/messages" / code / "index.js"
    script = (
        f"import('{pack.as_uri()}').then((m) => console.log(JSON.stringify(m.RECIPE)))"
    )
    done = subprocess.run(
        [find_node(), "-e", script], capture_output=True, text=True, check=True
    )
    return json.loads(done.stdout)


@pytest.mark.parametrize("code", [code for code in LANGUAGES if code != "en"])
def test_a_step_of_the_house_recipe_is_named_as_on_the_page(code):
    assert STEPS
    page = on_the_page(code)
    assert FILES[code]["steps"] == {title: page[title] for title in STEPS}


def test_a_push_names_a_step_of_the_house_recipe_in_the_readers_language():
    late = [alarm(title={"en": "Receive the milk"})]
    assert message.of_alarms(late, 0, "es").body == "«Recibir la leche» lleva retraso"
    assert message.of_alarms(late, 0, "en").body == "Receive the milk is late"


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
