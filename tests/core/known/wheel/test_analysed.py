"""What wheels that were analysed teach."""

import uuid

import pytest

from tests.core.known.making import Make


def test_one_analysed_wheel_leaves_a_third_open(ask):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.2, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", 0.0175, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    make.read("brine_salt_frac", 0.2, 1)
    (row,) = make.answers(ask, 2, others=[earlier])
    time_s = next(v for v in row["values"] if v["name"] == "time_s")
    # Time goes with one over the diffusivity.
    assert time_s["high"] / time_s["value"] == pytest.approx(1.33, rel=1e-3)
    # 48 h gave 1.75 %: 2.0 % takes longer.
    assert time_s["value"] > 48 * 3600


@pytest.mark.parametrize("salt", [0.0, 0.1])
def test_a_wheel_that_cannot_be_teaches_nothing(ask, salt):
    earlier = Make("brine_large", "brine_time", make=str(uuid.UUID(int=9)))
    earlier.read("brine_salt_frac", 0.05, -8999)
    earlier.run("brine_large", -9000, -9000 + 2880)
    earlier.read("cheese_salt_frac", salt, -4000, place="large")
    make = Make("brine_large", "brine_time").run("brine_large", 0)
    (row,) = make.answers(ask, 2, others=[earlier])
    (told,) = [item for item in row["rests_on"] if item["name"] == "diffusion_m2_s"]
    assert told["from"] == "recipe"
