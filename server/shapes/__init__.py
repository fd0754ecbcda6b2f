"""What data looks like on its way between the parts. The lowest layer."""

from server.shapes.core.words import Problem
from server.shapes.events import PulledEvent, Verdict

__all__ = ["Problem", "PulledEvent", "Verdict"]
