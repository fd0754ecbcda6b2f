def test_a_circle_longer_than_the_phone_can_nest_calls_is_found(core):
    count = 400  # the phone's interpreter nests about 150 calls
    waits = {f"s{number}": [f"s{(number + 1) % count}"] for number in range(count)}
    order = [f"s{number}" for number in range(count)]
    assert core("recipe.steps.waits", "circular_waits", waits, order) == [order]


def test_a_long_line_of_steps_is_no_circle(core):
    count = 400
    waits = {f"s{number}": [f"s{number + 1}"] for number in range(count - 1)}
    waits[f"s{count - 1}"] = []
    order = [f"s{number}" for number in range(count)]
    assert core("recipe.steps.waits", "circular_waits", waits, order) == []
