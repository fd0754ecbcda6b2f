"""The README's pictures: there, small, and what the screen showed."""

import re
import struct
import zlib

import pytest

from demo.screenshots import LARGEST_BYTES
from demo.small_png import MOST_COLOURS, small
from tests.conftest import ROOT

NAMED = re.findall(
    r"\((demo/screenshots/[\w-]+\.png)\)", (ROOT / "README.md").read_text("utf-8")
)
SIGNATURE = bytes([0x89]) + b"PNG\r\n\x1a\n"


def chunk(name, data):
    check = struct.pack(">I", zlib.crc32(name + data))
    return struct.pack(">I", len(data)) + name + data + check


def png(wide, high, kind, rows):
    head = struct.pack(">IIBBBBB", wide, high, 8, kind, 0, 0, 0)
    data = zlib.compress(bytes(rows))
    return SIGNATURE + chunk(b"IHDR", head) + chunk(b"IDAT", data) + chunk(b"IEND", b"")


def dots(picture):
    """Read a picture of numbered colours as rows of (red, green, blue)."""
    parts, at = {}, len(SIGNATURE)
    while at < len(picture):
        (length,) = struct.unpack(">I", picture[at : at + 4])
        parts[picture[at + 4 : at + 8]] = picture[at + 8 : at + 8 + length]
        at += length + 12
    wide, high = struct.unpack(">II", parts[b"IHDR"][:8])
    colours, raw = parts[b"PLTE"], zlib.decompress(parts[b"IDAT"])
    found = []
    for row in range(high):
        numbers = raw[row * (wide + 1) + 1 : (row + 1) * (wide + 1)]
        found.append([tuple(colours[3 * n : 3 * n + 3]) for n in numbers])
    return found


# By hand: five rows of (10, 20, 30), (12, 24, 36), each written with another
# filter of the PNG specification, part 9: none, left, above, mean, Paeth.
FILTERED = [
    *(0, 10, 20, 30, 12, 24, 36),
    *(1, 10, 20, 30, 2, 4, 6),
    *(2, 0, 0, 0, 0, 0, 0),
    # mean of left and above: (0 + 10) // 2 = 5, then (10 + 12) // 2 = 11
    *(3, 5, 10, 15, 1, 2, 3),
    # Paeth: above for the first dot; for the second 10 + 12 - 10 = 12, above
    *(4, 0, 0, 0, 0, 0, 0),
]


def test_a_small_picture_shows_what_the_large_one_showed():
    shown = dots(small(png(2, 5, 2, FILTERED)))
    assert shown == [[(10, 20, 30), (12, 24, 36)]] * 5


def test_the_commonest_colours_stay_exact_and_rare_ones_become_the_nearest():
    rows = []
    for shade in range(MOST_COLOURS):
        rows += [0, shade, 0, 0, shade, 0, 0]
    rows += [0, 7, 1, 0, 7, 0, 0]  # a colour too many, once
    shown = dots(small(png(2, MOST_COLOURS + 1, 2, rows)))
    assert shown[:-1] == [[(shade, 0, 0)] * 2 for shade in range(MOST_COLOURS)]
    assert shown[-1] == [(7, 0, 0)] * 2


def test_a_picture_of_another_kind_is_refused():
    with pytest.raises(ValueError, match="not read here"):
        small(png(1, 1, 0, [0, 7]))


def test_the_readme_names_pictures():
    assert len(NAMED) >= 4


@pytest.mark.parametrize("name", NAMED)
def test_each_picture_of_the_readme_lies_there_and_is_small(name):
    picture = (ROOT / name).read_bytes()
    assert picture.startswith(SIGNATURE)
    assert len(picture) <= LARGEST_BYTES
