"""Make a picture of a screen small: few colours, one byte a dot.

Only what Chromium writes is read: 8 bits a channel, red, green, blue, not
interlaced. Layout and filters after the PNG specification (W3C, third edition).
"""

import struct
import zlib
from collections import Counter

SIGNATURE = b"\x89PNG\r\n\x1a\n"
CHANNELS = 3
MOST_COLOURS = 256


def _chunks(png):
    at = len(SIGNATURE)
    while at < len(png):
        (length,) = struct.unpack(">I", png[at : at + 4])
        yield png[at + 4 : at + 8], png[at + 8 : at + 8 + length]
        at += length + 12


def _chunk(name, data):
    check = struct.pack(">I", zlib.crc32(name + data))
    return struct.pack(">I", len(data)) + name + data + check


def _paeth(left, above, corner):
    guess = left + above - corner
    by_left, by_above = abs(guess - left), abs(guess - above)
    by_corner = abs(guess - corner)
    if by_left <= by_above and by_left <= by_corner:
        return left
    return above if by_above <= by_corner else corner


PREDICTED = (
    lambda left, above, corner: 0,
    lambda left, above, corner: left,
    lambda left, above, corner: above,
    lambda left, above, corner: (left + above) // 2,
    _paeth,
)


def _rows(raw, row_bytes):
    """Yield each row of a picture with its filter undone."""
    before = bytes(row_bytes)
    for at in range(0, len(raw), row_bytes + 1):
        predicted = PREDICTED[raw[at]]
        row = bytearray(raw[at + 1 : at + 1 + row_bytes])
        for i in range(row_bytes):
            left = row[i - CHANNELS] if i >= CHANNELS else 0
            corner = before[i - CHANNELS] if i >= CHANNELS else 0
            row[i] = (row[i] + predicted(left, before[i], corner)) & 255
        before = bytes(row)
        yield before


def _nearest(colour, colours):
    return min(
        range(len(colours)),
        key=lambda at: sum(
            (one - other) ** 2 for one, other in zip(colour, colours[at], strict=True)
        ),
    )


def small(png):
    """Return a picture with at most 256 colours.

    Args:
        png: bytes of the picture.

    Raises:
        ValueError: it is of another kind than what Chromium writes.
    """
    parts = list(_chunks(png))
    wide, high, *kind = struct.unpack(">IIBBBBB", parts[0][1])
    if kind != [8, 2, 0, 0, 0]:
        raise ValueError(f"this kind of PNG is not read here: {kind}")
    raw = zlib.decompress(b"".join(data for name, data in parts if name == b"IDAT"))
    dots = [
        [row[i : i + CHANNELS] for i in range(0, len(row), CHANNELS)]
        for row in _rows(raw, wide * CHANNELS)
    ]
    counted = Counter(dot for row in dots for dot in row)
    # What is seen most stays as it is; the rest are shades at the edges of letters.
    colours = [colour for colour, _ in counted.most_common(MOST_COLOURS)]
    number = {colour: _nearest(colour, colours) for colour in counted}
    packed = b"".join(bytes([0, *(number[dot] for dot in row)]) for row in dots)
    return b"".join(
        [
            SIGNATURE,
            _chunk(b"IHDR", struct.pack(">IIBBBBB", wide, high, 8, 3, 0, 0, 0)),
            _chunk(b"PLTE", b"".join(colours)),
            _chunk(b"IDAT", zlib.compress(packed, 9)),
            _chunk(b"IEND", b""),
        ]
    )
