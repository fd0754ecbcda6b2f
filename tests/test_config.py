from pathlib import Path

import pytest

from server.config import Clock, from_environment


def test_an_empty_environment_means_sqlite_beside_the_caller():
    settings = from_environment({})
    assert settings.database_file == Path("vatside-data/vatside.sqlite3").resolve()
    assert settings.clock == Clock()
    assert (settings.proxy_hops, settings.hosts, settings.public_url) == (0, (), "")


def test_every_setting_is_read_from_its_variable():
    settings = from_environment(
        {
            "VATSIDE_DATA": "/var/lib/vat",
            "VATSIDE_THREADS": "8",
            "VATSIDE_VIEWERS": "40",
            "VATSIDE_PROXY_HOPS": "1",
            "VATSIDE_HOSTS": "vat.example, localhost,",
            "VATSIDE_URL": "https://vat.example/",
        }
    )
    assert settings.data_dir == Path("/var/lib/vat")
    assert (settings.threads, settings.viewers) == (8, 40)
    assert settings.proxy_hops == 1
    assert settings.hosts == ("vat.example", "localhost")
    assert settings.public_url == "https://vat.example"


@pytest.mark.parametrize("scheme", ["postgres", "postgresql", "postgresql+psycopg"])
def test_a_postgres_address_gets_the_driver_that_we_ship(scheme):
    settings = from_environment({"DATABASE_URL": f"{scheme}://vat@db/vat"})
    assert settings.sqlalchemy_url == "postgresql+psycopg://vat@db/vat"
    assert settings.database_file is None


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("VATSIDE_THREADS", "1"),
        ("VATSIDE_THREADS", "many"),
        ("VATSIDE_VIEWERS", "0"),
        ("VATSIDE_PROXY_HOPS", "-1"),
        ("VATSIDE_PROXY_HOPS", "1.5"),
    ],
)
def test_a_number_that_cannot_be_meant_is_refused_with_its_name(name, value):
    with pytest.raises(ValueError, match=f"{name} .*{value}"):
        from_environment({name: value})


@pytest.mark.parametrize("rate", [0, 0.99, -60, 3601, float("nan"), float("inf")])
def test_a_clock_that_stands_runs_backwards_or_leaps_is_refused(rate):
    with pytest.raises(ValueError, match="1 to 3600"):
        Clock(rate)


def test_a_fast_clock_never_goes_back_and_starts_where_it_was_set():
    clock = Clock(60, real_ms=1_000, shown_ms=9_000)
    shown = [clock.at(real_ms) for real_ms in range(1_000, 3_000, 7)]
    assert shown[0] == 9_000
    assert shown == sorted(shown)
    # 1,000 ms of the real clock at 60 times the speed.
    assert clock.at(2_000) - clock.at(1_000) == 60_000
