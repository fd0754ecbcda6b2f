"""What every row of the table of kinds must say."""

from server.core.log.kinds import columns
from server.core.log.kinds.table import KINDS
from server.core.recipe.steps.judgements import JUDGEMENTS
from server.core.units.quantities import QUANTITIES


def test_each_kind_says_what_it_touches_in_known_words():
    words = {
        value
        for name, value in vars(columns).items()
        if name.isupper() and isinstance(value, str)
    }
    for kind, row in KINDS.items():
        assert row["touches"], kind
        assert set(row["touches"]) <= words, kind
        names = [field["name"] for field in row["fields"]]
        assert row["topic"] is None or row["topic"] in names, kind
        if columns.STEP in row["touches"]:
            assert "step" in names, kind
        # What is about another entry touches what that does, and nothing besides.
        if columns.ABOUT in row["touches"]:
            assert row["touches"] == (columns.ABOUT,), kind
    assert set(columns.READ_TOUCHES) <= set(QUANTITIES)


def test_a_look_at_the_curd_is_what_recipes_may_ask_for():
    (judged,) = [
        field
        for field in KINDS["curd_judged"]["fields"]
        if field["name"] == "judgement"
    ]
    assert judged["choices"] == JUDGEMENTS
