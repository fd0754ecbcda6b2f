"""Roles in place of people, in whatever form a name was written."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.auth.masking import Known, Mask, folded

PEOPLE = [
    Known("id-maren", "Maren Okello", "maker"),
    Known("id-olive", "Olive Quern", "owner"),
    Known("id-al", "Al Fay", "helper"),
    Known("id-jose", "José de la Cruz", "helper"),
    Known("id-li", "王小明", "viewer"),
    Known("id-bo", "Bo", "maker"),
]
MASK = Mask(PEOPLE)


@pytest.mark.parametrize(
    ("written", "read"),
    [
        ("Maren Okello tasted it", "[maker] tasted it"),
        ("maren tasted, OKELLO agreed", "[maker] tasted, [maker] agreed"),
        (
            "Maren's vat, Marens Bottich, Maren’s",
            "[maker] vat, [maker] Bottich, [maker]",
        ),
        ("jose, JOSÉ and Jose\u0301!", "[helper], [helper] and [helper]!"),
        ("Ma\u200bren and Ｍａｒｅｎ", "[maker] and [maker]"),
        ("lot-maren-2, L7/okello_3", "lot-[maker]-2, L7/[maker]_3"),
        ("al vat, Al said, AL", "al vat, [helper] said, [helper]"),
        ("bo cut", "[maker] cut"),
        ("王小明说好", "[viewer]说好"),
        ("leche de la granja", "leche de la granja"),
        ("Marensson, crux, olives", "Marensson, crux, [owner]"),
        ("", ""),
    ],
)
def test_a_name_is_found_however_it_is_written(written, read):
    assert MASK.text(written) == read


def test_a_text_without_a_name_is_left_as_it_is():
    words = "Écrémé à 30 °C, pH 6,45; ½ sachet, ﬁn"
    assert MASK.text(words) == words
    assert Mask([]).text(words) == words


@given(st.text(max_size=30), st.text(max_size=30), st.sampled_from(PEOPLE))
def test_no_whole_name_is_left_between_any_two_texts(before, after, person):
    read = MASK.text(f"{before} {person.name.swapcase()} {after}")
    assert folded(person.name)[0] not in folded(read)[0].replace(f"[{person.role}]", "")


def test_ids_become_roles_and_phones_and_outsiders_go():
    given = {
        "by": "gone",
        "opened_by": "id-olive",
        "device": "phone-1",
        "task": {"by": "id-maren"},
        "corrections": [{"by": "gone", "device": "phone-2"}],
        "gap": {"agreed_with": "R. Stranger, inspector"},
        "equipment": {"gap_agreed_with": "R. Stranger"},
        "n": 1,
        "none": None,
    }
    assert MASK.answer(given) == {
        "by": "unknown",
        "opened_by": "owner",
        "device": None,
        "task": {"by": "maker"},
        "corrections": [{"by": "unknown", "device": None}],
        "gap": {"agreed_with": "[authority]"},
        "equipment": {"gap_agreed_with": "[authority]"},
        "n": 1,
        "none": None,
    }


def test_a_field_that_nobody_has_sorted_yet_is_masked():
    assert MASK.answer({"of_tomorrow": [{"x": "maren"}]}) == {
        "of_tomorrow": [{"x": "[maker]"}]
    }


def test_words_of_the_core_stay_where_no_person_types():
    held = Mask([Known("1", "Held Running", "maker")])
    line = {"state": "held", "data": {"state": "held", "quantity": "held"}}
    assert held.answer(line) == {
        "state": "held",
        "data": {"state": "[maker]", "quantity": "held"},
    }


def test_a_name_used_as_the_name_of_a_field_goes_with_its_field():
    given = {"equipment": {"maren": 1, "vat": "jacketed"}, "title": {"Maren": "x"}}
    assert MASK.answer(given) == {"equipment": {"vat": "jacketed"}, "title": {}}
