"""What the cheese is made of, and what its figures meet."""

from ...formulas.curd import composition, identity
from ...numbers.refused import Refused
from ..outputs import no_rules, note, output, rests, result, value
from ..rows import choice, default, number, sum_row
from ..store import staph

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


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

# In what each limit of a standard is read.
ENDS = {key: "fraction" for key, _, _ in identity.LIMITS}
ENDS.update({"dry_matter_min_frac": "fraction", "cured_days": "d", "milk": "key"})

MOISTURE = number("cheese_moisture_frac", "fraction", 0.0, 0.9, [0.28, 0.6])
FAT = number("cheese_fat_frac", "fraction", 0.0, 0.6, [0.1, 0.45])


def _composition(x: "Inputs") -> "Worked | None":
    moisture, fat = x["cheese_moisture_frac"], x["cheese_fat_frac"]
    if moisture + fat >= 1.0:
        raise Refused("more_than_cheese", "cheese_fat_frac", fat, 1 - moisture)
    fdm = composition.fdm_frac(fat, moisture)
    mnfs = composition.mnfs_frac(moisture, fat)
    values = [
        value("fdm_frac", fdm),
        value("mnfs_frac", mnfs),
    ]
    if x["cheese_salt_frac"] is not None:
        values.append(
            value(
                "salt_in_moisture_frac",
                composition.salt_in_moisture_frac(x["cheese_salt_frac"], moisture),
            )
        )
    rule = x["rules"].get("codex")
    sources = []
    if rule is not None:
        for name, share in (("firmness", mnfs), ("fat", fdm)):
            classed = composition.classes(share, rule[name])
            for word in classed["classes"]:
                values.append(value(name, word, of="codex"))
            first = rule[name][0]
            figure = (
                first.get("below_frac") or first.get("above_frac") or first["from_frac"]
            )
            sources.append(rests(name, None, "", figure["status"], figure["source"]))
    return result(values, [note("classes_overlap")], sources)


def _identity(x: "Inputs") -> "Worked":
    rule = x["rules"].get(RULE[x["standard_jurisdiction"]])
    if rule is None:
        return no_rules()
    standard = None
    for candidate in rule["rows"]:
        if candidate["key"] == x["standard"]:
            standard = candidate
    if standard is None:
        return result(
            [value("verdict", "not_assessed", of=x["standard"])],
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
    judged = identity.check_identity(cheese, standard)
    values = [value("verdict", judged["verdict"], of=standard["key"])]
    sources = []
    for figure in judged["figures"]:
        values.append(_figure(figure, x["milk_was"]))
        if figure.get("status"):
            sources.append(
                rests(
                    figure["key"],
                    figure["limit"],
                    ENDS[figure["key"]],
                    figure["status"],
                    standard["section"],
                )
            )
    notes = [note("readings_meet_no_more")]
    if any(source["status"] == "memory" for source in sources):
        notes.append(note("figure_from_memory"))
    return result(values, notes, sources)


def _figure(figure: "dict[str, Any]", milk_was: "str | None") -> "WorkedValue":
    low, high = figure["limit"], None
    if figure["sense"] in ("max", "below"):
        low, high = high, low
    read = milk_was if figure["key"] == "milk" else figure["value"]
    return value("figure", figure["verdict"], low, high, figure["key"], read)


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
            output("fdm_frac", "fraction", headline=True),
            output("mnfs_frac", "fraction"),
            output("salt_in_moisture_frac", "fraction"),
            output("firmness", "key"),
            output("fat", "key"),
        ],
        _composition,
        judges=True,
        called={
            "fat_frac": "cheese_fat_frac",
            "moisture_frac": "cheese_moisture_frac",
            "salt_frac": "cheese_salt_frac",
        },
        by_size=True,
    ),
    sum_row(
        "identity",
        "composition",
        [
            choice(
                "standard_jurisdiction",
                ["us", "codex"],
                default("us", "derived", "choose_where_sold"),
            ),
            choice("standard", list(STANDARDS)),
            dict(MOISTURE, optional=True),
            dict(FAT, optional=True),
            choice("milk_was", ["pasteurised", "raw"], optional=True),
            number("cured_days", "d", 0, 3650, None, None, True, count=True),
        ],
        [
            output("verdict", "key", headline=True),
            output("figure", "key", "limit", ends=ENDS, called="of"),
        ],
        _identity,
        judges=True,
        by_size=True,
    ),
    staph.ROW,
]
