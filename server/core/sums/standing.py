"""How well an answer stands: the weakest of what it rests on, and what that is."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.sums import Basis, RestsOn, Standing

# Weakest first. What was read in a source or worked out from one is not weak.
WEAK: "tuple[Basis, ...]" = ("memory", "practice", "setting")
# The creamery's own: typed now, or entered in a make or a tank before.
OWN = ("typed", "make", "tank")


def standing(asked: "dict[str, Any]", rests_on: "list[RestsOn]") -> "Standing":
    """Return what an answer stands on.

    A way that is chosen, such as a jacket and not a flame, counts only where no
    figure is weak.

    Args:
        asked: the sum, see `rows.sum_row`.
        rests_on: what its answer rests on.

    Returns:
        {"basis", "is_figure", "names"}: the weakest status of WEAK with the names
        of what has it, "is_figure" False where those are chosen ways alone; else
        "typed" where all is the creamery's own, or "published".
    """
    chosen = [item["name"] for item in asked["inputs"] if item["kind"] == "choice"]
    figures = [told for told in rests_on if told["name"] not in chosen]
    for is_figure, some in ((True, figures), (False, rests_on)):
        for status in WEAK:
            names = [told["name"] for told in some if told["status"] == status]
            if names:
                return {"basis": status, "is_figure": is_figure, "names": names}
    own = all(told["from"] in OWN for told in rests_on)
    return {
        "basis": "typed" if own else "published",
        "is_figure": True,
        "names": [],
    }
