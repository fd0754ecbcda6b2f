"""A recipe as its author writes it and `recipe.check` checks it.

Most fields may be left out. What is not named here belongs to newer apps or to the
author, is read by nobody and stays as it is.
"""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.words import Words


class Binding(TypedDict):
    """Which value of which sum answers a figure; the first of several that it has."""

    sum: str
    value: str | list[str]
    size: NotRequired[str]
    of: NotRequired[str]
    band: NotRequired[Literal["estimate"]]


class Figure(TypedDict):
    """A figure of a recipe with its band, and how well it is known."""

    value: float
    unit: str
    low: NotRequired[float | None]
    high: NotRequired[float | None]
    source: str
    status: str
    note: NotRequired[str]
    by: NotRequired[Binding]
    range_of: NotRequired[Literal["recipe", "rule"]]


class OpenFigure(TypedDict):
    """A figure that the recipe leaves to the sum that it names."""

    value: None
    unit: str
    low: NotRequired[None]
    high: NotRequired[None]
    source: str
    status: str
    note: NotRequired[str]
    by: Binding


class RecipeEnd(TypedDict):
    """What ends a step: time, a person, a reading, the floc test, or the curd."""

    by: str
    quantity: NotRequired[str]
    at_least: NotRequired[Figure]
    at_most: NotRequired[Figure]
    judgement: NotRequired[list[str]]
    from_step: NotRequired[str]


class RecipeTarget(TypedDict):
    """What a quantity should be in a step."""

    quantity: str
    size: NotRequired[str | None]
    instead_of: NotRequired[str | None]
    when: NotRequired[Literal["end"] | None]
    figure: Figure | OpenFigure


When = Literal["begin", "during", "end"]


class RecipeReading(TypedDict):
    """A reading that a step wants: at its begin, during it or at its end."""

    quantity: str
    instead_of: NotRequired[str | None]
    when: When
    every_s: NotRequired[float | None]
    required: NotRequired[bool]


class RecipeDrift(TypedDict):
    """What to do where a step drifts in one way; of one matter of it, or of all."""

    form: str
    quantity: NotRequired[str]
    do: Words


class RecipeJudge(TypedDict):
    """What is judged of the curd, and from which part of the time on."""

    choices: list[str]
    from_frac: NotRequired[float]


class RecipeTurn(TypedDict):
    """How often wheels are turned, and until when."""

    every: Figure
    until: NotRequired[Figure]


Treatment = Literal["pasteurised", "heat_treated", "raw"]


class OwnHold(TypedDict):
    """A hold by the maker's own figures, in each unit by itself: "F" and "C"."""

    by: Literal["own"]
    temp: dict[str, Figure]
    air_rise: NotRequired[dict[str, Figure]]
    gap_max_s: Figure
    why: Words


class OwnCaution(TypedDict):
    """What a step itself has to say of one of its hazards."""

    hazard: str
    do: Words


class RecipeStep(TypedDict):
    """One step: what it waits on, how it ends, what is done, read and added."""

    key: str
    title: Words
    after: NotRequired[list[str]]
    end: RecipeEnd
    now: NotRequired[list[Words]]
    do: NotRequired[list[Words]]
    place: NotRequired[str]
    stage: NotRequired[str]
    round: NotRequired[int]
    rounds: NotRequired[int]
    lasts: NotRequired[Figure]
    targets: NotRequired[list[RecipeTarget]]
    readings: NotRequired[list[RecipeReading]]
    adds: NotRequired[list[str]]
    cautions: NotRequired[list[str]]
    own_cautions: NotRequired[list[OwnCaution]]
    drift: NotRequired[list[RecipeDrift]]
    judge: NotRequired[RecipeJudge]
    sums: NotRequired[list[str]]
    size: NotRequired[str]
    turns: NotRequired[list[RecipeTurn]]
    mould: NotRequired[bool]
    closes_day: NotRequired[bool]
    heat_treatment: NotRequired[bool | OwnHold]
    rule: NotRequired[str]
    choice: NotRequired[str]
    option: NotRequired[str]
    treatments: NotRequired[list[Treatment]]
    by_treatment: NotRequired[dict[str, dict[str, Any]]]


class RecipeOption(TypedDict):
    """One way of a choice, by the title of its first step."""

    option: str
    title: Words


class RecipeChoice(TypedDict):
    """Ways of a recipe of which one is gone; its usual one first."""

    choice: str
    options: list[RecipeOption]


class RecipeMould(TypedDict):
    """A size of wheel; its share of the milk where it is one of several."""

    size: str
    title: Words
    wheel_kg: Figure
    diameter_m: Figure
    height_m: Figure
    share_frac: Figure


class RecipeDose(TypedDict):
    """How much of an ingredient for how much milk."""

    per: str
    amount: Figure


class Ingredient(TypedDict):
    """What goes into the milk."""

    key: str
    title: Words
    unit: str
    dose: RecipeDose
    tolerance_frac: NotRequired[float]
    optional: NotRequired[bool]


class RecipeCurve(TypedDict):
    """The recipe's own pH over time, from the begin of a step on."""

    start_step: str
    times_s: list[float]
    phs: list[float]
    source: str
    status: str
    note: NotRequired[str]


class RecipeMilk(TypedDict):
    """The milk that a recipe is for."""

    unit: NotRequired[str]
    low_l: float
    high_l: float
    fat_frac: NotRequired[Figure]
    heat_class: NotRequired[str]
    treatments: NotRequired[list[Treatment]]
    usual_treatment: NotRequired[Treatment]


class RecipeStop(TypedDict):
    """What a gate stops; `when` limits it to words of its watcher."""

    what: str
    step: NotRequired[str]
    when: NotRequired[list[str]]


class RecipeInstead(TypedDict):
    """What is read where a gate's own quantity is not."""

    quantity: str
    least: NotRequired[Figure]


class RecipeGate(TypedDict):
    """What is waited for, where, and what it stops: see `recipe.check.gates`."""

    key: str
    watch: str
    step: str
    from_step: NotRequired[str]
    quantity: NotRequired[str]
    rule: NotRequired[str]
    row: NotRequired[str]
    window_s: NotRequired[Figure]
    instead: NotRequired[RecipeInstead]
    stops: list[RecipeStop]
    do: NotRequired[Words]


class Recipe(TypedDict):
    """A recipe; a make keeps the one that it was opened with."""

    schema: int
    id: str
    version: int
    title: Words
    about: NotRequired[Words]
    family: NotRequired[str]
    sources: dict[str, Any]
    milk: RecipeMilk
    yield_frac: Figure
    moulds: NotRequired[list[RecipeMould]]
    ingredients: NotRequired[list[Ingredient]]
    figures: NotRequired[dict[str, Figure]]
    steps: list[RecipeStep]
    curve: NotRequired[RecipeCurve]
    gates: NotRequired[list[RecipeGate]]
