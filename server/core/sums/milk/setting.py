"""When milk will flocculate at a dose, by the creamery's own settings."""

from ...formulas.milk import setting
from ..outputs import note, output, result, value
from ..rows import number, series, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


DOSE = number("given_imcu_per_l", "IMCU/L", 1.0, 500.0, [20.0, 80.0])
# With fewer, a make that was odd shifts the line and nothing shows it.
ENOUGH = 4


def _setting_own(x: "Inputs") -> "Worked":
    settings = _by_dose(x["settings"])
    own = setting.fit_setting(
        [dose for dose, _ in settings], [set_s for _, set_s in settings]
    )
    notes = [] if len(x["settings"]) >= ENOUGH else [note("few_settings", n=ENOUGH)]
    if own["delay_s"] < 0.0:
        # No dose sets milk before it is in: the makes differed in more than dose.
        own = {"work": _mean_work(settings), "delay_s": 0.0}
        notes.append(note("settings_differ"))
    expected_s = setting.setting_s(x["given_imcu_per_l"], own["work"], own["delay_s"])
    return result(
        [value("set_s", expected_s), value("own_delay_s", own["delay_s"])], notes
    )


def _by_dose(rows: "list[dict[str, float]]") -> "list[tuple[float, float]]":
    """Return (dose, setting time [s]) by dose, makes of one dose as their mean."""
    times: "dict[float, list[float]]" = {}
    for row in rows:
        times.setdefault(row["given_imcu_per_l"], []).append(row["set_min"] * 60.0)
    return [(dose, sum(times[dose]) / len(times[dose])) for dose in sorted(times)]


def _mean_work(settings: "list[tuple[float, float]]") -> float:
    return sum(dose * set_s for dose, set_s in settings) / len(settings)


ROWS = [
    sum_row(
        "setting_own",
        "ingredients",
        [
            series("settings", [DOSE, number("set_min", "min", 1.0, 240.0)], 2),
            DOSE,
        ],
        [output("set_s", "s", headline=True), output("own_delay_s", "s")],
        _setting_own,
        called={
            "doses_imcu_per_l": "settings",
            "settings_s": "settings",
            "times_s": "settings",
            "work": "settings",
            "delay_s": "settings",
            "dose_imcu_per_l": "given_imcu_per_l",
        },
    ),
]
