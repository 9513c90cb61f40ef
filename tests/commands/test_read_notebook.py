"""`read_notebook FILE` from the shell: a job file out, or a line a fault and exit code 2."""

import json
from pathlib import Path
from typing import Any

import pytest

from tests.commands.test_schedule import run

NOTEBOOK = """\
wall North 150 1/4
base 30 1/2 high 24 deep 4 up
B1 18 door left
B2 36 fixed 6 over pair
appliance 24 dishwasher
B3 18 4 drawers 5, , 7, 8
B4 36 drawer 6 beside drawer over pair
filler 3
"""


def placed(opening: dict[str, Any]) -> tuple[str, ...]:
    """An opening's label, and its size and place as the file has them."""
    return tuple(opening[key] for key in ("label", "width", "height", "x", "y"))


def test_a_notebook_comes_out_as_a_job_file(tmp_path: Path) -> None:
    """Without a database; the schedule of what is printed is worked out from it."""
    file = tmp_path / "kitchen.txt"
    file.write_text(NOTEBOOK, encoding="utf-8")
    done = run("read_notebook", str(file), "--unit", "in")

    assert (done.returncode, done.stderr) == (0, b"")
    said = json.loads(done.stdout)
    assert (said["version"], said["job"]["number"]) == (2, "NOTEBOOK")
    assert said["walls"] == [{"label": "North", "length": "150 1/4"}]
    openings = {cabinet["label"]: cabinet["openings"] for cabinet in said["cabinets"]}
    assert [placed(opening) for opening in openings["B2"]] == [
        ("a", "33", "6", "1 1/2", "23"), ("b", "33", "20", "1 1/2", "1 1/2"),
    ]  # fmt: skip
    assert [placed(opening) for opening in openings["B4"]] == [
        ("a", "15 3/4", "6", "1 1/2", "23"), ("b", "15 3/4", "6", "18 3/4", "23"),
        ("c", "33", "20", "1 1/2", "1 1/2"),
    ]  # fmt: skip
    assert openings["B1"][0]["fronts"] == [{"hinged": "left"}]
    assert openings["B3"][0]["fronts"] == [{"height": "5"}, {}, {"height": "7"}, {"height": "8"}]
    assert [(one["label"], one["after"], one["width"]) for one in said["others"]] == [
        ("A1", "B2", "24"), ("F1", "B4", "3"),
    ]  # fmt: skip
    scheduled = run("schedule", "-", given=done.stdout)
    assert scheduled.returncode == 0
    walls = json.loads(scheduled.stdout)["walls"]
    assert walls[0]["runs"]["floor"]["length"] == "3429"  # 135 in


def test_standard_input_in_millimetres() -> None:
    """`-` reads what is piped in; letters stay as they are whatever the terminal is set to."""
    given = (
        "\ufeffwall Köök\nbase 720 high 560 deep 100 up\nB1 600 drawer beside drawer beside open"
    )
    done = run(
        "read_notebook", "-", "--unit", "mm", "--step", "0.5", given=given.encode(),
        PYTHONIOENCODING="ascii", PYTHONUTF8="0",
    )  # fmt: skip
    said = json.loads(done.stdout.decode("utf-8"))

    assert said["job"] == {"number": "NOTEBOOK", "unit": "mm", "step": "0.5"}
    assert (said["cabinets"][0]["wall"], said["cabinets"][0]["build"]) == ("Köök", "frameless")
    widths = [opening["width"] for opening in said["cabinets"][0]["openings"]]
    assert widths == ["176", "176", "176"]


def test_a_line_for_every_fault() -> None:
    """The number of its line, what was found, what may stand there; and no file."""
    given = NOTEBOOK.replace("door left", "dor left").replace("filler 3", "filler").encode()
    done = run("read_notebook", "-", "--unit", "in", given=given)

    assert (done.returncode, done.stdout) == (2, b"")
    first, second = done.stderr.decode("utf-8").splitlines()
    assert first.startswith("line 3: found “dor”, wanted 30 high, ")
    assert second == "line 8: found nothing more, wanted its width, like 23 5/8"


@pytest.mark.parametrize(
    ("arguments", "given", "said"),
    [
        (["-"], b"", "--unit"),
        (["-", "--unit", "ell"], b"", "--unit"),
        (["-", "--unit", "in", "--step", "0"], b"", "--step: found “0”"),
        (["-", "--unit", "in", "--step", "2"], b"", "at most 1 in"),
        (["-", "--unit", "in", "--step", "wide"], b"", "--step: “wide” is not a length"),
        (["-", "--unit", "in"], b"wall N\xff", "not UTF-8"),
        (["nowhere.txt", "--unit", "in"], b"", "a notebook that can be read"),
    ],
)
def test_what_cannot_be_read_at_all_is_refused(
    arguments: list[str], given: bytes, said: str
) -> None:
    """In words, with exit code 2."""
    done = run("read_notebook", *arguments, given=given)

    assert (done.returncode, done.stdout) == (2, b"")
    assert said in done.stderr.decode("utf-8")
    assert "Traceback" not in done.stderr.decode("utf-8")
