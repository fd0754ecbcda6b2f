"""What a twin of a make holds and answers; it stays on the server."""

from collections.abc import Callable
from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.recipe import Recipe, RecipeStep


class Stream(TypedDict):
    """A stream of draws."""

    word: int


class Vat(TypedDict):
    """Heat of the vat: contents, jacket, air space, and what steers them."""

    milk_c: float
    jacket_c: float
    air_c: float
    cp_j_k: float
    supply: Literal["off", "hot", "cold"]
    aim_c: float | None
    air_aim_c: float | None


class Acid(TypedDict):
    """Bacteria and what they made; amounts belong to all contents or all curd."""

    ph: float
    cells: float
    ready: float
    casein_mol: float
    soluble_mol: float
    lactate_mol: float


class Clot(TypedDict):
    """Milk that clots: enzyme, hairs cut off, size of clumps, firmness."""

    enzyme: float
    calcium_g_kg: float
    cut_frac: float
    clump: float
    firm_frac: float


class Curd(TypedDict):
    """Grains and the whey between them."""

    solids_kg: float
    water_kg: float
    whey_kg: float
    lactose_kg: float
    whey_lactose_kg: float
    salt_kg: float
    grain_mm: float | None


class Wheels(TypedDict):
    """All wheels of one size; masses and layers are those of one wheel."""

    size: str
    count: int
    radius_m: float
    half_m: float
    solids_kg: float
    water_kg: list[float]
    salt_kg: list[float]
    temp_c: float
    closed_frac: float
    place: Literal["press", "brine", "store"]
    pressure_pa: float
    coated: bool
    turned_ms: int


class Instrument(TypedDict):
    """What an instrument adds to the truth, in the quantity's own unit."""

    offset: float
    noise: float
    step: float
    drift_per_day: float


class Person(TypedDict):
    """Who works, with which phone, where, and how late."""

    person: str
    device: str
    places: list[str]
    low_s: float
    usual_s: float
    high_s: float
    clock_off_ms: int
    told_off_ms: int


class Fault(TypedDict):
    """One thing that goes wrong, as data: a lever, where it is pulled, how far."""

    key: str
    lever: str
    where: NotRequired[dict[str, Any]]
    field: NotRequired[str]
    add: NotRequired[float]
    times: NotRequired[float]
    value: NotRequired[Any]
    after_s: NotRequired[float]
    for_s: NotRequired[float]
    act: NotRequired[dict[str, Any]]


class Twin(TypedDict):
    """The true state of a make."""

    now_ms: int
    start_ms: int
    seed: int
    plant: dict[str, float]
    milk: dict[str, Any]
    vat: Vat
    acid: Acid
    clot: Clot
    curd: Curd
    wheels: list[Wheels]
    where: Literal["tank", "vat", "table", "wheels"]
    water_c: float
    water_aim_c: float | None
    drained_l: float
    washed_l: float
    bed_kg: float
    gauge_kpa: dict[str, float]
    instruments: dict[str, Instrument]
    streams: dict[str, Stream]


class CourseRow(TypedDict):
    """The truth at an instant; what there is none of yet is None."""

    at_ms: int
    milk_c: float
    air_c: float
    ph: float
    firm_frac: float
    whey_kg: float
    moisture_frac: float
    salt_frac: dict[str, float]
    wheel_kg: dict[str, float]


class Asked(TypedDict):
    """A figure that the maker is told."""

    value: float
    unit: str


# (entries so far, now, step's key, name, size) -> what the maker is told, or None.
Told = Callable[[list[dict[str, Any]], int, str, str, str | None], Asked | None]


class Doing(TypedDict):
    """A step that a maker has in hand."""

    step: RecipeStep
    begun_ms: int
    hot_ms: int | None
    floc_ms: int | None
    words: int


class Maker(TypedDict):
    """A maker at work: what is planned, in hand, over and written down."""

    twin: Twin
    recipe: Recipe
    plan: dict[str, Any]
    people: list[Person]
    faults: list[Fault]
    told: Told | None
    agenda: list[list[Any]]
    doing: dict[str, Doing]
    done: dict[str, int]
    doses_ms: dict[str, int]
    seen: dict[str, float]
    asked: int
    seqs: dict[str, int]
    boots: dict[str, str]
    make: str
    events: list[dict[str, Any]]
    course: list[CourseRow]
    stopped: bool


class Play(TypedDict):
    """A whole make: what people wrote down, the true course, where it ended."""

    events: list[dict[str, Any]]
    course: list[CourseRow]
    twin: Twin
