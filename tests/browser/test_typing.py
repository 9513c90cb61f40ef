"""A whole notebook typed in by keyboard alone, row by row and as lines: one kitchen."""

from dataclasses import replace
from fractions import Fraction

import pytest
from playwright.sync_api import Page

from fronts.notebook import read_notebook
from fronts.rules.kitchen import Kitchen
from fronts.snapshot import kitchen_of
from shopjobs.models import Job
from tests.browser.conftest import AT_A_DESK
from tests.browser.typing import NOTEBOOKS, RowTyping, Typist
from tests.factories import overlaid

pytestmark = [pytest.mark.thorough, AT_A_DESK]
MOST_KEYS = {"ten": 250}
"""The most keys that a kitchen may take, by its notebook."""


def standing(kitchen: Kitchen) -> tuple[object, ...]:
    """What stands on the walls."""
    cabinets = sorted(kitchen.cabinets, key=lambda one: one.label)
    return (
        tuple(cabinets),
        tuple(replace(one, label="") for one in kitchen.others),
        {wall.label: wall.length for wall in kitchen.walls},
    )


@pytest.mark.parametrize("way", ["rows", "lines"])
@pytest.mark.parametrize("notebook", ["ten", "twenty-five"])
def test_a_notebook_is_typed_in(page: Page, job: Job, notebook: str, way: str) -> None:
    """By keys alone, and not many more than the measurements have letters."""
    overlaid(job)
    text = (NOTEBOOKS / f"{notebook}.txt").read_text()
    kitchen = read_notebook(text, "in", Fraction(job.step))
    page.goto(f"/jobs/{job.pk}/")
    typist = Typist(page)
    if way == "lines":
        typist.lines(text)
    else:
        RowTyping(typist, kitchen).all(text)

    entered = kitchen_of(Job.objects.get())
    assert standing(entered) == standing(kitchen)
    if way == "rows":
        assert typist.keys <= MOST_KEYS.get(notebook, 1.3 * typist.written + typist.fields)
