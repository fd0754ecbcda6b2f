"""The phone's own file beside the core: it hands the legal figures over."""

import importlib.util
import json
import sys
from pathlib import Path

import pytest

import server.core
import server.core.desk

ROOT = Path(__file__).resolve().parents[2]
RULES = {"us_heat": {"id": "us_heat", "topic": "heat_treatment", "rows": []}}


@pytest.fixture
def host(monkeypatch):
    monkeypatch.setitem(sys.modules, "core", server.core)
    monkeypatch.setitem(sys.modules, "core.desk", server.core.desk)
    path = ROOT / "static" / "js" / "core" / "host.py"
    spec = importlib.util.spec_from_file_location("host", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_the_desk_has_the_rules_that_came_before_it(host):
    host.take_rules(json.dumps(RULES))
    assert host.kept_desk()["rules"] == RULES


def test_rules_that_come_later_reach_the_desk_and_its_views(host):
    desk = host.kept_desk()
    assert desk["rules"] == {}
    desk["views"]["a"] = "worked out without them"
    host.take_rules(json.dumps(RULES))
    assert desk["rules"] == RULES
    assert desk["views"] == {}


def test_rules_that_judge_no_hold_come_beside_and_leave_the_views(host):
    host.take_rules(json.dumps(RULES))
    desk = host.kept_desk()
    desk["views"]["a"] = "worked out with the rule of its hold"
    host.take_rules('{"brine": {"topic": "brine"}}')
    assert set(desk["rules"]) == {*RULES, "brine"}
    assert desk["views"] != {}
    host.take_rules('{"brine": {"topic": "brine", "edition": "newer"}}')
    assert desk["views"] == {}


def test_a_sum_is_asked_through_the_host(host):
    request = {
        "module": "desk",
        "name": "sum",
        "desk": True,
        "args": ["acidity_units", {"acidity_frac": {"typed": "16", "unit": "dornic"}}],
    }
    answer = json.loads(host.call(json.dumps(request)))["ok"]
    # 16 °D is 0.16 % (two dairy laboratory pages).
    assert answer["values"][0]["value"] == pytest.approx(0.0016)
