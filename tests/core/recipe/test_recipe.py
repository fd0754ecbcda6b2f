import copy

import pytest


def figure(value, unit, low=None, high=None):
    return {
        "value": value,
        "low": low,
        "high": high,
        "unit": unit,
        "source": "PRACTICE",
        "status": "practice",
    }


def step(key, after, **more):
    made = {
        "key": key,
        "title": {"en": key},
        "do": [{"en": "Do it."}],
        "place": "vat",
        "after": after,
        "lasts": figure(600, "s", 300, 900),
        "end": {"by": "person"},
        "targets": [],
        "readings": [],
        "adds": [],
        "cautions": [],
        "drift": [],
    }
    made.update(more)
    return made


def mould(size, share):
    return {
        "size": size,
        "title": {"en": size},
        "wheel_kg": figure(2.0, "kg"),
        "diameter_m": figure(0.18, "m"),
        "height_m": figure(0.075, "m"),
        "share_frac": figure(share, "fraction"),
    }


def sound_recipe():
    heat_end = {
        "by": "reading",
        "quantity": "milk_temp_c",
        "at_least": figure(32, "C"),
    }
    return {
        "schema": 1,
        "id": "plain-wheel",
        "version": 1,
        "title": {"en": "Plain wheel"},
        "about": {"en": "For tests."},
        "family": "washed_curd",
        "sources": {"PRACTICE": {"title": "common practice", "status": "practice"}},
        "milk": {"unit": "L", "low_l": 100, "high_l": 500},
        "moulds": [mould("small", 0.4), mould("large", 0.6)],
        "yield_frac": figure(0.1, "fraction"),
        "ingredients": [
            {
                "key": "rennet",
                "title": {"en": "Rennet"},
                "dose": {"per": "kg_milk", "amount": figure(0.19, "mL/kg")},
                "unit": "mL",
                "tolerance_frac": 0.05,
                "optional": False,
            }
        ],
        "figures": {"floc_factor": figure(3, "multiple", 2.5, 3.5)},
        "steps": [
            step(
                "heat",
                [],
                end=heat_end,
                targets=[
                    {"quantity": "milk_temp_c", "figure": figure(32, "C", 31, 33)}
                ],
                readings=[
                    {"quantity": "milk_temp_c", "when": "during", "every_s": 300}
                ],
                cautions=["scald"],
                drift=[{"form": "time_late", "do": {"en": "Check the water."}}],
            ),
            step("rennet", ["heat"], adds=["rennet"]),
            step(
                "set",
                ["rennet"],
                end={"by": "floc", "from_step": "rennet"},
                judge={"choices": ["flocculated", "clean_break"], "from_frac": 0.85},
            ),
            step("cut", ["set"], end={"by": "judged", "judgement": ["even"]}),
            step("mould", ["cut"], place="table", end={"by": "time"}, mould=True),
            step("turn", ["mould"], place="press", closes_day=True),
        ],
    }


def follow(recipe, path):
    """Return the part that holds the last name of a path, and that name."""
    names = path.split("/")
    for name in names[:-1]:
        recipe = recipe[int(name) if isinstance(recipe, list) else name]
    last = names[-1]
    return recipe, int(last) if isinstance(recipe, list) else last


def changed(path, value):
    recipe = sound_recipe()
    part, name = follow(recipe, path)
    part[name] = value
    return recipe


def without(path):
    recipe = sound_recipe()
    part, name = follow(recipe, path)
    del part[name]
    return recipe


def test_a_sound_recipe_has_no_problem(core):
    assert core("recipe.recipe", "check_recipe", sound_recipe()) == []


CHANGED = [
    ("schema", 2, "schema", "wrong_schema", 1),
    ("schema", True, "schema", "wrong_schema", 1),
    ("id", "", "id", "missing", None),
    ("id", "x" * 61, "id", "too_long", 60),
    ("version", 0, "version", "below", 1),
    ("version", 1.5, "version", "not_whole", None),
    ("title", {"en": "  "}, "title.en", "missing", None),
    ("title", {"fr": "Meule"}, "title.en", "missing", None),
    ("about", {"fr": "Pour voir."}, "about.en", "missing", None),
    (
        "sources/PRACTICE/status",
        "heard",
        "sources.PRACTICE.status",
        "unknown_status",
        ["read", "abstract", "practice", "memory", "derived"],
    ),
    ("sources/PRACTICE/title", "", "sources.PRACTICE.title", "missing", None),
    ("sources/MORE", "a book", "sources.MORE", "not_a_mapping", None),
    ("milk", None, "milk", "missing", None),
    ("milk/low_l", "much", "milk.low_l", "not_a_number", None),
    ("milk/high_l", 50, "milk.high_l", "below", 100),
    ("milk/fat_frac", 0.04, "milk.fat_frac", "missing", None),
    ("moulds/0/share_frac/value", 0.5, "moulds", "shares_not_one", 1),
    ("moulds/0/size", "large", "moulds.large.size", "duplicate", "large"),
    ("moulds/0/title", {}, "moulds.small.title.en", "missing", None),
    ("moulds/0/wheel_kg/unit", "g", "moulds.small.wheel_kg.unit", "wrong_unit", ["kg"]),
    (
        "moulds/0/wheel_kg/range_of",
        "guess",
        "moulds.small.wheel_kg.range_of",
        "not_a_choice",
        ["recipe", "rule"],
    ),
    (
        "ingredients/0/dose/amount/by",
        {"sum": "rennet_dose", "value": "rennet_ml", "band": "wide"},
        "ingredients.rennet.dose.amount.by.band",
        "not_a_choice",
        ["estimate"],
    ),
    ("moulds", {"size": "small"}, "moulds", "not_a_list", None),
    ("ingredients/0/unit", "cup", "ingredients.rennet.unit", "unknown_unit", "cup"),
    ("ingredients/0/dose", 5, "ingredients.rennet.dose", "missing", None),
    (
        "ingredients/0/dose/per",
        "bucket",
        "ingredients.rennet.dose.per",
        "unknown",
        "bucket",
    ),
    (
        "ingredients/0/dose/per",
        "l_milk",
        "ingredients.rennet.dose.amount.unit",
        "wrong_unit",
        ["mL/L"],
    ),
    (
        "ingredients/0/tolerance_frac",
        1.5,
        "ingredients.rennet.tolerance_frac",
        "above",
        1,
    ),
    ("steps/1/adds", [], "ingredients.rennet", "never_added", None),
    ("steps/0/adds", ["lemon"], "steps.heat.adds", "unknown_ingredient", "lemon"),
    ("figures/more", figure(1, "ell"), "figures.more.unit", "unknown_unit", "ell"),
    (
        "steps/0/lasts/source",
        "HEARSAY",
        "steps.heat.lasts.source",
        "unknown_source",
        "HEARSAY",
    ),
    ("steps/0/lasts/source", "", "steps.heat.lasts.source", "missing", None),
    ("steps/0/lasts/unit", "ell", "steps.heat.lasts.unit", "unknown_unit", "ell"),
    ("steps/0/lasts/unit", "C", "steps.heat.lasts.unit", "wrong_unit", ["s"]),
    ("steps/0/lasts/value", "long", "steps.heat.lasts.value", "not_a_number", None),
    ("steps/0/lasts/low", 700, "steps.heat.lasts.low", "above", 600),
    ("steps/0/lasts/high", 500, "steps.heat.lasts.high", "below", 600),
    ("steps/0/lasts", figure(-1, "s"), "steps.heat.lasts.value", "below", 0),
    ("steps/0/title", {"en": ""}, "steps.heat.title.en", "missing", None),
    ("steps/0/do/0", {"en": ""}, "steps.heat.do.0.en", "missing", None),
    ("steps/0/do", [], "steps.heat.do", "missing", None),
    ("steps/0/now", [{"fr": "Chauffez."}], "steps.heat.now.0.en", "missing", None),
    (
        "steps/0/now",
        [{"en": "Heat to {end/at_least}.", "fr": "Chauffez à {target/ph}."}],
        "steps.heat.now.0.fr",
        "unknown",
        "target/ph",
    ),
    ("steps/0/drift/0/do", {}, "steps.heat.drift.0.do.en", "missing", None),
    ("steps/0/drift/0/form", "moon", "steps.heat.drift.0.form", "unknown", "moon"),
    ("steps/0/drift/0", "wait", "steps.heat.drift.0", "not_a_mapping", None),
    ("steps/0/place", "barn", "steps.heat.place", "unknown_place", "barn"),
    ("steps/0/place", None, "steps.heat.place", "missing", None),
    ("steps/0/cautions", ["bees"], "steps.heat.cautions", "unknown_caution", "bees"),
    (
        "steps/0/own_cautions",
        [{"hazard": "bees", "do": {"en": "Run."}}],
        "steps.heat.own_cautions.0.hazard",
        "unknown_caution",
        "bees",
    ),
    (
        "steps/0/own_cautions",
        [{"hazard": "scald"}],
        "steps.heat.own_cautions.0.do.en",
        "missing",
        None,
    ),
    (
        "steps/0/own_cautions",
        ["scald"],
        "steps.heat.own_cautions.0",
        "not_a_mapping",
        None,
    ),
    ("steps/0/round", 0, "steps.heat.round", "below", 1),
    ("steps/0/rounds", 2.5, "steps.heat.rounds", "not_whole", None),
    ("steps/0/after", ["milk"], "steps.heat.after", "unknown_step", "milk"),
    ("steps/0/after", [["rennet"]], "steps.heat.after", "unknown_step", ["rennet"]),
    ("steps/0/after", "rennet", "steps.heat.after", "not_a_list", None),
    ("steps/0/after", ["heat"], "steps", "circular_wait", ["heat"]),
    ("steps/0/end", "soon", "steps.heat.end", "missing", None),
    ("steps/0/end", {"by": "moon"}, "steps.heat.end.by", "unknown_end", "moon"),
    (
        "steps/0/end/quantity",
        "mood",
        "steps.heat.end.quantity",
        "unknown_quantity",
        "mood",
    ),
    (
        "steps/0/end/at_least/unit",
        "K",
        "steps.heat.end.at_least.unit",
        "wrong_unit",
        ["C"],
    ),
    ("steps/4/lasts", None, "steps.mould.lasts", "missing", None),
    ("steps/3/end/judgement", [], "steps.cut.end.judgement", "missing", None),
    (
        "steps/3/end/judgement",
        ["nice"],
        "steps.cut.end.judgement",
        "unknown_judgement",
        "nice",
    ),
    (
        "steps/2/end/from_step",
        "brew",
        "steps.set.end.from_step",
        "unknown_step",
        "brew",
    ),
    (
        "steps/0/targets/0/quantity",
        "mood",
        "steps.heat.targets.mood.quantity",
        "unknown_quantity",
        "mood",
    ),
    (
        "steps/0/targets/0/figure/unit",
        "pH",
        "steps.heat.targets.milk_temp_c.figure.unit",
        "wrong_unit",
        ["C"],
    ),
    (
        "steps/0/readings/0/quantity",
        "mood",
        "steps.heat.readings.mood.quantity",
        "unknown_quantity",
        "mood",
    ),
    (
        "steps/0/readings/0/when",
        "later",
        "steps.heat.readings.milk_temp_c.when",
        "unknown",
        "later",
    ),
    (
        "steps/0/readings/0/every_s",
        0,
        "steps.heat.readings.milk_temp_c.every_s",
        "below",
        1,
    ),
    (
        "steps/2/judge/choices",
        ["nice"],
        "steps.set.judge.choices",
        "unknown_judgement",
        "nice",
    ),
    ("steps/2/judge/from_frac", 2, "steps.set.judge.from_frac", "above", 1),
    ("steps/2/judge", "often", "steps.set.judge", "not_a_mapping", None),
    ("steps/4/closes_day", True, "steps.turn.closes_day", "more_than_one", 1),
]


@pytest.mark.parametrize(("path", "value", "field", "key", "limit"), CHANGED)
def test_a_broken_recipe_names_the_one_problem(core, path, value, field, key, limit):
    found = core("recipe.recipe", "check_recipe", changed(path, value))
    assert found == [{"field": field, "key": key, "limit": limit}]


def test_without_steps_the_rennet_has_nowhere_to_go(core):
    assert core("recipe.recipe", "check_recipe", changed("steps", [])) == [
        {"field": "steps", "key": "missing", "limit": None},
        {"field": "ingredients.rennet", "key": "never_added", "limit": None},
    ]


def test_without_figures_the_cut_cannot_be_timed(core):
    assert core("recipe.recipe", "check_recipe", changed("figures", [])) == [
        {"field": "figures", "key": "not_a_mapping", "limit": None},
        {"field": "figures.floc_factor", "key": "missing", "limit": None},
    ]


@pytest.mark.parametrize(
    ("path", "field"),
    [
        ("id", "id"),
        ("title", "title.en"),
        ("sources", "sources"),
        ("yield_frac", "yield_frac"),
        ("yield_frac/unit", "yield_frac.unit"),
        ("yield_frac/source", "yield_frac.source"),
        ("yield_frac/status", "yield_frac.status"),
        ("moulds/1/height_m", "moulds.large.height_m"),
        ("steps/0/end/quantity", "steps.heat.end.quantity"),
        ("steps/0/end/at_least", "steps.heat.end.at_least"),
        ("steps/0/targets/0/figure", "steps.heat.targets.milk_temp_c.figure"),
        ("steps/2/end/from_step", "steps.set.end.from_step"),
        ("steps/3/end/judgement", "steps.cut.end.judgement"),
        ("steps/5/key", "steps.5.key"),
        ("figures", "figures.floc_factor"),
        ("figures/floc_factor", "figures.floc_factor"),
    ],
)
def test_what_is_missing_is_named(core, path, field):
    found = core("recipe.recipe", "check_recipe", without(path))
    assert found == [{"field": field, "key": "missing", "limit": None}]


def test_moulds_may_be_left_out_only_when_none_are_filled(core):
    recipe = without("moulds")
    found = core("recipe.recipe", "check_recipe", recipe)
    assert found == [{"field": "moulds", "key": "missing", "limit": None}]
    del recipe["steps"][4]["mould"]
    assert core("recipe.recipe", "check_recipe", recipe) == []


@pytest.mark.parametrize(
    "path",
    [
        "about",
        "ingredients/0/tolerance_frac",
        "steps/0/cautions",
        "steps/0/drift",
        "steps/0/targets",
        "steps/0/readings",
        "steps/0/readings/0/every_s",
        "steps/2/judge",
        "steps/2/judge/from_frac",
        "steps/5/closes_day",
    ],
)
def test_what_is_optional_may_be_left_out(core, path):
    assert core("recipe.recipe", "check_recipe", without(path)) == []


def test_shares_written_as_thirds_are_accepted(core):
    recipe = sound_recipe()
    recipe["moulds"] = [mould("a", 0.33), mould("b", 0.33), mould("c", 0.33)]
    assert core("recipe.recipe", "check_recipe", recipe) == []


def test_two_steps_with_one_key_are_found(core):
    recipe = sound_recipe()
    recipe["steps"].append(step("turn", ["mould"]))
    found = core("recipe.recipe", "check_recipe", recipe)
    assert found == [{"field": "steps.turn.key", "key": "duplicate", "limit": "turn"}]


def test_an_ingredient_defined_twice_is_found(core):
    recipe = sound_recipe()
    recipe["ingredients"].append(copy.deepcopy(recipe["ingredients"][0]))
    found = core("recipe.recipe", "check_recipe", recipe)
    assert found == [
        {"field": "ingredients.rennet.key", "key": "duplicate", "limit": "rennet"}
    ]


def test_a_target_may_be_given_per_litre_of_milk(core):
    target = {"quantity": "whey_drained_l", "figure": figure(0.3, "L/L")}
    recipe = changed("steps/0/targets", [target])
    assert core("recipe.recipe", "check_recipe", recipe) == []


def test_steps_that_wait_in_a_circle_are_named_in_order(core):
    recipe = changed("steps/1/after", ["heat", "cut"])
    found = core("recipe.recipe", "check_recipe", recipe)
    # rennet waits on cut, cut on set, set on rennet; mould and turn only wait
    # behind the circle and are not part of it.
    circle = ["rennet", "cut", "set"]
    assert found == [{"field": "steps", "key": "circular_wait", "limit": circle}]


def test_two_separate_circles_are_both_found(core):
    recipe = sound_recipe()
    recipe["steps"].append(step("dry", ["coat"]))
    recipe["steps"].append(step("coat", ["dry"]))
    recipe["steps"].append(step("store", ["store"]))
    found = core("recipe.recipe", "check_recipe", recipe)
    assert [problem["limit"] for problem in found] == [["dry", "coat"], ["store"]]
    assert {problem["key"] for problem in found} == {"circular_wait"}


def test_a_recipe_over_256_kib_is_refused(core):
    recipe = changed("about", {"en": "x" * 263000})
    found = core("recipe.recipe", "check_recipe", recipe)
    assert found == [{"field": "recipe", "key": "too_large", "limit": 262144}]


def test_letters_of_two_bytes_count_twice(core):
    recipe = changed("remarks", "é" * 132000)
    found = core("recipe.recipe", "check_recipe", recipe)
    assert [problem["key"] for problem in found] == ["too_large"]
    assert core("recipe.recipe", "check_recipe", changed("remarks", "e" * 132000)) == []


@pytest.mark.parametrize("value", [None, 7, "recipe", [], [{}]])
def test_what_is_not_a_recipe_is_refused(core, value):
    found = core("recipe.recipe", "check_recipe", value)
    assert found == [{"field": "recipe", "key": "not_a_mapping", "limit": None}]


@pytest.mark.parametrize("value", [None, 7, "x", [], [7], {}, {"x": 7}, True])
def test_any_part_may_be_nonsense_and_is_still_answered(core, value):
    paths = [
        *sound_recipe(),
        *(f"steps/0/{name}" for name in sound_recipe()["steps"][0]),
    ]
    for path in paths:
        for problem in core("recipe.recipe", "check_recipe", changed(path, value)):
            assert set(problem) == {"field", "key", "limit"}


def test_all_problems_are_told_at_once(core):
    recipe = changed("schema", 9)
    recipe["steps"][0]["place"] = "barn"
    recipe["yield_frac"]["source"] = "HEARSAY"
    fields = [
        problem["field"] for problem in core("recipe.recipe", "check_recipe", recipe)
    ]
    assert fields == ["schema", "yield_frac.source", "steps.heat.place"]


def test_a_figure_per_litre_is_scaled_to_the_make(core):
    # 0.30 L whey a litre, 500 L of milk: 150 L (by hand)
    whey = figure(0.3, "L/L", 0.25, None)
    scaled = core("recipe.own", "scaled_figure", whey, 500)
    assert scaled["unit"] == "L"
    assert scaled["value"] == pytest.approx(150.0, rel=1e-12)
    assert scaled["low"] == pytest.approx(125.0, rel=1e-12)
    assert scaled["high"] is None
    assert (scaled["source"], scaled["status"]) == ("PRACTICE", "practice")


def test_any_other_figure_is_left_as_it_is(core):
    heat = figure(32, "C", 31, 33)
    assert core("recipe.own", "scaled_figure", heat, 500) == heat
