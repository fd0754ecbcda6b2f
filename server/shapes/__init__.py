"""What data looks like on its way between the parts. The lowest layer."""

from server.shapes.events import Event, Person, Problem, PulledEvent, Verdict
from server.shapes.views import Alert, Board, LogLine, Step, View

__all__ = [
    "Alert",
    "Board",
    "Event",
    "LogLine",
    "Person",
    "Problem",
    "PulledEvent",
    "Step",
    "Verdict",
    "View",
]
