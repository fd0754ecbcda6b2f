"""Read a request's JSON body, packed or not, and no further than the limit."""

import zlib
from typing import Any

from flask import current_app, request

from server.auth import RefusedError
from server.sync.canonical import NotJsonError, read_json

GZIP = 31  # zlib's way to say: a gzip header, the largest window


def read_body() -> Any:
    """Return what the request's body says.

    Raises:
        RefusedError: too large, packed in another way, or not JSON.
    """
    limit = current_app.config["MAX_CONTENT_LENGTH"]
    data = request.get_data(cache=False)
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
