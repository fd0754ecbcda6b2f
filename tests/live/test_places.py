from server.live.places import PERSON_PLACES, PHONE_PLACES, Place, Places


def place(person, phone="", token=""):
    return Place(person, phone or person, token)


def test_a_place_is_free_until_all_are_taken():
    places = Places(2)
    assert places.take(place("ada")) == (True, None)
    assert places.take(place("ben")) == (True, None)
    assert places.take(place("eve")) == (False, None)
    assert len(places.taken) == 2


def test_the_newest_stream_of_a_phone_ends_its_oldest():
    places = Places(100)
    held = [place("ada", "pocket") for _ in range(PHONE_PLACES + 2)]
    ended = [places.take(one)[1] for one in held]
    assert ended == [None] * PHONE_PLACES + held[:2]
    assert list(places.taken) == held[2:]


def test_a_person_with_many_phones_holds_no_more_than_a_share():
    places = Places(100)
    held = [place("ada", f"phone {n}") for n in range(PERSON_PLACES + 1)]
    ended = [places.take(one)[1] for one in held]
    assert ended == [None] * PERSON_PLACES + held[:1]


def test_when_full_who_has_most_gives_way_to_who_has_none():
    places = Places(4)
    greedy = [place("ada", f"phone {n}") for n in range(3)]
    for one in (place("ben"), *greedy):
        places.take(one)
    assert places.take(place("eve")) == (True, greedy[0])
    # Now two, one and one: who has none shares with who has two.
    assert places.take(place("ida")) == (True, greedy[1])
    # All have one: nobody has more than a share.
    assert places.take(place("olga")) == (False, None)


def test_when_full_a_reloaded_page_gets_the_place_of_its_old_stream():
    places = Places(2)
    old, other = place("ada"), place("ben")
    places.take(old)
    places.take(other)
    assert places.take(place("ada")) == (True, old)
    assert other in places.taken


def test_leaving_twice_frees_one_place():
    places = Places(1)
    first, second = place("ada"), place("ben")
    places.take(first)
    places.leave(first)
    places.leave(first)
    assert places.take(second) == (True, None)
    places.leave(first)
    assert places.take(place("eve")) == (False, None)
