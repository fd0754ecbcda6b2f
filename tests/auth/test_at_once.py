"""What may happen once happens once, though twenty ask together, on each database."""

import threading
from concurrent.futures import ThreadPoolExecutor

import pytest

from server import auth, store
from server.auth import limits, links
from server.store import pairing, people
from tests.sync.phones import NOON_MS, a_uuid, close_app, make_app

AT_ONCE = 20


@pytest.fixture
def app(database_url, tmp_path):
    app = make_app(tmp_path, database_url)
    with app.app_context():
        yield app
        store.db.session.remove()
    close_app(app)


def together(app, acts):
    """Do all at the same moment, and return what each came to."""
    start = threading.Barrier(len(acts))

    def run(act):
        with app.app_context():
            store.head_n()  # the connection is there before the start
            start.wait()
            try:
                return act()
            except auth.RefusedError as refused:
                return refused.key
            finally:
                store.db.session.remove()

    with ThreadPoolExecutor(len(acts)) as pool:
        return [task.result() for task in [pool.submit(run, act) for act in acts]]


def pairing_with(code, name=None):
    asking = auth.Asking(a_uuid(), "Pocket", name, "here", None)
    return lambda: auth.pair(code, asking, NOON_MS, 1)


def test_the_code_of_the_owner_makes_one_owner_and_pairs_one_phone(app):
    code = auth.owner_code(NOON_MS, 1).code
    acts = [pairing_with(code, f"Owner {number}") for number in range(AT_ONCE)]
    outcomes = together(app, acts)
    assert outcomes.count("wrong_code") == AT_ONCE - 1
    assert len(auth.people()) == len(auth.devices()) == 1


@pytest.mark.parametrize("form", ["short", "long"])
def test_an_invitation_pairs_one_phone(app, form):
    person = auth.add_person("Ada", "maker", NOON_MS).id
    code = getattr(auth.start_pairing(person, person, NOON_MS, 1), form)
    outcomes = together(app, [pairing_with(code) for _ in range(AT_ONCE)])
    refused = [one for one in outcomes if isinstance(one, str)]
    # Those that came late also count as wrong codes, and the fifth makes wait.
    assert len(refused) == AT_ONCE - 1
    assert set(refused) <= {"wrong_code", "too_many_tries"}
    assert len(auth.devices()) == 1


@pytest.mark.parametrize("how", [{"role": "maker"}, {"active": False}])
def test_owners_who_put_out_each_other_leave_one(app, how):
    owners = [auth.add_person(f"O{n}", "owner", NOON_MS).id for n in range(AT_ONCE)]

    def put_out(person):
        return lambda: auth.change_person(person, NOON_MS, **how)

    outcomes = together(app, [put_out(person) for person in owners])
    assert outcomes.count("last_owner") == 1
    left = [row for row in auth.people() if row.active and row.role == "owner"]
    assert len(left) == 1


def test_every_wrong_code_is_counted(app):
    def miss():
        limits.count_wrong("kitchen", NOON_MS, 1)

    together(app, [miss] * AT_ONCE)
    assert pairing.attempts_by("from kitchen").wrong == AT_ONCE
    assert pairing.attempts_by(limits.ALL).wrong == AT_ONCE


def test_guesses_at_once_are_made_to_wait_as_those_one_by_one(app):
    outcomes = together(app, [pairing_with("WRNG0000") for _ in range(AT_ONCE)])
    free = limits.FREE[False]
    assert outcomes.count("wrong_code") == free
    assert outcomes.count("too_many_tries") == AT_ONCE - free


def test_a_link_lets_in_no_more_browsers_than_it_may(app):
    made = links.make_link("Vet", ["a"], NOON_MS + 1000, "ada", NOON_MS)
    acts = [lambda: links.open_link(made.token, NOON_MS)] * (links.MOST_BROWSERS + 5)
    opened = together(app, acts)

    def look(token):
        return lambda: links.guest_link(token, NOON_MS)

    seen = [together(app, [look(one.token)])[0] for one in opened]
    assert seen.count("no_guest") == 5


def test_a_new_code_for_a_person_ends_all_others(app):
    person = auth.add_person("Ada", "maker", NOON_MS).id

    def invite():
        return auth.start_pairing(person, person, NOON_MS, 1).long

    made = together(app, [invite] * 6)
    outcomes = [one for code in made for one in together(app, [pairing_with(code)])]
    assert outcomes.count("wrong_code") == 5


def test_a_phone_paired_to_two_people_at_once_is_that_of_one(app):
    device = a_uuid()
    acts = []
    for number in range(AT_ONCE):
        person = auth.add_person(f"P{number}", "maker", NOON_MS).id
        code = auth.start_pairing(person, person, NOON_MS, 1).long
        asking = auth.Asking(device, "Pocket", None, "here", None)
        acts.append(lambda code=code, asking=asking: auth.pair(code, asking, 1, 1))
    outcomes = together(app, acts)
    assert outcomes.count("device_in_use") == AT_ONCE - 1
    assert people.find_device(device) is not None
