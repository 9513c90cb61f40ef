"""Which sheets a job has, and their file names."""

import string
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.schedule import schedule
from fronts.sheets.every import every_sheet
from fronts.sheets.sheet_page import Imprint
from tests.drawings.kitchens import demo, hostile
from tests.rules.small_kitchens import cabinet, kitchen, opening
from tests.sheets.printed import PRINTED

IMPRINT = Imprint(PRINTED, "0000-0000")
SAFE = set(string.ascii_letters + string.digits + "-_.")


def test_a_job_has_its_sheets_and_one_for_each_cabinet_with_fronts() -> None:
    """Schedule, hardware, jigs, a fitting sheet a cabinet, and all fitting sheets together."""
    of, worked_out = demo()
    files = [each.file for each in every_sheet(worked_out, of, IMPRINT)]
    assert files[:3] == ["front-schedule.pdf", "hardware.pdf", "jigs-and-shims.pdf"]
    assert files[-1] == "fitting-all.pdf"
    having = {each.cabinet for each in worked_out.fronts}
    assert files[3:-1] == [
        f"fitting-{each.label}.pdf" for each in of.cabinets if each.label in having
    ]


@given(st.lists(st.text(min_size=1, max_size=40), min_size=1, max_size=4, unique=True))
def test_file_names_are_safe_and_differ(labels: list[str]) -> None:
    """From any labels, on file systems that don't tell capitals apart."""
    cabinets = [cabinet(opening(), label=each) for each in labels]
    of = kitchen(*(replace(each, x=each.width * at) for at, each in enumerate(cabinets)))
    files = [each.file for each in every_sheet(schedule(of), of, IMPRINT)]
    assert len({each.lower() for each in files}) == len(files)
    for each in files:
        assert set(each) <= SAFE
        assert not each.startswith((".", "-"))
        assert len(each) <= 90


def test_hostile_labels_stay_in_the_folder() -> None:
    """No label leads out of the folder that was asked for."""
    bad = hostile()
    files = [each.file for each in every_sheet(schedule(bad), bad, IMPRINT)]
    assert all("/" not in each and ".." not in each for each in files)


def test_a_kitchen_without_cabinets_still_has_its_sheets() -> None:
    """They say that there is nothing yet."""
    nothing = kitchen()
    for sheet in every_sheet(schedule(nothing), nothing, IMPRINT):
        assert "<h1>" in sheet.html()
