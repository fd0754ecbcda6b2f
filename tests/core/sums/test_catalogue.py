"""Every sum is found by its key, and only what is asked for is loaded."""

import subprocess
import sys

import pytest

from server.core.sum_keys import SUM_KEYS, SUM_TOPICS
from server.core.sums import catalogue
from tests.conftest import ROOT


@pytest.mark.parametrize("key", SUM_KEYS)
def test_a_key_finds_its_own_sum(key):
    assert catalogue.find(key)["key"] == key


def test_every_topic_has_its_keys_in_order():
    for topic, keys in SUM_TOPICS:
        assert [row["key"] for row in catalogue.ROWS_OF[topic]()] == list(keys)


def test_no_key_stands_twice():
    assert len(set(SUM_KEYS)) == len(SUM_KEYS)


def test_one_sum_loads_no_other_topic():
    code = (
        "import sys; from server.core.sums import catalogue; "
        "catalogue.find('humidity'); "
        "print(*sorted(m for m in sys.modules if m.startswith('server.core.sums.')))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    loaded = {name.rsplit(".", 1)[-1] for name in done.stdout.split()}
    assert "store" in loaded
    assert not loaded & {topic for topic, _ in SUM_TOPICS} - {"store"}
