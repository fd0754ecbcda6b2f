"""Who works here, and which phones are theirs."""

import uuid

from server.auth.codes import hash_of, new_token
from server.auth.refused import RefusedError
from server.core.log.kinds.columns import ROLES
from server.store import people as kept
from server.store import writing

people = kept.all_people
devices = kept.all_devices


def add_person(name: str, role: str, now_ms: int) -> kept.StoredPerson:
    """Add a person.

    Args:
        name: what they are called here.
        role: one of ROLES.
        now_ms: server time [ms].

    Raises:
        RefusedError: there is no such role.
    """
    _check_role(role)
    person = kept.StoredPerson(str(uuid.uuid4()), name, role, active=True)
    kept.save_person(person, now_ms)
    return person


def change_person(
    person_id: str,
    now_ms: int,
    name: str | None = None,
    role: str | None = None,
    active: bool | None = None,
    **reads: str,
) -> kept.StoredPerson:
    """Change a person's name or role, or let them leave; None leaves a thing be.

    Nobody is ever deleted: the record of old makes names them.

    Args:
        person_id: the person's id.
        now_ms: server time [ms].
        name: new name.
        role: new role, one of ROLES.
        active: False when they may no longer act.
        **reads: language and units that they read, by their fields.

    Raises:
        RefusedError: there is no such person or role, or no owner would be left.
    """
    with writing():
        person = kept.find_person(person_id)
        if person is None:
            raise RefusedError("unknown_person", "id")
        changed = person._replace(
            name=person.name if name is None else name,
            role=person.role if role is None else role,
            active=person.active if active is None else active,
            **reads,
        )
        _check_role(changed.role)
        if is_owner(person) and not is_owner(changed) and len(owners()) == 1:
            raise RefusedError("last_owner", "role" if changed.active else "active")
        kept.save_person(changed, now_ms)
        return changed


def owners() -> list[kept.StoredPerson]:
    """Return the owners who may act."""
    return [person for person in kept.all_people() if is_owner(person)]


def is_owner(person: kept.StoredPerson) -> bool:
    """Tell whether a person is an owner who may act.

    Args:
        person: the person.
    """
    return person.active and person.role == "owner"


def remove_device(device_id: str, now_ms: int) -> None:
    """Take a phone out of use. What it still sends is kept for a look.

    Args:
        device_id: the phone's id.
        now_ms: server time [ms].

    Raises:
        RefusedError: there is no such phone.
    """
    with writing():
        if kept.find_device(device_id) is None:
            raise RefusedError("unknown_device", "id")
        kept.mark_device(device_id, removed_ms=now_ms)


def sign_out(device: kept.StoredDevice, now_ms: int) -> None:
    """Take a phone out of use at its own person's wish, and forget its token.

    Nothing that it still sends is known to be its own; what waits there comes
    when the phone is paired again.

    Args:
        device: the phone.
        now_ms: server time [ms].
    """
    # A token that nobody was ever told stands in the place of the old one.
    kept.save_device(device._replace(removed_ms=now_ms), hash_of(new_token()))


def _check_role(role: str) -> None:
    if role not in ROLES:
        raise RefusedError("not_a_choice", "role", list(ROLES))
