"""Every error in one shape: {"error": {"key", "text", "field", "limit"}}.

The page puts `key` into its own words; `text` is for whoever reads a log or
calls the interface by hand.
"""

import logging
from typing import Any

from flask import Flask, Response, current_app, jsonify
from flask_smorest import Api
from sqlalchemy.exc import DBAPIError
from werkzeug.exceptions import HTTPException

from server.api.security import note_refusal
from server.auth import RefusedError
from server.shapes import http
from server.store import disk

logger = logging.getLogger(__name__)
RETRY_S = 2
RETRY_FULL_S = 30  # somebody must make room first

STATUS = {
    "not_paired": 401,
    "removed_device": 403,
    "inactive_person": 403,
    "role_too_low": 403,
    "other_origin": 403,
    "header_missing": 403,
    "wrong_code": 403,
    "no_guest": 401,
    "link_unknown": 403,
    "link_revoked": 403,
    "link_ended": 403,
    "unknown_link": 404,
    "unknown_person": 404,
    "unknown_device": 404,
    "unknown_item": 404,
    "unknown_make": 404,
    "unknown_recipe": 404,
    "epoch": 409,
    "device_in_use": 409,
    "settled_already": 409,
    "id_taken": 409,
    "own_device": 409,
    "last_owner": 409,
    "too_large": 413,
    "too_many_events": 413,
    "unknown_host": 421,
    "not_json_type": 415,
    "unknown_encoding": 415,
    "not_json": 400,
    "not_gzip": 400,
    "too_many_tries": 429,
    "wrong_pin": 403,
    "no_pin": 409,
    "pin_not_here": 403,
    "own_pin": 409,
    "too_many_pins": 429,
    "too_many_requests": 429,
    "over_quota": 429,
    "busy": 503,
    "disk_full": 507,
    "disk_read_only": 507,
}  # a key that is not here is 422: the request was read and something is wrong

TEXT = {
    "not_paired": "This phone is not paired. Ask the owner for a code.",
    "removed_device": "This phone was removed. Ask the owner for a new code.",
    "inactive_person": "This person no longer acts here.",
    "role_too_low": "This asks for the role {limit}.",
    "other_origin": "The request comes from another site.",
    "unknown_host": "This server does not answer to the name {limit}. If it is "
    "its name, list it in VATSIDE_HOSTS or set VATSIDE_URL, and start it anew.",
    "header_missing": "The header {field} is missing; it must be {limit}.",
    "wrong_code": "This code is wrong, was used, or has ended.",
    "no_guest": "Open the link that you were given once more.",
    "link_unknown": "This link is not known here. Ask for a new one.",
    "link_revoked": "The creamery revoked this link.",
    "link_ended": "This link has ended. Ask for a new one.",
    "unknown_link": "There is no such link.",
    "too_many_makes": "A link shows at most {limit} makes.",
    "unknown_person": "There is no such person.",
    "unknown_device": "There is no such phone.",
    "unknown_item": "There is no such item.",
    "not_shown": "This make cannot be shown; the board says why. The others go on.",
    "unknown_make": "There is no such make, or its opening has not come yet.",
    "unknown_recipe": "There is no such recipe.",
    "unsound_recipe": "No make could follow this recipe; see the problems.",
    "no_place": "All live places are taken. Pull every few seconds instead.",
    "epoch": "The database was set back. Offer all events again, read from 0.",
    "device_in_use": "This phone is paired to another person. Remove it first.",
    "settled_already": "This was settled before.",
    "id_taken": "The log holds another event of this id.",
    "own_device": "A phone cannot remove itself.",
    "last_owner": "There must be an owner. Make another person owner first.",
    "too_large": "The request is larger than {limit} bytes.",
    "too_many_events": "The request holds more than {limit} events.",
    "not_json_type": "The request's Content-Type must be application/json.",
    "unknown_encoding": "The request's Content-Encoding must be {limit} or none.",
    "not_json": "The request is not JSON.",
    "not_gzip": "The request is not sound gzip.",
    "too_many_tries": "Too many wrong codes. Wait {limit} s.",
    "wrong_pin": "The PIN is wrong.",
    "no_pin": "This person has no PIN yet.",
    "no_pin_for_role": "Only who may sign has a PIN: role {limit} or above.",
    "pin_not_here": "Set it on this person's own phone, or let the owner allow it.",
    "own_pin": "Another owner resets it, or the command vatside reset-pin.",
    "too_many_pins": "Too many wrong PINs. Wait {limit} s.",
    "pin_not_digits": "{field} must be digits.",
    "pin_too_short": "{field} must have at least {limit} digits.",
    "pin_too_long": "{field} must have at most {limit} digits.",
    "pin_too_easy": "{field} is one that is tried first. Choose another.",
    "not_a_key": "{field} is not a new key.",
    "too_many_requests": "This phone asks more than {limit} times a minute. It must "
    "wait; what it has to send stays on it.",
    "over_quota": "This phone has sent its {limit} entries of a day, or their size. "
    "What waits stays on it and is sent later; if real days need more, raise "
    "VATSIDE_PHONE_EVENTS or VATSIDE_PHONE_MB.",
    "busy": "The database is busy. Nothing was changed; try again.",
    "disk_full": "The server's disk is full. Nothing was changed; the phone keeps its "
    "entries. Make room on the server.",
    "disk_read_only": "The server's disk takes no writing. Nothing was changed; the "
    "phone keeps its entries. Look after the server's disk.",
    "failed": "The server failed on this request. Nothing was changed.",
    "missing": "{field} is missing.",
    "unknown_field": "{field} is not known here.",
    "not_a_mapping": "{field} must be an object.",
    "not_a_list": "{field} must be a list.",
    "not_text": "{field} must be plain text.",
    "too_long": "{field} is longer than {limit} letters.",
    "not_a_choice": "{field} must be one of {limit}.",
    "not_a_uuid": "{field} must be a UUID in lower case.",
    "not_whole": "{field} must be a whole number.",
    "too_low": "{field} must be at least {limit}.",
    "too_high": "{field} must be at most {limit}.",
    "not_yes_or_no": "{field} must be true or false.",
    "no_deadline": "No such deadline lies ahead.",
    "not_base64url": "{field} must be base64url.",
    "not_a_push_service": "{field} is no push service of a browser.",
    "not_a_push_key": "{field} is not a key of a push subscription.",
    "no_contact": "This server has no contact for pushes (VATSIDE_PUSH_CONTACT).",
    "contact_unusable": "The contact for pushes must be a real mailto: or https:.",
    "no_subscription": "This phone takes no pushes.",
}


class DocumentedApi(Api):
    """The interface, its errors documented in the shape they really have."""

    ERROR_SCHEMA = http.ErrorAnswer


def init_app(app: Flask) -> None:
    """Answer every error of this app in the one shape.

    Args:
        app: the app; other handlers of HTTPException are registered already.
    """
    app.register_error_handler(RefusedError, _on_refused)
    app.register_error_handler(HTTPException, _on_http)
    app.register_error_handler(DBAPIError, _on_database)
    app.register_error_handler(Exception, _on_failure)


def error_answer(
    status: int,
    key: str,
    field: str | None = None,
    limit: Any = None,
    **beside: Any,
) -> Response:
    """Return an error as it is sent.

    Args:
        status: HTTP status.
        key: what went wrong.
        field: what it is about, if one field.
        limit: the limit that was met, if there is one.
        **beside: what else the caller of this path needs.
    """
    words = TEXT.get(key, key.replace("_", " ").capitalize() + ".")
    text = words.format(field=field or "It", limit=limit)
    error = {"key": key, "text": text, "field": field, "limit": limit}
    answer = jsonify(error=error, **beside)
    answer.status_code = status
    return answer


def _on_refused(error: RefusedError) -> Response:
    note_refusal(error)
    status = STATUS.get(error.key, 422)
    answer = error_answer(status, error.key, error.field, error.limit)
    if error.wait_s is not None:
        answer.headers["Retry-After"] = str(error.wait_s)
    return answer


def _on_http(error: HTTPException) -> Response | HTTPException:
    status = error.code or 500
    if status < 400:  # a redirect is an exception too
        return error
    messages = (getattr(error, "data", None) or {}).get("messages")
    if messages:
        field, key, limit = _first_problem(messages)
        answer = error_answer(status, key, field, limit)
    elif status == 413:
        limit = current_app.config["MAX_CONTENT_LENGTH"]
        answer = error_answer(status, "too_large", limit=limit)
    else:
        answer = error_answer(status, error.name.lower().replace(" ", "_"))
    for name, value in error.get_headers():
        if name in ("Allow", "Retry-After", "Location"):
            answer.headers[name] = value
    return answer


def _first_problem(messages: Any) -> tuple[str | None, str, Any]:
    # marshmallow nests as {"json": {"moulds": {0: {"size": ["missing"]}}}}
    path: list[str] = []
    while isinstance(messages, dict) and messages:
        name = next(iter(messages))
        path.append(str(name))
        messages = messages[name]
    said = messages[0] if isinstance(messages, list) and messages else messages
    field = ".".join(part for part in path[1:] if part != "_schema") or None
    key, _, limit = str(said).partition(":")
    return field, key, _limit(limit)


def _limit(text: str) -> Any:
    if not text:
        return None
    if text.lstrip("-").isdecimal():
        return int(text)
    return text.split(",")


def _on_database(error: DBAPIError) -> Response:
    # Locked, full or gone: whatever it is, the phone keeps its queue and waits.
    logger.error("the database refused: %s", error.orig)
    key = _BY_DISK.get(disk.trouble_of(error) or "", "busy")
    answer = error_answer(STATUS[key], key)
    wait_s = RETRY_S if key == "busy" else RETRY_FULL_S
    answer.headers["Retry-After"] = str(wait_s)
    return answer


_BY_DISK = {disk.FULL: "disk_full", disk.READ_ONLY: "disk_read_only"}


def _on_failure(error: Exception) -> Response:
    logger.exception("a request failed", exc_info=error)
    return error_answer(500, "failed")
