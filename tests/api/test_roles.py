"""Who may do what: every route with every role, against one table."""

import re

import pytest

from server.api.guard import GUEST, PREFIX
from server.core.log.kinds.columns import ROLES
from tests.api.test_interface import OPEN, routes

# The least role for each route; a new route must be given its line here.
LEAST = {
    "viewer": """
        GET /me, PATCH /me, POST /me/sign-out, GET /people,
        POST /sync/push, GET /sync/pull, GET /sync/have, GET /time, GET /live,
        GET /recipes, GET /recipes/{recipe_id}, GET /recipes/{recipe_id}/{version},
        GET /makes, GET /makes/{make_id}/view, GET /makes/{make_id}/curve,
        GET /makes/{make_id}/record, GET /makes/{make_id}/calendar.ics,
        GET /alarms, POST /alarms/wall,
        GET /push, POST /push/subscriptions, DELETE /push/subscriptions,
        POST /push/test
    """,
    "helper": "",
    "maker": """
        POST /recipes, GET /needs-look, POST /needs-look/{n}/settle,
        GET /pins, POST /people/{person_id}/pin, POST /people/{person_id}/pin/plain,
        POST /people/{person_id}/pin/prove
    """,
    "owner": """
        POST /people, POST /people/{person_id}, POST /people/{person_id}/pairing,
        POST /people/{person_id}/pin/reset,
        GET /devices, DELETE /devices/{device_id},
        GET /links, POST /links, DELETE /links/{link_id}, POST /alarms/settings
    """,
}
TABLE = {
    tuple(entry.split()): role
    for role, text in LEAST.items()
    for entry in re.split(r"\s*,\s*", text.strip())
    if entry
}


def asked(app):
    """Give each route that a paired phone may ask, as in the table."""
    return {
        (method, path.removeprefix(PREFIX))
        for path, methods in routes(app).items()
        for method in methods
        if path.removeprefix(PREFIX) not in OPEN and not path.startswith(PREFIX + GUEST)
    }


def test_every_route_has_its_line(app):
    assert asked(app) == set(TABLE)


@pytest.mark.parametrize("role", ROLES)
def test_each_role_may_do_what_the_table_says_and_no_more(app, pair, role):
    wrong = []
    for method, path in sorted(TABLE):
        phone = pair(role, name=f"One {role}")  # some routes end a session
        filled = re.sub(r"\{n\}|\{version\}", "1", path)
        filled = re.sub(r"\{[^}]*\}", "none", filled)
        answer = phone.http.open(
            PREFIX + filled,
            method=method,
            headers={"X-Vatside": "1", "Content-Type": "application/json"},
            data="{}",
        )
        is_refused = (
            answer.status_code == 403 and answer.json["error"]["key"] == "role_too_low"
        )
        least = TABLE[method, path]
        if is_refused is (ROLES.index(role) >= ROLES.index(least)):
            wrong.append((method, path, answer.status_code))
        assert answer.status_code < 500, (method, path)
        answer.close()
    assert wrong == []
