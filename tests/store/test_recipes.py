import threading

from server.store.recipes import find_recipe, newest_recipes, store_recipe
from tests.core import builders
from tests.sync.phones import NOON_MS


def own(title="Own wheel", **changed):
    return builders.recipe() | {"id": "own-wheel", "title": {"en": title}} | changed


def versions(app):
    found = []
    while find_recipe("own-wheel", len(found) + 1):
        found.append(find_recipe("own-wheel", len(found) + 1)["title"]["en"])
    return found


def test_a_bundled_recipe_is_imported_once_however_often_the_server_starts(app):
    for _ in range(3):
        assert store_recipe(own(version=1), NOON_MS, None)["version"] == 1
    assert versions(app) == ["Own wheel"]


def test_a_bundled_recipe_that_changed_becomes_a_new_version(app):
    store_recipe(own(), NOON_MS, None)
    store_recipe(own("Own wheel, drier"), NOON_MS, None)
    assert versions(app) == ["Own wheel", "Own wheel, drier"]


def test_a_bundled_recipe_never_supersedes_what_people_made_of_it(app):
    store_recipe(own(), NOON_MS, None)
    store_recipe(own("As we make it"), NOON_MS, "ada")
    store_recipe(own(), NOON_MS, None)
    assert find_recipe("own-wheel")["title"]["en"] == "As we make it"


def test_a_bundled_recipe_has_its_own_number_on_a_new_server_too(app):
    assert store_recipe(own(version=3), NOON_MS, None)["version"] == 3
    assert find_recipe("own-wheel", 1) is None
    # What people made since goes on counting, and is never overtaken backwards.
    assert store_recipe(own("As we make it"), NOON_MS, "ada")["version"] == 4
    assert store_recipe(own("Drier", version=4), NOON_MS, None)["version"] == 5
    assert find_recipe("own-wheel", 3)["title"]["en"] == "Own wheel"


def test_the_newest_of_each_is_listed_by_id(app):
    store_recipe(own(), NOON_MS, "ada")
    store_recipe(own("Later"), NOON_MS, "ada")
    listed = [
        row["title"]["en"] for row in newest_recipes() if row["id"] == "own-wheel"
    ]
    assert listed == ["Later"]
    ids = [row["id"] for row in newest_recipes()]
    assert ids == sorted(set(ids))


def test_two_who_save_at_once_get_two_versions(app):
    def save(name):
        with app.app_context():
            store_recipe(own(name), NOON_MS, "ada")

    names = [f"Version of {i}" for i in range(8)]
    threads = [threading.Thread(target=save, args=(name,)) for name in names]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(versions(app)) == names
