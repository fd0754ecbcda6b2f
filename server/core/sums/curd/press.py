"""The press: from gauge to cheese and back, the programme, levers and stacks."""

from ...formulas.curd import press
from ...units.table import convert
from ..outputs import note, output, rests, result, value
from ..rows import default, number, series, sum_row
from ..wheel_inputs import DIAMETER
from . import bed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


# Programme for a washed-curd wheel: pressure on the cheese [kPa], from and to, and for
# how long [s]. Round figures of our own; two accounts of farm presses lie within: 5, 8
# and 10 times the wheel's mass, half an hour each, and 14 then 28 kPa.
PROGRAMME = (
    ("press_1", 5.0, 10.0, 1800.0),
    ("press_2", 10.0, 20.0, 3600.0),
    ("press_3", 20.0, 40.0, None),
)
OURS = "press_programme_of_our_own"
GAUGE = number("gauge_kpa", "kPa", 0.0, 2000.0, [10.0, 900.0])
BORE = number("bore_m", "m", 0.005, 1.0, [0.02, 0.3])
CYLINDERS = number(
    "cylinder_count",
    "",
    1,
    50,
    None,
    default(1, "practice", "one_cylinder"),
    count=True,
)
LEVER = number(
    "lever_ratio",
    "",
    0.1,
    50.0,
    [0.5, 20.0],
    default(1.0, "practice", "cylinder_straight_on_plate"),
)
EFFICIENCY = number(
    "efficiency_frac",
    "fraction",
    0.3,
    1.0,
    [0.7, 1.0],
    default(1.0, "practice", "no_friction_counted"),
)
DEAD = number(
    "dead_weight_kg",
    "kg",
    0.0,
    2000.0,
    [0.0, 100.0],
    default(0.0, "practice", "plate_follower_not_counted"),
)
BESIDE = number(
    "side_by_side",
    "",
    1,
    200,
    None,
    default(1, "practice", "one_wheel_or_in_series"),
    count=True,
)


def _force(x: "Inputs") -> float:
    return press.cylinder_force_n(
        convert(x["gauge_kpa"], "kPa", "Pa"),
        x["bore_m"],
        x["cylinder_count"],
        x["lever_ratio"],
        x["efficiency_frac"],
    )


def _press_pressure(x: "Inputs") -> "Worked | None":
    force = _force(x)
    area = press.circle_area_m2(x["diameter_m"])
    on_cheese = press.cheese_pressure_pa(
        force, x["dead_weight_kg"], area, x["side_by_side"]
    )
    return result(
        [value("force_n", force), value("cheese_kpa", convert(on_cheese, "Pa", "kPa"))],
        [note("gauge_is_not_cheese_pressure")],
    )


def _gauge_kpa(x: "Inputs", cheese_kpa: float, diameter_m: float, beside: int) -> float:
    gauge_pa = press.gauge_for_pressure_pa(
        convert(cheese_kpa, "kPa", "Pa"),
        x["dead_weight_kg"],
        press.circle_area_m2(diameter_m),
        beside,
        x["bore_m"],
        x["cylinder_count"],
        x["lever_ratio"],
        x["efficiency_frac"],
    )
    return convert(gauge_pa, "Pa", "kPa")


def _press_gauge(x: "Inputs") -> "Worked | None":
    gauge = _gauge_kpa(
        x,
        x["cheese_kpa"],
        x["diameter_m"],
        x["side_by_side"],
    )
    return result([value("gauge_kpa", gauge)])


def _press_programme(x: "Inputs") -> "Worked":
    values, sources = [], []
    for mould in x["moulds"]:
        for key, low, high, time_s in PROGRAMME:
            ends = [
                _gauge_kpa(x, end, mould["diameter_m"], mould["side_by_side"])
                for end in (low, high)
            ]
            # Gauge and cheese pressure go in step, so their middles do too.
            told: "list[tuple[str, Any, Any, Any]]" = [
                ("gauge_kpa", (ends[0] + ends[1]) / 2.0, ends[0], ends[1]),
                ("cheese_kpa", (low + high) / 2.0, low, high),
            ]
            if time_s is not None:
                told.append(("time_s", time_s, None, None))
            across_m = mould["diameter_m"]
            for name, amount, least, most in told:
                values.append(value(name, amount, least, most, key, across_m=across_m))
    for key, low, high, _ in PROGRAMME:
        sources.append(
            rests(
                "cheese_kpa." + key,
                (low + high) / 2.0,
                "kPa",
                "practice",
                OURS,
            )
        )
    return result(values, [note("press_programme_of_our_own")], sources)


def _press_lever(x: "Inputs") -> "Worked":
    force = press.lever_force_n(x["weight_kg"], x["weight_arm_m"], x["plate_arm_m"])
    on_cheese = press.cheese_pressure_pa(
        force,
        x["dead_weight_kg"],
        press.circle_area_m2(x["diameter_m"]),
        x["side_by_side"],
    )
    return result(
        [value("force_n", force), value("cheese_kpa", convert(on_cheese, "Pa", "kPa"))]
    )


def _press_stack(x: "Inputs") -> "Worked | None":
    wheels = [wheel["wheel_kg"] for wheel in x["wheels"]]
    pressures_pa = press.stack_pressures_pa(
        _force(x), x["plate_kg"], wheels, press.circle_area_m2(x["diameter_m"])
    )
    return result(
        [
            value(
                "cheese_kpa",
                convert(pressures_pa[index], "Pa", "kPa"),
                of="wheel",
                nth=index + 1,
            )
            for index in range(len(pressures_pa))
        ]
    )


OWN = [
    sum_row(
        "press_pressure",
        "press",
        [GAUGE, BORE, CYLINDERS, LEVER, EFFICIENCY, DEAD, DIAMETER, BESIDE],
        [output("force_n", "N"), output("cheese_kpa", "kPa", headline=True)],
        _press_pressure,
        called={"gauge_pa": "gauge_kpa"},
        follows={"face_area_m2": "diameter_m", "force_n": "gauge_kpa"},
        by_size=True,
    ),
    sum_row(
        "press_gauge",
        "press",
        [
            number("cheese_kpa", "kPa", 0.0, 1000.0, [2.0, 200.0]),
            BORE,
            CYLINDERS,
            LEVER,
            EFFICIENCY,
            DEAD,
            DIAMETER,
            BESIDE,
        ],
        [output("gauge_kpa", "kPa", headline=True)],
        _press_gauge,
        called={"pressure_pa": "cheese_kpa"},
        follows={
            "face_area_m2": "diameter_m",
            "force_n": "cheese_kpa",
            "gauge_pa": "cheese_kpa",
        },
        by_size=True,
    ),
    sum_row(
        "press_programme",
        "press",
        [
            BORE,
            CYLINDERS,
            LEVER,
            EFFICIENCY,
            DEAD,
            series(
                "moulds",
                [
                    DIAMETER,
                    number("side_by_side", "", 1, 200, None, None, False, count=True),
                ],
                1,
            ),
        ],
        [
            output("gauge_kpa", "kPa", "band", headline=True),
            output("cheese_kpa", "kPa", "band"),
            output("time_s", "s"),
        ],
        _press_programme,
        called={"diameter_m": "moulds", "side_by_side": "moulds"},
        follows={
            "face_area_m2": "moulds",
            "force_n": "moulds",
            "gauge_pa": "moulds",
            "pressure_pa": "moulds",
        },
    ),
    sum_row(
        "press_lever",
        "press",
        [
            number("weight_kg", "kg", 0.0, 2000.0, [0.5, 200.0]),
            number("weight_arm_m", "m", 0.01, 10.0),
            number("plate_arm_m", "m", 0.01, 10.0),
            DEAD,
            DIAMETER,
            BESIDE,
        ],
        [output("force_n", "N"), output("cheese_kpa", "kPa", headline=True)],
        _press_lever,
        follows={"face_area_m2": "diameter_m", "force_n": "weight_kg"},
        by_size=True,
    ),
    sum_row(
        "press_stack",
        "press",
        [
            GAUGE,
            BORE,
            CYLINDERS,
            LEVER,
            EFFICIENCY,
            number(
                "plate_kg",
                "kg",
                0.0,
                200.0,
                None,
                default(0.0, "practice", "follower_not_counted"),
            ),
            DIAMETER,
            series("wheels", [number("wheel_kg", "kg", 0.05, 200.0)], 1),
        ],
        [output("cheese_kpa", "kPa", headline="first")],
        _press_stack,
        called={
            "dead_weight_kg": "plate_kg",
            "gauge_pa": "gauge_kpa",
            "wheel_kg": "wheels",
        },
        follows={"face_area_m2": "diameter_m", "force_n": "gauge_kpa"},
        by_size=True,
    ),
]
ROWS = OWN + bed.ROWS
