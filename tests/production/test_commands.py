"""README's commands, run as they are printed, in a copy of the project."""

import json
import re
from pathlib import Path

import pytest

from shopjobs.bootstrap import ROOT
from tests.cutting.test_parts_file import GOOD
from tests.production.running import README, run

pytestmark = pytest.mark.thorough

PASSWORD = "spokeshave and sawdust 9"
ROW = re.compile(r"^\| `(python3? manage\.py (\w+)[^`]*)`", re.MULTILINE)
ELSEWHERE = {"bench": "its own test runs it: all of it takes minutes"}
MEANT = {
    "schedule": {"FILE": "attic.json"},
    "sheets": {"FILE": "attic.json", "DIR": "printed"},
    "plan_cuts": {"FILE": "parts.json"},
    "read_notebook": {"FILE": "notebook.txt"},
    "new_shop": {"NAME": "'Alder Row'", "SIGN-IN-NAME": "ada"},
    "changepassword": {"SIGN-IN-NAME": "ada"},
    "import_job": {"FILE": "attic.json", "NAME": "'Alder Row'"},
    "export_job": {"NUMBER": "AF-2", "NAME": "'Alder Row'"},
    "export_shop": {"FILE": "alder.zip", "NAME": "'Alder Row'"},
    "import_shop": {"FILE": "alder.zip"},
    "clearsessions": {},
    "backup": {},
    "restore": {"FILE": "saved.zip"},
}
"""What stands for each word in capitals."""
SETS_OUT = ("new_shop", "import_job", "export_shop")
"""What others need to have been run."""


def printed() -> dict[str, str]:
    """README's commands by name; what may be left out is left out, and words have their value."""
    lines = {}
    for line, name in ROW.findall(README):
        if name in ELSEWHERE:
            continue
        said = re.sub(r" \[[^]]*\]", "", line)
        for word, value in MEANT[name].items():
            said = re.sub(rf"(?<![\w-]){word}(?![\w-])", value, said)
        assert not re.search(r"\b[A-Z]{3,}", said.replace("AF-2", "")), said
        lines[name] = said
    return lines


@pytest.mark.slow
def test_each_command_runs_as_it_is_printed(site: Path) -> None:
    """Those that make what others need first; each ends well."""
    sample = ROOT / "tests" / "data" / "kitchens" / "attic-flat.job.json"
    (site / "attic.json").write_bytes(sample.read_bytes())
    (site / "parts.json").write_text(json.dumps(GOOD), encoding="utf-8")
    (site / "notebook.txt").write_text("wall North\nfiller 3\n", encoding="utf-8")
    commands = printed()
    rest = [name for name in commands if name not in SETS_OUT]
    extra = {
        "import_shop": " --as 'Alder Row again' --without-people",
        "backup": " --to saved.zip",
        "restore": " --replace",
    }

    run(["python manage.py migrate"], site)
    for name in (*SETS_OUT, *sorted(rest)):
        run([commands[name] + extra.get(name, "")], site, typed=f"{PASSWORD}\n{PASSWORD}\n")

    assert list((site / "printed").glob("*.pdf"))
    assert {"schedule", "sheets", "plan_cuts", "changepassword", "clearsessions"} <= set(commands)
