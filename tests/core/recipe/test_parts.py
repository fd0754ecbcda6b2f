"""A part of a recipe by its key."""

from tests.core.builders import recipe


def test_a_step_is_found_by_its_key(core):
    assert core("recipe.parts", "step_of", recipe(), "heat")["key"] == "heat"
    assert core("recipe.parts", "step_of", recipe(), "none") is None
    assert core("recipe.parts", "step_of", recipe(), None) is None


def test_a_mould_is_found_by_its_size(core):
    assert core("recipe.parts", "mould_of", recipe(), "small")["size"] == "small"
    assert core("recipe.parts", "mould_of", recipe(), "large") is None


def test_a_make_that_is_not_known_has_no_mould(core):
    assert core("recipe.parts", "mould_of", None, "small") is None
