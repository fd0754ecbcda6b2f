"""What an alert is made of, and what a recipe says to do about its matter."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


def what_to_do(
    step: "Step | RecipeStep", form: str, quantity: "str | None" = None
) -> "Words | None":
    """Return what the recipe says to do about a form of drift, or None.

    Args:
        step: Step of the View, or step of a recipe.
        form: form of drift, see `recipe.steps.steps`.
        quantity: what drifts; its own remedy goes before the step's.
    """
    general = None
    for remedy in step.get("drift", []):
        if remedy["form"] != form:
            continue
        if remedy.get("quantity") is None:
            general = general or remedy["do"]
        elif remedy["quantity"] == quantity:
            return remedy["do"]
    return general


def alert_of(
    alert_id: str,
    form: str,
    level: str,
    key: str,
    since_ms: "int | None",
    **rest: "object",
) -> "Alert":
    """Return an Alert; what is not given is None.

    Args:
        alert_id: made of what the alert is about, so that the same matter has the
            same id on every phone.
        form: "time", "temperature", "acid", "quantity" or "record".
        level: "act" or "check".
        key: message key, without "alert.".
        since_ms: since when it stands [ms].
        rest: other fields of Alert.
    """
    alert: "Any" = {
        "id": alert_id,
        "form": form,
        "level": level,
        "key": "alert." + key,
        "step": None,
        "quantity": None,
        "value": None,
        "low": None,
        "high": None,
        "unit": None,
        "by_s": None,
        "due_ms": None,
        "rings_ms": None,
        "do": None,
        "since_ms": since_ms,
        "acknowledged": None,
    }
    alert.update(rest)
    return alert
