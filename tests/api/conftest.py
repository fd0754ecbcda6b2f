import json
from dataclasses import dataclass

import pytest
from flask.testing import FlaskClient

from server import auth
from tests.sync.phones import HandClock, a_uuid, close_app, make_app, migrated

HEADERS = {"X-Vatside": "1", "Content-Type": "application/json"}


@dataclass
class PairedPhone:
    """A browser that holds a cookie."""

    http: FlaskClient
    device: str
    person: str

    def get(self, path, **kwargs):
        return self.http.get(f"/api/v1{path}", **kwargs)

    def post(self, path, body=None, headers=None, data=None):
        return self.http.post(
            f"/api/v1{path}",
            data=json.dumps(body) if data is None else data,
            headers=HEADERS | (headers or {}),
        )

    def patch(self, path, body):
        return self.http.patch(f"/api/v1{path}", data=json.dumps(body), headers=HEADERS)

    def delete(self, path):
        return self.http.delete(f"/api/v1{path}", headers=HEADERS)

    def push(self, *events, **beside):
        return self.post("/sync/push", {"events": list(events), **beside})


@pytest.fixture
def clock():
    return HandClock()


@pytest.fixture
def app(tmp_path, clock):
    (tmp_path / "vatside.sqlite3").write_bytes(migrated())
    app = make_app(tmp_path, clock=clock)
    yield app
    close_app(app)


@pytest.fixture
def client(app):
    """Give a browser that is not paired."""
    return app.test_client()


@pytest.fixture
def pair(app, clock):
    """Give a function that pairs a new phone with a new person."""

    def pair_one(role="maker", name="Ada"):
        with app.app_context():
            person = auth.add_person(name, role, clock.now_ms()).id
            code = auth.start_pairing(person, person, clock.now_ms(), 1).long
        phone = PairedPhone(app.test_client(), a_uuid(), person)
        body = {"code": code, "device": phone.device, "device_name": "Pocket"}
        answer = phone.post("/pair", body)
        assert answer.status_code == 200, answer.text
        return phone

    return pair_one


@pytest.fixture
def paired(pair):
    """Give the phone of a maker."""
    return pair()
