"""What rings, and what is heard of it."""

from ..alarm.alarms import alarms as alarms
from ..alarm.sound import sounding as sounding
