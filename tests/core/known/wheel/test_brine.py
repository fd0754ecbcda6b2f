"""What a make knows of its brine."""

import uuid
from types import SimpleNamespace

import pytest

from tests.core.builders import MAKE, Phone
from tests.core.known.making import Make


def test_the_brine_around_the_wheels_is_known_by_its_tank(ask):
    tank = Phone(make=str(uuid.UUID(int=11)), device=1)
    events = [
        tank.event("tank_opened", 0, name="Tank", mass_kg=800.0, salt_frac=0.2),
        tank.event(
            "tank_loaded",
            10,
            load_make=MAKE,
            size="large",
            wheels=10,
            mass_kg=80.0,
        ),
    ]
    make = Make("brine_large", "brine_check").run("brine_large", 10)
    make.read("brine_ph", 5.3, 11).read("ph", 5.35, 5)

    class Other:
        pass

    other = Other()
    other.events = events
    known = make.known(ask, 12, others=[other])
    assert known["brine_kg"] == pytest.approx(800, abs=1)
    assert known["cheese_ph"] == 5.35
    assert "brine_kg" not in make.known(ask, 12)


def tank_with_ratio(number, ratio, minute, load_make=None):
    tank = Phone(make=str(uuid.UUID(int=number)), device=1)
    events = [tank.event("tank_opened", 0, name="Tank", mass_kg=800.0, salt_frac=0.2)]
    if load_make is not None:
        wheels = {"size": "large", "wheels": 4, "mass_kg": 32.0}
        events.append(tank.event("tank_loaded", 1, load_make=load_make, **wheels))
    reading = {"quantity": "water_salt_ratio", "value": ratio}
    events.append(tank.event("reading_taken", minute, **reading))
    return SimpleNamespace(events=events)


def test_the_rooms_own_water_for_salt_serves_its_brining(ask):
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    assert "water_salt_ratio" not in make.known(ask, 40)
    usual = make.value(ask, 40, "loss_frac")
    other = tank_with_ratio(11, 1.2, 30)
    assert make.known(ask, 40, others=[other])["water_salt_ratio"] == 1.2
    # Less water out for the same salt: less is lost.
    assert make.value(ask, 40, "loss_frac", others=[other]) < usual
    # The tank that the wheels went into goes before a newer one.
    mine = tank_with_ratio(12, 1.6, 20, MAKE)
    assert make.known(ask, 40, others=[other, mine])["water_salt_ratio"] == 1.6
    # And the make's own before both.
    make.read("water_salt_ratio", 1.9, 2)
    assert make.known(ask, 40, others=[other, mine])["water_salt_ratio"] == 1.9


def test_own_wheels_are_read_with_the_rooms_own_water_for_salt(ask):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.2, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", 0.0175, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    given = {"wanted_salt_frac": {"value": 0.0175}}
    for tanks in ([], [tank_with_ratio(11, 1.2, 30)]):
        # Asked for the very salt that 48 h gave, it gives 48 h back, whatever goes out.
        told = make.value(ask, 40, "time_s", given=given, others=[earlier, *tanks])
        assert told == pytest.approx(48 * 3600, rel=1e-6)
