"""Published tables, kept as data with their source and precision."""

import json

from tests.conftest import ROOT


def table(name):
    return json.loads((ROOT / "tests" / "cases" / f"{name}.json").read_text("utf-8"))
