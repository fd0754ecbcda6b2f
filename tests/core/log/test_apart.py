"""One make that cannot be shown: it is named, and all others go on."""

import copy

import pytest

from tests.conftest import Phone as Process
from tests.conftest import beside_core
from tests.core.builders import MAKE, MIN, Phone, a_day, at, recipe

OTHER = "0193a5b0-0000-7000-8000-00000000000b"
TANK = "0193a5b0-0000-7000-8000-00000000000c"

# A fault of ours, put into one question about one make.
ASKED = '''
import json

from . import desk
from .alarm import alarms
from .brine import tanks
from .creamery import board, kept as makes, trends
from .desk import creamery
from .known.wheel import analysed as brine
from .log import apart
from .make import opening

TOLD = []
PLACES = {
    "view": (makes, "view_of", lambda args: args[0]["make"]),
    "alarms": (alarms, "standing", lambda args: args[0]["make"]["id"]),
    "due": (board, "dues", lambda args: args[0]["make"]["id"]),
    "acts": (creamery, "acts_of", lambda args: args[0]["make"]["id"]),
    "tank": (tanks, "_tank", lambda args: args[1]),
    "start": (opening, "_equipment_of", lambda args: args[0]["make"]),
    "trends": (trends, "_figures", lambda args: args[0]["make"]),
    "learnt": (brine, "_wheels_of", lambda args: args[0]["make"]),
    "clashes": (board, "clashes", lambda args: ""),
}


def of_desk(what, broken, calls):
    """Ask a desk in which one question about one make fails."""
    kept = desk.new()
    module, name, whose = PLACES[what]
    right = getattr(module, name)
    is_faulty = [True]

    def wrong(*args):
        if is_faulty[0] and whose(args) == broken:
            raise KeyError("a fault")
        return right(*args)

    listeners = list(apart.LISTENERS)
    apart.LISTENERS[:] = [lambda stream, part, fault: TOLD.append([stream, part])]
    TOLD[:] = []
    setattr(module, name, wrong)
    answers = []
    try:
        for call, args in calls:
            if call == "mend":
                is_faulty[0] = False
                answer = None
            elif call == "alarms":
                answer = alarms.alarms(kept, *args)
            elif call == "equipment_before":
                answer = opening.equipment_before(kept, *args)
            elif call == "wheels":
                answer = brine.analysed_wheels(kept)
            elif call == "told":
                answer = list(TOLD)
            else:
                answer = getattr(desk, call)(kept, *args)
            answers.append(json.loads(json.dumps(answer)))
    finally:
        setattr(module, name, right)
        apart.LISTENERS[:] = listeners
    return answers


def through(fault):
    """Ask once with a listener that fails, as those of the tests do."""
    def wrong():
        raise KeyError("a fault")

    listeners = list(apart.LISTENERS)

    def listen(stream, what, problem):
        raise problem

    apart.LISTENERS[:] = [listen]
    try:
        apart.ask(desk.new(), "m", "view", 1, wrong)
    except KeyError:
        return "told"
    finally:
        apart.LISTENERS[:] = listeners
    return "hushed up"
'''


@pytest.fixture(scope="module", params=["server", "phone"])
def call(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp("faulty")
    (folder / "core").mkdir()
    file = folder / "core" / "faulty.py"
    file.write_text(ASKED, encoding="utf-8")
    if request.param == "server":
        found, close = beside_core("faulty", file)
    else:
        found = Process(folder)
        close = found.close
    yield found
    close()


def asked(call, what, broken, *calls):
    rows = [[name, list(args)] for name, *args in calls]
    return call("faulty", "of_desk", what, broken, rows)


def two_makes():
    """Return the events of two makes that run, a timer in each, and of a tank."""
    first, other = Phone(), Phone(device=1, make=OTHER)
    events = []
    for phone, name in ((first, "Early"), (other, "Late")):
        events.append(phone.opened(name=name, equipment={"lid": True}))
        events.append(phone.event("step_begun", 1, step="receive"))
        events.append(phone.event("timer_started", 2, label="Press", lasts_s=300))
    tank = Phone(device=1, make=TANK)
    tank.seq = 50
    events.append(
        tank.event("tank_opened", 1, name="Cellar", mass_kg=500.0, salt_frac=0.2)
    )
    return events


def test_the_board_names_the_make_and_shows_all_others(call):
    events = two_makes()
    _, board = asked(call, "view", MAKE, ("take", events), ("board", at(20)))
    assert [make["name"] for make in board["makes"]] == ["Late"]
    assert {row["make"] for row in board["due"]} == {OTHER}
    (row,) = board["broken"]
    assert row == {
        "make": MAKE,
        "is_tank": False,
        "name": "Early",
        "batch": "A1",
        "vat": None,
        "practice": False,
        "opened_ms": at(0),
        "state": "running",
        "is_open": True,
        "holds": [],
        "what": "view",
        "why": "fault",
        "since_ms": at(20),
        "problems": [],
        "fault": row["fault"],
    }
    assert row["fault"].startswith("KeyError")


def test_since_when_is_when_it_was_first_seen_and_is_told_once(call):
    events = two_makes()
    *_, board, told = asked(
        call,
        "view",
        MAKE,
        ("take", events),
        ("board", at(20)),
        ("board", at(21)),
        ("view", MAKE, at(22)),
        ("board", at(23)),
        ("told",),
    )
    assert board["broken"][0]["since_ms"] == at(20)
    assert told == [[MAKE, "view"]]


@pytest.mark.parametrize("kind", ["make_abandoned", "make_closed"])
def test_a_make_that_is_over_is_named_no_longer(call, kind):
    events = two_makes()
    phone = Phone()
    phone.seq = 90
    over = phone.event(kind, 30, why="equipment_down")
    *_, tapped, board, rung = asked(
        call,
        "view",
        MAKE,
        ("take", events),
        ("board", at(20)),
        ("tap", over, ["maker"], MAKE, at(30)),
        ("board", at(31)),
        ("alarms", at(31), 600.0),
    )
    assert tapped == {"problems": [], "view": None}
    assert board["broken"] == []
    assert {row["make"] for row in rung["alarms"]} == {OTHER}


def test_a_make_that_can_be_shown_again_is_named_no_longer(call):
    *_, board = asked(
        call,
        "view",
        MAKE,
        ("take", two_makes()),
        ("board", at(20)),
        ("mend",),
        ("board", at(21)),
    )
    assert board["broken"] == []
    assert sorted(make["name"] for make in board["makes"]) == ["Early", "Late"]


@pytest.mark.parametrize("what", ["view", "alarms"])
def test_the_other_make_rings_and_the_broken_one_says_that_it_does_not(call, what):
    *_, rung = asked(call, what, MAKE, ("take", two_makes()), ("alarms", at(20), 600.0))
    found = {(row["make"], row["kind"]) for row in rung["alarms"]}
    assert (OTHER, "timer") in found
    assert (MAKE, "timer") not in found
    (row,) = [row for row in rung["alarms"] if row["make"] == MAKE]
    assert (row["kind"], row["priority"]) == ("unshown", 1)
    assert (row["make_name"], row["state"]) == ("Early", "unacknowledged")
    assert (row["rings_ms"], row["escalates_ms"]) == (at(20), at(30))


def test_an_answer_on_any_phone_silences_what_the_broken_make_says(call):
    phone = Phone()
    phone.seq = 90
    seen = phone.event("alert_acknowledged", 12, alert="unshown/view")
    *_, rung = asked(
        call,
        "view",
        MAKE,
        ("take", [*two_makes(), seen]),
        ("alarms", at(20), 600.0),
    )
    (row,) = [row for row in rung["alarms"] if row["make"] == MAKE]
    assert row["state"] == "acknowledged"


def test_practice_that_cannot_be_shown_rings_nobody_up(call):
    opened = Phone().opened(practice=True)
    *_, board, rung = asked(
        call,
        "view",
        MAKE,
        ("take", [opened]),
        ("board", at(20)),
        ("alarms", at(20), 600.0),
    )
    assert board["broken"][0]["practice"] is True
    assert rung["alarms"] == []


@pytest.mark.parametrize(("what", "still"), [("due", 2), ("acts", 2), ("clashes", 2)])
def test_a_part_that_fails_leaves_the_make_on_the_board(call, what, still):
    broken = "" if what == "clashes" else MAKE
    _, board = asked(call, what, broken, ("take", two_makes()), ("board", at(20)))
    assert len(board["makes"]) == still
    assert [(row["make"], row["what"]) for row in board["broken"]] == [(broken, what)]
    assert OTHER in {row["make"] for row in board["due"]}


def test_a_start_is_worked_out_beside_a_make_that_has_no_acts(call):
    _, told = asked(
        call,
        "acts",
        MAKE,
        ("take", two_makes()),
        ("clashes_if", recipe(), "pasteurised", at(30), at(20)),
    )
    assert set(told) == {"clashes", "count", "better"}


def test_a_tank_that_cannot_be_told_leaves_the_makes(call):
    second = Phone(device=0, make="0193a5b0-0000-7000-8000-00000000000e")
    opened = second.event("tank_opened", 1, name="Second", mass_kg=500.0, salt_frac=0.2)
    _, tanks, board = asked(
        call,
        "tank",
        TANK,
        ("take", [*two_makes(), opened]),
        ("tanks", at(20)),
        ("board", at(20)),
    )
    assert [tank["name"] for tank in tanks] == ["Second"]
    assert len(board["makes"]) == 2
    (row,) = board["broken"]
    assert (row["name"], row["is_tank"], row["what"]) == ("Cellar", True, "tank")


def test_the_trends_leave_out_the_make_that_has_none(call):
    events = a_day(Phone())
    other = [
        dict(event, id=event["id"][:-1] + "f", make=OTHER, device=event["boot"])
        for event in copy.deepcopy(events)
    ]
    *_, charts = asked(
        call, "trends", MAKE, ("take", [*events, *other]), ("trends", "small-wheel")
    )
    found = {point["make"] for chart in charts for point in chart["points"]}
    assert found == {OTHER}


def test_a_new_make_is_offered_the_equipment_of_one_that_can_be_read(call):
    *_, offered = asked(
        call, "start", MAKE, ("take", two_makes()), ("equipment_before", "")
    )
    assert offered["make"] == OTHER


def test_whoever_listens_is_told_of_the_fault_itself(call):
    assert call("faulty", "through", "any") == "told"


def old_opening(phone, **rest):
    """Return an opening as an earlier check let it pass."""
    made = recipe()
    made["steps"][0]["readings"] = None
    return phone.opened(recipe=made, name="Old", **rest)


def test_a_stored_opening_that_no_longer_passes_is_named_with_its_field(ask):
    other = Phone(device=1, make=OTHER).opened(name="New")
    told, board, view = ask.desk(
        ("take", [old_opening(Phone(), vat="Vat 2"), other]),
        ("board", at(5)),
        ("view", MAKE, at(5)),
    )
    assert len(told["problems"]) == 1
    assert sorted(told["changed"]) == [MAKE, OTHER]
    assert view is None
    assert [make["name"] for make in board["makes"]] == ["New"]
    (row,) = board["broken"]
    assert (row["name"], row["vat"], row["what"]) == ("Old", "Vat 2", "opening")
    assert (row["why"], row["since_ms"]) == ("unsound", at(0))
    assert board["unread"] == {"newer": 0, "unsound": 0}  # told once
    assert row["problems"] == [
        {"field": "steps.receive.readings", "key": "not_a_list", "limit": None}
    ]


def test_a_make_that_cannot_be_shown_says_what_holds_it(ask):
    phone = Phone()
    hold = phone.event("hold_placed", 3, why="looks_wrong")
    lift = phone.event("hold_lifted", 4, ref=hold["id"], why="looked_again")
    _, held, _, lifted = ask.desk(
        ("take", [old_opening(phone), hold]),
        ("board", at(5)),
        ("take", [lift]),
        ("board", at(5)),
    )
    (row,) = held["broken"]
    assert (row["state"], row["is_open"]) == ("held", True)
    assert [one["id"] for one in row["holds"]] == [hold["id"]]
    (row,) = lifted["broken"]
    assert (row["state"], row["holds"]) == ("running", [])


def test_a_stored_opening_that_no_longer_passes_can_be_abandoned(ask):
    phone = Phone()
    events = [old_opening(phone), phone.event("make_abandoned", 3, why="milk_bad")]
    _, board, record = ask.desk(("take", events), ("board", at(5)), ("record", MAKE))
    assert board["broken"] == []
    assert [line["kind"] for line in record] == ["unread", "make_abandoned"]


def test_the_alarms_of_others_ring_beside_an_opening_that_cannot_be_read(ask):
    other = Phone(device=1, make=OTHER)
    events = [
        old_opening(Phone()),
        other.opened(),
        other.event("timer_started", 1, label="Press", lasts_s=60),
    ]
    answers = ask.call("asked", "rung", events, at(5))
    assert [(row["make"], row["kind"]) for row in answers] == [
        (MAKE, "unshown"),
        (OTHER, "timer"),
    ]


@pytest.mark.parametrize(
    ("changes", "why"),
    [
        ({"kind": "rind_washed"}, "newer"),
        ({"v": 2}, "newer"),
        ({"data": {"text": "w" * 3000}}, "unsound"),
    ],
)
def test_an_entry_that_cannot_be_read_is_counted_and_has_its_line(ask, changes, why):
    phone = Phone()
    entry = {**phone.event("note_added", 4, text="ok"), **changes}
    events = [phone.opened(), entry, entry]
    _, view, board, record = ask.desk(
        ("take", events), ("view", MAKE, at(5)), ("board", at(5)), ("record", MAKE)
    )
    counted = {"newer": 0, "unsound": 0, why: 1}
    assert view["unread"] == board["unread"] == board["makes"][0]["unread"] == counted
    line = record[1] if record[0]["kind"] == "make_opened" else record[0]
    assert line["kind"] == "unread"
    assert (line["at_ms"], line["by"], line["step"]) == (at(4), "ida", None)
    assert line["data"] == {"said": entry["kind"], "why": why}
    assert view["log"][0]["kind"] == "unread"


def test_what_is_said_in_an_entry_that_cannot_be_read_is_not_shown(ask):
    phone = Phone()
    entry = {**phone.event("note_added", 4), "kind": "Told by Ann Lee"}
    entry["data"] = {"said_to": "Ann Lee"}
    _, record = ask.desk(("take", [phone.opened(), entry]), ("record", MAKE))
    assert "Ann Lee" not in str(record)


def test_an_entry_without_a_sound_envelope_is_told_and_kept_nowhere(ask):
    entry = {**Phone().event("note_added", 4, text="ok"), "make": "vat 2"}
    told, kept = ask.desk(("take", [entry, 7, {"kind": "note_added"}]), ("desk",))
    assert len(told["problems"]) == 3
    assert kept["makes"] == {}


def test_an_entry_that_cannot_be_read_may_be_struck_out(ask):
    phone = Phone()
    entry = {**phone.event("note_added", 4), "kind": "rind_washed"}
    strike = phone.event("entry_struck", 6, ref=entry["id"], why="mistyped")
    _, record = ask.desk(("take", [phone.opened(), entry, strike]), ("record", MAKE))
    (line,) = [line for line in record if line["kind"] == "unread"]
    assert line["struck"]["why"] == "mistyped"


def test_what_cannot_be_read_of_a_make_that_is_over_bothers_nobody(ask):
    phone = Phone()
    entry = {**phone.event("note_added", 4), "kind": "rind_washed"}
    events = [phone.opened(), entry, phone.event("make_closed", 9)]
    _, board, view = ask.desk(
        ("take", events), ("board", at(10)), ("view", MAKE, at(10))
    )
    assert board["unread"] == {"newer": 0, "unsound": 0}
    assert view["unread"] == {"newer": 1, "unsound": 0}


def test_nothing_is_broken_in_a_whole_day(ask):
    for minute in (0, 30, 100, 170):
        board = ask.desk(("take", a_day(Phone())), ("board", at(0) + minute * MIN))[1]
        assert board["broken"] == []


def test_other_makes_learn_from_those_that_can_be_read(call):
    phone = Phone(device=1, make=OTHER)
    analysed = [
        phone.opened(),
        phone.event("step_begun", 1, step="store"),
        phone.reading("brine_salt_frac", 0.2, 2),
        phone.event("step_ended", 3000, step="store"),
    ]
    analysed[0]["data"]["recipe"]["steps"][-1]["place"] = "brine"
    salt = phone.reading("cheese_salt_frac", 0.02, 3100)
    salt["data"]["place"] = "small"
    events = [Phone().opened(), *analysed, salt]
    *_, wheels, told = asked(
        call, "learnt", MAKE, ("take", events), ("wheels",), ("told",)
    )
    assert [wheel["salt_frac"] for wheel in wheels] == [0.02]
    assert told == [[MAKE, "learnt"]]
