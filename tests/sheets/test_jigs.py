"""The sheet of jigs and shims: its caution is read with them."""

from dataclasses import replace

import pytest

from fronts.sheets import jigs
from fronts.sheets.pdf import PAPERS, Paper, render
from fronts.sheets.sheet_page import source_of
from tests.drawings.kitchens import demo
from tests.sheets.printed import PRINTED, pages_of


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("count", [5, 6, 7])
def test_the_caution_stands_with_what_it_is_about(paper: Paper, count: int) -> None:
    """Never alone on a page of its own, however many jigs there are."""
    source = source_of(demo()[0], PRINTED)
    jigs_of = {front for jig in source.schedule.jigs[:count] for front in jig.fronts}
    fittings = tuple(each for each in source.schedule.fittings if each.front in jigs_of)
    some = replace(source.schedule, fittings=fittings, shims=())
    pages = pages_of(render(jigs.content(replace(source, schedule=some)), paper))

    (cautioned,) = (page for page in pages if "Take care." in page)
    assert "Jig " in cautioned
