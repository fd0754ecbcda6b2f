"""What a phone gives back of others, after the server was set back to a backup."""

import pytest

from server import store, sync
from server.store import look, receipts
from server.sync.canonical import canonical_text
from tests.sync.phones import NOON_MS, a_person, a_phone, a_uuid, note


def row(event, receipt=None):
    text = canonical_text(event)
    return {"event": event, "receipt": receipt or receipts.receipt_of(text)}


@pytest.fixture
def reader(either_app):
    """A viewer's phone: it may make no entry of its own."""
    return a_phone(a_person("viewer", "Vi").id)


def logged():
    return [one.event for one in store.every_event()]


def test_an_entry_with_its_receipt_comes_back_as_it_was(either_app, reader):
    event = note(a_uuid(), 7, "ada", text="größer 🧀")
    (told,) = sync.take_back([row(event)], reader, NOON_MS)
    assert (told["id"], told["st"], told["n"]) == (event["id"], "stored", 1)
    assert logged() == [event]
    # It counts for the phone that made it, which need not send it again.
    assert sync.have(event["device"]) == (7, [1, 2, 3, 4, 5, 6], [])
    assert sync.have(reader.device) == (0, [], [])


def test_what_a_pull_gave_out_can_be_given_back_to_the_same_box(either_app, reader):
    ada = a_person().id
    phone = a_phone(ada)
    sync.push([note(phone.device, 1, ada)], None, phone, NOON_MS)
    page = sync.pull("", 0, 5)
    (told,) = sync.take_back(list(page.events), reader, NOON_MS)
    assert (told["st"], told["n"]) == ("duplicate", 1)


def test_an_entry_of_before_a_tighter_limit_comes_back_too(either_app, reader):
    event = note(a_uuid(), 1, "ada", text="w" * 3000)
    (told,) = sync.take_back([row(event)], reader, NOON_MS)
    assert told["st"] == "stored"


def test_of_two_phones_that_give_back_the_same_the_second_is_thanked(
    either_app, reader
):
    event = note(a_uuid(), 1, "ada")
    sync.take_back([row(event), row(event)], reader, NOON_MS)
    (told,) = sync.take_back([row(event)], reader, NOON_MS)
    assert told["st"] == "duplicate"
    assert logged() == [event]


@pytest.mark.parametrize("receipt", ["", "x" * 22, "ü", 7, {"a": 1}])
def test_without_a_receipt_it_is_put_aside_for_a_person(either_app, receipt):
    phone = a_phone(a_person("owner").id)
    event = note(a_uuid(), 1, phone.person)
    (told,) = sync.take_back([{"event": event, "receipt": receipt}], phone, NOON_MS)
    assert told["st"] == "needs_look"
    assert told["why"] == [{"field": "device", "key": "other_device", "limit": None}]
    assert logged() == []
    assert [one.event for one in look.open_looks()] == [event]


def test_a_receipt_is_of_one_content_alone(either_app, reader):
    event = note(a_uuid(), 1, "ada")
    changed = {**event, "data": {"text": "hot"}}
    receipt = receipts.receipt_of(canonical_text(event))
    (told,) = sync.take_back([row(changed, receipt)], reader, NOON_MS)
    assert told["st"] == "needs_look"


def test_another_content_of_a_known_id_stands_aside_whatever_its_receipt(
    either_app, reader
):
    event = note(a_uuid(), 1, "ada")
    sync.take_back([row(event)], reader, NOON_MS)
    changed = {**event, "data": {"text": "hot"}}
    (told,) = sync.take_back([row(changed)], reader, NOON_MS)
    assert told["why"][0]["key"] == "other_content"
    assert logged() == [event]


@pytest.mark.parametrize("junk", [None, 7, [], {}, {"event": 7}, {"receipt": "x"}])
def test_what_is_no_entry_is_put_aside_and_hurts_no_neighbour(either_app, reader, junk):
    event = note(a_uuid(), 1, "ada")
    told = sync.take_back([junk, row(event)], reader, NOON_MS)
    assert [one["st"] for one in told] == ["needs_look", "stored"]


def test_what_the_maker_sends_again_later_is_a_duplicate(either_app, reader):
    ada = a_person().id
    phone = a_phone(ada)
    event = note(phone.device, 1, ada)
    sync.take_back([row(event)], reader, NOON_MS)
    answer = sync.push([event], None, phone, NOON_MS)
    assert [one["st"] for one in answer.results] == ["duplicate"]


def test_a_read_stops_at_its_bytes_and_goes_on_after_them(either_app):
    ada = a_person().id
    phone = a_phone(ada)
    events = [note(phone.device, seq, ada, text="w" * 500) for seq in range(1, 121)]
    sync.push(events, None, phone, NOON_MS)
    size = len(canonical_text(events[0]))
    found = []
    while rows := store.events_after(len(found), 500, 70 * size):
        assert 1 <= len(rows) <= 70
        found += [row.event for row in rows]
    assert found == events
    assert len(store.events_after(0, 500, 1)) == 1
    assert len(store.events_after(0, 500)) == 120


def test_what_was_here_once_costs_a_phone_nothing_of_its_day(either_app, reader):
    quota = sync.Quota(3, 100_000)
    events = [note(a_uuid(), seq, "ada") for seq in range(1, 11)]
    told = sync.take_back([row(event) for event in events], reader, NOON_MS, quota)
    assert {one["st"] for one in told} == {"stored"}


def test_what_nobody_can_prove_counts_like_any_other_entry(either_app, reader):
    quota = sync.Quota(3, 100_000)

    def give(seqs):
        rows = [{"event": note(a_uuid(), seq, "ada")} for seq in seqs]
        return sync.take_back(rows, reader, NOON_MS, quota)

    assert len(give(range(3))) == 3
    with pytest.raises(sync.OverQuotaError):
        give(range(3, 6))
    assert len(look.open_looks()) == 3
