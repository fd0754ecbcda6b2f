"""What a step wants measured: its targets, and the readings it asks for."""

from ...units.quantities import QUANTITIES, check_number
from ...units.table import OF_ALL_MILK
from ..checks import check_choice, mappings
from ..figures import check_figure, is_text
from .turns import LONGEST_S

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


AT_END = ("end",)  # a target that is judged from when the step's end has come
READING_TIMES = ("begin", "during", "end")


def check_targets(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    """Return what is wrong with the targets of a step.

    Args:
        path: where the step stands in the recipe.
        step: the step.
        sources: the recipe's sources.
    """
    targets, problems = mappings(path + ".targets", step.get("targets"))
    for index, target in enumerate(targets):
        quantity: "Any" = target.get("quantity")
        label = quantity if is_text(quantity) else str(index)
        field = path + ".targets." + label
        quantity_problems = check_quantity(field + ".quantity", quantity)
        units = None if quantity_problems else target_units(quantity)
        problems.extend(quantity_problems)
        problems.extend(_check_instead(field, target))
        if target.get("when") is not None:
            when = target["when"]
            problems.extend(check_choice(field + ".when", when, AT_END, "unknown"))
        problems.extend(
            check_figure(
                field + ".figure",
                target.get("figure"),
                sources,
                units,
                may_be_open=True,
            )
        )
    return problems


def check_readings(path: str, step: "dict[str, Any]") -> "list[Problem]":
    """Return what is wrong with the readings that a step asks for.

    Args:
        path: where the step stands in the recipe.
        step: the step.
    """
    readings, problems = mappings(path + ".readings", step.get("readings"))
    for index, reading in enumerate(readings):
        quantity: "Any" = reading.get("quantity")
        label = quantity if is_text(quantity) else str(index)
        field = path + ".readings." + label
        problems.extend(check_quantity(field + ".quantity", quantity))
        problems.extend(_check_instead(field, reading))
        when = reading.get("when")
        problems.extend(check_choice(field + ".when", when, READING_TIMES, "unknown"))
        if reading.get("every_s") is not None:
            problems.extend(
                check_number(field + ".every_s", reading["every_s"], 1, LONGEST_S)
            )
    return problems


def _check_instead(field: str, row: "dict[str, Any]") -> "list[Problem]":
    other: "Any" = row.get("instead_of")
    return [] if other is None else check_quantity(field + ".instead_of", other)


def check_quantity(field: str, quantity: "Any") -> "list[Problem]":
    """Return what is wrong with the name of a quantity.

    Args:
        field: where it stands in the recipe.
        quantity: the name.
    """
    return check_choice(field, quantity, QUANTITIES, "unknown_quantity")


def target_units(quantity: "Any") -> "list[str]":
    """Return the units that a target of a quantity may be given in.

    Args:
        quantity: key of `quantities.QUANTITIES`.
    """
    unit = QUANTITIES[quantity].get("unit") or ""
    # A target per litre of milk is scaled to the make: see `scaled_figure`.
    return [unit] + [dose for dose in OF_ALL_MILK if OF_ALL_MILK[dose] == unit]
