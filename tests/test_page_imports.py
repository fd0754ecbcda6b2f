"""Scripts that tests and benches run in the page import what the page exports.

No checker reads them: they are strings until a browser, late, has to.
"""

import re

import pytest

from tests.conftest import ROOT

IMPORT = re.compile(r"(?:const \{([^}]*)\} = )?(?:await )?import\(.(/js/[^\"')]+)")


def imported():
    """Return (script, address, name or None) of every import in a script."""
    rows = []
    for folder in ("tests", "demo"):
        for path in sorted((ROOT / folder).rglob("*.py")):
            if "node_modules" in path.parts or path.name == "test_page_imports.py":
                continue
            for names, address in IMPORT.findall(path.read_text("utf-8")):
                script = str(path.relative_to(ROOT))
                wanted = [name.split(":")[0].strip() for name in names.split(",")]
                rows += [(script, address, name or None) for name in wanted]
    return sorted(set(rows), key=str)


@pytest.mark.parametrize(("script", "address", "name"), imported())
def test_what_a_script_imports_is_exported(script, address, name):
    module = ROOT / "static" / address.lstrip("/")
    assert module.exists(), f"{script} imports {address}"
    if name is not None:
        text = module.read_text("utf-8")
        declared = rf"^export (?:async )?(?:function\*?|const|let|class) {name}\b"
        listed = rf"^export \{{[^}}]*\b{name}\b"
        assert re.search(f"{declared}|{listed}", text, re.M), f"{script}: {name}"
