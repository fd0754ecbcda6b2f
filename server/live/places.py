"""Who may watch: a few places a phone and a person, many in all.

Within their own share the newest stream wins. A page that was reloaded, or a
phone that came back to the Wi-Fi, has an old stream that nobody has noticed
dead; were the newest refused, that dead one would keep it out.
"""

from collections import Counter
from dataclasses import dataclass, field

PHONE_PLACES = 6  # as many lines as a browser opens to one address
PERSON_PLACES = 12


@dataclass(eq=False)
class Place:
    """One stream's place.

    Args:
        person: whose phone it is.
        phone: which phone watches.
        token: what the phone was let in with, hashed.
        is_watched: the stream itself has begun.
    """

    person: str
    phone: str
    token: str
    is_watched: bool = False


@dataclass
class Places:
    """The places of one process, the oldest taken first.

    Args:
        most: of all streams at once.
    """

    most: int
    taken: dict[Place, None] = field(default_factory=dict)

    def take(self, place: Place) -> tuple[bool, Place | None]:
        """Take a place, if need be that of an older stream.

        Args:
            place: what is asked for.

        Returns:
            (is it taken, whose stream must end for it).
        """
        older = self._who_gives_way(place)
        if older is None and len(self.taken) >= self.most:
            return False, None
        if older is not None:
            self.leave(older)
        self.taken[place] = None
        return True, older

    def leave(self, place: Place) -> None:
        """Give a place back; harmless when it was given back already.

        Args:
            place: the place.
        """
        self.taken.pop(place, None)

    def _who_gives_way(self, place: Place) -> Place | None:
        of_phone = [one for one in self.taken if one.phone == place.phone]
        of_person = [one for one in self.taken if one.person == place.person]
        if len(of_phone) >= PHONE_PLACES:
            return of_phone[0]
        if len(of_person) >= PERSON_PLACES:
            return of_person[0]
        if len(self.taken) < self.most:
            return None
        # Full: whoever has most shares with who has less, the newcomer too.
        person, count = Counter(one.person for one in self.taken).most_common(1)[0]
        if count > len(of_person) + 1:
            return next(one for one in self.taken if one.person == person)
        return of_phone[0] if of_phone else None
