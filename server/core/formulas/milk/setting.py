"""When milk sets, and what the next dose should be."""

from ...numbers.bounds import require_above, require_at_least, require_within
from ...numbers.lines import weighted_line
from ...numbers.readings import require_series
from ...numbers.refused import require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


# Setting gets this many times faster per 10 K; low, usual, high. From memory
# (overall figure, 28 to 36 °C), so it shifts an expectation and decides nothing.
Q10_LOW, Q10_USUAL, Q10_HIGH = 2.0, 2.5, 3.0


def setting_s(dose_imcu_per_l: float, work: float, delay_s: float) -> float:
    """Return the setting time that a dose gives.

    Args:
        dose_imcu_per_l: rennet in the milk [IMCU/L]; above 0.
        work: dose times time that sets this milk [IMCU s/L]; above 0.
        delay_s: time that no dose can save [s]; 0 or more.

    Returns:
        Setting time [s].

    Raises:
        Refused: dose or work not above 0, or delay below 0.

    Source: McMahon & Brown, J Dairy Sci, time linear in the inverse of activity
        (Foltmann's form); with no delay it is Storch and Segelcke's.
    Valid: activities over a range of 1 to 140; without the delay, over 1 to 4.
    Check: work 240, delay 2, dose 20: 14.

    >>> setting_s(20, 240, 2)
    14.0
    """
    require_above("dose_imcu_per_l", dose_imcu_per_l, 0)
    require_above("work", work, 0)
    require_at_least("delay_s", delay_s, 0)
    return work / dose_imcu_per_l + delay_s


def fit_setting(
    doses_imcu_per_l: list[float], settings_s: list[float]
) -> dict[str, float]:
    """Return the work and delay that a creamery's own settings show.

    Args:
        doses_imcu_per_l: rennet in the milk of each make [IMCU/L]; above 0, rising.
        settings_s: setting time of each make [s]; two or more.

    Returns:
        {"work", "delay_s"}: as `setting_s` takes them.

    Raises:
        Refused: doses do not rise or pair, or more rennet did not set faster.

    Source: least squares of time on one over dose.
    Check: doses 10, 15, 20, 30, 40 with times 26, 18, 14, 10, 8: 240 and 2.

    >>> fit_setting([10, 15, 20, 30, 40], [26, 18, 14, 10, 8])["work"]
    240.0
    """
    count = len(doses_imcu_per_l)
    require(count > 0, "too_few", "doses_imcu_per_l", count, 2)
    require_above("doses_imcu_per_l", doses_imcu_per_l[0], 0)
    require_series(doses_imcu_per_l, "settings_s", settings_s, 2)
    inverses = [1 / dose for dose in doses_imcu_per_l]
    line = weighted_line(inverses, settings_s, [1] * len(inverses), 0, 0)
    require(line["slope"] > 0, "not_falling", "settings_s", settings_s)
    return {"work": line["slope"], "delay_s": line["y"] - line["slope"] * line["x"]}


def next_dose_factor(set_s: float, target_s: float, delay_s: float) -> float:
    """Return what to multiply the dose by so that the next make sets on time.

    Args:
        set_s: setting or flocculation time of this make [s]; above `delay_s`.
        target_s: time wanted [s]; above `delay_s`.
        delay_s: time that no dose can save [s]; 0 or more.

    Returns:
        Factor on the dose.

    Raises:
        Refused: a time not above the delay, or delay below 0.

    Source: as `setting_s`.
    Valid: same milk, temperature and pH; factors from 0.5 to 2.
    Check: 16 min, wanted 13, delay 2: 14/11 = 1.273.

    >>> next_dose_factor(960, 780, 120)
    1.273
    """
    require_at_least("delay_s", delay_s, 0)
    require_above("set_s", set_s, delay_s)
    require_above("target_s", target_s, delay_s)
    return (set_s - delay_s) / (target_s - delay_s)


def setting_time_factor(from_c: float, to_c: float) -> "dict[str, Any]":
    """Return what another temperature multiplies the setting time by.

    Args:
        from_c: temperature of the known setting time [°C]; 28 to 36.
        to_c: temperature asked about [°C]; 28 to 36.

    Returns:
        {"value", "low", "high"}: factor on the time; {"basis"}: "rennet.q10", a
        figure from memory.

    Raises:
        Refused: a temperature outside 28 to 36 °C.

    Source: Q10 of 2 to 3 for setting (from memory).
    Check: 30 to 32 °C: 0.871 with 2, 0.833 with 2.5, 0.803 with 3.

    >>> setting_time_factor(30, 32)["value"]
    0.833
    """
    require_within("from_c", from_c, 28, 36)
    require_within("to_c", to_c, 28, 36)
    power = (from_c - to_c) / 10
    ends = sorted([Q10_LOW**power, Q10_HIGH**power])
    return {
        "value": Q10_USUAL**power,
        "low": ends[0],
        "high": ends[1],
        "basis": "rennet.q10",
    }
