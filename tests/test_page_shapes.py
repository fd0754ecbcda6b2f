"""What the core answers is what the page's checker takes it for."""

import ast
import json
import re
import subprocess
from pathlib import Path

import pytest

from demo import seed
from deploy import page_shapes
from server.config import read_rules
from server.core import desk
from server.core.alarm import alarms, sound
from tests.conftest import CREAMERY_MS as NOW_MS

ROOT = Path(__file__).resolve().parent.parent
TSC = ROOT / "tests" / "web" / "node_modules" / ".bin" / "tsc"
HOUR_MS = 3_600_000
# Of these a question answers a list.
LISTS = (
    "Tank",
    "Chart",
    "Answer",
    "SumRow",
    "SumTopic",
    "Recorded",
    "LogLine",
)


def told(demo_creamery):
    """Return what the core answers of the demo, each under its shape."""
    _, makes, tank = demo_creamery
    recipe = json.loads(seed.RECIPE.read_text("utf-8"))
    events = [event for make in makes for event in make.events] + tank
    mine = desk.new()
    desk.set_rules(mine, read_rules())
    desk.take(mine, events)
    board = desk.board(mine, NOW_MS)
    yield "Board", board
    yield "Recipe", recipe
    yield "Recorded", events[:200]
    for make in board["makes"]:
        yield from told_of_make(mine, make["id"], recipe)
    yield "Tank", desk.tanks(mine, NOW_MS)
    yield "Chart", desk.trends(mine, recipe["id"])
    yield "SumTopic", desk.sums_topics(mine)
    yield "SumRow", desk.sums_catalogue(mine)
    yield "Answer", [desk.sum(mine, "scale_to_milk", {})]
    yield (
        "ClashesIf",
        desk.clashes_if(mine, recipe, "heat_treated", NOW_MS + HOUR_MS, NOW_MS),
    )
    rings = alarms.alarms(mine, NOW_MS + HOUR_MS, 600.0)
    yield "Alarms", rings
    memory = {"soundings": [], "ids": []}
    yield "Ring", sound.sounding(rings["alarms"], memory, NOW_MS)


def told_of_make(mine, make_id, recipe):
    view = desk.view(mine, make_id, NOW_MS)
    brief = [step for step in view["steps"] if not step["full"]]
    full = [desk.step(mine, make_id, step["key"], NOW_MS) for step in brief]
    yield "BriefStep[]", brief
    yield "View", {**view, "steps": [s for s in view["steps"] if s["full"]] + full}
    yield "Curve", desk.curve(mine, make_id, NOW_MS)
    yield "LogLine", desk.record(mine, make_id)
    for step in recipe["steps"]:
        yield "Answer", desk.step_sums(mine, make_id, step["key"], NOW_MS)


def checked(answers, folder):
    lines = []
    for place, (name, answer) in enumerate(answers):
        shape = name + "[]" if name in LISTS else name
        lines.append(f"const told{place}: {shape} = {json.dumps(answer)};")
    told_file = folder / "told.ts"
    told_file.write_text("\n".join([*lines, "export {};"]), "utf-8")
    shapes = [str(page_shapes.WRITTEN), str(page_shapes.WRITTEN.with_name("page.d.ts"))]
    strictly = ["--strict", "--noEmit", "--ignoreConfig", "--target", "es2022"]
    return subprocess.run(
        [TSC, *strictly, "--types", "", *shapes, told_file],
        capture_output=True,
        text=True,
        cwd=ROOT / "tests" / "web",
    )


def test_the_page_has_the_shapes_that_the_core_is_typed_with():
    written = page_shapes.WRITTEN.read_text("utf-8")
    assert written == page_shapes.shapes_text(), "run python deploy/page_shapes.py"


def test_a_shape_without_a_word_in_typescript_is_refused():
    strange = ast.parse("set[int]", mode="eval").body
    with pytest.raises(SystemExit, match=re.escape("set[int]")):
        page_shapes.type_of(strange)


@pytest.mark.skipif(not TSC.exists(), reason="npm ci --prefix tests/web fetches tsc")
def test_what_the_core_answers_has_the_shape_that_the_page_knows(
    demo_creamery, tmp_path
):
    done = checked(told(demo_creamery), tmp_path)
    assert done.returncode == 0, done.stdout


@pytest.mark.skipif(not TSC.exists(), reason="npm ci --prefix tests/web fetches tsc")
@pytest.mark.parametrize("change", [{"late_kg": 1}, {"clash_count": None}])
def test_a_field_that_the_page_does_not_know_so_is_told(
    demo_creamery, tmp_path, change
):
    name, board = next(told(demo_creamery))
    done = checked([(name, {**board, **change})], tmp_path)
    assert done.returncode != 0
    assert "late_kg" in done.stdout or "Type 'null'" in done.stdout
