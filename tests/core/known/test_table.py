"""One table of what a make can know: each input's name has one meaning."""

import pytest

from server.core.known import table
from server.core.sums import catalogue


def inputs():
    return [item for row in catalogue.rows() for item in row["inputs"]]


def test_no_input_is_looked_up_in_two_places():
    looked_up = [name for part in table.PARTS for name in part.KNOWN]
    assert len(looked_up) == len(set(looked_up)) == len(table.KNOWN)
    with pytest.raises(KeyError, match="jurisdiction"):
        table.joined((table.milk, table.milk))


def test_each_look_up_serves_an_input_of_some_sum():
    assert set(table.KNOWN) <= {item["name"] for item in inputs()}


def test_one_name_is_one_quantity_in_all_sums():
    told = {}
    for item in inputs():
        columns = [(one["name"], one["unit"]) for one in item["columns"] or []]
        asked = (item["kind"].replace("count", "number"), item["unit"], tuple(columns))
        told.setdefault(item["name"], set()).add(asked)
    assert {name for name in told if len(told[name]) > 1} == set()
