"""The watchers that only a gate asks, by the gate's own word."""

from . import acid, check_due, curing_days, hold, laboratory, recorder, thermometer

WATCHERS = {
    "acid": acid,
    "check_due": check_due,
    "curing": curing_days,
    "hold": hold,
    "laboratory": laboratory,
    "recorder": recorder,
    "thermometer": thermometer,
}
