"""What is asked of milk on receipt, against the rules as they are printed.

Each check stands alone and says which figure it is against. A temperature is
judged in the unit that was typed, with the figure printed in that unit. A figure
known only from memory never passes or fails milk, nor does a reading not taken.
"""

from ...units.table import convert
from ..outputs import as_read, no_rules, note, output, rests, result, value
from ..rows import choice, default, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.sums import RestsOn
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


RULE = {"us": "us_milk_receiving", "eu_uk": "eu_uk_milk_receiving"}
# Which of a rule's temperatures speak of milk as it stands at the door.
TEMPS: "dict[str, Any]" = {
    "us": [("cooling", "blend"), ("held_in_plant", None)],
    "eu_uk": [("cooling", "on_arrival"), ("cooling", "until_processed")],
}


def _milk_receipt(x: "Inputs") -> "Worked":
    word = x["jurisdiction"]
    rule = x["rules"].get(RULE[word])
    if rule is None:
        return no_rules()
    values: "list[WorkedValue]" = []
    sources: "list[RestsOn]" = []
    for first, second in TEMPS[word]:
        part = rule[first] if second is None else rule[first][second]
        figure, temp = _in_typed_unit(x, part["max_temp"])
        _check(values, sources, "temperature", second or first, temp, figure)
    _cells(values, sources, x, rule)
    _drug_test(values, sources, x, rule)
    if word == "eu_uk":
        _age(values, sources, x, rule)
    else:
        _cooling(values, sources, x, rule)
    notes = []
    if any(told["name"] == "temperature" and told["high"] is None for told in values):
        notes.append(note("rule_not_printed_in_unit"))
    if any(source["status"] == "memory" for source in sources):
        notes.append(note("figure_from_memory"))
    return result(values, notes, sources)


def _in_typed_unit(
    x: "Inputs", figures: "dict[str, dict[str, Any]]"
) -> "tuple[dict[str, Any] | None, float]":
    typed = x["typed"].get("milk_temp_c") or [x["milk_temp_c"], "C"]
    return figures.get(typed[1]), typed[0]


def _check(
    values: "list[WorkedValue]",
    sources: "list[RestsOn]",
    name: str,
    of: str,
    amount: "float | None",
    figure: "dict[str, Any] | None",
) -> None:
    """Add one verdict: what was read, and the figure it is to be at most."""
    verdict = "not_assessed"
    limit = None
    if figure is not None:
        limit = figure["value"]
        sources.append(
            rests(name + "." + of, limit, "", figure["status"], figure["source"])
        )
        if amount is not None and figure["status"] != "memory":
            verdict = "meets" if amount <= limit else "does_not_meet"
    values.append(
        value(
            name,
            verdict,
            high=limit,
            of=of,
            read=None if limit is None else amount,
        )
    )


def _cells(
    values: "list[WorkedValue]",
    sources: "list[RestsOn]",
    x: "Inputs",
    rule: "dict[str, Any]",
) -> None:
    species = x["species"]
    cells = rule["somatic_cells_max_ml"].get(species)
    if x["somatic_cells_ml"] is not None:
        _check(values, sources, "somatic_cells", species, x["somatic_cells_ml"], cells)
    if x["plate_count_ml"] is not None:
        table = rule["plate_count_max_ml"]
        key = "grade_a_producer"
        if key not in table:
            key = "cow" if species == "cow" else "other_species"
        _check(values, sources, "plate_count", key, x["plate_count_ml"], table[key])


def _drug_test(
    values: "list[WorkedValue]",
    sources: "list[RestsOn]",
    x: "Inputs",
    rule: "dict[str, Any]",
) -> None:
    """Positive never meets; missing is not assessed, and the make waits for it."""
    verdict = "not_assessed"
    if x["drug_test"] is not None:
        verdict = "meets" if x["drug_test"] == "negative" else "does_not_meet"
    figure = (rule.get("drug_test") or {}).get("every_load")
    if figure is not None:
        sources.append(rests("drug_test", True, "", figure["status"], figure["source"]))
        if figure["status"] == "memory" and verdict == "meets":
            verdict = "not_assessed"
    values.append(value("drug_test", verdict, of="every_load"))


def _age(
    values: "list[WorkedValue]",
    sources: "list[RestsOn]",
    x: "Inputs",
    rule: "dict[str, Any]",
) -> None:
    table = rule["make_begins_within"]
    figure, temp = _in_typed_unit(x, table["at_4_c"]["max_temp"])
    key = "at_6_c"
    if figure is not None and temp is not None and temp <= figure["value"]:
        key = "at_4_c"
    if x["species"] != "cow":
        key = "ewe_goat_buffalo"
    age_h = x["milk_age_h"]
    age_s = None if age_h is None else convert(age_h, "h", "s")
    _check(values, sources, "age", key, age_s, table[key]["within_s"])


def _cooling(
    values: "list[WorkedValue]",
    sources: "list[RestsOn]",
    x: "Inputs",
    rule: "dict[str, Any]",
) -> None:
    """Judge how soon the milk was cold: by the tank's log, else by what is read now.

    Milk that is cold now may have been cold in time or not, so only young cold milk
    meets, and old warm milk does not.
    """
    for of, name in (("first", "first_cooled_h"), ("then", "last_cooled_h")):
        part = rule["cooling"][of]
        within = part["within_s"]
        told_s = None if x[name] is None else convert(x[name], "h", "s")
        if told_s is None and of == "first":
            told_s = _told_by_age(x, part)
        _check(values, sources, "cooling", "cooled_" + of, told_s, within)
        for unit in ("F", "C"):
            figure = part["max_temp"][unit]
            sources.append(
                rests(
                    "temperature.cooled_" + of,
                    figure["value"],
                    unit,
                    figure["status"],
                    figure["source"],
                )
            )


def _told_by_age(x: "Inputs", part: "dict[str, Any]") -> "float | None":
    """Return the milk's age where that alone tells whether it was cold in time."""
    figure, temp = _in_typed_unit(x, part["max_temp"])
    if x["milk_age_h"] is None or figure is None:
        return None
    age_s = convert(x["milk_age_h"], "h", "s")
    is_late = age_s > part["within_s"]["value"]
    is_warm = temp > figure["value"]
    return age_s if is_late == is_warm else None


ROW = sum_row(
    "milk_receipt",
    "milk",
    [
        choice(
            "jurisdiction",
            ["us", "eu_uk"],
            default("us", "derived", "choose_where_licensed"),
        ),
        choice(
            "species",
            ["cow", "goat", "ewe", "buffalo"],
            default("cow", "derived", "choose_animal"),
        ),
        number("milk_temp_c", "C", -2.0, 110.0, [0.0, 40.0]),
        number("milk_age_h", "h", 0.0, 240.0, [0.0, 72.0], optional=True),
        number("first_cooled_h", "h", 0.0, 240.0, [0.0, 12.0], optional=True),
        number("last_cooled_h", "h", 0.0, 240.0, [0.0, 12.0], optional=True),
        choice("drug_test", ["negative", "positive"], optional=True),
        number("somatic_cells_ml", "", 0.0, 100000000.0, optional=True),
        number("plate_count_ml", "", 0.0, 1000000000.0, optional=True),
    ],
    [
        output(
            "temperature", "key", "limit", headline="first", ends=as_read("milk_temp_c")
        ),
        output("somatic_cells", "key", "limit", ends=""),
        output("plate_count", "key", "limit", ends=""),
        output("drug_test", "key", "limit"),
        output("age", "key", "limit", ends="s"),
        output("cooling", "key", "limit", ends="s"),
    ],
    _milk_receipt,
    judges=True,
)
