"""What the cheese is made of, and what its figures meet."""

from ...formulas.curd import composition
from ..rows import (
    choice,
    default,
    no_rules,
    note,
    number,
    output,
    rests,
    result,
    sum_row,
    value,
)
from . import staph

RULE = {"us": "us_identity", "codex": "codex"}
STANDARDS = (
    "gouda",
    "edam",
    "washed_curd",
    "cheddar",
    "colby",
    "granular",
    "monterey",
    "brick",
    "muenster",
    "swiss",
    "gruyere",
    "gorgonzola",
    "blue",
    "roquefort_type",
    "asiago_fresh",
    "asiago_medium",
    "asiago_old",
    "parmesan",
    "romano",
    "hard_grating",
    "hard",
    "semisoft",
    "semisoft_part_skim",
    "soft_ripened",
    "limburger",
    "mozzarella",
    "mozzarella_low_moisture",
    "mozzarella_low_moisture_part_skim",
    "provolone",
    "cream",
    "neufchatel",
    "cottage_dry_curd",
)

MOISTURE = number("cheese_moisture_frac", "fraction", 0.0, 0.9, [0.28, 0.6])
FAT = number("cheese_fat_frac", "fraction", 0.0, 0.6, [0.1, 0.45])


def _composition(x):
    moisture, fat = x["cheese_moisture_frac"], x["cheese_fat_frac"]
    if moisture + fat >= 1.0:
        raise ValueError(
            "cheese_fat_frac %r leaves nothing dry beside the moisture, %r"
            % (fat, moisture)
        )
    fdm = composition.fdm_frac(fat, moisture)
    mnfs = composition.mnfs_frac(moisture, fat)
    values = [
        value("fdm_frac", fdm, "fraction"),
        value("mnfs_frac", mnfs, "fraction"),
    ]
    if x["cheese_salt_frac"] is not None:
        values.append(
            value(
                "salt_in_moisture_frac",
                composition.salt_in_moisture_frac(x["cheese_salt_frac"], moisture),
                "fraction",
            )
        )
    rule = x["rules"].get("codex")
    sources = []
    if rule is not None:
        for name, share in (("firmness", mnfs), ("fat", fdm)):
            found = composition.classes(share, rule[name])
            for word in found["classes"]:
                values.append(value(name, word, "key", of="codex"))
            row = rule[name][0]
            figure = row.get("below_frac") or row.get("above_frac") or row["from_frac"]
            sources.append(rests(name, None, "", figure["status"], figure["source"]))
    return result(values, [note("classes_overlap")], sources)


def _identity(x):
    rule = x["rules"].get(RULE[x["jurisdiction"]])
    if rule is None:
        return no_rules()
    row = None
    for candidate in rule["rows"]:
        if candidate["key"] == x["standard"]:
            row = candidate
    if row is None:
        return result(
            [value("verdict", "not_assessed", "key", of=x["standard"])],
            [note("no_such_standard_there")],
        )
    cheese = {
        "moisture_frac": x["cheese_moisture_frac"],
        "fat_frac": x["cheese_fat_frac"],
        "is_pasteurised": None
        if x["milk_was"] is None
        else x["milk_was"] == "pasteurised",
        "cured_days": x["cured_days"],
    }
    found = composition.check_identity(cheese, row)
    values = [value("verdict", found["verdict"], "key", of=row["key"])]
    sources = []
    for figure in found["figures"]:
        values.append(
            value(
                "figure",
                figure["verdict"],
                "key",
                figure["value"],
                figure["limit"],
                figure["key"],
            )
        )
        if figure.get("status"):
            sources.append(
                rests(
                    figure["key"], figure["limit"], "", figure["status"], row["section"]
                )
            )
    notes = [note("readings_meet_no_more")]
    if any(source["status"] == "memory" for source in sources):
        notes.append(note("figure_from_memory"))
    return result(values, notes, sources)


ROWS = [
    sum_row(
        "composition",
        "composition",
        [
            MOISTURE,
            FAT,
            number(
                "cheese_salt_frac", "fraction", 0.0, 0.2, [0.002, 0.04], optional=True
            ),
        ],
        [
            output("fdm_frac", "fraction"),
            output("mnfs_frac", "fraction"),
            output("salt_in_moisture_frac", "fraction"),
            output("firmness", "key"),
            output("fat", "key"),
        ],
        _composition,
        judges=True,
    ),
    sum_row(
        "identity",
        "composition",
        [
            choice(
                "jurisdiction",
                ["us", "codex"],
                default("us", "derived", "choose where the cheese is sold"),
            ),
            choice("standard", list(STANDARDS)),
            dict(MOISTURE, optional=True),
            dict(FAT, optional=True),
            choice("milk_was", ["pasteurised", "raw"], optional=True),
            number("cured_days", "d", 0, 3650, None, None, True, count=True),
        ],
        [output("verdict", "key"), output("figure", "key")],
        _identity,
        judges=True,
    ),
    staph.ROW,
]
