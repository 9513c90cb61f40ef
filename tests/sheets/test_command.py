"""`sheets FILE --out DIR`."""

import json
from io import StringIO
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command
from pypdf import PdfReader

from fronts import jobfile
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.schedule import schedule
from tests.kitchen_files import changed, small
from tests.pdf_text import page_texts, words_of


def job_file(folder: Path, text: str) -> str:
    """A job file with this text."""
    file = folder / "kitchen.job.json"
    file.write_text(text, encoding="utf-8")
    return str(file)


@pytest.mark.slow
@pytest.mark.parametrize(("paper", "width"), [("letter", 612), ("a4", 595)])
def test_it_writes_every_sheet_and_prints_their_names(
    tmp_path: Path, paper: str, width: int
) -> None:
    """Into a folder that need not be there; no database is touched."""
    out, said = tmp_path / "new" / "sheets", StringIO()
    call_command(
        "sheets", job_file(tmp_path, json.dumps(small())), out=out, paper=paper, stdout=said
    )
    names = said.getvalue().splitlines()
    assert sorted(names) == sorted(str(each) for each in out.iterdir())
    assert {Path(each).name for each in names} == {
        "front-schedule.pdf", "hardware.pdf", "jigs-and-shims.pdf", "templates.pdf",
        "cutting-plan.pdf", "labels.pdf", "set-up.pdf", "fitting-B1.pdf",
    }  # fmt: skip
    for each in names:
        assert round(PdfReader(each).pages[0].mediabox.width) == width
        assert "Job T-1" in page_texts(Path(each).read_bytes())[0]


def test_a_refused_file_exits_with_a_line_for_each_fault(tmp_path: Path) -> None:
    """Exit code 2, and nothing is written."""
    errors, out = StringIO(), tmp_path / "sheets"
    with pytest.raises(SystemExit) as stopped:
        call_command(
            "sheets",
            job_file(tmp_path, changed("cabinets.0.width", "wide")),
            out=out,
            stderr=errors,
            stdout=StringIO(),
        )
    assert stopped.value.code == 2
    (line,) = errors.getvalue().splitlines()
    assert "cabinets[0].width" in line
    assert "wide" in line
    assert not out.exists()


def test_a_folder_that_cannot_be_made_is_said_plainly(tmp_path: Path) -> None:
    """A file stands where the folder should be."""
    taken = tmp_path / "taken"
    taken.write_text("here already")
    with pytest.raises(CommandError, match="taken"):
        call_command("sheets", job_file(tmp_path, json.dumps(small())), out=taken / "sheets")
    with pytest.raises(CommandError, match="taken"):
        call_command("sheets", job_file(tmp_path, json.dumps(small())), out=taken)


def test_a_paper_that_is_none_is_refused(tmp_path: Path) -> None:
    """The message says which there are."""
    with pytest.raises(CommandError, match="letter or a4"):
        call_command(
            "sheets", job_file(tmp_path, json.dumps(small())), "--out=x", "--paper=foolscap"
        )


@pytest.mark.slow
def test_the_plan_that_it_prints_is_made_from_the_files_own_parts(tmp_path: Path) -> None:
    """Each part is in a layout of the plan and on a label, under the schedule's fingerprint."""
    kitchen = jobfile.read(json.dumps(small()))
    worked_out = schedule(kitchen)
    out = tmp_path / "sheets"

    call_command("sheets", job_file(tmp_path, json.dumps(small())), out=out, stdout=StringIO())

    plan, labels = (_text(out / name) for name in ("cutting-plan.pdf", "labels.pdf"))
    assert worked_out.parts
    assert parts_fingerprint(worked_out.parts) in plan
    assert "Made here from stock of the usual sizes, with a kerf of 1/8 in" in plan
    for part in worked_out.parts:
        assert f"({part.label})" in plan or f"{part.label} " in plan
        assert part.front in labels


def _text(file: Path) -> str:
    return words_of(file.read_bytes())
