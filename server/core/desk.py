"""The desk: every make a device knows of, and the questions asked about them.

Server and phone both talk to the core through these functions. What a desk keeps,
and how events are filed in it, is `creamery.kept`.
"""

from .creamery.board import board as board_of
from .creamery.clashes import acts as acts_of

# Doors of its own, kept where the alarms can reach them too.
from .creamery.kept import file as file
from .creamery.kept import new as new
from .creamery.kept import take as take
from .creamery.kept import view as view
from .log import events as event_table
from .log import run
from .log.apart import ask
from .log.legal import about_of
from .log.opening import recipe_of
from .recipe.sum_keys import SUM_TOPICS
from .step import record as batch_record
from .step.view import step as step_of
from .units.readings import read_typed as read_typed_value


def step(desk: dict, make_id: str, key: str, now_ms: int) -> "dict | None":
    """Return one Step in full, whatever its status; None when it is not known.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        key: key of the step.
        now_ms: now, by the server's clock [ms].
    """
    state = desk["makes"].get(make_id)
    return None if state is None else step_of(state, key, now_ms, desk.get("rules"))


def curve(desk: dict, make_id: str, now_ms: int) -> "dict | None":
    """Return the course of one make over time, see `curve.curve`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        now_ms: now, by the server's clock [ms].
    """
    # Loaded when first looked at: the app starts without it.
    from .step.curve import curve as course

    state = desk["makes"].get(make_id)
    return None if state is None else course(state, now_ms, desk.get("rules"))


def board(desk: dict, now_ms: int) -> dict:
    """Return the Board over all makes whose opening is known.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
    """
    views = _views(desk, now_ms)
    return board_of(desk, views, now_ms, _acts_ahead(desk, views, now_ms))


def _views(desk, now_ms):
    views = []
    for make_id in sorted(desk["makes"]):
        found = view(desk, make_id, now_ms)
        if found is not None:
            views.append(found)
    return views


def _acts_ahead(desk, views, now_ms):
    ahead: "list[dict]" = []
    for found in views:
        make_id = found["make"]["id"]
        ahead.extend(ask(desk, make_id, "acts", now_ms, _acts, desk, found) or [])
    return ahead


def _acts(desk, found):
    """Return the acts of a View that its desk keeps; worked out once for each."""
    # Practice waits where there is real work.
    if not found["make"]["is_open"] or found["make"]["practice"]:
        return []
    make_id = found["make"]["id"]
    kept = desk.setdefault("acts", {})
    if make_id not in kept:
        recipe = recipe_of(desk["makes"][make_id])
        kept[make_id] = acts_of(found, recipe["steps"])
    return kept[make_id]


def clashes_if(desk: dict, recipe: dict, start_ms: int, now_ms: int) -> dict:
    """Return what a make opened at an instant would clash with, and a better start.

    Args:
        desk: Desk.
        recipe: a sound recipe.
        start_ms: when the make would be opened [ms].
        now_ms: now, by the server's clock [ms].

    Returns:
        {"clashes", "count", "better"}, see `clashes.clashes_if`.
    """
    from .creamery.clashes import clashes_if as would_clash

    ahead = _acts_ahead(desk, _views(desk, now_ms), now_ms)
    return would_clash(ahead, recipe, start_ms, now_ms)


def record(desk: dict, make_id: str) -> "list[dict]":
    """Return the whole batch record of a make, oldest line first.

    Args:
        desk: Desk.
        make_id: UUID of the make.
    """
    state = desk["makes"].get(make_id)
    return [] if state is None else batch_record.lines(state)


def check(event: dict, role: str) -> "list[dict]":
    """Return what speaks against an event, the role of who sends it included.

    Args:
        event: the event.
        role: one of `events.ROLES`.

    Returns:
        List of {"field", "key", "limit"}.
    """
    return check_new(event) + _not_allowed(event, role)


def check_new(event: dict) -> "list[dict]":
    """Return everything that is wrong with an event about to be recorded.

    What is recorded already is taken by its form alone, see `take`: a limit that
    is drawn tighter later must not make it disappear.

    Args:
        event: the event.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems = event_table.check_event(event)
    if problems or event["kind"] != "equipment_set":
        return problems
    # Its limits are those of the sums, which the app starts without.
    from .sums.equipment import check_limits

    return check_limits(event)


def _not_allowed(event, role, about=None):
    kind = event.get("kind") if isinstance(event, dict) else None
    if not isinstance(kind, str) or kind not in event_table.KINDS:
        return []
    if event_table.may(role, kind, about):
        return []
    limit = event_table.role_for(kind, about)
    return [{"field": "person", "key": "not_allowed", "limit": limit}]


def _about(desk, event):
    state = desk["makes"].get(event["make"])
    return about_of(event, (lambda _: None) if state is None else state["events"].get)


def tap(desk: dict, event: dict, roles: "list[str]", make_id: str, now_ms: int) -> dict:
    """Check an event, file it and answer with the View, all in one question.

    A tap on a slow phone waits for each exchange with the core; this is the one
    that it needs.

    Args:
        desk: Desk; changed in place when the event is sound.
        event: the event.
        roles: roles that must all be allowed to record it.
        make_id: UUID of the make that is shown, or "".
        now_ms: now, by the server's clock [ms].

    Returns:
        {"problems": as from `check`, "view": View or None}; with problems the
        event is not filed.
    """
    problems = check_new(event)
    if not problems:
        about = _about(desk, event)
        for role in roles:
            problems = problems + _not_allowed(event, role, about)
    if problems:
        return {"problems": problems, "view": None}
    file(desk, event)
    return {"problems": [], "view": view(desk, make_id, now_ms)}


def check_correction(desk: dict, make_id: str, ref: str, changes: dict) -> "list[dict]":
    """Return what speaks against a correction, before it is recorded.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        ref: id of the entry to correct.
        changes: the fields to set.

    Returns:
        List of {"field", "key", "limit"}.
    """
    state = desk["makes"].get(make_id)
    event = None if state is None else state["events"].get(ref)
    if event is None:
        return [{"field": "ref", "key": "unknown", "limit": None}]
    data = run.effective(state, event)["data"]
    problems = run.check_correction(event["kind"], data, changes)
    if problems or event["kind"] != "equipment_set" or "value" not in changes:
        return problems
    from .sums.equipment import check_value

    return check_value(data["key"], changes["value"])


def units() -> "list[dict]":
    """Return how figures are shown in the units that people may choose.

    Returns:
        List of {"from", "to", "scale", "offset"}, see `sums.units.shown`.
    """
    # Loaded when first asked: the app starts without it.
    from .units.shown import shown

    return shown()


def read_typed(
    quantity: str, typed: str, typed_unit: str, last: "float | None" = None
) -> dict:
    """Return what a typed text means, see `readings.read_typed`.

    Args:
        quantity: key of `quantities.QUANTITIES`.
        typed: text as typed, comma or point.
        typed_unit: unit it was typed in; "" for the quantity's own.
        last: the reading before, in the quantity's own unit, or None.
    """
    return read_typed_value(quantity, typed, typed_unit, last)


def set_rules(desk: dict, rules: dict) -> None:
    """Hand the legal figures to a desk; views that rest on them are worked out anew.

    Args:
        desk: Desk; changed in place.
        rules: {rule id: the rule}, as the files of server/rules.
    """
    desk["rules"] = rules
    desk["views"] = {}


def sums_topics(desk: dict) -> "list[dict]":
    """Return the topics of the sums and the sums of each, by their keys alone.

    Args:
        desk: Desk; not looked at, as all sums are the same everywhere.

    Returns:
        List of {"key", "sums" [key]} in the order of a make.
    """
    # From the light table: no sum is loaded for it.
    return [{"key": key, "sums": list(keys)} for key, keys in SUM_TOPICS]


def sums_catalogue(desk: dict, topic: "str | None" = None) -> "list[dict]":
    """Return what sums ask for and what they give, see `sums.catalogue.layout`.

    Args:
        desk: Desk; not looked at, as all sums are the same everywhere.
        topic: key of a topic of `sums_topics`; None for every sum.

    Raises:
        ValueError: there is no such topic.
    """
    # Sums are loaded when first asked for: the app starts without them.
    from .sums.catalogue import layout

    return layout(topic)


def sum(desk: dict, key: str, given: dict) -> dict:
    """Return the Answer to one sum that belongs to no make.

    Args:
        desk: Desk; its rules are what a verdict rests on.
        key: key of the sum.
        given: {input name: {"typed", "unit"} or {"value"} or {"rows", "unit"}};
            "sure" true once the maker stands by an unlikely value.

    Returns:
        Answer, see `sums.answer.answer`.
    """
    from .sums.catalogue import work_out

    return work_out(key, given, {}, desk.get("rules") or {})


def step_sums(
    desk: dict, make_id: str, step_key: str, now_ms: int, given: "dict | None" = None
) -> "list[dict]":
    """Return the answers to the sums of a step, what the make knows filled in.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        step_key: key of the step.
        now_ms: now, by the server's clock [ms].
        given: what was typed beside, for all sums of the step; see `sum`.

    Returns:
        List of Answer with "known" and "of", see `sums.at_step.step_sums`.
    """
    from .known.at_step import step_sums as answers

    return answers(desk, make_id, step_key, now_ms, given)


def tanks(desk: dict, now_ms: int) -> "list[dict]":
    """Return the account of every brine tank, see `tanks.tanks`.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
    """
    from .brine.tanks import tanks as accounts

    def of_one(stream, question, *args):
        return ask(desk, stream, "tank", now_ms, question, *args)

    return accounts(desk["makes"], now_ms, desk.get("rules") or {}, of_one)


def trends(desk: dict, recipe_id: str) -> "list[dict]":
    """Return the charts of one recipe over its makes, see `trends.trends`.

    Args:
        desk: Desk.
        recipe_id: "id" of the recipe.
    """
    from .creamery.trends import trends as charts

    def of_one(stream, question, *args):
        return ask(desk, stream, "trends", None, question, *args)

    return charts(desk["makes"], recipe_id, of_one)
