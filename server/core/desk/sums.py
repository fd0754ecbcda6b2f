"""The sums: what each asks for, and its answer."""

from ..recipe.sum_keys import SUM_TOPICS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk
    from server.shapes.core.sums import Answer, SumRow


def sums_topics(desk: "Desk") -> "list[dict[str, Any]]":
    """Return the topics of the sums and the sums of each, by their keys alone.

    Args:
        desk: Desk; not looked at, as all sums are the same everywhere.

    Returns:
        List of {"key", "sums" [key]} in the order of a make.
    """
    # From the light table: no sum is loaded for it.
    return [{"key": key, "sums": list(keys)} for key, keys in SUM_TOPICS]


def sums_catalogue(desk: "Desk", topic: "str | None" = None) -> "list[SumRow]":
    """Return what sums ask for and what they give, see `sums.catalogue.layout`.

    Args:
        desk: Desk; not looked at, as all sums are the same everywhere.
        topic: key of a topic of `sums_topics`; None for every sum.

    Raises:
        ValueError: there is no such topic.
    """
    # Sums are loaded when first asked for: the app starts without them.
    from ..sums.catalogue import layout

    return layout(topic)


def sum(desk: "Desk", key: str, given: "dict[str, Any]") -> "Answer":
    """Return the Answer to one sum that belongs to no make.

    Args:
        desk: Desk; its rules are what a verdict rests on.
        key: key of the sum.
        given: {input name: {"typed", "unit"} or {"value"} or {"rows", "unit"}};
            "sure" true once the maker stands by an unlikely value.

    Returns:
        Answer, see `sums.answer.answer`.
    """
    from ..sums.catalogue import work_out

    return work_out(key, given, {}, desk.get("rules") or {})


def step_sums(
    desk: "Desk",
    make_id: str,
    step_key: str,
    now_ms: int,
    given: "dict[str, Any] | None" = None,
) -> "list[Answer]":
    """Return the answers to the sums of a step, what the make knows filled in.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        step_key: key of the step.
        now_ms: now, by the server's clock [ms].
        given: what was typed beside, for all sums of the step; see `sum`.

    Returns:
        List of Answer with "known" and "of", see `figures.step_sums`.
    """
    from ..figures.step_sums import step_sums as answers

    return answers(desk, make_id, step_key, now_ms, given)
