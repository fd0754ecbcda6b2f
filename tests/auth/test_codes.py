import re

from hypothesis import given
from hypothesis import strategies as st

from server.auth import codes


def test_codes_use_signs_that_are_not_taken_for_one_another():
    assert len(set(codes.SIGNS)) == 32  # five bits a sign
    assert not set("ILOU") & set(codes.SIGNS)
    assert re.fullmatch(f"[{codes.SIGNS}]{{26}}", codes.new_code(26))


def test_the_long_code_cannot_be_guessed_and_the_short_one_not_in_ten_minutes():
    assert codes.LONG_SIGNS * 5 >= 128
    assert codes.OWNER_SIGNS * 5 >= 80
    assert codes.SHORT_SIGNS * 5 >= 20


def test_no_two_codes_or_tokens_are_the_same():
    assert len({codes.new_code(8) for _ in range(200)}) == 200
    assert len({codes.new_token() for _ in range(200)}) == 200


@given(st.text(codes.SIGNS, min_size=1, max_size=26))
def test_a_code_is_understood_as_it_is_shown_and_as_it_is_misread(code):
    assert codes.as_meant(codes.grouped(code)) == code
    misread = code.replace("0", "o").replace("1", "l").lower()
    assert codes.as_meant(f" {misread} ") == code


@given(st.text(st.characters()))
def test_anything_typed_has_a_hash(typed):
    assert re.fullmatch("[0-9a-f]{64}", codes.hash_of(codes.as_meant(typed)))
