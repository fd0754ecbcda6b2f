import base64
import gzip
import hashlib
import json
import os
import re
import time
from concurrent.futures import ThreadPoolExecutor

import pytest

from server.api import core_document
from server.api.bare_python import bare
from server.api.page_stamp import (
    LANGUAGES,
    LATER_STYLE,
    PACK,
    STAMP,
    sources_stamp,
    stamp_of,
)
from server.api.shell import Shell
from server.app import create_app
from server.config import CORE_DIR, RULES_DIR, Settings, read_rules
from tests.sync.phones import close_app

IMPORT_MAP = '{"imports": {"preact": "/lib/preact.js"}}'
FILES = {
    "index.html": f'<!doctype html><script type="importmap">{IMPORT_MAP}</script>',
    "sw.js": "const SHELL = {};\nself.addEventListener('install', () => SHELL);\n",
    "manifest.webmanifest": '{"name": "Vatside"}',
    "js/app.js": "export const one = 1;\n" * 40,
    "js/core/host.py": "import json\n",
    "js/core/shelf.py": "import io\n",
    "js/screens/make.js": "export default 1;\n",
    "css/main.css": "body { margin: 0 }\n",
    "lib/preact.js": "export const h = 1;\n",
    "lib/preact.js.gz": "packed",
    "lib/.stamp": "stamp",
    "lib/core.wasm": "\0asm",
    "lib/THIRD_PARTY_NOTICES.txt": "MIT License",
    "icons/192.png": "png",
    "setup/check.html": f'<script type="importmap">{IMPORT_MAP}</script>',
    "setup/check.js": "export const two = 2;\n",
    "setup/ok.svg": '<svg xmlns="http://www.w3.org/2000/svg"></svg>',
    "package.json": "{}",
    "node_modules/x/index.js": "export {}",
}
KEPT = [
    "/",
    "/css/main.css",
    "/icons/192.png",
    "/js/app.js",
    "/js/screens/make.js",
    "/lib/core.wasm",
    "/lib/preact.js",
    "/manifest.webmanifest",
    "/core.json",
]


@pytest.fixture
def folder(tmp_path):
    for name, text in FILES.items():
        path = tmp_path / "static" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text)
    return tmp_path / "static"


@pytest.fixture
def http(tmp_path, folder):
    app = create_app(Settings(data_dir=tmp_path / "data", static_dir=folder))
    yield app.test_client()
    close_app(app)


def shell(http):
    first, rest = http.get("/sw.js").text.split("\n", 1)
    match = re.fullmatch(r"const SHELL = (.*);", first)
    return json.loads(match[1]), rest


def policy(answer):
    rows = answer.headers["Content-Security-Policy"].split("; ")
    return {row.split(" ")[0]: row.split(" ")[1:] for row in rows}


def test_the_kept_list_equals_what_is_on_disk(http, folder):
    listed, rest = shell(http)
    assert listed["files"] == KEPT
    assert rest == FILES["sw.js"].split("\n", 1)[1]
    (folder / "js" / "new.js").write_text("export {}")
    (folder / "css" / "main.css").unlink()
    listed, _ = shell(http)
    assert "/js/new.js" in listed["files"]
    assert "/css/main.css" not in listed["files"]


def test_every_kept_file_can_be_fetched(http):
    for path in shell(http)[0]["files"]:
        assert http.get(path).status_code == 200, path


def test_the_version_changes_with_any_kept_file(http, folder):
    before = shell(http)[0]["version"]
    assert shell(http)[0]["version"] == before
    for name in ("index.html", "js/app.js", "js/core/host.py", "sw.js"):
        path = folder / name
        path.write_text(path.read_text() + "\n")
        now = shell(http)[0]["version"]
        assert now != before, name
        before = now


def test_a_worker_without_the_line_to_fill_in_is_refused(http, folder):
    (folder / "sw.js").write_text("self.skipWaiting();\n")
    assert http.get("/sw.js").status_code == 500


def without_words(row):
    return {key: row[key] for key in row if key not in core_document.WORDS}


def test_the_core_s_two_parts_hold_the_legal_figures_by_their_id(http):
    folder = CORE_DIR.parent / "rules"
    on_disk = [json.loads(path.read_text("utf-8")) for path in folder.glob("*.json")]
    parts = [
        http.get(name).json["rules"] for name in ("/core.json", "/core-later.json")
    ]
    rules = {**parts[0], **parts[1]}
    wanted = json.dumps({rule["id"]: rule for rule in on_disk})
    assert rules == json.loads(wanted, object_hook=without_words)
    assert rules["us_heat_treatment"]["rows"][0]["min_temp"]["F"]["value"] == 145


def test_the_core_s_two_parts_hold_every_file_of_it_and_its_host(http):
    document, later = http.get("/core.json").json, http.get("/core-later.json").json
    on_disk = {f"core/{path.relative_to(CORE_DIR)}" for path in CORE_DIR.rglob("*.py")}
    kept_here = {name for name in on_disk if name.startswith("core/twin/")}
    sent = on_disk - kept_here | {"host.py", "shelf.py"}
    assert {*document["files"], *later["files"]} == sent
    assert later["version"] == document["version"]
    table = (CORE_DIR / "log" / "kinds" / "table.py").read_text()
    assert document["files"]["core/log/kinds/table.py"] == bare(table)
    assert document["files"]["host.py"] == FILES["js/core/host.py"]
    assert re.fullmatch("[0-9a-f]{16}", document["version"])


@pytest.mark.parametrize(
    "path",
    [
        "/package.json",
        "/node_modules/x/index.js",
        "/lib/.stamp",
        "/lib/preact.js.gz",
        "/js/core/host.py",
        "/js/../package.json",
        "/js/%2e%2e/package.json",
        "/js/nothing.js",
        "/js",
        "/favicon.ico",
    ],
)
def test_what_is_not_for_sending_is_not_found(http, path):
    answer = http.get(path)
    assert answer.status_code == 404
    assert answer.json["error"]["key"] == "not_found"


@pytest.mark.parametrize(
    ("path", "mime"),
    [
        ("/", "text/html; charset=utf-8"),
        ("/js/app.js", "text/javascript; charset=utf-8"),
        ("/lib/core.wasm", "application/wasm"),
        ("/manifest.webmanifest", "application/manifest+json"),
        ("/core.json", "application/json"),
        ("/sw.js", "text/javascript; charset=utf-8"),
        ("/lib/THIRD_PARTY_NOTICES.txt", "text/plain; charset=utf-8"),
    ],
)
def test_each_file_has_its_type_and_is_asked_about_before_use(http, path, mime):
    answer = http.get(path)
    assert answer.headers["Content-Type"] == mime
    assert answer.headers["Cache-Control"] == "no-cache"
    etag = answer.headers["ETag"]
    again = http.get(path, headers={"If-None-Match": etag})
    assert (again.status_code, again.data) == (304, b"")
    assert again.headers["Content-Security-Policy"]


def test_text_is_packed_for_those_who_take_it_under_a_tag_of_its_own(http):
    plain = http.get("/js/app.js")
    packed = http.get("/js/app.js", headers={"Accept-Encoding": "br, gzip"})
    assert "Content-Encoding" not in plain.headers
    assert packed.headers["Content-Encoding"] == "gzip"
    assert gzip.decompress(packed.data) == plain.data
    assert packed.headers["ETag"] != plain.headers["ETag"]
    assert "Accept-Encoding" in packed.headers["Vary"]
    refused = http.get("/js/app.js", headers={"Accept-Encoding": "gzip;q=0"})
    assert refused.data == plain.data


@pytest.mark.parametrize("path", ["/", "/js/app.js", "/nothing", "/api/v1/me"])
def test_every_answer_is_guarded(http, path):
    answer = http.get(path)
    rules = policy(answer)
    assert rules["default-src"] == ["'self'"]
    assert rules["script-src"][:2] == ["'self'", "'wasm-unsafe-eval'"]
    assert rules["style-src"] == ["'self'"]
    for name in ("object-src", "base-uri", "frame-ancestors"):
        assert rules[name] == ["'none'"]
    assert rules["require-trusted-types-for"] == ["'script'"]
    assert "'unsafe-inline'" not in answer.headers["Content-Security-Policy"]
    assert answer.headers["X-Content-Type-Options"] == "nosniff"
    assert answer.headers["Referrer-Policy"] == "no-referrer"


def test_only_the_pages_own_import_map_may_run(http):
    digest = base64.b64encode(hashlib.sha256(IMPORT_MAP.encode()).digest()).decode()
    for path in ("/", "/index.html"):
        assert policy(http.get(path))["script-src"][2:] == [f"'sha256-{digest}'"]
    assert policy(http.get("/js/app.js"))["script-src"][2:] == []


def test_the_self_check_is_a_page_of_its_own(http):
    page = http.get("/setup")
    assert page.text == FILES["setup/check.html"]
    assert page.content_type == "text/html; charset=utf-8"
    digest = base64.b64encode(hashlib.sha256(IMPORT_MAP.encode()).digest()).decode()
    assert f"'sha256-{digest}'" in page.headers["Content-Security-Policy"]
    assert http.get("/setup/check.js").text == FILES["setup/check.js"]
    assert http.get("/setup/none.js").status_code == 404


def test_phones_do_not_keep_what_sets_them_up(http):
    assert [name for name in shell(http)[0]["files"] if "setup" in name] == []


def test_the_set_up_page_on_plain_http_may_ask_for_the_probe_alone(http):
    policy = "Cross-Origin-Resource-Policy"
    assert http.get("/setup/ok.svg").headers[policy] == "cross-origin"
    assert http.get("/setup/check.js").headers[policy] == "same-origin"


def test_encrypted_connections_are_kept_encrypted(http):
    assert "Strict-Transport-Security" not in http.get("/").headers
    secure = http.get("/", base_url="https://localhost")
    assert secure.headers["Strict-Transport-Security"] == "max-age=31536000"


def test_answers_of_the_interface_are_never_kept(http):
    for path in ("/api/v1/health", "/api/v1/me", "/api/v1/openapi.json"):
        assert http.get(path).headers["Cache-Control"] == "no-store"


def test_the_page_in_this_checkout_can_be_kept_whole(tmp_path):
    settings = Settings(data_dir=tmp_path)
    app = create_app(settings)
    http = app.test_client()
    listed, _ = shell(http)
    for path in listed["files"]:
        assert http.get(path).status_code == 200, path
    html = http.get("/").text
    for address in re.findall(r'(?:src|href)="([^"]+)"', html):
        assert address in listed["files"] + listed["later"], address
    close_app(app)


FIRST_PARTS = ["lib/page-chunk-ABCD2345.js"]
LATER_PARTS = ["lib/page-later-ZYXW6543.js"]


def packed(folder):
    """Lay a pack beside the sources, and the stamp that says it is theirs."""
    lines = "<!-- plain -->\n<script src=/js/app.js></script>\n<!-- end plain -->"
    (folder / "index.html").write_text(f"<!doctype html>{lines}")
    apart = ("lib/micropython.mjs", "js/core/worker.js")
    for name in (*PACK, *LANGUAGES, LATER_STYLE, *FIRST_PARTS, *LATER_PARTS, *apart):
        (folder / name).write_text("export {};\n")
    stamp = stamp_of(sources_stamp(folder), FIRST_PARTS, LATER_PARTS)
    (folder / STAMP).write_text(stamp)


def test_workers_go_without_their_comments(http, folder):
    text = "// Reasons.\nconst a = '// none';\n  /** @type {1} */\n  b(a); // why\n"
    (folder / "js" / "core").mkdir(parents=True, exist_ok=True)
    (folder / "js" / "core" / "worker.js").write_text(text)
    told = http.get("/js/core/worker.js").text
    assert told == "const a = '// none';\nb(a); // why\n"
    assert "/" + "/ The line above" not in http.get("/sw.js").text


def test_a_pack_of_these_sources_stands_for_all_modules(http, folder):
    packed(folder)
    html = http.get("/").text
    assert "/lib/page.js" in html
    assert "/js/app.js" not in html
    assert '<link rel="modulepreload" href="/lib/page-chunk-ABCD2345.js" />' in html
    listed, _ = shell(http)
    assert listed["files"] == [
        "/",
        "/icons/192.png",
        "/js/core/worker.js",
        "/lib/first.js",
        "/lib/micropython.mjs",
        "/lib/page-chunk-ABCD2345.js",
        "/lib/page.css",
        "/lib/page.js",
        "/manifest.webmanifest",
        "/core.json",
    ]


def test_a_pack_of_older_sources_is_not_sent(http, folder):
    packed(folder)
    before, _ = shell(http)
    (folder / "js" / "app.js").write_text("export const two = 2;\n")
    assert "/js/app.js" in http.get("/").text
    after, _ = shell(http)
    assert "/js/app.js" in after["files"]
    assert "/lib/page.js" not in after["files"]
    assert [name for name in after["files"] if "/page-" in name] == []
    assert [name for name in after["later"] if "/page-" in name] == []
    assert after["version"] != before["version"]


def test_the_rest_of_the_core_is_kept_after_what_an_offline_phone_needs(http, folder):
    # The page says "ready for offline" once it finds that file kept.
    (folder / "js" / "parts" / "later").mkdir(parents=True)
    (folder / "js" / "parts" / "later" / "pin.js").write_text("export {};\n")
    packed(folder)
    listed, _ = shell(http)
    assert listed["later"][:5] == [
        "/lib/page-later-ZYXW6543.js",
        "/lib/later.css",
        "/js/parts/later/pin.js",
        "/lib/lang-en.js",
        "/core-later.json",
    ]


@pytest.mark.parametrize("name", [*FIRST_PARTS, *LATER_PARTS, LATER_STYLE])
def test_a_pack_without_one_of_its_parts_is_not_sent(http, folder, name):
    packed(folder)
    (folder / name).unlink()
    assert "/js/app.js" in http.get("/").text


def test_a_stamp_of_an_older_set_up_makes_no_pack(http, folder):
    packed(folder)
    (folder / STAMP).write_text(sources_stamp(folder))
    assert "/js/app.js" in http.get("/").text


def test_languages_are_kept_later_and_a_pack_without_one_is_none(http, folder):
    packed(folder)
    listed, _ = shell(http)
    assert [name for name in listed["later"] if "lang" in name] == [
        "/lib/lang-en.js",
        "/lib/lang-es.js",
        "/lib/lang-fr.js",
    ]
    assert http.get("/lib/lang-es.js").status_code == 200
    # Plain modules know every language; half a pack would not.
    (folder / "lib" / "lang-fr.js").unlink()
    os.utime(folder / "js" / "app.js", (1, 1))  # any change of a file is looked at
    assert "/js/app.js" in http.get("/").text


def test_a_copy_squeezed_at_set_up_goes_to_who_takes_it(http, folder):
    (folder / "lib" / "preact.js.br").write_bytes(b"squeezed")
    asked = {"Accept-Encoding": "gzip, br"}
    answer = http.get("/lib/preact.js", headers=asked)
    assert (answer.data, answer.headers["Content-Encoding"]) == (b"squeezed", "br")
    assert answer.headers["ETag"].endswith('-br"')
    plain = http.get("/lib/preact.js")
    assert "Content-Encoding" not in plain.headers
    assert plain.text == FILES["lib/preact.js"]


def test_what_one_screen_alone_needs_is_kept_later(http, folder):
    (folder / "lib" / "uplot.js").write_text("export default 1;\n")
    listed, _ = shell(http)
    assert "/lib/uplot.js" not in listed["files"]
    assert listed["later"] == ["/core-later.json", "/lib/uplot.js"]
    assert http.get("/lib/uplot.js").status_code == 200


def test_a_squeezed_core_goes_out_only_while_it_is_of_these_very_files(
    tmp_path, http, folder
):
    name = core_document.CORE
    body = http.get("/core.json").data
    (folder / core_document.copy_of(name)).write_bytes(b"squeezed core")
    stamp = folder / core_document.stamp_of(name)
    asked = {"Accept-Encoding": "gzip, br"}
    for mark, coding in (
        ("of an older core", "gzip"),
        (core_document.mark_of(body), "br"),
    ):
        stamp.write_text(mark)
        # A server of its own: it looks at the stamp once for each core.
        settings = Settings(data_dir=tmp_path / mark[:9], static_dir=folder)
        again = create_app(settings).test_client()
        answer = again.get("/core.json", headers=asked)
        assert answer.headers["Content-Encoding"] == coding
        assert (answer.data == b"squeezed core") == (coding == "br")
        assert again.get("/core.json").data == body
        close_app(again.application)


def test_set_up_and_server_read_the_same_rules():
    assert core_document.rules_of(RULES_DIR) == read_rules()


def test_phones_that_ask_at_once_all_get_the_core(tmp_path, monkeypatch):
    # On CPython 3.11, two threads that read syntax trees at once fail now and then.
    reading, most = [], []
    once = core_document.core_texts

    def watched(*args):
        reading.append(1)
        most.append(len(reading))
        time.sleep(0.05)
        texts = once(*args)
        reading.pop()
        return texts

    monkeypatch.setattr("server.api.shell.core_texts", watched)
    shell = Shell(Settings(tmp_path).static_dir, CORE_DIR)
    with ThreadPoolExecutor(8) as pool:
        etags = set(pool.map(lambda _: shell.core().etag, range(8)))
    assert len(etags) == 1
    assert max(most) == 1
