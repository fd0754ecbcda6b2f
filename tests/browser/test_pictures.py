"""Every screen looks as its kept picture: three sizes, two themes, three languages."""

import pytest

from tests.pictures import sheet
from tests.pictures.take import DAYS, KEPT, OtherLettersError, take


@pytest.mark.parametrize("day", DAYS)
def test_every_screen_looks_as_it_was_kept(play, tmp_path, program, ready, day):
    try:
        taken = take(play, tmp_path, program, ready, day)
    except OtherLettersError as others:
        pytest.skip(str(others))
    found = {}
    for name, cells in taken.items():
        sheet.save(tmp_path / f"{name}.png", cells)
        changed = sheet.changed(sheet.read(KEPT / f"{name}.png"), cells)
        if changed:
            found[name] = changed
    # What was meant is kept by `python -m tests.pictures.take`.
    assert found == {}, f"the screens as they look now lie in {tmp_path}"
