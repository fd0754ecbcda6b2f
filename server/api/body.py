"""Read a request's JSON body, packed or not, and no further than the limit.

Every path reads its body here. The parser that came with the framework fails on
what Python's own JSON fails on: deep nesting, and numbers of thousands of digits.
"""

import re
import zlib
from typing import Any

import flask_smorest
from flask import Request, current_app, request
from webargs.core import missing
from webargs.flaskparser import FlaskParser

from server.auth import RefusedError
from server.sync.canonical import NotJsonError, read_json

GZIP = 31  # zlib's way to say: a gzip header, the largest window


UNSTORABLE = re.compile("[\0\ud800-\udfff]")


class _BodyParser(FlaskParser):
    def load_json(self, req: Request, schema: Any) -> Any:
        return read_body() if req.get_data() else missing


class Blueprint(flask_smorest.Blueprint):
    """A resource's routes, their bodies read by `read_body`."""

    ARGUMENTS_PARSER = _BodyParser()


def read_body() -> Any:
    """Return what the request's body says.

    Raises:
        RefusedError: too large, packed in another way, or not JSON.
    """
    limit = current_app.config["MAX_CONTENT_LENGTH"]
    data = request.get_data()
    encoding = request.headers.get("Content-Encoding", "identity").lower()
    if encoding == "gzip":
        data = _unpacked(data, limit)
    elif encoding != "identity":
        raise RefusedError("unknown_encoding", "Content-Encoding", "gzip")
    try:
        return read_json(data)
    except NotJsonError as error:
        raise RefusedError("not_json") from error


def _unpacked(data: bytes, limit: int) -> bytes:
    # Never more than the limit is unpacked: a kilobyte may hold a gigabyte.
    unpacker = zlib.decompressobj(wbits=GZIP)
    try:
        unpacked = unpacker.decompress(data, limit + 1)
    except zlib.error as error:
        raise RefusedError("not_gzip") from error
    if len(unpacked) > limit:
        raise RefusedError("too_large", limit=limit)
    if not unpacker.eof:
        raise RefusedError("not_gzip")
    return unpacked


def text_problems(value: Any) -> list[dict[str, Any]]:
    """Return a problem for each text in a body that no database takes.

    Half a surrogate pair is no text for SQLite, a NUL none for PostgreSQL.

    Args:
        value: what `read_body` returned, or a part of it.
    """
    found = []
    left: list[tuple[str, Any]] = [("", value)]
    while left:
        path, one = left.pop()
        if isinstance(one, dict):
            left += [(f"{path}.{key}", key) for key in one]
            left += [(f"{path}.{key}", part) for key, part in one.items()]
        elif isinstance(one, list):
            left += [(f"{path}.{index}", part) for index, part in enumerate(one)]
        elif isinstance(one, str) and UNSTORABLE.search(one):
            field = UNSTORABLE.sub("\N{REPLACEMENT CHARACTER}", path).lstrip(".")
            found.append({"field": field, "key": "not_text", "limit": None})
    return found
