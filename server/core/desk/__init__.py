"""The desk: every make a device knows of, and the questions asked about them.

Server and phone both talk to the core through these functions; the page has no other
door. What a desk keeps, and how events are filed in it, is `creamery.kept`.
"""

from .cellar import read_mass as read_mass
from .cellar import tanks as tanks
from .creamery import board as board
from .creamery import clashes_if as clashes_if
from .creamery import trends as trends
from .entries import changeable as changeable
from .entries import check as check
from .entries import check_correction as check_correction
from .entries import check_new as check_new
from .entries import check_pin as check_pin
from .entries import proof_for as proof_for
from .entries import refused as refused
from .entries import rights as rights
from .entries import tap as tap
from .makes import add_from_lot as add_from_lot
from .makes import curve as curve
from .makes import file as file
from .makes import new as new
from .makes import record as record
from .makes import set_rules as set_rules
from .makes import step as step
from .makes import take as take
from .makes import view as view
from .openings import alter_equipment as alter_equipment
from .openings import batch_code as batch_code
from .openings import equipment_before as equipment_before
from .openings import equipment_of_make as equipment_of_make
from .openings import equipment_rows as equipment_rows
from .openings import options as options
from .openings import read_equipment as read_equipment
from .openings import suggestion as suggestion
from .openings import treatments as treatments
from .openings import vats as vats
from .ringing import alarms as alarms
from .ringing import sounding as sounding
from .sums import step_sums as step_sums
from .sums import sum as sum
from .sums import sums_catalogue as sums_catalogue
from .sums import sums_topics as sums_topics
from .typed import last_reading as last_reading
from .typed import read_field as read_field
from .typed import read_reading as read_reading
from .typed import read_typed as read_typed
