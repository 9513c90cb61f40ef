"""Which sheets a job has, and their file names."""

import re
import string
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kitchen import FrontFacts
from fronts.sheets.registry import SHEETS, every_printout
from fronts.sheets.sheet_page import source_of
from tests.drawings.kitchens import demo, hostile
from tests.rules.small_kitchens import cabinet, kitchen, opening
from tests.sheets.printed import PRINTED, demo_source

SAFE = set(string.ascii_letters + string.digits + "-_.")


def test_a_job_has_its_sheets_and_one_for_each_cabinet_with_fronts() -> None:
    """Every sheet of the registry, one file each; fitting sheets by cabinet."""
    of, worked_out = demo()
    files = [each.file for each in every_printout(demo_source())]
    assert files[:9] == [
        "front-schedule.pdf", "hardware.pdf", "bought-fronts.pdf", "jigs-and-shims.pdf",
        "templates.pdf", "cutting-plan.pdf", "boxes.pdf", "labels.pdf", "set-up.pdf",
    ]  # fmt: skip
    having = {each.cabinet for each in worked_out.fronts}
    assert files[9:] == [
        f"fitting-{each.label}.pdf" for each in of.cabinets if each.label in having
    ]
    of_the_moment = [sheet.key for sheet in SHEETS.values() if sheet.needs_records]
    assert of_the_moment == ["sign-off"]
    assert len(SHEETS) == len(files[:9]) + len(["fitting", *of_the_moment])


def test_what_is_bought_has_its_sheet() -> None:
    """Behind the hardware, where something is."""
    of = kitchen(cabinet(opening(front=FrontFacts(made_by="bought"))))
    files = [each.file for each in every_printout(source_of(of, PRINTED))]
    assert files[:3] == ["front-schedule.pdf", "hardware.pdf", "bought-fronts.pdf"]


def test_a_job_without_a_plan_has_all_its_other_sheets() -> None:
    """A plan is made on purpose; what else there is can be printed before."""
    of, _ = demo()
    files = [each.file for each in every_printout(source_of(of, PRINTED))]
    assert "cutting-plan.pdf" not in files
    assert "labels.pdf" in files


@given(st.lists(st.text(min_size=1, max_size=40), min_size=1, max_size=4, unique=True))
def test_file_names_are_safe_and_differ(labels: list[str]) -> None:
    """From any labels, on file systems that don't tell capitals apart."""
    cabinets = [cabinet(opening(), label=each) for each in labels]
    of = kitchen(*(replace(each, x=each.width * at) for at, each in enumerate(cabinets)))
    files = [each.file for each in every_printout(source_of(of, PRINTED))]
    assert len({each.lower() for each in files}) == len(files)
    for each in files:
        assert set(each) <= SAFE
        assert not each.startswith((".", "-"))
        assert len(each) <= 90


def test_hostile_labels_stay_in_the_folder() -> None:
    """No label leads out of the folder that was asked for."""
    bad = hostile()
    files = [each.file for each in every_printout(source_of(bad, PRINTED))]
    assert all("/" not in each and ".." not in each for each in files)


def test_a_kitchen_without_cabinets_still_has_its_sheets() -> None:
    """They say that there is nothing yet."""
    nothing = kitchen()
    for printout in every_printout(source_of(nothing, PRINTED)):
        assert re.search(r"\bno (fronts|hardware|jigs|new parts)\b", printout.html())
