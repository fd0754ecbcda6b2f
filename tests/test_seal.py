import json
import subprocess
from pathlib import Path

import pytest

from deploy.fetch_modules import find_node
from server import seal
from server.shapes.pins import ActShape

ROOT = Path(__file__).resolve().parent.parent
PERSON, PIN = "maren", "40718263"
ACT = {
    "id": "00000000-0000-4000-8000-000000000001",
    "make": "00000000-0000-4000-8000-00000000aaaa",
    "device": "00000000-0000-4000-8000-00000000dddd",
    "person": PERSON,
    "at_ms": 1_790_000_000_000,
    "entered_ms": 1_790_000_000_000,
    "off_ms": -1800,
    "kind": "signed_off",
    "v": 1,
    "ref": None,
    "data": {"statement": 'Née "vat" \\ 🧀 \x7f\n\u2028'},
}
# Where the two languages write a number or a letter differently by themselves.
VALUES = [
    0, -0.0, 37.0, 31.25, 1e-5, 1.5e-7, 2.0**-25, 123456789.125, -0.001, 2**53 - 1,
    1e20, True, None, "\x00\t\u001f/\u00e9\uffff", "🧀", "\ud83e", [], {},
    {"b": [1, {"a": 0.1}]},
]  # fmt: skip


@pytest.fixture(scope="module")
def page():
    """Ask the page's own half, as a browser would run it: once for all questions."""

    def ask(questions):
        done = subprocess.run(
            [find_node(), str(ROOT / "tests" / "web" / "seal.mjs")],
            input=json.dumps(questions),
            capture_output=True,
            text=True,
            check=True,
        )
        return json.loads(done.stdout)

    return ask


@pytest.fixture(scope="module")
def sealed():
    return seal.new_sealed(PERSON, PIN)


@pytest.fixture(scope="module")
def answers(page, sealed):
    return page(
        {
            "values": VALUES,
            "act": ACT,
            "sealed": sealed._asdict(),
            "pin": PIN,
            "wrong": "40718264",
            "person": PERSON,
        }
    )


@pytest.mark.parametrize("at", range(len(VALUES)), ids=lambda at: ascii(VALUES[at]))
def test_page_and_server_write_one_text(answers, at):
    # Through JSON, as a value comes to the server.
    value = json.loads(json.dumps(VALUES[at]))
    assert answers["texts"][at] == seal.one_text(value)


def test_the_page_opens_a_key_that_the_server_made_and_signs(answers, sealed):
    text = seal.act_text(ACT)
    assert answers["act_text"] == text.decode("ascii")
    assert seal.is_signed(sealed.public, text, answers["sig"])
    other = seal.act_text(ACT | {"make": ACT["id"]})
    assert not seal.is_signed(sealed.public, other, answers["sig"])


def test_an_act_goes_to_the_server_whole_but_for_whose_it_is(answers):
    assert ActShape().load(answers["act"]) | {"person": PERSON} == ACT


def test_the_server_opens_a_key_that_the_page_made_and_signs(answers):
    made = seal.Sealed(**answers["made"])
    assert seal.is_public_key(made.public)
    assert (made.person, made.rounds) == (PERSON, seal.ROUNDS)
    sig = seal.sign(made, PIN, b"text")
    assert sig is not None
    assert seal.is_signed(made.public, b"text", sig)
    assert seal.is_signed(made.public, seal.sealed_text(made), answers["made_sig"])


def test_a_wrong_pin_opens_nothing_on_either_side(answers, sealed):
    assert answers["wrong_sig"] is None
    assert seal.sign(sealed, "40718264", b"text") is None


def test_a_wrapped_key_opens_under_no_other_name(answers, sealed):
    assert answers["other_sig"] is None
    assert seal.sign(sealed._replace(person="bo"), PIN, b"text") is None


def test_no_field_of_a_sealed_key_holds_the_pin(sealed):
    assert PIN not in json.dumps(sealed)


def test_a_signature_over_a_key_is_none_over_an_act(sealed):
    sig = seal.sign(sealed, PIN, seal.sealed_text(sealed))
    assert not seal.is_signed(sealed.public, seal.act_text(ACT), sig)


@pytest.mark.parametrize("public", ["", "é", "AAAA", "MCowBQYDK2VwAyEA" + "A" * 43])
def test_noise_and_keys_of_another_sort_are_no_public_key(public):
    assert not seal.is_public_key(public)
    assert not seal.is_signed(public, b"text", "A" * 86)
