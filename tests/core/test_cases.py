"""The published values say where they are from, and none lies about unused."""

import pytest

from tests.cases.count import count, counts
from tests.conftest import ROOT

CASES = counts()


@pytest.mark.parametrize("name", CASES)
def test_a_table_names_source_precision_and_the_reason_for_its_tolerance(name):
    _, case = CASES[name]
    for start in ("source", "status", "printed", "tolerance"):
        assert any(key.startswith(start) for key in case), start
    reason = case.get("reason") or case["tolerance_reason"]
    assert len(reason.split()) >= 4


@pytest.mark.parametrize("name", CASES)
def test_a_table_is_read_by_a_test_that_runs_on_both_interpreters(name):
    texts = [
        path.read_text("utf-8") for path in (ROOT / "tests" / "core").rglob("test_*.py")
    ]
    readers = [t for t in texts if f'table("{name}' in t or f'"{name}.json"' in t]
    assert readers
    assert any("(core" in text for text in readers)


def test_there_are_more_than_120_values_from_outside():
    assert sum(values for values, _ in CASES.values()) >= 120


def test_what_is_put_in_is_not_counted():
    case = {"source": "x", "tolerance": {"c": 1}, "temp_c": 3, "rows": [[1, 2, 3]]}
    assert count(case, ("temp_c",), 1) == 2
