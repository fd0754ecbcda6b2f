"""One table of what a make can know: each input's name has one meaning."""

import subprocess
import sys

import pytest

from server.core.known import table
from server.core.sums import catalogue
from tests.conftest import ROOT


def inputs():
    return [item for row in catalogue.rows() for item in row["inputs"]]


def test_no_input_is_looked_up_in_two_places():
    looked_up = [name for _, names in table.PARTS for name in names]
    assert len(looked_up) == len(set(looked_up)) == len(table.GROUP_OF)
    with pytest.raises(KeyError, match="jurisdiction"):
        table.joined((table.PARTS[0], table.PARTS[0]))


def test_the_table_names_what_each_group_looks_up_and_no_more():
    for load, names in table.PARTS:
        assert sorted(names) == sorted(load())


def test_what_no_group_looks_up_a_make_cannot_know():
    assert table.look_up_of("length_m") is None


def test_an_input_loads_its_own_group_alone():
    code = (
        "import sys; from server.core.known import table; "
        "table.look_up_of('floc_s'); "
        "print(*sorted(name for name in sys.modules if '.known.' in name))"
    )
    told = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, check=True, capture_output=True
    )
    loaded = told.stdout.decode().split()
    assert "server.core.known.vat.set" in loaded
    assert not {name for name in loaded if ".wheel" in name or ".temps" in name}


def test_each_look_up_serves_an_input_of_some_sum():
    assert set(table.GROUP_OF) <= {item["name"] for item in inputs()}


def test_one_name_is_one_quantity_in_all_sums():
    told = {}
    for item in inputs():
        columns = [(one["name"], one["unit"]) for one in item["columns"] or []]
        asked = (item["kind"].replace("count", "number"), item["unit"], tuple(columns))
        told.setdefault(item["name"], set()).add(asked)
    assert {name for name in told if len(told[name]) > 1} == set()
