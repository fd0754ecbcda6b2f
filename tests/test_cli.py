import io
import json
import os
import re
import signal
import socket
import sqlite3
import subprocess
import sys
import time
import urllib.request
from contextlib import closing
from pathlib import Path
from types import SimpleNamespace

import pytest
import segno

from server import auth, cli, store
from server.cli.announce import Entrance, announce, urls
from server.cli.serve import gunicorn_options, with_clock
from server.config import RECIPES_DIR, Clock, Settings
from server.serving.worker import Worker
from server.store import copies, pins
from server.store.log import NewEvent, add_events
from tests.sync.phones import NOON_MS, close_app, make_app
from tests.sync.signers import a_signer

ROOT = Path(__file__).resolve().parent.parent
START_S = 30


@pytest.fixture(autouse=True)
def plain_environment(monkeypatch):
    for name in ("DATABASE_URL", "VATSIDE_DATA", "VATSIDE_HOSTS", "VATSIDE_URL"):
        monkeypatch.delenv(name, raising=False)


@pytest.fixture
def data(tmp_path):
    """Give a folder with a database in it."""
    app = make_app(tmp_path / "data")
    close_app(app)
    return tmp_path / "data"


def epoch_of(data):
    app = make_app(data)
    with app.app_context():
        epoch = store.epoch()
    close_app(app)
    return epoch


def notes(database):
    with closing(sqlite3.connect(database)) as opened:
        return opened.execute("SELECT name FROM people ORDER BY name").fetchall()


def add_note(database, name):
    with closing(sqlite3.connect(database)) as opened:
        opened.execute(
            "INSERT INTO people (id, name, role, active, made_ms) "
            "VALUES (?, ?, 'viewer', 1, 0)",
            (name, name),
        )
        opened.commit()


def test_a_command_that_is_not_known_ends_with_two(capsys):
    with pytest.raises(SystemExit) as end:
        cli.main(["stir"])
    assert end.value.code == 2
    assert "stir" in capsys.readouterr().err


@pytest.mark.parametrize("rate", ["0.5", "0", "-1", "3601", "fast", "nan"])
def test_a_clock_that_cannot_be_is_refused(rate, capsys):
    with pytest.raises(SystemExit) as end:
        cli.main(["serve", f"--replay={rate}"])
    assert end.value.code == 2
    assert "--replay" in capsys.readouterr().err


def test_a_sound_folder_is_well(data, capsys):
    assert cli.main(["check", "--data", str(data)]) == 0
    assert capsys.readouterr().out == "All is well.\n"


def test_a_disk_that_runs_full_is_told_with_what_is_left(data, capsys, monkeypatch):
    left = SimpleNamespace(f_bfree=7, f_bavail=7, f_frsize=1_000_000, f_flag=0)
    monkeypatch.setattr(os, "statvfs", lambda _: left)
    assert cli.main(["check", "--data", str(data)]) == 1
    said = capsys.readouterr().err
    assert "nearly full" in said
    assert "7 MB left" in said


def test_a_damaged_database_is_not_well(tmp_path, capsys):
    (tmp_path / "vatside.sqlite3").write_bytes(b"not a database" * 1000)
    assert cli.main(["check", "--data", str(tmp_path)]) == 1
    assert "database" in capsys.readouterr().err


def test_a_setting_that_cannot_be_meant_is_named(tmp_path, capsys, monkeypatch):
    monkeypatch.setenv("VATSIDE_THREADS", "many")
    assert cli.main(["check", "--data", str(tmp_path)]) == 1
    assert "VATSIDE_THREADS" in capsys.readouterr().err


def test_bundled_recipes_pass_the_recipe_check(capsys):
    files = list(RECIPES_DIR.glob("*.json"))
    assert files
    for file in files:
        assert cli.main(["recipes", "check", str(file)]) == 0
        assert "sound" in capsys.readouterr().out


def test_a_broken_recipe_fails_with_the_place_of_each_fault(tmp_path, capsys):
    recipe = json.loads(next(RECIPES_DIR.glob("*.json")).read_text())
    step = next(row for row in recipe["steps"] if row["lasts"])
    del step["lasts"]["unit"]
    file = tmp_path / "recipe.json"
    file.write_text(json.dumps(recipe))
    assert cli.main(["recipes", "check", str(file)]) == 1
    assert f"steps.{step['key']}.lasts.unit" in capsys.readouterr().err


def test_a_sum_that_cannot_answer_is_told_with_value_and_what_is_allowed(
    tmp_path, capsys
):
    recipe = json.loads(next(RECIPES_DIR.glob("*.json")).read_text())
    (step,) = [row for row in recipe["steps"] if row["key"] == "brine_small"]
    step["lasts"]["by"]["value"] = "salt_after_frac"
    file = tmp_path / "recipe.json"
    file.write_text(json.dumps(recipe))
    assert cli.main(["recipes", "check", str(file)]) == 1
    assert capsys.readouterr().err == (
        "steps.brine_small.lasts.by.value: output unit "
        '(value "fraction") (limit ["s"])\n'
    )


def test_an_unknown_hazard_is_named_with_those_that_are_known(tmp_path, capsys):
    recipe = json.loads(next(RECIPES_DIR.glob("*.json")).read_text())
    recipe["steps"][0]["cautions"] = ["bees"]
    file = tmp_path / "recipe.json"
    file.write_text(json.dumps(recipe))
    assert cli.main(["recipes", "check", str(file)]) == 1
    (line,) = capsys.readouterr().err.splitlines()
    assert 'receive.cautions: unknown caution "bees"; known are ' in line
    assert "lock_out" in line


@pytest.mark.parametrize("text", [None, "{", "[]"])
def test_a_file_that_is_no_recipe_fails(tmp_path, text, capsys):
    file = tmp_path / "recipe.json"
    if text is not None:
        file.write_text(text)
    assert cli.main(["recipes", "check", str(file)]) == 1
    assert capsys.readouterr().err


def test_each_owner_code_is_another(data, capsys):
    assert cli.main(["owner-code", "--data", str(data)]) == 0
    first = capsys.readouterr().out
    code, until = first.splitlines()
    assert re.fullmatch(r"([0-9A-Z]{4}-){3}[0-9A-Z]{4}", code)
    assert re.fullmatch(r"It works once, until \d{4}-\d\d-\d\d \d\d:\d\d\.", until)
    cli.main(["owner-code", "--data", str(data)])
    assert capsys.readouterr().out != first


def test_an_owner_who_forgot_the_pin_gets_another(data, capsys):
    app = make_app(data)
    with app.app_context():
        owner = auth.add_person("Oda", "owner", NOON_MS).id
        auth.add_person("Hal", "helper", NOON_MS + 1)
        a_signer(owner)
    close_app(app)
    assert cli.main(["reset-pin", "--data", str(data), "Oda"]) == 0
    assert "Oda may set a PIN on any phone until" in capsys.readouterr().out
    app = make_app(data)
    with app.app_context():
        assert pins.pin_of(owner) is None
    close_app(app)
    for name, said in (("Bo", "People here: Oda, Hal."), ("Hal", "no_pin_for_role")):
        assert cli.main(["reset-pin", "--data", str(data), name]) == 1
        assert said in capsys.readouterr().err


def test_a_backup_holds_what_was_written_a_moment_before(data, tmp_path):
    database = data / "vatside.sqlite3"
    target = tmp_path / "copy.sqlite3"
    with closing(sqlite3.connect(database)) as busy:
        # Held open, so that the newest row is only in the write-ahead log.
        busy.execute("SELECT 1 FROM people").fetchall()
        add_note(database, "Ada")
        assert cli.main(["backup", "--data", str(data), str(target)]) == 0
    assert notes(target) == [("Ada",)]
    assert not target.with_name(target.name + ".part").exists()


def test_a_restore_puts_the_copy_back_keeps_the_old_and_begins_an_epoch(
    data, tmp_path, capsys
):
    database = data / "vatside.sqlite3"
    add_note(database, "Ada")
    target = tmp_path / "copy.sqlite3"
    cli.main(["backup", "--data", str(data), str(target)])
    add_note(database, "Bo")
    before = epoch_of(data)
    assert cli.main(["restore", "--data", str(data), str(target)]) == 0
    assert notes(database) == [("Ada",)]
    assert epoch_of(data) != before
    kept = data / "vatside-before-restore-1.sqlite3"
    assert notes(kept) == [("Ada",), ("Bo",)]
    assert str(kept) in capsys.readouterr().out
    cli.main(["restore", "--data", str(data), str(target)])
    assert (data / "vatside-before-restore-2.sqlite3").is_file()
    assert notes(kept) == [("Ada",), ("Bo",)]


def test_the_security_log_is_printed_and_outlives_a_restore(data, tmp_path, capsys):
    target = tmp_path / "copy.sqlite3"
    for words in (["backup", str(target)], ["restore", str(target)], ["owner-code"]):
        assert cli.main([*words, "--data", str(data)]) == 0, capsys.readouterr().err
    capsys.readouterr()
    assert cli.main(["security-log", "--data", str(data)]) == 0
    told = [line.split() for line in capsys.readouterr().out.splitlines()]
    whats = [words[1] for words in told]
    assert whats == ["backed_up", "restored", "owner_code_made"]
    assert cli.main(["security-log", "--data", str(data), "--last", "1"]) == 0
    assert capsys.readouterr().out.split()[1:] == ["owner_code_made"]


def test_a_restore_into_an_empty_folder_makes_it(data, tmp_path):
    target = tmp_path / "copy.sqlite3"
    cli.main(["backup", "--data", str(data), str(target)])
    fresh = tmp_path / "fresh"
    assert cli.main(["restore", "--data", str(fresh), str(target)]) == 0
    assert epoch_of(fresh) != epoch_of(data)


@pytest.mark.parametrize("made", ["absent", "text", "other"])
def test_what_is_no_copy_of_ours_is_refused_and_nothing_changes(
    data, tmp_path, made, capsys
):
    file = tmp_path / "copy.sqlite3"
    if made == "text":
        file.write_text("hello" * 1000)
    if made == "other":
        with closing(sqlite3.connect(file)) as opened:
            opened.execute("CREATE TABLE t (a)")
            opened.commit()
    before = epoch_of(data)
    assert cli.main(["restore", "--data", str(data), str(file)]) == 1
    assert str(file) in capsys.readouterr().err
    assert epoch_of(data) == before
    assert not list(data.glob("*before-restore*"))


def test_there_is_nothing_to_back_up_in_an_empty_folder(tmp_path, capsys):
    target = tmp_path / "copy.sqlite3"
    assert cli.main(["backup", "--data", str(tmp_path), str(target)]) == 1
    assert "no database" in capsys.readouterr().err
    assert not target.exists()


def test_another_database_is_left_to_its_own_tools(tmp_path, capsys, monkeypatch):
    monkeypatch.setenv("DATABASE_URL", "postgresql://vat@localhost/vat")
    assert cli.main(["backup", str(tmp_path / "x")]) == 1
    assert "pg_dump" in capsys.readouterr().err


def test_a_failed_copy_leaves_the_one_before_it(data, tmp_path):
    target = tmp_path / "copy.sqlite3"
    copies.copy(data / "vatside.sqlite3", target)
    before = target.read_bytes()
    (tmp_path / "bad").write_text("no database" * 1000)
    with pytest.raises(copies.BackupError, match="not copied"):
        copies.copy(tmp_path / "bad", target)
    assert target.read_bytes() == before


def test_addresses_are_those_that_phones_can_reach():
    assert urls("127.0.0.1", 8000) == ["http://127.0.0.1:8000"]
    assert urls("::1", 8000) == ["http://[::1]:8000"]
    assert urls("0.0.0.0", 8000)[-1] == "http://localhost:8000"
    assert urls("0.0.0.0", 8000, "https://vat.example") == ["https://vat.example"]


def test_the_terminal_shows_the_address_and_the_code_to_enter_with():
    out = io.StringIO()
    entrance = Entrance(["http://10.0.0.5:8000"])
    announce(entrance, [("the owner", "AB12-CD34")], 60, out)
    text = out.getvalue()
    assert "http://10.0.0.5:8000/#/pair/AB12-CD34\n" in text
    assert "60 times as fast" in text
    assert text.count("█") > 100
    out = io.StringIO()
    announce(entrance, [], 1, out)
    assert "code" not in out.getvalue()
    assert "█" in out.getvalue()


def test_over_https_the_one_picture_leads_to_the_setup_page_and_carries_the_code():
    out = io.StringIO()
    entrance = Entrance(["https://vat.local:8443"], "http://10.0.0.5:8000", "AB:CD")
    announce(entrance, [("the owner", "AB12-CD34")], 1, out)
    text = out.getvalue()
    assert "  https://vat.local:8443\n" in text
    assert "  http://10.0.0.5:8000/#/pair/AB12-CD34\n" in text
    assert "  AB:CD\n" in text
    drawn = io.StringIO()
    link = "http://10.0.0.5:8000/#/pair/AB12-CD34"
    segno.make(link, error="m").terminal(out=drawn, border=2, compact=True)
    assert drawn.getvalue() in text
    assert text.count("█") == drawn.getvalue().count("█")


def test_gunicorn_runs_our_worker_and_opens_no_control_socket():
    options = gunicorn_options("127.0.0.1", 8000, 2, 32)
    assert (options["worker_class"], options["threads"]) == (Worker, 32)
    assert options["control_socket_disable"] is True
    assert gunicorn_options("::1", 8000, 2, 32)["bind"] == "[::1]:8000"


def test_a_fast_clock_passes_so_many_seconds_in_one():
    clock = Clock(60, real_ms=1000, shown_ms=5000)
    # 2 s of the real clock are 120 s of this one.
    assert clock.at(3000) == 5000 + 120_000
    assert Clock().at(3000) == 3000


def test_a_fast_clock_started_again_goes_on_after_the_newest_entry(
    tmp_path, paired_note
):
    settings = Settings(data_dir=tmp_path)
    far_ms = NOON_MS + 10 * 365 * 86_400_000
    paired_note(tmp_path, far_ms)
    assert with_clock(settings, 60).clock.shown_ms >= far_ms
    assert with_clock(settings, 1).clock == Clock()


@pytest.fixture
def paired_note():
    def store_one(folder, at_ms):
        app = make_app(folder)
        with app.app_context():
            new = NewEvent("a" * 36, None, None, None, None, "0" * 64, "{}")
            add_events([new], at_ms)
        close_app(app)

    return store_one


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def test_a_port_that_another_program_has_is_named(data, capsys):
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]
        command = ["serve", "--data", str(data), "--host", "127.0.0.1"]
        assert cli.main([*command, "--port", str(port)]) == 1
    said = capsys.readouterr()
    assert f"Port {port} of 127.0.0.1" in said.err
    assert said.out == ""


def test_check_with_a_port_also_starts_the_server_and_stops_it(data):
    port = free_port()
    assert cli.main(["check", "--data", str(data), "--port", str(port)]) == 0
    with socket.socket() as probe:
        assert probe.connect_ex(("127.0.0.1", port)) != 0


def test_the_server_starts_answers_and_stops_when_told(data):
    port = free_port()
    command = [sys.executable, "-m", "server.cli", "serve", "--data", str(data)]
    command += ["--host", "127.0.0.1", "--port", str(port)]
    with subprocess.Popen(
        command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as process:
        url = f"http://127.0.0.1:{port}/api/v1/health"
        end_s = time.monotonic() + START_S
        while True:
            try:
                with urllib.request.urlopen(url, timeout=START_S) as answer:
                    assert json.load(answer)["ok"] is True
                break
            except OSError:
                assert time.monotonic() < end_s
                time.sleep(0.05)
        os.kill(process.pid, signal.SIGTERM)
        out, err = process.communicate(timeout=START_S)
    assert process.returncode == 0, err
    assert f"http://127.0.0.1:{port}/#/pair/" in out
    assert "Traceback" not in err
