"""Whey off before a wash: how much, and how much for the water at hand."""

from ...formulas.milk import milk
from ...formulas.usual import WHEY_FRAC
from ...numbers.refused import Refused
from ...units.liquids import WHEY_KG_L
from ..milk.milk_inputs import MILK_KG
from ..outputs import note, output, result, value
from ..ranges import ranged, with_ends
from ..rows import default, number, sum_row
from .wash_water import CP, VAT_CP_J_KG_K

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


def _wash_drain(x: "Inputs") -> "Worked | None":
    """Whey to run off so that the water at hand warms the rest to the target."""
    milk_kg = x["milk_kg"]
    whey_kg = milk_kg * x["whey_share_frac"]
    offs_kg = [share * whey_kg for share in with_ends(x, "drain_frac")]
    off = offs_kg[0]
    start = milk_kg + (x["water_in_kg"] or 0.0) - (x["drained_before_kg"] or 0.0)
    # Curd stays: no more than the whey and the water can have been run off.
    most = start - milk_kg * (1.0 - x["whey_share_frac"])
    if off > most:
        limit = most / whey_kg
        share = x["drain_frac"]
        raise Refused("more_than_whey_left", "drain_frac", share, limit, left_kg=most)
    values = [
        ranged("drain_kg", offs_kg),
        value("drain_l", off / WHEY_KG_L),
        value("vat_kg", start - off),
    ]
    if x["water_kg"] is None:
        return result(values)
    return _for_water(x, start, most, values)


def _for_water(
    x: "Inputs", start: float, most: float, values: "list[WorkedValue]"
) -> "Worked | None":
    """Add what to run off so that the water at hand warms the rest to the target."""
    lacking = [
        n for n in ("vat_temp_c", "target_temp_c", "water_planned_c") if x[n] is None
    ]
    if lacking:
        return result(values, [], [], lacking)
    gap_up = x["target_temp_c"] - x["vat_temp_c"]
    gap_down = x["water_planned_c"] - x["target_temp_c"]
    if gap_down <= 0:
        target_c, water_c = x["target_temp_c"], x["water_planned_c"]
        raise Refused("not_below_water", "target_temp_c", target_c, water_c)
    if gap_up <= 0:
        # The whey to run off stands without it.
        return result(values, [note("vat_is_warm_enough", value=x["vat_temp_c"])])
    fits = x["water_kg"] * milk.WATER_CP_J_KG_K * gap_down
    stay = fits / (VAT_CP_J_KG_K * gap_up)
    if stay > start:
        values.append(value("drain_for_water_kg", 0.0))
        return result(values, [note("water_is_more_than_enough")], [CP])
    values.append(value("drain_for_water_kg", start - stay))
    notes = []
    if start - stay > most:
        notes.append(note("drain_more_than_whey", value=start - stay, limit=most))
    return result(values, notes, [CP])


ROWS = [
    sum_row(
        "wash_drain",
        "wash",
        [
            MILK_KG,
            number(
                "drain_frac",
                "fraction",
                0.0,
                0.95,
                [0.1, 0.7],
                default(1.0 / 3.0, "read", "guelph_gouda_third_of_whey"),
            ),
            number(
                "whey_share_frac",
                "fraction",
                0.5,
                0.98,
                [0.8, 0.95],
                default(WHEY_FRAC, "practice", "whey_share_of_milk"),
            ),
            number("drained_before_kg", "kg", 0.0, 52000.0, optional=True),
            number("water_in_kg", "kg", 0.0, 52000.0, optional=True),
            number("vat_temp_c", "C", 0.0, 60.0, [25.0, 45.0], optional=True),
            number("target_temp_c", "C", 0.0, 60.0, [30.0, 45.0], optional=True),
            number("water_planned_c", "C", 0.0, 100.0, [2.0, 90.0], optional=True),
            number("water_kg", "kg", 0.01, 52000.0, optional=True),
        ],
        [
            output("drain_kg", "kg", range_of="usual"),
            output("drain_l", "L", headline=True),
            output("vat_kg", "kg"),
            output("drain_for_water_kg", "kg"),
        ],
        _wash_drain,
    ),
]
