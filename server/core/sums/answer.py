"""Answer one sum: gather its values, do its work, say what the answer rests on.

What was typed goes before what the make knows, and that before the recipe's
figure and the default. A formula that refuses says why in words that begin with
the field's name; here that becomes a problem, so that nothing ever crashes.
"""

from .outputs import declared
from .reading import read_given

# Strongest first. "secondary" is read in a source that quotes the first one,
# "setting" is this tool's own and to be agreed.
STATUSES = (
    "measured",
    "read",
    "secondary",
    "abstract",
    "derived",
    "setting",
    "practice",
    "memory",
)

# What the formulas call a value that a sum asks for under a longer name.
ALSO_CALLED = (
    ("target_c", "target_temp_c"),
    ("jacket_c", "jacket_temp_c"),
    ("start_c", "vat_temp_c"),
    ("vat_c", "vat_temp_c"),
    ("measured_c", "vat_temp_c"),
    ("water_c", "water_temp_c"),
    ("most_c", "water_most_c"),
    ("reference_c", "reference_temp_c"),
    ("ref_c", "reference_temp_c"),
    ("temp_c", "milk_temp_c"),
    ("temp_c", "brine_temp_c"),
    ("temps_c", "vat_temps"),
    ("temps_c", "curd_temps"),
    ("times_s", "vat_temps"),
    ("times_s", "ph_readings"),
    ("times_s", "curve"),
    ("curve_times_s", "curve"),
    ("curve_phs", "curve"),
    ("phs", "ph_readings"),
    ("ph", "target_ph"),
    ("milk_frac", "fat_frac"),
    ("added_frac", "added_fat_frac"),
    ("cream_frac", "added_fat_frac"),
    ("target_frac", "target_fat_frac"),
    ("salt_frac", "brine_salt_frac"),
    ("brine_frac", "brine_salt_frac"),
    ("wanted_frac", "wanted_salt_frac"),
    ("wanted_frac", "wanted_moisture_frac"),
    ("gauge_pa", "gauge_kpa"),
    ("pressure_pa", "cheese_kpa"),
    ("face_area_m2", "diameter_m"),
    ("multiple", "floc_factor"),
    ("set_s", "floc_s"),
    ("target_s", "target_floc_s"),
    ("yield_frac", "cheese_kg"),
    ("yield_frac", "fat_frac"),
    ("cheese_kg", "milk_kg"),
    ("share", "fat_frac"),
    ("share", "weighings"),
    ("low_kg", "curd_low_kg"),
    ("value_kg", "curd_kg"),
    ("second_frac", "added_fat_frac"),
    ("drained_kg", "washes"),
    ("humidity_frac", "wet_c"),
    ("pressure_pa", "air_pressure_kpa"),
    ("pressure_pa", "moulds"),
    ("force_n", "gauge_kpa"),
    ("force_n", "weight_kg"),
    ("now_ms", "now_min"),
    ("moisture_frac", "cheese_moisture_frac"),
    ("fat_frac", "cheese_fat_frac"),
    ("salt_frac", "method"),
    ("brine_salt_frac", "method"),
    ("strength", "method"),
    ("salt", "sample_g"),
)


def answer(row: dict, given: dict, known: dict, rules: dict) -> dict:
    """Return the Answer to one sum.

    Args:
        row: the sum, see `rows.sum_row`.
        given: {input name: as `reading.read_given` takes it}.
        known: {input name: {"value", "low", "high", "typed", "from", "status",
            "source"}} that a make knows; only what is not given is taken.
        rules: {rule id: the rule}.

    Returns:
        {"key", "values", "rests_on", "status", "notes", "problems", "ask",
        "missing"}; values empty with problems or where something is missing.
    """
    found: dict = {
        "key": row["key"],
        "values": [],
        "rests_on": [],
        "status": None,
        "notes": [],
        "problems": [],
        "ask": [],
        "missing": [],
    }
    taken = _gather(row, given, known, found)
    if found["missing"] or found["problems"]:
        return found
    if row["judges"]:
        taken["rules"] = rules
    _work(row, taken, found)
    if found["values"]:
        found["status"] = weakest(found["rests_on"])
    return found


def weakest(rows: "list[dict]") -> str:
    """Return the weakest status among what an answer rests on.

    Args:
        rows: list of {"status"}.

    >>> weakest([{"status": "measured"}, {"status": "practice"}])
    'practice'
    """
    worst = 0
    for row in rows:
        worst = max(worst, STATUSES.index(row["status"]))
    return STATUSES[worst] if rows else "derived"


def _gather(row, given, known, found):
    taken: dict = {"ranges": {}, "typed": {}, "from": {}}
    for item in row["inputs"]:
        name = item["name"]
        taken[name] = None
        if given.get(name) is not None and not item["hidden"]:
            read = read_given(item, given[name])
            found["problems"].extend(read["problems"])
            found["ask"].extend(read["ask"])
            source = {"from": "typed", "status": "measured", "source": None}
            _take(taken, found, item, read["value"], source)
            taken["typed"][name] = read["typed"]
        elif known.get(name) is not None:
            _take(taken, found, item, known[name]["value"], known[name])
        elif item["default"] is not None:
            source = {"from": "default"}
            source.update(item["default"])
            _take(taken, found, item, source["value"], source)
        elif not item["optional"]:
            found["missing"].append(name)
    return taken


def _take(taken, found, item, value, source):
    name = item["name"]
    if value is None:
        return
    taken[name] = value
    taken["from"][name] = source["from"]
    if source.get("typed") is not None:
        taken["typed"][name] = source["typed"]
    if source.get("low") is not None and source.get("high") is not None:
        taken["ranges"][name] = [source["low"], source["high"]]
    if not item["hidden"]:
        found["rests_on"].append(
            {
                "name": name,
                "value": value,
                "unit": item["unit"],
                "from": source["from"],
                "status": source["status"],
                "source": source["source"],
            }
        )


def _work(row, taken, found):
    try:
        done = row["work"](taken)
    except ValueError as error:
        problem = problem_of(str(error))
        problem["field"] = _input_name(row, problem["field"])
        found["problems"].append(problem)
        return
    except ArithmeticError as error:
        # A divisor of nothing, or a number past all measure: say it plainly.
        text = "%s cannot be worked out from these values: %s" % (row["key"], error)
        found["problems"].append(
            {
                "field": row["key"],
                "key": "not_computable",
                "limit": None,
                "value": None,
                "text": text,
            }
        )
        return
    found["values"] = declared(done["values"], row["outputs"], taken)
    found["notes"] = done["notes"]
    found["missing"] = done["missing"]
    # What nobody typed and the chosen way does without is nothing to rest on.
    kept = []
    for told in found["rests_on"]:
        if told["from"] == "typed" or told["name"] not in done["unused"]:
            kept.append(told)
    found["rests_on"] = kept + done["rests"]


def _input_name(row, field):
    names = [item["name"] for item in row["inputs"]]
    if field not in names:
        for called, name in ALSO_CALLED:
            if called == field and name in names:
                return name
    return field


def problem_of(text: str) -> dict:
    """Return the problem that a formula's refusal tells.

    Args:
        text: words that begin with the field's name and its value.

    Returns:
        {"field", "key", "limit", "value", "text"}; limit and value are numbers
        where the words give them.

    >>> problem_of("target_c 70 is beyond the jacket, 60")["limit"]
    60.0
    """
    words = text.split(" ")
    return {
        "field": words[0],
        "key": "impossible",
        "limit": _number(words[-1]) if len(words) > 2 else None,
        "value": _number(words[1]) if len(words) > 1 else None,
        "text": text,
    }


def _number(word):
    try:
        number = float(word.strip(",;:()"))
    except ValueError:
        return None
    return number if abs(number) <= 1e300 else None
