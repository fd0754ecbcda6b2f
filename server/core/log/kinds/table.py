"""The one table of what can happen: kinds of event, their bodies, limits and roles.

Server, phone, tests, documentation and fuzzing read KINDS. What its columns may hold
is `columns`; the envelope, which is the same for every kind, is `envelope`.
"""

from .columns import ABOUT
from .of_make import OF_MAKE
from .of_tank import OF_TANK

KINDS = dict(OF_MAKE)
KINDS.update(OF_TANK)

# Kinds that touch what they are about, by their row.
ABOUT_ANOTHER = tuple(kind for kind in KINDS if ABOUT in KINDS[kind]["touches"])
# Those of them that change what it says.
CHANGING = ("entry_corrected", "entry_struck")
