"""How long the phone's interpreter takes for each sum, slowest first.

Not a test: machines differ. It asks each sum on the interpreter that the phone
runs, under Node.js, with values from the middle of each input's likely range,
and prints the median of several. A phone is four to six times slower.

Use: python -m tests.bench.sums_on_phone [--times 9]
"""

import argparse
import json
import statistics
import time
from pathlib import Path

from tests.conftest import Phone

RULES_DIR = Path(__file__).resolve().parents[2] / "server" / "rules"
HEAD = ("Sum", "Median ms", "Slowest ms", "Answers")
ROWS = 8  # readings in a table, as many as an hour of a make has


def rules():
    """Return the legal figures as the app hands them over."""
    found = [json.loads(path.read_text("utf-8")) for path in RULES_DIR.glob("*.json")]
    return {rule["id"]: rule for rule in found}


def likely(item, place=0):
    """Return a likely value of one input; the place-th row of a table falls a little.

    Args:
        item: the input's layout.
        place: row of a table.
    """
    if item["kind"] == "choice":
        return item["choices"][0]
    if item["name"] == "at_min":
        return 10.0 * place
    if item["name"] == "ph":
        return 6.6 - 0.04 * place
    low = item["low"] if item["ask_low"] is None else item["ask_low"]
    high = item["high"] if item["ask_high"] is None else item["ask_high"]
    share = 0.4 + 0.01 * place
    value = low + share * (high - low)
    return int(value) if item["kind"] == "count" else value


def given(row):
    """Return what is typed for a sum: all that it must have and has no default.

    Args:
        row: the sum's layout.
    """
    found = {}
    for item in row["inputs"]:
        if item["default"] is not None or item["optional"]:
            continue
        if item["kind"] == "series":
            rows = [
                {column["name"]: likely(column, place) for column in item["columns"]}
                for place in range(max(ROWS, int(item["low"])))
            ]
            found[item["name"]] = {"rows": rows}
        else:
            found[item["name"]] = {"value": likely(item)}
    for name, value in ASKED.get(row["key"], {}).items():
        found[name] = {"value": value} if not isinstance(value, dict) else value
    return found


# Values that only make sense together.
ASKED = {
    "heat_forecast": {"jacket_temp_c": 90.0, "target_temp_c": 63.0},
    "heat_time": {
        "vat_temp_c": 32,
        "target_temp_c": 38,
        "jacket_temp_c": 60,
        "tau_s": 2400,
    },
    "jacket_needed": {"vat_temp_c": 32, "target_temp_c": 38},
    "vat_time_constant": {"jacket_temp_c": 90.0},
    "milk_mass": {"milk_l": 1000.0},
    "standardise_fat": {"fat_frac": 0.04, "target_fat_frac": 0.03, "added_fat_frac": 0},
    "rennet_dose": {"strength_imcu_per_ml": 175},
    "acid_forecast": {
        "target_ph": 5.4,
        "ph_readings": {
            "rows": [{"at_min": 20.0 * n, "ph": 6.6 - 0.03 * n} for n in range(8)]
        },
    },
    "calcium_chloride": {"form": "dihydrate"},
    "wash_water": {"vat_temp_c": 31, "target_temp_c": 37, "water_temp_c": 60},
    "wash_rest": {
        "vat_kg": 700,
        "added_kg": 150,
        "vat_temp_c": 36,
        "target_temp_c": 37,
        "water_temp_c": 60,
    },
    "wash_temp": {
        "vat_kg": 700,
        "vat_temp_c": 31,
        "target_temp_c": 37,
        "water_kg": 200,
    },
    "lactose_left": {
        "aqueous_kg": 940,
        "washes": {"rows": [{"drained_kg": 300, "water_kg": 200}] * 2},
    },
    "press_gauge": {"cheese_kpa": 20, "bore_m": 0.063, "diameter_m": 0.3},
    "block_plan": {
        "curd_kg": 100,
        "length_m": 1.5,
        "width_m": 0.8,
        "large_kg": 8,
        "small_kg": 1.4,
    },
    "expected_yield": {"protein_frac": 0.033},
    "wheel_plan": {
        "curd_kg": 100,
        "curd_low_kg": 95,
        "curd_high_kg": 105,
        "sizes": {"rows": [{"wheel_kg": 8}, {"wheel_kg": 1.4}]},
    },
    "actual_yield": {"milk_kg": 1000, "cheese_kg": 100},
    "brine_strength": {"method": "baume", "baume": 19},
    "brine_top_up": {"brine_kg": 500, "brine_salt_frac": 0.19, "wanted_salt_frac": 0.2},
    "brine_make_up": {"brine_salt_frac": 0.2},
    "brine_time": {"brine_salt_frac": 0.2, "diameter_m": 0.3, "height_m": 0.108},
    "brine_factor": {
        "cheese_salt_frac": 0.018,
        "time_s": 172800,
        "diameter_m": 0.3,
        "height_m": 0.108,
        "brine_salt_frac": 0.2,
    },
    "humidity": {"dry_c": 13, "wet_c": 12},
    "weight_loss": {"start_kg": 8, "now_kg": 7.8},
    "loss_forecast": {
        "weighings": {
            "rows": [{"at_day": n, "loss_frac": 0.005 * n} for n in range(1, 9)]
        },
        "days": 20,
    },
    "composition": {"cheese_moisture_frac": 0.42, "cheese_fat_frac": 0.29},
}


def ask(phone, name, *args):
    """Ask the desk that the interpreter keeps, as the page does.

    Args:
        phone: the interpreter.
        name: a function of the core's desk.
        args: its arguments after the desk.
    """
    request = {"module": "desk", "name": name, "args": args, "desk": True}
    phone.process.stdin.write(json.dumps(request) + "\n")
    line = phone.lines.get(timeout=60)
    return json.loads(line)["ok"]


def measure(times):
    """Return what each sum took, slowest first, and what loading them all took.

    Args:
        times: how often each sum is asked.

    Returns:
        List of (key, median ms, slowest ms, what it answered), and ms.
    """
    phone = Phone()
    try:
        ask(phone, "set_rules", rules())
        begun = time.perf_counter()
        layout = ask(phone, "sums_catalogue")
        loaded_ms = (time.perf_counter() - begun) * 1000
        found = [one(phone, row, times) for row in layout]
    finally:
        phone.close()
    return sorted(found, key=lambda row: -row[1]), loaded_ms


def one(phone, row, times):
    """Return the figures of one sum.

    Args:
        phone: the interpreter.
        row: the sum's layout.
        times: how often it is asked.
    """
    asked = given(row)
    spans = []
    for _ in range(times):
        begun = time.perf_counter()
        answer = ask(phone, "sum", row["key"], asked)
        spans.append((time.perf_counter() - begun) * 1000)
    told = f"{len(answer['values'])} values"
    if answer["problems"] or answer["missing"]:
        texts = [problem["text"] for problem in answer["problems"]]
        told = "; ".join(texts or answer["missing"])
    return (row["key"], statistics.median(spans), max(spans), told)


def main():
    """Print the table."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("--times", type=int, default=9)
    rows, loaded_ms = measure(parser.parse_args().times)
    print(f"Loading all sums for the first time: {loaded_ms:.0f} ms\n")
    print(f"{HEAD[0]:<22}  {HEAD[1]:>9}   {HEAD[2]:>10}   {HEAD[3]}")
    for key, median_ms, slowest_ms, told in rows:
        print(f"{key:<22}  {median_ms:>9.1f}   {slowest_ms:>10.1f}   {told}")


if __name__ == "__main__":
    main()
