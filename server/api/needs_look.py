"""What the log did not take, until a person settles it."""

from typing import Any

from server import sync
from server.api.body import Blueprint
from server.api.guard import paired, require
from server.auth import RefusedError
from server.config import now_ms
from server.core.log.rights.roles import ACTS
from server.shapes import recipes as shapes
from server.store.look import Look, open_looks

blp = Blueprint("needs_look", __name__, description="Entries that need a look")


def _shown(look: Look) -> dict[str, Any]:
    names = ("n", "id", "device", "person", "recv_ms", "why", "event")
    return {name: getattr(look, name) for name in names}


@blp.get("/needs-look")
@require(ACTS["needs_look"])
@blp.response(200, shapes.LookShape(many=True))
def list_looks() -> list[dict[str, Any]]:
    """List what waits for a person, oldest first. 403 for helpers and viewers."""
    return [_shown(look) for look in open_looks()]


@blp.post("/needs-look/<int(max=9007199254740991):n>/settle")
@require(ACTS["needs_look"])
@blp.arguments(shapes.Settlement)
@blp.response(200, shapes.Settled)
def settle(wanted: dict[str, Any], n: int) -> dict[str, Any]:
    """Take an item into the log after all, or keep it aside for good.

    Either way it stays on file with who decided and why. 404 for an unknown
    item, 409 when it was settled before or its id is taken.
    """
    by = paired().person.id
    problems = sync.settle(n, wanted["way"], wanted["why"], by, now_ms())
    if problems:
        first = problems[0]
        raise RefusedError(first["key"], first["field"], first["limit"])
    return {"n": n}
