"""Sheets of small grey pictures, one cell a screen, and how two of them differ.

A sheet holds what a person tells screens apart by, where things lie and how dark they
are, at a fifth of the size: small enough to live in the repository, and blind to
how one machine rounds the edge of a letter.
"""

import io
import json

import numpy as np
from PIL import Image, PngImagePlugin

SHRUNK = 5  # times, each way
COLUMNS = 8
STEP = 17  # between two of the sixteen greys that are kept
FAR = 40  # of 255: a dot this much lighter or darker is another
MOST_FRAC = 0.004  # of a cell's dots that may be others
NAMES = "names"


def shrunk(png):
    """Return a screenshot as it stands on a sheet.

    Args:
        png: bytes of the screenshot.
    """
    grey = Image.open(io.BytesIO(png)).convert("L").reduce(SHRUNK)
    return grey.point(lambda level: round(level / STEP) * STEP)


def save(path, cells):
    """Write a sheet.

    Args:
        path: of the file.
        cells: pictures of one size by the name of their screen.
    """
    wide, high = next(iter(cells.values())).size
    rows = -(-len(cells) // COLUMNS)
    sheet = Image.new("L", (COLUMNS * wide, rows * high))
    for at, cell in enumerate(cells.values()):
        sheet.paste(cell, (at % COLUMNS * wide, at // COLUMNS * high))
    words = PngImagePlugin.PngInfo()
    words.add_text(NAMES, json.dumps(list(cells)))
    few = sheet.quantize(256 // STEP + 1, dither=Image.Dither.NONE)
    few.save(path, optimize=True, pnginfo=words)


def read(path):
    """Return the cells of a sheet that `save` wrote.

    Args:
        path: of the file.
    """
    with Image.open(path) as sheet:
        names = json.loads(sheet.text[NAMES])
        grey = sheet.convert("L")
    wide, high = grey.width // COLUMNS, grey.height // -(-len(names) // COLUMNS)
    corners = [(at % COLUMNS * wide, at // COLUMNS * high) for at in range(len(names))]
    return {
        name: grey.crop((x, y, x + wide, y + high))
        for name, (x, y) in zip(names, corners, strict=True)
    }


def other_frac(one, two):
    """Return the fraction of dots in which two pictures differ; 1 for other sizes.

    Args:
        one: a picture.
        two: another.
    """
    if one.size != two.size:
        return 1.0
    levels = [np.asarray(picture, dtype=int) for picture in (one, two)]
    return float(np.mean(np.abs(levels[0] - levels[1]) > FAR))


def changed(kept, taken):
    """Return the screens that look otherwise than they were kept, with how much.

    Args:
        kept: pictures by the name of their screen.
        taken: likewise, as they look now.

    Returns:
        {name: fraction of its dots}, 1 where it is on one side alone.
    """
    either = dict.fromkeys([*kept, *taken])
    by_name = {
        name: other_frac(kept[name], taken[name])
        if name in kept and name in taken
        else 1.0
        for name in either
    }
    return {name: frac for name, frac in by_name.items() if frac > MOST_FRAC}
