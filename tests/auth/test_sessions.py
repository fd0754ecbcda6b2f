import pytest

from server import auth
from server.core.log.kinds.columns import ROLES
from tests.sync.phones import NOON_MS, a_uuid

DAY_MS = 86_400_000


def pair(role="maker", now_ms=NOON_MS):
    person = auth.add_person("Ada", role, now_ms).id
    code = auth.start_pairing(person, person, now_ms, 1).long
    asking = auth.Asking(a_uuid(), "Pocket", None, "here", None)
    return auth.pair(code, asking, now_ms, 1)


def test_a_token_names_its_phone_and_person(app):
    done = pair()
    assert auth.session_of(done.token, NOON_MS, 1) == done.session
    assert auth.session_of(done.token + "x", NOON_MS, 1) is None
    assert auth.session_of("", NOON_MS, 1) is None


def test_a_phone_in_use_never_ends(app):
    done = pair()
    now_ms = NOON_MS
    for _ in range(4):
        now_ms += 399 * DAY_MS
        auth.note_seen(auth.session_of(done.token, now_ms, 1), now_ms, 1)
    assert auth.session_of(done.token, now_ms + 401 * DAY_MS, 1) is None


def test_being_seen_is_written_once_a_minute(app):
    done = pair()
    for seconds, seen_ms in ((59, NOON_MS), (60, NOON_MS + 60_000)):
        now_ms = NOON_MS + seconds * 1000
        auth.note_seen(auth.session_of(done.token, now_ms, 1), now_ms, 1)
        assert auth.session_of(done.token, now_ms, 1).device.seen_ms == seen_ms


@pytest.mark.parametrize("role", ROLES)
def test_a_role_may_what_those_before_it_may(app, role):
    session = pair(role).session
    allowed = [other for other in ROLES if session.is_at_least(other)]
    assert allowed == list(ROLES[: ROLES.index(role) + 1])


def test_an_unknown_role_or_person_is_refused_and_changes_nothing(app):
    with pytest.raises(auth.RefusedError) as refused:
        auth.add_person("Ada", "king", NOON_MS)
    assert (refused.value.key, refused.value.field) == ("not_a_choice", "role")
    with pytest.raises(auth.RefusedError, match="unknown_person"):
        auth.change_person("nobody", NOON_MS, name="x")
    assert auth.people() == []


def test_a_code_of_the_owner_pairs_the_owner_named(app):
    first = auth.add_person("Olive", "owner", NOON_MS)
    second = auth.add_person("Oz", "owner", NOON_MS + 1)
    for name, person in ((None, first), ("Oz", second), ("Olive", first)):
        asking = auth.Asking(a_uuid(), "Pocket", name, "here", None)
        code = auth.owner_code(NOON_MS, 1, even_if_paired=True).code
        assert auth.pair(code, asking, NOON_MS, 1).session.person == person
    asking = auth.Asking(a_uuid(), "Pocket", "New", "here", None)
    code = auth.owner_code(NOON_MS, 1, even_if_paired=True).code
    assert auth.pair(code, asking, NOON_MS, 1).session.person.name == "New"
    assert len(auth.people()) == 3
