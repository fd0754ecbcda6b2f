import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.sync.canonical import NotJsonError, canonical_text, read_json, sha256_of

TEXTS = st.text(st.characters(), max_size=8)  # half surrogate pairs as well
NUMBERS = st.integers() | st.floats(allow_nan=False, allow_infinity=False)
VALUES = st.recursive(
    st.none() | st.booleans() | NUMBERS | TEXTS,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(TEXTS, inner),
    max_leaves=12,
)


def as_sent(value):
    return json.dumps(value).encode()


@given(VALUES)
def test_what_was_sent_is_what_is_kept(value):
    text = canonical_text(read_json(as_sent(value)))
    assert json.loads(text) == value
    assert text.isascii()


@given(VALUES)
def test_what_was_kept_has_the_same_text_when_it_is_sent_again(value):
    text = canonical_text(read_json(as_sent(value)))
    assert canonical_text(read_json(text.encode())) == text


@given(st.dictionaries(TEXTS, NUMBERS, min_size=2))
def test_the_order_of_keys_does_not_matter(value):
    turned = dict(reversed(value.items()))
    assert canonical_text(read_json(as_sent(turned))) == canonical_text(
        read_json(as_sent(value))
    )


def test_a_whole_number_is_the_same_however_it_is_written():
    texts = {canonical_text(read_json(b)) for b in (b"37", b"37.0", b"3.7e1")}
    assert texts == {"37"}
    assert canonical_text(read_json(b"37.5")) == "37.5"


def test_a_number_that_no_double_can_hold_is_kept_as_its_text():
    assert read_json(b"[1e999,-1e999,NaN,Infinity]") == [
        "1e999",
        "-1e999",
        "NaN",
        "Infinity",
    ]
    digits = "9" * 5000
    assert read_json(digits.encode()) == digits


@pytest.mark.parametrize(
    "data", [b"", b"{", b"\xff", b"[" * 5000, b"[" * 101 + b"]" * 101]
)
def test_what_cannot_be_read_is_said_to_be_no_json(data):
    with pytest.raises(NotJsonError):
        read_json(data)


def test_an_event_deep_enough_for_any_recipe_is_read():
    assert canonical_text(read_json(b"[" * 100 + b"]" * 100)) == "[" * 100 + "]" * 100


def test_the_hash_is_sha_256():
    # The first example of FIPS 180-2, appendix B.1.
    assert sha256_of("abc") == (
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    )
