"""What the makes before teach of a vat."""

import uuid

from tests.core.builders import MAKE
from tests.core.known.making import Make


def test_a_vat_fills_and_its_time_constant_with_it(ask):
    def heating(make, step_make, litres):
        made = Make("heat", "heat_forecast", make=make, milk_l=litres)
        made.run("heat", step_make)
        made.read("jacket_temp_c", 70.0, step_make, step="heat")
        for place, temp_c in enumerate((32.0, 33.4, 34.7, 35.9)):
            made.read("milk_temp_c", temp_c, step_make + 2 * place, step="heat")
        return made

    earlier = heating(str(uuid.UUID(int=9)), -3000, 500.0)
    earlier.add("step_ended", -2900, step="heat")
    make = heating(MAKE, 5, 1000.0)
    (row,) = make.answers(ask, 12, others=[earlier])
    (told,) = [item for item in row["rests_on"] if item["name"] == "tau_s"]
    # Between once and twice the earlier one; 3.9 K of 38 in 6 min is 55.5 min.
    assert 55 * 60 < told["value"] < 2 * 56 * 60


def test_an_earlier_make_without_a_jacket_teaches_no_time_constant(ask):
    earlier = Make("heat", "heat_forecast", make=str(uuid.UUID(int=9)))
    earlier.run("heat", -3000, -2900)
    for place, temp_c in enumerate((32.0, 33.4, 34.7, 35.9)):
        earlier.read("milk_temp_c", temp_c, -3000 + 2 * place, step="heat")
    make = Make("heat", "heat_forecast").run("heat", 5)
    make.read("milk_temp_c", 32.0, 6, step="heat")
    known = make.known(ask, 7, others=[earlier])
    assert "tau_s" not in known
