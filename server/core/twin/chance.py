"""A small seeded generator: the same draws on server and phone.

Each purpose draws from a stream of its own name, so that a fault put into one part
leaves the noise of all others as it was, and two makes differ by the fault alone.
"""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Stream

WORD = 0xFFFFFFFF
FNV_START, FNV_TIMES = 2166136261, 16777619  # FNV-1a of 32 bits; by its authors


def stream(seed: int, name: str) -> "Stream":
    """Return a stream of draws of its own.

    Args:
        seed: any whole number.
        name: what it is drawn for.
    """
    word = FNV_START
    for byte in (str(seed) + " " + name).encode():
        word = ((word ^ byte) * FNV_TIMES) & WORD
    # Seeds that differ by a digit are stirred apart (the finish of MurmurHash3).
    word = ((word ^ (word >> 16)) * 0x85EBCA6B) & WORD
    word = ((word ^ (word >> 13)) * 0xC2B2AE35) & WORD
    return {"word": (word ^ (word >> 16)) or 1}


def bits(of: "Stream") -> int:
    """Draw 32 bits, never all of them 0.

    Source: Marsaglia, Xorshift RNGs, J Stat Softw 8(14), 2003: the 13, 17, 5 triple
        (from memory; tested to be even and without a short period).

    Args:
        of: a stream; it moves on.
    """
    word = of["word"]
    word ^= (word << 13) & WORD
    word ^= word >> 17
    word ^= (word << 5) & WORD
    of["word"] = word
    return word


def between(of: "Stream", low: float, high: float) -> float:
    """Draw a number from a range, each part of it as likely.

    Args:
        of: a stream; it moves on.
        low: least.
        high: most.
    """
    return low + (high - low) * (bits(of) / (WORD + 1.0))


def normal(of: "Stream") -> float:
    """Draw from the normal spread about 0 with standard deviation 1.

    Source: Box and Muller 1958.

    Args:
        of: a stream; it moves on by two.
    """
    far = math.sqrt(-2.0 * math.log(bits(of) / (WORD + 1.0)))
    return far * math.cos(2.0 * math.pi * bits(of) / (WORD + 1.0))


def delay_s(of: "Stream", low_s: float, usual_s: float, high_s: float) -> float:
    """Draw how late a person is: a triangle with its peak at what is usual.

    Args:
        of: a stream; it moves on.
        low_s: never sooner [s].
        usual_s: most often [s].
        high_s: never later [s].

    Returns:
        The delay [s].
    """
    width_s = high_s - low_s
    if width_s <= 0.0:
        return low_s
    share, peak = between(of, 0.0, 1.0), (usual_s - low_s) / width_s
    if share < peak:
        return low_s + width_s * math.sqrt(share * peak)
    return high_s - width_s * math.sqrt((1.0 - share) * (1.0 - peak))


def uuid(of: "Stream", at_ms: int) -> str:
    """Return a UUID of version 7 (RFC 9562) from a stream.

    Args:
        of: a stream; it moves on.
        at_ms: instant in its first 48 bits [ms].
    """
    words = [bits(of) for _ in range(3)]
    text = "%012x%08x%08x%08x" % (at_ms, words[0], words[1], words[2])
    # The version and the variant take the place of four and of two random bits.
    variant = "89ab"[words[0] & 3]
    return "%s-%s-7%s-%s%s-%s" % (
        text[:8],
        text[8:12],
        text[13:16],
        variant,
        text[17:20],
        text[20:32],
    )
