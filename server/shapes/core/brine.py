"""The account of a brine tank."""

from typing import TypedDict

from server.shapes.core.words import Bar, Keyed, ValueProblem

_From = TypedDict("_From", {"from": str})


class TankMeasured(TypedDict):
    """The last reading of a tank's strength, as typed too."""

    id: str
    at_ms: int
    value: float
    typed: str | None
    typed_unit: str | None


class WaterSaltRatio(_From):
    """Water given off for salt taken up: the room's own figure or the usual one."""

    value: float
    low: float
    high: float
    status: str


class BrineBand(TypedDict):
    """The working range of a brine's strength, and where this brine lies in it."""

    low_frac: float
    high_frac: float
    bar: Bar


class TankLoad(TypedDict):
    """Wheels in a brine tank; `out_ms` None while they are in it.

    Of those still inside, `time` is how much of their days is over, `uptake` how much
    of the salt that they will have taken by then; None where that is not known.
    """

    id: str
    make: str
    size: str
    wheels: int
    mass_kg: float
    in_ms: int
    due_ms: int | None
    out_ms: int | None
    out_kg: float | None
    basis: str | None
    salt_kg: float
    water_kg: float
    salt_due_kg: float | None
    time: Bar | None
    uptake: Bar | None


class Tank(TypedDict):
    """A brine tank: what is in it by the account, and what it wants."""

    id: str
    name: str
    opened_ms: int
    mass_kg: float
    salt_kg: float
    salt_frac: float
    temp_c: float | None
    measured: TankMeasured | None
    drift_frac: float | None
    water_salt_ratio: WaterSaltRatio
    loads: list[TankLoad]
    wanted_frac: float
    band: BrineBand | None
    salt_to_add_kg: float | None
    water_to_add_kg: float | None
    outside: list[ValueProblem]
    notes: list[Keyed]
