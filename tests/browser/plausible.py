"""Figures that a cheesemaker might type for each input of each sum; all invented."""

# input: (text, unit); a choice: its word; a table: rows of texts, "" left out.
TYPED = {
    "milk_l": ("520", "L"), "milk_kg": ("520", "kg"), "fat_frac": ("3.8", "%"),
    "milk_temp_c": ("6", "C"), "milk_age_h": ("14", "h"), "drug_test": "negative",
    "somatic_cells_ml": ("180000", ""), "plate_count_ml": ("20000", ""),
    "alkali_ml": ("1.6", "mL"), "acidity_frac": ("16", "dornic"),
    "target_fat_frac": ("3.2", "%"), "added_fat_frac": ("0.1", "%"),
    "protein_frac": ("3.4", "%"), "target_temp_c": ("38", "C"),
    "vat_temps": [("0", "6"), ("10", "14"), ("20", "21"), ("30", "26.5")],
    "jacket_temp_c": ("45", "C"), "tau_s": ("40", "min"), "vat_temp_c": ("31", "C"),
    "contents_kg": ("520", "kg"), "time_s": ("20", "h"), "thermometer": "C",
    "brined_s": ("20", "h"), "store_thermometer": "C",
    "milk_temps": [("0", "63.2", "68", "63"), ("1", "63.4", "68", "")],
    "pack_units": ("50", ""), "dose_units_per_l": ("0.1", ""),
    "dose_ratio": ("1.5", ""), "strength_imcu_per_ml": ("200", "IMCU/mL"),
    "floc_s": ("14", "min"), "target_floc_s": ("12", "min"),
    "settings": [("40", "16"), ("50", "13"), ("60", "11")],
    "given_imcu_per_l": ("45", "IMCU/L"),
    "rennet_ml": ("130", "mL"), "form": "solution", "solution_frac": ("33", "%"),
    "solution_density_kg_l": ("1.33", "kg/L"), "target_ph": ("6.2", "pH"),
    "ph_readings": [("0", "6.6"), ("60", "6.52"), ("120", "6.4")],
    "curd_temps": [("0", "32"), ("60", "36"), ("120", "38")],
    "vat_now_c": ("36", "C"),
    "water_temp_c": ("60", "C"), "vat_kg": ("350", "kg"), "added_kg": ("10", "kg"),
    "water_kg": ("80", "kg"), "aqueous_kg": ("500", "kg"),
    "washes": [("170", "120"), ("90", "100")], "gauge_kpa": ("250", "kPa"),
    "bore_m": ("63", "mm"), "diameter_m": ("250", "mm"), "height_m": ("90", "mm"),
    "cheese_kpa": ("30", "kPa"), "moulds": [("250", "1"), ("180", "2")],
    "weight_kg": ("12", "kg"), "weight_arm_m": ("90", "cm"),
    "plate_arm_m": ("20", "cm"), "wheels": [("4.5",), ("4.4",)],
    "length_m": ("1200", "mm"), "width_m": ("500", "mm"), "curd_kg": ("56", "kg"),
    "laid_on_kg": ("20", "kg"), "large_kg": ("4.5", "kg"),
    "sizes": [("4.5",), ("1",)], "cheese_kg": ("52", "kg"), "ripe_kg": ("4.2", "kg"),
    "filled_kg": ("4.6", "kg"), "method": "baume", "baume": ("18.5", "Baume"),
    "volume_l": ("600", "L"), "brine_salt_frac": ("19", "%"),
    "wanted_salt_frac": ("20", "%"), "cheese_salt_frac": ("1.8", "%"),
    "brine_ph": ("5.3", "pH"), "cheese_ph": ("5.25", "pH"), "brine_kg": ("600", "kg"),
    "dry_c": ("13", "C"), "wet_c": ("12", "C"), "start_kg": ("4.4", "kg"),
    "now_kg": ("4.2", "kg"), "days": ("30", "d"),
    "store_own_days": ("28", "d"), "milk_is": "raw",
    "weighings": [("1", "0.5"), ("8", "1.4"), ("22", "2.9")],
    "store_temps": [("0", "12"), ("1440", "12.5"), ("2880", "11.8")],
    "curing_temps": [("0", "12"), ("1440", "12.5"), ("2880", "11.8")],
    "cheese_moisture_frac": ("41", "%"), "cheese_fat_frac": ("29", "%"),
    "standard": "gouda", "milk_was": "raw", "cured_days": ("70", "d"),
    "slow_mark": "ph_at_6_h_washed", "ph": ("5.6", "pH"), "at_h": ("6", "h"),
    "made_from": "raw", "counts": [("200",), ("90",)],
    "makes": [(one,) for one in "6.41 6.38 6.43 6.4 6.39 6.42 6.37 6.44 6.3".split()],
}  # fmt: skip
# What these sums do without: it says the same thing twice, or another way.
LEFT_OUT = {
    "brine_top_up": ["brine_kg"],
    "brine_time": ["wanted_salt_frac"],
    "wash_drain": ["water_kg", "vat_temp_c", "target_temp_c"],
    "heat_forecast": ["tau_s"],
}


def given_for(row):
    """Return what a person might have typed for a sum, as the page keeps it."""
    found = {}
    for item in row["inputs"]:
        told = TYPED.get(item["name"])
        if told is None or item["name"] in LEFT_OUT.get(row["key"], []):
            continue
        if item["kind"] == "choice":
            if not item["default"]:
                found[item["name"]] = {"value": told}
        elif item["kind"] == "series":
            found[item["name"]] = _table(item, told)
        elif item["default"] is None or row["key"] == "brine_top_up":
            found[item["name"]] = {"typed": told[0], "unit": told[1], "sure": True}
    return found


def _table(item, rows):
    names = [column["name"] for column in item["columns"]]
    units = [unit for column in item["columns"] for unit in column["units"]]
    unit = next((one for one in ("C", "%", "mm", "kg") if one in units), "")
    cells = [
        {name: cell for name, cell in zip(names, row, strict=False) if cell}
        for row in rows
    ]
    return {"rows": cells, "unit": unit, "sure": True}
