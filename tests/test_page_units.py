"""The page's units are the core's: the same table, and the same conversions by it."""

import json
import subprocess

import pytest

from deploy import page_units
from deploy.fetch_modules import find_node
from server.core.units.table import UNITS, convert
from tests.conftest import ROOT

PAIRS = [
    (start, end)
    for start in UNITS
    for end in UNITS
    if UNITS[start]["dimension"] == UNITS[end]["dimension"]
]
ASKED = """
const { convert } = await import(process.argv[1]);
const pairs = JSON.parse(process.argv[2]);
console.log(JSON.stringify(pairs.map(([from, to]) => convert(37.5, from, to))));
"""


def test_the_page_has_the_table_that_the_core_has():
    written = page_units.WRITTEN.read_text("utf-8")
    assert written == page_units.units_text(), "run python deploy/page_units.py"


def test_the_page_converts_as_the_core_does():
    address = (ROOT / "static" / "js" / "units" / "convert.js").as_uri()
    done = subprocess.run(
        [
            find_node(),
            "--input-type=module",
            "--eval",
            ASKED,
            address,
            json.dumps(PAIRS),
        ],
        capture_output=True,
        text=True,
        check=True,
    )
    wanted = [convert(37.5, start, end) for start, end in PAIRS]
    # Both work in doubles by the same steps; the last digit may differ.
    assert json.loads(done.stdout) == pytest.approx(wanted, rel=1e-15)
