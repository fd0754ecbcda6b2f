"""What the milk gives: cheese and whey, wheels, and at the end the account."""

from ..formulas import mass_balance, wheels, yields
from ..formulas.bounds import require_above
from .milk import MILK_KG, PROTEIN
from .rows import (
    default,
    note,
    number,
    output,
    result,
    series,
    sum_row,
    value,
)

FORMS = "constants of the general yield formula, from memory; set them from own makes"
# The expected scatter of the figures themselves, standard deviations.
SPREADS = {
    "fat_frac": 0.0005,
    "casein_frac": 0.0005,
    "moisture_frac": 0.01,
    "fat_kept_frac": 0.012,
    "casein_kept_frac": 0.005,
    "whey_solids_frac": 0.004,
}
MODEL_SPREAD = 0.01  # Emmons and Modler 2010, abstract


def _casein(x):
    if x["casein_frac"] is not None:
        return x["casein_frac"]
    if x["protein_frac"] is None:
        return None
    return yields.casein_frac(x["protein_frac"], x["casein_number"])


def _expected_yield(x):
    casein = _casein(x)
    if casein is None:
        return result([], [], [], ["protein_frac"])
    figures = {name: x[name] for name in yields.YIELD_FIGURES if name in x}
    figures["casein_frac"] = casein
    found: dict = yields.yield_range(figures, SPREADS, MODEL_SPREAD)
    kg = x["milk_kg"]
    cheese = [kg * found[name] for name in ("value", "low", "high")]
    water = x["water_kg"] or 0.0
    whey = [mass_balance.whey_kg(kg, water, mass) for mass in cheese]
    fat = mass_balance.cheese_fat_frac(
        x["fat_frac"], x["fat_kept_frac"], found["value"]
    )
    return result(
        [
            value(
                "yield_frac", found["value"], "fraction", found["low"], found["high"]
            ),
            value("cheese_kg", cheese[0], "kg", cheese[1], cheese[2]),
            value("whey_kg", whey[0], "kg", whey[2], whey[1]),
            value("cheese_fat_frac", fat, "fraction"),
        ],
        [note("yield.range_of_nine_in_ten")],
    )


def _wheel_plan(x):
    sizes = [row["wheel_kg"] for row in x["sizes"]]
    names = x["size_names"] or []
    low, high = x["ranges"].get("curd_kg") or [x["curd_low_kg"], x["curd_high_kg"]]
    curd = x["curd_kg"]
    low = curd if low is None else low
    high = curd if high is None else high
    found: dict = wheels.wheel_plan_range(low, curd, high, sizes)
    values = []
    for place in range(len(sizes)):
        counts = [found[end]["counts"][place] for end in ("value", "low", "high")]
        of = names[place] if place < len(names) else "size_%d" % (place + 1)
        # With less curd the best plan may hold more of the small ones.
        values.append(value("wheels", counts[0], "", min(counts), max(counts), of))
    values.append(value("used_kg", found["value"]["used_kg"], "kg"))
    values.append(
        value(
            "left_kg",
            found["value"]["left_kg"],
            "kg",
            min(found[end]["left_kg"] for end in ("low", "value", "high")),
            max(found[end]["left_kg"] for end in ("low", "value", "high")),
        )
    )
    if x["share_large_frac"] is not None and len(sizes) == 2:
        values.extend(_by_share(x, curd, sizes, names))
    return result(values, [note("keep_a_small_mould_ready")])


def _by_share(x, curd, sizes, names):
    """Wheels when the curd is shared out as the recipe says, small ones last."""
    large = 0 if sizes[0] >= sizes[1] else 1
    count = int(curd * x["share_large_frac"] / sizes[large] + 1e-9)
    rest = curd - count * sizes[large]
    other = int(rest / sizes[1 - large] + 1e-9)
    counts = {large: count, 1 - large: other}
    found = []
    for place in (0, 1):
        of = names[place] if place < len(names) else "size_%d" % (place + 1)
        found.append(value("wheels_by_share", counts[place], "", of=of))
    left = rest - other * sizes[1 - large]
    found.append(value("left_by_share_kg", left, "kg"))
    return found


def _actual_yield(x):
    kg, cheese = x["milk_kg"], x["cheese_kg"]
    require_above("milk_kg", kg, 0)
    share = cheese / kg
    values = [value("yield_frac", share, "fraction")]
    notes: "list[dict]" = []
    if x["cheese_moisture_frac"] is not None:
        values.append(_adjusted(x, share))
    if x["whey_kg"] is not None:
        went_in = kg + (x["water_kg"] or 0.0)
        found: dict = mass_balance.account(
            went_in, cheese + x["whey_kg"], x["low_ratio"], x["high_ratio"]
        )
        values.append(_account("mass", found))
        if found["basis"] != "accounted":
            notes.append(note("account." + found["basis"], of="mass"))
    notes.extend(_fat_account(x, values))
    return result(values, notes)


def _adjusted(x, share):
    if x["cheese_salt_frac"] is None:
        adjusted = yields.moisture_adjusted_frac(
            share, x["cheese_moisture_frac"], x["standard_moisture_frac"]
        )
    else:
        adjusted = yields.moisture_salt_adjusted_frac(
            share,
            x["cheese_moisture_frac"],
            x["cheese_salt_frac"],
            x["standard_moisture_frac"],
            x["standard_salt_frac"],
        )
    return value("adjusted_yield_frac", adjusted, "fraction")


def _account(of, found):
    return value("accounted_ratio", found["value"], "", found["low"], found["high"], of)


def _fat_account(x, values):
    if x["fat_frac"] is None or x["cheese_fat_frac"] is None:
        return []
    kept = mass_balance.kept_frac(
        x["milk_kg"], x["fat_frac"], x["cheese_kg"], x["cheese_fat_frac"]
    )
    values.append(value("fat_kept_frac", kept, "fraction"))
    if x["whey_kg"] is None or x["whey_fat_frac"] is None:
        return []
    out_kg = mass_balance.component_kg(
        [
            [x["cheese_kg"], x["cheese_fat_frac"]],
            [x["whey_kg"], x["whey_fat_frac"]],
        ]
    )
    found: dict = mass_balance.account(
        x["milk_kg"] * x["fat_frac"], out_kg, x["low_ratio"], x["high_ratio"]
    )
    values.append(_account("fat", found))
    if found["basis"] == "accounted":
        return []
    return [note("account." + found["basis"], of="fat")]


def _fill_mass(x):
    fill = wheels.fill_kg(x["ripe_kg"], x["brine_loss_frac"], x["store_loss_frac"])
    values = [value("fill_kg", fill, "kg")]
    if x["filled_kg"] is not None:
        found = wheels.fill_check(x["filled_kg"], fill, x["tolerance_frac"])
        values.append(
            value("fill_verdict", found["basis"], "key", found["low"], found["high"])
        )
    return result(values)


FAT = number("fat_frac", "fraction", 0.0, 0.2, [0.015, 0.09])
WATER_IN = number("water_kg", "kg", 0.0, 52000.0, optional=True)

ROWS = [
    sum_row(
        "expected_yield",
        "yield",
        [
            MILK_KG,
            FAT,
            dict(PROTEIN, optional=True),
            number("casein_frac", "fraction", 0.002, 0.2, [0.02, 0.05], optional=True),
            number(
                "casein_number",
                "",
                0.5,
                1.0,
                [0.72, 0.84],
                default(0.77, "memory", "cows' milk, 0.75 to 0.82"),
            ),
            number(
                "moisture_frac",
                "fraction",
                0.2,
                0.85,
                [0.3, 0.6],
                default(0.43, "practice", "washed-curd wheel out of the press"),
            ),
            number(
                "salt_frac",
                "fraction",
                0.0,
                0.1,
                [0.0, 0.04],
                default(0.0, "practice", "before the brine"),
            ),
            number(
                "fat_kept_frac",
                "fraction",
                0.5,
                1.0,
                [0.85, 0.95],
                default(0.92, "memory", FORMS),
            ),
            number(
                "casein_kept_frac",
                "fraction",
                0.5,
                1.0,
                [0.93, 0.99],
                default(0.955, "memory", FORMS),
            ),
            number("ash_ratio", "", 0.0, 0.2, None, default(0.08, "memory", FORMS)),
            number(
                "whey_solids_frac",
                "fraction",
                0.0,
                0.1,
                None,
                default(0.01, "memory", FORMS),
            ),
            WATER_IN,
        ],
        [
            output("yield_frac", "fraction"),
            output("cheese_kg", "kg"),
            output("whey_kg", "kg"),
            output("cheese_fat_frac", "fraction"),
        ],
        _expected_yield,
    ),
    sum_row(
        "wheel_plan",
        "yield",
        [
            number("curd_kg", "kg", 0.0, 5000.0, [1.0, 2500.0]),
            number("curd_low_kg", "kg", 0.0, 5000.0, optional=True),
            number("curd_high_kg", "kg", 0.0, 5000.0, optional=True),
            series("sizes", [number("wheel_kg", "kg", 0.05, 200.0, [0.2, 60.0])], 1),
            number("share_large_frac", "fraction", 0.0, 1.0, optional=True),
            dict(series("size_names", [], 0, optional=True), hidden=True),
        ],
        [
            output("wheels", ""),
            output("used_kg", "kg"),
            output("left_kg", "kg"),
            output("wheels_by_share", ""),
            output("left_by_share_kg", "kg"),
        ],
        _wheel_plan,
    ),
    sum_row(
        "actual_yield",
        "yield",
        [
            MILK_KG,
            number("cheese_kg", "kg", 0.0, 10000.0, [1.0, 4000.0]),
            WATER_IN,
            number("whey_kg", "kg", 0.0, 60000.0, optional=True),
            number(
                "cheese_moisture_frac", "fraction", 0.0, 0.9, [0.28, 0.6], optional=True
            ),
            number(
                "cheese_salt_frac", "fraction", 0.0, 0.1, [0.002, 0.04], optional=True
            ),
            number(
                "standard_moisture_frac",
                "fraction",
                0.2,
                0.85,
                None,
                default(0.43, "practice", "washed-curd wheel out of the press"),
            ),
            number(
                "standard_salt_frac",
                "fraction",
                0.0,
                0.1,
                None,
                default(0.018, "practice", "ripe washed-curd wheel"),
            ),
            dict(FAT, optional=True),
            number("cheese_fat_frac", "fraction", 0.0, 0.6, [0.1, 0.45], optional=True),
            number(
                "whey_fat_frac", "fraction", 0.0, 0.1, [0.0005, 0.01], optional=True
            ),
            number(
                "low_ratio",
                "",
                0.5,
                1.0,
                None,
                default(0.97, "practice", "usual for a small creamery"),
            ),
            number(
                "high_ratio",
                "",
                1.0,
                1.5,
                None,
                default(1.03, "practice", "usual for a small creamery"),
            ),
        ],
        [
            output("yield_frac", "fraction"),
            output("adjusted_yield_frac", "fraction"),
            output("accounted_ratio", ""),
            output("fat_kept_frac", "fraction"),
        ],
        _actual_yield,
    ),
    sum_row(
        "fill_mass",
        "yield",
        [
            number("ripe_kg", "kg", 0.05, 200.0, [0.2, 60.0]),
            number(
                "brine_loss_frac",
                "fraction",
                0.0,
                0.3,
                [0.0, 0.08],
                default(0.02, "practice", "salt in, twice its mass of water out"),
            ),
            number(
                "store_loss_frac",
                "fraction",
                0.0,
                0.7,
                [0.0, 0.3],
                default(0.03, "practice", "coated wheel, some weeks"),
            ),
            number("filled_kg", "kg", 0.05, 200.0, optional=True),
            number(
                "tolerance_frac",
                "fraction",
                0.0,
                0.5,
                None,
                default(0.02, "practice", "two in a hundred"),
            ),
        ],
        [output("fill_kg", "kg"), output("fill_verdict", "key")],
        _fill_mass,
    ),
]
