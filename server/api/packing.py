"""Pack the interface's larger answers, for phones on a thin link.

A page of the log with an opening in it carries a whole recipe; packed it is a
fifth of that. No answer holds both a secret and something that a stranger
chose, so packing gives nothing away.
"""

import gzip

from flask import Flask, Response, request

LEAST_BYTES = 1400  # below one network packet nothing is gained
LEVEL = 5


def init_app(app: Flask) -> None:
    """Pack what the app answers to those who take it.

    Args:
        app: the app.
    """
    app.after_request(_pack)


def _pack(response: Response) -> Response:
    if response.mimetype != "application/json" or response.is_streamed:
        return response
    if "Content-Encoding" in response.headers or response.status_code == 304:
        return response
    response.vary.add("Accept-Encoding")
    if request.accept_encodings.quality("gzip") <= 0:
        return response
    data = response.get_data()
    if len(data) < LEAST_BYTES:
        return response
    response.set_data(gzip.compress(data, LEVEL, mtime=0))
    response.headers["Content-Encoding"] = "gzip"
    return response
