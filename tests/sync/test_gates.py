"""What passes a matter that the phone did not know of is kept aside, not lost."""

import pytest

from server import store, sync
from server.store import look
from tests.core.builders import Phone
from tests.core.matters.gated import MOULDS, gated_recipe
from tests.sync.phones import NOON_MS, a_person, a_phone, note
from tests.sync.signers import a_signer

MIN = 60_000


class Room:
    """Two phones of one room, a maker's and a helper's, that push to one server."""

    def __init__(self):
        self.maker = a_phone(a_person("maker", "Ada").id)
        self.helper = a_phone(a_person("helper", "Bo").id)
        self.signer = a_signer(self.maker.person)
        self.seq = 0

    def event(self, phone, minute, kind, **data):
        self.seq += 1
        at_ms = NOON_MS + minute * MIN
        return note(
            phone.device,
            self.seq,
            phone.person,
            kind=kind,
            data=data,
            at_ms=at_ms,
            entered_ms=at_ms,
        )

    def push(self, phone, *events):
        answer = sync.push(list(events), None, phone, NOON_MS + 200 * MIN)
        return [(result["st"], result["why"]) for result in answer.results]

    def open(self, result="positive"):
        """Open a make whose milk was tested, as the maker's phone tells it."""
        opening = Phone().opened(recipe=gated_recipe(), moulds=MOULDS)["data"]
        events = [
            self.event(self.maker, 0, "make_opened", **opening),
            self.event(self.maker, 1, "step_begun", step="receive"),
            self.event(self.maker, 4, "step_ended", step="receive"),
        ]
        if result:
            test = {"quantity": "drug_test", "value": result, "step": "receive"}
            events.append(self.event(self.maker, 3, "reading_taken", **test))
        return events

    def begin(self, minute, phone=None):
        return self.event(phone or self.helper, minute, "step_begun", step="heat")

    def decide(self, minute, phone=None, way="confirmed_negative"):
        body = {"matter": "drug", "way": way, "why": "Plate test."}
        return self.event(phone or self.maker, minute, "matter_decided", **body)


@pytest.fixture
def room(either_app):
    return Room()


STORED = ("stored", None)


def aside(key, role):
    limit = {"matter": "drug", "key": key, "role": role}
    return "needs_look", [{"field": "step", "key": "stopped", "limit": limit}]


def test_a_helper_who_did_not_know_passes_no_gate_and_loses_nothing(room):
    room.push(room.maker, *room.open())
    begun = room.begin(10)
    # The milk was pumped all the same: what follows waits beside it.
    ended = room.event(room.helper, 40, "step_ended", step="heat")
    read = room.event(
        room.helper, 20, "reading_taken", quantity="milk_temp_c", value=40.0
    )
    told = room.push(room.helper, begun, read, ended)
    positive = aside("matter.drug_test_positive", "maker")
    assert told == [positive, STORED, positive]
    assert [row.event for row in look.open_looks()] == [begun, ended]


def test_a_maker_passes_it_no_more_than_a_helper(room):
    room.push(room.maker, *room.open())
    (told,) = room.push(room.maker, room.begin(10, room.maker))
    assert told == aside("matter.drug_test_positive", "maker")


def test_a_gate_passed_by_two_roles_offline_is_kept_twice(room):
    room.push(room.maker, *room.open(None))
    missing = aside("matter.drug_test_missing", "maker")
    assert room.push(room.helper, room.begin(10)) == [missing]
    assert room.push(room.maker, room.begin(11, room.maker)) == [missing]
    assert len(look.open_looks()) == 2


def test_what_was_allowed_when_it_was_done_is_stored(room):
    # The result came after the milk had gone on, and before the phone was heard.
    room.push(room.maker, *room.open("negative"))
    late = {"quantity": "drug_test", "value": "positive", "step": "receive"}
    room.push(room.maker, room.event(room.maker, 30, "reading_taken", **late))
    assert room.push(room.helper, room.begin(10)) == [STORED]
    assert room.push(room.helper, room.begin(31))[0][0] == "stored"  # begun already


def test_what_a_decision_has_lifted_meanwhile_is_stored(room):
    room.push(room.maker, *room.open())
    assert room.push(room.maker, room.signer.proves(room.decide(12))) == [STORED]
    assert room.push(room.helper, room.begin(10)) == [STORED]


def test_a_decision_and_what_follows_it_come_in_one_batch(room):
    events = [*room.open(), room.signer.proves(room.decide(12))]
    told = room.push(room.maker, *events, room.begin(13, room.maker))
    assert told == [STORED] * 6


def test_a_helper_decides_nothing(room):
    room.push(room.maker, *room.open())
    (told,) = room.push(room.helper, room.decide(12, room.helper))
    assert told[0] == "needs_look"
    assert told[1][0]["key"] == "not_allowed"
    assert room.push(room.helper, room.begin(13))[0][0] == "needs_look"


def test_a_way_that_is_not_open_is_kept_aside(room):
    room.push(room.maker, *room.open())
    wrong = room.signer.proves(room.decide(12, way="tested_elsewhere"))
    (told,) = room.push(room.maker, wrong)
    assert told == (
        "needs_look",
        [{"field": "way", "key": "way_not_open", "limit": "tested_elsewhere"}],
    )


def test_what_a_maker_accepts_joins_the_log_and_the_matter_stands(room):
    room.push(room.maker, *room.open())
    begun = room.begin(10)
    room.push(room.helper, begun)
    (row,) = look.open_looks()
    sync.settle(row.n, "accept", "It was pumped.", room.maker.person, NOON_MS)
    assert begun in [row.event for row in store.every_event()]
    told = room.push(
        room.helper, room.event(room.helper, 60, "step_begun", step="hold", why="x")
    )
    assert told == [aside("matter.drug_test_positive", "maker")]


def test_a_recipe_without_gates_is_pushed_as_before(room):
    opening = Phone().opened()["data"]
    events = [
        room.event(room.maker, 0, "make_opened", **opening),
        room.event(
            room.maker, 3, "reading_taken", quantity="drug_test", value="positive"
        ),
        room.begin(5, room.maker),
        room.event(room.maker, 6, "make_closed"),
    ]
    assert room.push(room.maker, *events) == [STORED] * 4


def test_what_comes_before_in_a_batch_opens_the_gate_for_what_follows(room):
    # Seen: a hold read as not met, since its readings came in the same batch.
    room.push(room.maker, *room.open(result=None))
    test = {"quantity": "drug_test", "value": "negative", "step": "receive"}
    read = room.event(room.helper, 5, "reading_taken", **test)
    assert room.push(room.helper, read, room.begin(10)) == [STORED, STORED]
