import pytest

from server import store, sync
from server.core.log.kinds.columns import ROLES
from server.core.log.kinds.table import KINDS
from server.store import look
from server.store import people as kept
from server.sync.canonical import canonical_text, sha256_of
from tests.sync.phones import NOON_MS, a_person, a_phone, a_uuid, note

# Every test runs with one maker, and a phone of theirs.


@pytest.fixture
def maker(either_app):
    return a_person("maker")


@pytest.fixture
def phone(maker):
    return a_phone(maker.id)


def push(phone, *items, now_ms=NOON_MS, t0=None):
    return sync.push(list(items), t0, phone, now_ms)


def states(answer):
    return [result["st"] for result in answer.results]


def keys(result):
    return [why["key"] for why in result["why"]]


def logged():
    return [row.event for row in store.every_event()]


def by(phone, seq, **changed):
    return note(phone.device, seq, phone.person, **changed)


def test_new_events_get_the_next_numbers_in_the_order_they_were_sent(phone):
    first, second, third = (by(phone, seq) for seq in (2, 1, 3))
    assert [result["n"] for result in push(phone, first, second).results] == [1, 2]
    answer = push(phone, third)
    assert ([result["n"] for result in answer.results], answer.head) == ([3], 3)
    assert logged() == [first, second, third]


def test_sending_again_tells_the_first_number_and_stores_nothing(phone):
    event = by(phone, 1)
    push(phone, event)
    answer = push(phone, by(phone, 2), event, event)
    assert states(answer) == ["stored", "duplicate", "duplicate"]
    assert [result["n"] for result in answer.results] == [2, 1, 1]
    assert store.count_events() == 2
    assert answer.have == (2, [], [])


def test_the_same_event_twice_in_one_batch_is_stored_once(phone):
    event = by(phone, 1)
    answer = push(phone, event, dict(reversed(event.items())))
    assert states(answer) == ["stored", "duplicate"]
    assert [result["n"] for result in answer.results] == [1, 1]
    assert logged() == [event]


@pytest.mark.parametrize("together", [True, False])
def test_other_content_under_the_same_id_never_replaces_the_first(phone, together):
    first = by(phone, 1, text="35.5")
    second = first | {"data": {"text": "53.5"}}
    if together:
        result = push(phone, first, second).results[1]
    else:
        push(phone, first)
        (result,) = push(phone, second).results
    assert result["st"] == "needs_look"
    hashes = {
        "kept": sha256_of(canonical_text(first)),
        "sent": sha256_of(canonical_text(second)),
    }
    assert result["why"] == [{"field": "id", "key": "other_content", "limit": hashes}]
    assert logged() == [first]
    assert [one.event for one in look.open_looks()] == [second]


def test_an_item_kept_aside_is_kept_once_however_often_it_comes(phone):
    broken = by(phone, 1, data={})
    for _ in range(2):
        answer = push(phone, broken, broken)
        assert states(answer) == ["needs_look"] * 2
        assert keys(answer.results[0]) == keys(answer.results[1]) == ["missing"]
        assert answer.have == (1, [], [])
    assert [one.event for one in look.open_looks()] == [broken]


def test_an_event_of_a_newer_app_is_kept_raw_with_the_reason(phone):
    unknown = by(phone, 1, kind="whey_tasted")
    newer = by(phone, 2, v=KINDS["note_added"]["v"] + 1, data={"colour": "pale"})
    answer = push(phone, unknown, newer)
    assert [keys(result) for result in answer.results] == [
        ["unknown_kind"],
        ["newer_version"],
    ]
    assert [one.event for one in look.open_looks()] == [unknown, newer]
    assert logged() == []


def test_an_event_that_becomes_sound_is_stored_when_it_comes_again(phone, monkeypatch):
    unknown = by(phone, 1, kind="whey_tasted")
    push(phone, unknown)
    monkeypatch.setitem(KINDS, "whey_tasted", KINDS["note_added"])
    answer = push(phone, unknown)
    assert states(answer) == ["stored"]
    assert answer.have == (1, [], [])  # it was counted when it first came
    assert logged() == [unknown]
    assert look.open_looks() == []
    assert states(push(phone, unknown)) == ["duplicate"]


@pytest.mark.parametrize("role", ROLES)
def test_the_lower_role_of_the_phone_and_the_person_named_decides(phone, role):
    other = a_person(role, "Other")
    skipped = {"kind": "step_skipped", "data": {"step": "wash_1", "why": "x"}}
    as_other = note(phone.device, 1, other.id, **skipped)
    lent = a_phone(other.id)
    on_other = note(lent.device, 1, phone.person, **skipped)
    allowed = ROLES.index(role) >= ROLES.index("maker")
    for sender, event in ((phone, as_other), (lent, on_other)):
        answer = push(sender, event)
        assert states(answer) == ["stored" if allowed else "needs_look"]
        if not allowed:
            assert answer.results[0]["why"] == [
                {"field": "kind", "key": "not_allowed", "limit": "maker"}
            ]


@pytest.mark.parametrize("together", [True, False])
def test_who_may_not_place_a_hold_may_not_strike_one(phone, together):
    helper = a_person("helper", "Hal")
    lent = a_phone(helper.id)
    hold = note(phone.device, 1, phone.person, kind="hold_placed", data={"why": "x"})
    assert states(push(phone, hold)) == ["stored"]
    own = note(lent.device, 1, helper.id)
    struck = {"kind": "entry_struck", "data": {"why": "undo"}}
    mine = note(lent.device, 2, helper.id, ref=own["id"], **struck)
    theirs = note(lent.device, 3, helper.id, ref=hold["id"], **struck)
    batches = [[own, mine, theirs]] if together else [[own], [mine], [theirs]]
    found = [row for batch in batches for row in push(lent, *batch).results]
    assert [row["st"] for row in found] == ["stored", "stored", "needs_look"]
    assert found[2]["why"] == [
        {"field": "kind", "key": "not_allowed", "limit": "maker"}
    ]


@pytest.mark.parametrize("together", [True, False])
def test_a_helper_takes_a_legal_reading_and_only_a_maker_corrects_it(phone, together):
    helper = a_person("helper", "Hal")
    lent = a_phone(helper.id)
    value = {"quantity": "milk_temp_c", "value": 64.0}
    read = note(lent.device, 1, helper.id, kind="reading_taken", data=value)
    fix = {"kind": "entry_corrected", "data": {"set": {"value": 63.0}, "why": "x"}}
    mine = note(lent.device, 2, helper.id, ref=read["id"], **fix)
    batches = [[read, mine]] if together else [[read], [mine]]
    found = [row for batch in batches for row in push(lent, *batch).results]
    assert [row["st"] for row in found] == ["stored", "needs_look"]
    assert found[1]["why"] == [
        {"field": "kind", "key": "not_allowed", "limit": "maker"}
    ]
    theirs = note(phone.device, 1, phone.person, ref=read["id"], **fix)
    assert states(push(phone, theirs)) == ["stored"]


def test_a_viewer_records_nothing(either_app):
    viewer = a_person("viewer")
    phone = a_phone(viewer.id)
    (result,) = push(phone, by(phone, 1)).results
    assert (result["st"], keys(result)) == ("needs_look", ["not_allowed"])


@pytest.mark.parametrize(
    ("changed", "key"),
    [
        ({"person": "nobody"}, "unknown_person"),
        ({"device": "00000000-0000-4000-8000-00000000cccc"}, "other_device"),
    ],
)
def test_an_event_of_unknown_origin_is_kept_aside(phone, changed, key):
    answer = push(phone, by(phone, 1) | changed)
    assert (states(answer), keys(answer.results[0])) == (["needs_look"], [key])


def test_an_event_of_a_person_who_left_is_kept_aside(phone, maker):
    kept.save_person(maker._replace(active=False), NOON_MS)
    (result,) = push(phone, by(phone, 1)).results
    assert keys(result) == ["inactive_person"]


def test_a_phone_removed_while_its_push_waits_counts_as_removed(phone):
    row = kept.StoredDevice(phone.device, "Pocket", phone.person, 1, 1, None)
    kept.save_device(row, "0" * 64)
    kept.mark_device(phone.device, removed_ms=NOON_MS)
    answer = push(phone, by(phone, 1))  # the request was let in before
    assert keys(answer.results[0]) == ["removed_device"]
    assert logged() == []


def test_what_a_removed_phone_sends_is_kept_aside_and_known_events_are_told(phone):
    known = by(phone, 1)
    push(phone, known)
    answer = push(phone._replace(removed=True), known, by(phone, 2))
    assert states(answer) == ["duplicate", "needs_look"]
    assert keys(answer.results[1]) == ["removed_device"]
    assert answer.have == (2, [], [])


def test_an_event_of_a_make_that_is_not_known_yet_is_stored(phone):
    early = by(phone, 1, kind="entry_struck", ref=a_uuid(), data={"why": "slip"})
    assert states(push(phone, early)) == ["stored"]
    assert store.events_of_make(early["make"])[0].event == early


def test_one_broken_item_touches_no_neighbour(phone):
    items = [by(phone, 1), None, {"id": 5}, by(phone, 2), [], by(phone, 3)]
    answer = push(phone, *items)
    assert states(answer) == [
        "stored",
        "needs_look",
        "needs_look",
        "stored",
        "needs_look",
        "stored",
    ]
    assert [result["id"] for result in answer.results[1:3]] == [None, None]
    assert [one.event for one in look.open_looks()] == [None, {"id": 5}, []]


def test_an_empty_batch_tells_what_is_here(phone):
    push(phone, by(phone, 3))
    answer = push(phone)
    assert (answer.results, answer.head) == ([], 1)
    assert answer.have == (3, [1, 2], [])


def test_filling_a_gap_is_no_repeat(phone):
    assert push(phone, by(phone, 1), by(phone, 6)).have == (6, [2, 3, 4, 5], [])
    assert push(phone, by(phone, 4)).have == (6, [2, 3, 5], [])
    assert push(phone, by(phone, 5), by(phone, 2)).have == (6, [3], [])
    assert push(phone, by(phone, 3)).have == (6, [], [])
    assert push(phone, by(phone, 3)).have == (6, [], [3])


def test_a_wild_number_makes_no_endless_list_of_gaps(phone):
    have = push(phone, by(phone, 1), by(phone, 2**53 - 1)).have
    assert have.upto == 2**53 - 1
    assert have.missing == list(range(2, 502))


def test_another_phones_numbers_are_not_counted_as_ones_own(phone, maker):
    other = a_phone(maker.id)
    push(other, by(phone, 9))
    assert sync.have(other.device) == sync.have(phone.device) == (0, [], [])


def test_a_check_that_trips_costs_nothing(phone, monkeypatch):
    def trips(_):
        raise RuntimeError("planted")

    monkeypatch.setattr("server.core.desk.entries.check_event", trips)
    event = by(phone, 1)
    answer = push(phone, event)
    assert keys(answer.results[0]) == ["check_failed"]
    assert [one.event for one in look.open_looks()] == [event]


def test_a_new_epoch_is_told_with_the_next_push(phone):
    before = push(phone).epoch
    after = store.new_epoch()
    assert before != after
    assert push(phone).epoch == after == store.epoch()
