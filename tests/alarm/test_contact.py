from pathlib import Path

import pytest

from server.alarm.contact import contact
from server.config import Settings


def settings(**given):
    return Settings(data_dir=Path("unused"), **given)


@pytest.mark.parametrize(
    "address", ["mailto:owner@creamery.org", "https://creamery.org/contact"]
)
def test_a_real_address_is_told_to_push_services(address):
    assert contact(settings(push_contact=address)) == (address, None)


def test_the_page_s_own_https_address_will_do():
    found = contact(settings(public_url="https://floor.creamery.org"))
    assert found == ("https://floor.creamery.org", None)


@pytest.mark.parametrize("url", ["", "http://192.168.1.4:8000"])
def test_without_an_address_there_are_no_pushes(url):
    assert contact(settings(public_url=url)) == (None, "no_contact")


@pytest.mark.parametrize(
    "address",
    [
        "mailto:owner@floor.local",  # answered with 403 by one push service
        "mailto:owner@localhost",
        "mailto:@creamery.org",
        "mailto:owner",
        "https://floor.invalid",
        "https://192.168.1.4",
        "https://[::1]/",
        "https://[::1",  # no address at all
        "http://creamery.org",
        "owner@creamery.org",
    ],
)
def test_an_address_where_nobody_can_be_reached_is_refused(address):
    assert contact(settings(push_contact=address)) == (None, "contact_unusable")
