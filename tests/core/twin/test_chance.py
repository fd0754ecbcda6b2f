"""The twin's chance: even, apart by name, the same on both interpreters."""

import math
import uuid

import pytest

from server.core.twin import chance

DRAWS = 20_000


def draws(name="noise", seed=7):
    of = chance.stream(seed, name)
    return [chance.between(of, 0.0, 1.0) for _ in range(DRAWS)]


def test_draws_are_even():
    found = draws()
    # The mean of n draws strays by 1 / sqrt(12 n); four of those are never seen.
    assert sum(found) / DRAWS == pytest.approx(0.5, abs=4 / math.sqrt(12 * DRAWS))
    for tenth in range(10):
        share = sum(1 for x in found if int(x * 10) == tenth) / DRAWS
        assert share == pytest.approx(0.1, abs=4 * math.sqrt(0.09 / DRAWS))


def test_a_draw_tells_nothing_of_the_next():
    found = [x - 0.5 for x in draws()]
    along = sum(found[i] * found[i + 1] for i in range(DRAWS - 1)) / DRAWS * 12
    assert along == pytest.approx(0.0, abs=4 / math.sqrt(DRAWS))


def test_normal_draws_have_mean_0_and_spread_1():
    of = chance.stream(7, "normal")
    found = [chance.normal(of) for _ in range(DRAWS)]
    assert sum(found) / DRAWS == pytest.approx(0.0, abs=4 / math.sqrt(DRAWS))
    spread = sum(x * x for x in found) / DRAWS
    assert spread == pytest.approx(1.0, abs=4 * math.sqrt(2 / DRAWS))


@pytest.mark.parametrize("other", [("noise", 8), ("people", 7)])
def test_another_seed_or_name_draws_other_numbers(other):
    name, seed = other
    pairs = zip(draws(), draws(name, seed), strict=True)
    along = sum((a - 0.5) * (b - 0.5) for a, b in pairs) / DRAWS * 12
    assert along == pytest.approx(0.0, abs=4 / math.sqrt(DRAWS))


def test_both_interpreters_draw_the_same(core):
    # FNV-1a of "7 noise", MurmurHash3's finish and one xorshift, worked by hand
    # in whole numbers of any length.
    word = 2166136261
    for byte in b"7 noise":
        word = ((word ^ byte) * 16777619) % 2**32
    for times in (0x85EBCA6B, 0xC2B2AE35):
        shift = 16 if times == 0x85EBCA6B else 13
        word = ((word ^ (word >> shift)) * times) % 2**32
    word ^= word >> 16
    assert core("twin.chance", "stream", 7, "noise") == {"word": word}
    word ^= (word << 13) % 2**32
    word ^= word >> 17
    word ^= (word << 5) % 2**32
    assert core("twin.chance", "bits", core("twin.chance", "stream", 7, "noise")) == (
        word
    )


def test_a_delay_lies_between_its_ends_and_mostly_near_the_usual():
    of = chance.stream(3, "people")
    found = [chance.delay_s(of, 30.0, 60.0, 120.0) for _ in range(DRAWS)]
    assert 30.0 <= min(found) <= 35.0
    assert 115.0 <= max(found) <= 120.0
    # A triangle's mean is that of its three corners; its spread is 18.7.
    assert sum(found) / DRAWS == pytest.approx(70.0, abs=4 * 18.7 / math.sqrt(DRAWS))


def test_a_delay_without_width_is_that_delay():
    assert chance.delay_s(chance.stream(1, "x"), 45.0, 45.0, 45.0) == 45.0


def test_ids_are_of_version_7_and_carry_their_instant():
    of = chance.stream(1, "ids")
    ids = [chance.uuid(of, 1_790_000_000_000 + i) for i in range(500)]
    assert len(set(ids)) == 500
    for i, text in enumerate(ids):
        one = uuid.UUID(text)
        assert (one.version, one.variant) == (7, uuid.RFC_4122)
        assert one.int >> 80 == 1_790_000_000_000 + i
        assert str(one) == text
