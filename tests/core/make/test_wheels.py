"""The wheels of a make: which sizes it has, and what they weigh."""

import pytest

from tests.core.builders import Phone, recipe
from tests.core.known.making import Make


def two_sizes():
    """Return the recipe with a small and a large mould."""
    made = recipe()
    (small,) = made["moulds"]
    made["moulds"] = [small, {**small, "size": "large", "title": {"en": "Large"}}]
    return made


def moulded(counts):
    """Return the events of a make with (planned, moulded) of small and large."""
    phone = Phone()
    named = list(zip(("small", "large"), counts, strict=False))
    moulds = [
        {"size": size, "count": planned}
        for size, (planned, _) in named
        if planned is not None
    ]
    events = [phone.opened(recipe=two_sizes(), moulds=moulds)]
    return events + [
        phone.event("wheels_moulded", 5, size=size, count=count)
        for size, (_, count) in named
        if count
    ]


@pytest.mark.parametrize(
    ("counts", "sizes"),
    [
        ([(30, 0), (2, 0)], ["small", "large"]),
        ([(30, 18), (0, 0)], ["small"]),
        ([(30, 18), (0, 1)], ["small", "large"]),  # moulded against the plan
        ([(None, 10), (None, 0)], ["small"]),
        ([(None, 0), (None, 0)], ["small", "large"]),
    ],
)
def test_the_sizes_of_a_make_are_those_planned_or_moulded(ask, counts, sizes):
    assert ask.one(moulded(counts), "make.wheels", "sizes_used") == sizes


def test_before_its_opening_a_make_has_no_sizes(ask):
    assert ask.one([], "make.wheels", "sizes_used") == []


def weighed(ask, counts, *weighings):
    phone = Phone(1)
    events = moulded(counts)
    for minute, (size, kg) in enumerate(weighings, 10):
        data = {"quantity": "wheel_mass_kg", "value": kg}
        events.append(
            phone.event(
                "reading_taken", minute, **data, **({"place": size} if size else {})
            )
        )
    return ask.one(events, "make.wheels", "cheese_kg")


def test_all_wheels_weigh_the_count_times_the_mean_of_each_size(ask):
    told = weighed(
        ask, [(20, 20), (9, 9)], ("small", 1.38), ("small", 1.42), ("large", 8.0)
    )
    assert told == pytest.approx(20 * 1.4 + 9 * 8.0)


def test_a_size_moulded_and_not_weighed_leaves_the_whole_unknown(ask):
    assert weighed(ask, [(20, 20), (9, 9)], ("small", 1.4)) is None


def test_a_weighing_without_a_size_is_of_the_only_one_moulded(ask):
    # Planned two, moulded one: there is no other wheel to have weighed.
    assert weighed(ask, [(20, 0), (9, 12)], (None, 8.0)) == pytest.approx(96.0)
    assert weighed(ask, [(20, 20), (9, 9)], (None, 8.0)) is None


@pytest.mark.parametrize(
    ("quantity", "value", "suggested"),
    [
        ("milk_volume_l", 500.0, [10, 4]),  # half of 1000 L: half the moulds
        ("milk_volume_l", 975.0, [20, 9]),  # within 3 %: as planned
        ("milk_volume_l", 940.0, [18, 8]),  # 18.8 and 8.5 moulds: what can be full
        ("milk_mass_kg", 515.0, [10, 4]),  # 500 L at 1.03 kg/L
    ],
)
def test_the_moulds_follow_the_milk_that_came(ask, quantity, value, suggested):
    moulds = [{"size": "small", "count": 20}, {"size": "large", "count": 9}]
    make = Make("fill_moulds", moulds=moulds).run("receive", 1)
    make.read(quantity, value, 2, step="receive")
    make.add("step_ended", 3, step="receive").run("fill_moulds", 300)
    seen = ask.view(make.events, 301)
    (step,) = [row for row in seen["steps"] if row["key"] == "fill_moulds"]
    assert [row["suggested"] for row in step["moulds"]] == suggested
    assert [row["planned"] for row in step["moulds"]] == [20, 9]
    for size, count in zip(("small", "large"), suggested, strict=True):
        make.add("wheels_moulded", 302, step="fill_moulds", size=size, count=count)
    seen = ask.view(make.events, 303)
    (step,) = [row for row in seen["steps"] if row["key"] == "fill_moulds"]
    assert step["button"]["act"] == "end"
    make.add("step_ended", 330, step="fill_moulds")
    alerts = ask.view(make.events, 331)["alerts"]
    assert [row["key"] for row in alerts if "mould" in row["key"]] == []
