"""One make asked on both interpreters: events in, answers out, in one call.

What the core keeps (a desk, a state) changes in place, and a call through JSON
would change a copy. So a small module beside the core makes it, fills it and
asks it, on the server and on the phone alike.
"""

import pytest

from tests.conftest import Phone, beside_core
from tests.core.builders import MAKE, at

ASKED = '''
import json

from . import desk
from .alarm import alarms
from .creamery import board
from .figures import context, due as figures_due, ends, figure, plan as days
from .log import amends, apart, equipment, opening, order, readings as log_readings
from .log import run, touches
from .make import curd, duplicates, facts, plan, timers, wheels
from .step import record, steps, view
from .step.parts import step_parts
from .step.alerts import drift, step_alerts
from .units import quantities, readings

MODULES = {
    "creamery.board": board,
    "make.curd": curd,
    "desk": desk,
    "step.alerts.drift": drift,
    "make.duplicates": duplicates,
    "figures.due": figures_due,
    "figures.ends": ends,
    "figures.plan": days,
    "log.equipment": equipment,
    "log.amends": amends,
    "log.touches": touches,
    "make.facts": facts,
    "log.order": order,
    "log.opening": opening,
    "log.readings": log_readings,
    "make.plan": plan,
    "units.quantities": quantities,
    "units.readings": readings,
    "step.record": record,
    "log.run": run,
    "step.alerts.step_alerts": step_alerts,
    "step.parts.step_parts": step_parts,
    "step.steps": steps,
    "make.timers": timers,
    "make.wheels": wheels,
    "step.view": view,
}


def _fail(stream, what, fault):
    raise fault


# A fault that the core would answer around must end the test that meets it.
if not apart.LISTENERS:
    apart.LISTENERS.append(_fail)


def rung(events, now_ms):
    """Return the alarms of a new desk that took these events."""
    kept = desk.new()
    desk.take(kept, events)
    return alarms.alarms(kept, now_ms, 600.0)["alarms"]


def of_desk(calls):
    """Ask one new desk call after call; each answer as it was at that moment."""
    kept = desk.new()
    answers = []
    for name, args in calls:
        answer = kept if name == "desk" else getattr(desk, name)(kept, *args)
        answers.append(json.loads(json.dumps(answer)))
    return answers


def figures(events, make_id, wanted, now_ms, rules):
    """Return figures of a make in a new desk, each by its step and name."""
    kept = desk.new()
    desk.set_rules(kept, rules)
    desk.take(kept, events)
    state = kept["makes"][make_id]
    opened = run.entries(state, "make_opened")[0]
    of_make = context.of_make(state, opened, now_ms, rules, kept)
    steps = {row["key"]: row for row in of_make["recipe"]["steps"]}
    return [figure.figure(of_make, steps[key], name) for key, name in wanted]


KEPT = {}


def press(name, make_id, events, now_ms):
    """Take events into a desk that is kept under a name; return what to do next."""
    if name not in KEPT:
        KEPT[name] = desk.new()
    told = desk.take(KEPT[name], events)
    found = desk.view(KEPT[name], make_id, now_ms)
    board_now = desk.board(KEPT[name], now_ms)
    focus = [row for row in found["steps"] if row["key"] == found["focus"]]
    return {
        "problems": told["problems"],
        "step": focus[0] if focus else None,
        "alerts": [[row["key"], row["step"]] for row in found["alerts"]],
        "ahead_ms": [row["due_ms"] for row in board_now["due"]],
        "day": found["day"],
        "whole": found["whole"],
    }


def of_state(make_id, events, calls):
    """Take events into one new state, then ask it call after call."""
    state = run.new_state(make_id)
    taken = [run.take(state, event) for event in events]
    answers = []
    for module, name, args in calls:
        if name == "state":
            answer = state
        elif name == "taken":
            answer = taken
        else:
            answer = getattr(MODULES[module], name)(state, *args)
        answers.append(json.loads(json.dumps(answer)))
    return answers


def changed(module, name, args):
    """Call a function that changes its arguments; return them after the call."""
    answer = getattr(MODULES[module], name)(*args)
    return {"answer": answer, "args": args}
'''


class Ask:
    def __init__(self, call):
        self.call = call

    def desk(self, *calls):
        """Return the answers of one new desk to (name, argument, ...) calls."""
        return self.call(
            "asked", "of_desk", [[name, list(args)] for name, *args in calls]
        )

    def state(self, events, *calls):
        """Return the answers of one state to (module, name, argument, ...) calls."""
        return self.call(
            "asked",
            "of_state",
            MAKE,
            events,
            [[module, name, list(args)] for module, name, *args in calls],
        )

    def figures(self, events, now_min, *wanted, rules=None):
        """Return figures of one make, each asked as (step, name)."""
        names = [list(pair) for pair in wanted]
        return self.call(
            "asked", "figures", events, MAKE, names, at(now_min), rules or {}
        )

    def one(self, events, module, name, *args):
        """Return the one answer of a state that took these events."""
        return self.state(events, (module, name, *args))[0]

    def changed(self, module, name, *args):
        return self.call("asked", "changed", module, name, list(args))

    def press(self, name, events, now_ms):
        """Return what a desk kept under a name asks for after these events."""
        return self.call("asked", "press", name, MAKE, events, now_ms)

    def view(self, events, at_min):
        """Return the View that a new desk shows after these events."""
        return self.desk(("take", events), ("view", MAKE, at(at_min)))[1]

    def step(self, events, key, at_min):
        return self.desk(("take", events), ("step", MAKE, key, at(at_min)))[1]

    def alerts(self, events, at_min):
        """Return the keys of the alerts that stand, most urgent first."""
        found = self.view(events, at_min)["alerts"]
        return [row["key"][len("alert.") :] for row in found]


@pytest.fixture(scope="session")
def asked_folder(tmp_path_factory):
    folder = tmp_path_factory.mktemp("asked")
    (folder / "core").mkdir()
    (folder / "core" / "asked.py").write_text(ASKED, encoding="utf-8")
    return folder


@pytest.fixture(scope="session")
def ask_server(asked_folder):
    call, close = beside_core("asked", asked_folder / "core" / "asked.py")
    yield Ask(call)
    close()


@pytest.fixture(scope="session")
def ask_phone(asked_folder):
    process = Phone(asked_folder)
    yield Ask(process)
    process.close()


@pytest.fixture(scope="session", params=["server", "phone"])
def ask(request):
    """Ask the core of what it keeps; each such test runs on both interpreters."""
    return request.getfixturevalue("ask_" + request.param)
