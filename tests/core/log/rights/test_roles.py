"""Who may do what, as the page shows it and the server asks for it."""

import pytest

from server.core.log.kinds.allowed import may
from server.core.log.kinds.columns import ROLES
from server.core.log.kinds.table import KINDS
from server.core.log.rights.roles import ACTS


@pytest.fixture
def rights(core):
    return core("log.rights.roles", "rights")


def test_every_kind_of_event_and_every_other_act_is_told(rights):
    assert set(rights) == set(KINDS) | set(ACTS)
    assert not set(KINDS) & set(ACTS)


def test_a_role_is_told_just_where_it_may_record(rights):
    for kind in KINDS:
        assert rights[kind] == [role for role in ROLES if may(role, kind)], kind


def test_a_viewer_may_do_none_of_it_and_an_owner_all(rights):
    for act, roles in rights.items():
        assert "viewer" not in roles, act
        assert "owner" in roles, act


def test_a_hand_at_the_vat_may_record_whatever_asks_for_the_least(rights):
    assert rights["work"] == rights["reading_taken"] == ["helper", "maker", "owner"]
    assert rights["people"] == ["owner"]
