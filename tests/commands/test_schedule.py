"""`schedule FILE` from the shell: JSON out, or a line a fault and exit code 2."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.kitchen_files import FOLDER, SAMPLES, changed, small

ROOT = Path(__file__).resolve().parents[2]
GALLEY = FOLDER / "boathouse-galley.job.json"


def run(*arguments: str, given: bytes = b"", **environ: str) -> subprocess.CompletedProcess[bytes]:
    """Run a command with a database that nothing can reach."""
    nowhere = {"DATABASE_URL": "postgres://nobody@127.0.0.1:1/nothing"}
    return subprocess.run(
        [sys.executable, "manage.py", *arguments],
        cwd=ROOT,
        env={**os.environ, "DJANGO_SETTINGS_MODULE": "shopjobs.settings", **nowhere, **environ},
        input=given,
        capture_output=True,
        timeout=120,
        check=False,
    )


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name)
def test_a_file_comes_out_as_a_schedule(sample: Path) -> None:
    """The whole schedule, without a database, and nothing on standard error."""
    done = run("schedule", str(sample))
    assert (done.returncode, done.stderr) == (0, b"")
    found = json.loads(done.stdout)
    assert found["fronts"]
    assert found["job"]["number"] == json.loads(sample.read_bytes())["job"]["number"]


def test_standard_input_says_the_same() -> None:
    """`-` reads what is piped in."""
    piped = run("schedule", "-", given=GALLEY.read_bytes())
    assert piped.returncode == 0
    assert json.loads(piped.stdout) == json.loads(run("schedule", str(GALLEY)).stdout)


def test_letters_survive_a_terminal_without_them() -> None:
    """The output is UTF-8 whatever the terminal claims."""
    text = GALLEY.read_text(encoding="utf-8").replace('"G1"', '"Köök"').encode()
    done = run("schedule", "-", given=text, PYTHONIOENCODING="ascii", PYTHONUTF8="0")
    assert done.returncode == 0
    assert json.loads(done.stdout.decode("utf-8"))["fronts"][0]["cabinet"] == "Köök"


def test_a_line_for_every_fault() -> None:
    """Path, what was found, what is wanted; all of them; no schedule and no traceback."""
    text = changed("cabinets.0.colour", "oak").replace('"26"', '"-26"').encode()
    done = run("schedule", "-", given=text)
    assert (done.returncode, done.stdout) == (2, b"")
    first, second = done.stderr.decode().splitlines()
    assert first.startswith("cabinets[0].colour: found an unknown key, wanted one of label, ")
    assert second == (
        'cabinets[0].openings[0].height: found "-26", wanted a length above zero, like 23 5/8'
    )


@pytest.mark.parametrize(
    ("name", "why"),
    [
        ("no/such/file.json", "found no such file or directory"),
        (".", "found is a directory"),
        (sys.executable, "found byte "),
        ("/dev/null", "found nothing"),
        ("/dev/zero", "found more than 20 MB"),
    ],
)
def test_what_is_no_job_file(name: str, why: str) -> None:
    """A missing file, a folder, a program, nothing and an endless device: a line each."""
    done = run("schedule", name)
    assert done.returncode == 2
    (line,) = done.stderr.decode().splitlines()
    assert why in line
    assert ", wanted " in line


def test_without_a_file() -> None:
    """The command says how it is called."""
    done = run("schedule")
    assert done.returncode == 2
    assert b"usage: manage.py schedule" in done.stderr


def test_it_starts_without_what_only_sheets_need() -> None:
    """Reckoning needs neither the PDF maker nor the unit library."""
    done = subprocess.run(
        [sys.executable, "-X", "importtime", "manage.py", "schedule", str(GALLEY)],
        cwd=ROOT,
        env={**os.environ, "DJANGO_SETTINGS_MODULE": "shopjobs.settings"},
        capture_output=True,
        timeout=120,
        check=True,
    )
    loaded = {line.rpartition(b"|")[2].strip() for line in done.stderr.splitlines()}
    assert b"fronts.rules.schedule" in loaded
    assert not loaded & {b"weasyprint", b"pint", b"highspy", b"numpy"}


def test_what_was_measured_is_held_against_what_was_planned() -> None:
    """Reckoned by hand, in mm: left 1/16 − 1/8 in, right (3/16 + 1/8)/2 − 1/8, below 1/8 more.

    −1.5875 and 0.79375 are −1.190625 to the left and 0.79375 too wide; 3.175 below and nothing
    above 1.5875 up, and too low by 3.175; a hinge moves its door 2 mm (common practice, no source).
    """
    eighth = dict.fromkeys(("left", "right", "top", "bottom"), "1/8")
    fit = {
        "front": "B1.a", "at": "2027-03-12T10:00:00Z", "by": "Kim", "state": "done",
        "gaps": {**eighth, "left": "1/16", "right": {"top": "3/16", "bottom": "1/8"},
                 "bottom": "1/4"},
        "planned": eighth,
    }  # fmt: skip
    older = fit | {"at": "2027-03-11T10:00:00Z", "gaps": eighth}
    text = json.dumps(small() | {"version": 2, "fits": [fit, older]})
    done = run("schedule", "-", given=text.encode())

    assert json.loads(done.stdout)["truing"] == [{
        "front": "B1.a", "planned": dict.fromkeys(eighth, "3.175"), "shift_right": "-1.190625",
        "shift_up": "1.5875", "wide_by": "0.79375", "high_by": "-3.175", "tilt": None,
        "within_play": True,
    }]  # fmt: skip
