"""What the readings of a warming vat say about when it will be there.

1. Ask for the jacket temperature, or remember it. Left free, a handful of
   readings cannot tell it from the time constant, and forecasts run minutes
   wrong.
2. Readings count only when taken after stirring: settled curd warms slowly at
   the centre and fast at the wall.
3. Keep the time constant of each vat and fill, and hand it in as the prior:
   two or three readings alone say little.
"""

import math

from ...numbers.bounds import require_above
from ...numbers.lines import reach, robust_line, weighted_line
from ...numbers.readings import require_series
from ...numbers.refused import require
from .heat import require_towards_jacket

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def fit_tau(
    times_s: list[float], temps_c: list[float], jacket_c: float
) -> dict[str, float]:
    """Return the time constant that readings show, by a log-linear line.

    Args:
        times_s: time of each reading [s]; rising, two or more.
        temps_c: vat temperature, stirred [°C]; all on one side of the jacket.
        jacket_c: jacket temperature, steady [°C].

    Returns:
        {"tau_s", "start_c"}: time constant and temperature at time 0.

    Raises:
        Refused: a reading at or beyond the jacket, or no movement towards it.

    Source: regression of ln(gap) on time.
    Check: 32.0, 33.4, 34.7, 35.9, 37.1, 38.2 °C each 2 min, jacket 60 °C: tau
        40.01399 min.

    >>> temps_c = [32.0, 33.4, 34.7, 35.9, 37.1, 38.2]
    >>> fit_tau([0, 120, 240, 360, 480, 600], temps_c, 60)["tau_s"] / 60
    40.01399
    """
    gaps = _log_gaps(times_s, temps_c, jacket_c, 2)
    line = weighted_line(times_s, gaps, [1] * len(gaps), 0, 0)
    at_zero = line["y"] - line["slope"] * line["x"]
    return _tau_and_start(at_zero, line["slope"], temps_c[0], jacket_c)


def fit_tau_robust(
    times_s: list[float], temps_c: list[float], jacket_c: float
) -> dict[str, float]:
    """Return the time constant that readings show, unmoved by one bad reading.

    Args:
        times_s: time of each reading [s]; rising, two or more.
        temps_c: vat temperature, stirred [°C]; all on one side of the jacket.
        jacket_c: jacket temperature, steady [°C].

    Returns:
        {"tau_s", "start_c"}: time constant and temperature at time 0.

    Raises:
        Refused: a reading at or beyond the jacket, or no movement towards it.

    Source: Theil-Sen line through ln(gap) against time.
    Check: `fit_tau`'s readings with the fourth 2 K too high: tau stays near
        40 min, where `fit_tau` says 38.1.

    >>> temps_c = [32.0, 33.4, 34.7, 37.9, 37.1, 38.2]
    >>> fit = fit_tau_robust([0, 120, 240, 360, 480, 600], temps_c, 60)
    >>> abs(fit["tau_s"] / 60 - 40) < 0.3
    True
    """
    gaps = _log_gaps(times_s, temps_c, jacket_c, 2)
    at_zero, slope = robust_line(times_s, gaps)
    return _tau_and_start(at_zero, slope, temps_c[0], jacket_c)


def forecast(
    times_s: list[float],
    temps_c: list[float],
    target_c: float,
    jacket_c: float,
    reading_sd_k: float,
    prior: "dict[str, float] | None",
) -> "dict[str, Any]":
    """Return when a vat will reach its target, from the readings so far.

    A weighted line through ln(gap), drawn to the time constant known for this
    vat and fill; Fieller's range, so it may have no upper end. Readings far off
    the robust line are set aside and named.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: vat temperature, stirred [°C]; all on one side of the jacket.
        target_c: vat temperature wanted [°C]; short of the jacket.
        jacket_c: jacket temperature, steady [°C].
        reading_sd_k: standard deviation of one reading [K]; above 0.
        prior: {"tau_s", "tau_sd_s"} of this vat at this fill, or None.

    Returns:
        {"value_s", "low_s", "high_s"}: time of reaching on the readings' clock,
        90 % range; None where not known. {"tau_s"} or None; {"set_aside"}: list
        of indexes. {"basis"}: "heat.readings", "heat.readings_and_prior",
        "heat.prior", "heat.not_enough_readings" or "heat.not_moving".

    Raises:
        Refused: target or a reading at or beyond the jacket, target on the
            other side of the start, or a spread not above 0.

    Source: as `fit_tau`; Fieller's theorem for the range.
    Valid: steady jacket; coverage tested by simulation at 4 to 10 readings.
    Check: `fit_tau`'s readings to 40 °C: 13.43 min.

    >>> temps_c = [32.0, 33.4, 34.7, 35.9, 37.1, 38.2]
    >>> times_s = [0, 120, 240, 360, 480, 600]
    >>> forecast(times_s, temps_c, 40, 60, 0.05, None)["value_s"] / 60
    13.43
    """
    require_above("reading_sd_k", reading_sd_k, 0)
    gaps = _log_gaps(times_s, temps_c, jacket_c, 1)
    if target_c != temps_c[0]:
        require_towards_jacket(temps_c[0], target_c, jacket_c)
    if len(gaps) < 2 and prior is None:
        return _no_forecast("heat.not_enough_readings")
    # An error in T is an error in ln(gap) that grows as the gap closes.
    sds = [reading_sd_k / abs(jacket_c - temp_c) for temp_c in temps_c]
    level = math.log(abs(jacket_c - target_c))
    line = reach(times_s, gaps, sds, _prior_slope(prior), level)
    if line["slope"] >= 0:
        return _no_forecast("heat.not_moving")
    basis = "heat.readings" if prior is None else "heat.readings_and_prior"
    return {
        "value_s": line["value"],
        "low_s": line["low"],
        "high_s": line["high"],
        "tau_s": -1 / line["slope"],
        "set_aside": line["set_aside"],
        "basis": basis if len(gaps) > 1 else "heat.prior",
    }


def forecast_line(
    times_s: list[float], temps_c: list[float], target_c: float, reading_sd_k: float
) -> "dict[str, Any]":
    """Return when a vat limited by its heater's power will reach its target.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: vat temperature, stirred [°C].
        target_c: vat temperature wanted [°C].
        reading_sd_k: standard deviation of one reading [K]; above 0.

    Returns:
        As `forecast`, with {"rate_k_s"} or None in place of tau. Basis
        "heat.straight_line", "heat.not_enough_readings" or "heat.not_moving".

    Raises:
        Refused: readings that do not pair or rise, or a spread not above 0.

    Source: least squares; Fieller's theorem for the range.
    Valid: power steady, far from the jacket's own temperature.
    Check: 1 K a minute from 30 °C reaches 36 °C at 6 min.

    >>> forecast_line([0, 60, 120], [30, 31, 32], 36, 0.1)["value_s"]
    360.0
    """
    require_above("reading_sd_k", reading_sd_k, 0)
    require_series(times_s, "temps_c", temps_c, 1)
    basis, line = "heat.not_enough_readings", None
    if len(temps_c) > 1:
        sds = [reading_sd_k] * len(temps_c)
        line = reach(times_s, temps_c, sds, (0, 0), target_c)
        basis = "heat.straight_line"
        if line["slope"] * (target_c - temps_c[0]) <= 0 and target_c != temps_c[0]:
            basis, line = "heat.not_moving", None
    return {
        "value_s": line["value"] if line else None,
        "low_s": line["low"] if line else None,
        "high_s": line["high"] if line else None,
        "rate_k_s": line["slope"] if line else None,
        "set_aside": line["set_aside"] if line else [],
        "basis": basis,
    }


def measured_rate(
    times_s: list[float], temps_c: list[float], reading_sd_k: float
) -> "dict[str, Any]":
    """Return how fast the vat has been warming, the rate of scald.

    Args:
        times_s: time of each reading in the stretch asked about [s]; rising.
        temps_c: vat temperature, stirred [°C].
        reading_sd_k: standard deviation of one reading [K]; above 0.

    Returns:
        {"value_k_s", "low_k_s", "high_k_s"}: 90 % range, or None with fewer than
        two readings; {"set_aside"}: list of indexes; {"basis"}:
        "heat.straight_line" or "heat.not_enough_readings".

    Raises:
        Refused: readings that do not pair or rise, or a spread not above 0.

    Source: least squares.
    Check: 1 K in 3 min.

    >>> measured_rate([0, 180, 360], [31, 32, 33], 0.1)["value_k_s"] * 180
    1.0
    """
    require_above("reading_sd_k", reading_sd_k, 0)
    require_series(times_s, "temps_c", temps_c, 0)
    if len(temps_c) < 2:
        return {
            "value_k_s": None,
            "low_k_s": None,
            "high_k_s": None,
            "set_aside": [],
            "basis": "heat.not_enough_readings",
        }
    sds = [reading_sd_k] * len(temps_c)
    line = reach(times_s, temps_c, sds, (0, 0), temps_c[-1])
    return {
        "value_k_s": line["slope"],
        "low_k_s": line["slope"] - line["slope_width"],
        "high_k_s": line["slope"] + line["slope_width"],
        "set_aside": line["set_aside"],
        "basis": "heat.straight_line",
    }


def _log_gaps(
    times_s: list[float], temps_c: list[float], jacket_c: float, at_least: int
) -> list[float]:
    require_series(times_s, "temps_c", temps_c, at_least)
    side = jacket_c - temps_c[0]
    for temp_c in temps_c:
        is_within = (jacket_c - temp_c) * side > 0
        require(is_within, "at_or_beyond_jacket", "temps_c", temp_c, jacket_c)
    return [math.log(abs(jacket_c - temp_c)) for temp_c in temps_c]


def _tau_and_start(
    at_zero: float, slope: float, first_c: float, jacket_c: float
) -> dict[str, float]:
    require(slope < 0, "not_towards_jacket", "temps_c", first_c, jacket_c)
    gap_k = math.exp(at_zero)
    start_c = jacket_c - gap_k if jacket_c > first_c else jacket_c + gap_k
    return {"tau_s": -1 / slope, "start_c": start_c}


def _prior_slope(prior: "dict[str, float] | None") -> tuple[float, float]:
    if prior is None:
        return 0.0, 0.0
    tau_s, tau_sd_s = prior["tau_s"], prior["tau_sd_s"]
    require_above("tau_s", tau_s, 0)
    require_above("tau_sd_s", tau_sd_s, 0)
    slope_sd = tau_sd_s / (tau_s * tau_s)
    return -1 / tau_s, 1 / (slope_sd * slope_sd)


def _no_forecast(basis: str) -> "dict[str, Any]":
    return {
        "value_s": None,
        "low_s": None,
        "high_s": None,
        "tau_s": None,
        "set_aside": [],
        "basis": basis,
    }
