"""The front schedule says before anything is cut how far off each front is to be expected."""

import pytest

from fronts.figures.will_it_go import will_it_go
from fronts.rules.schedule import schedule
from fronts.sheets.pdf import PAPERS, Paper
from tests.drawings.kitchens import demo
from tests.sheets.printed import demo_pages


@pytest.mark.parametrize("paper", PAPERS)
def test_both_figures_are_named_and_every_front_is_there(paper: Paper) -> None:
    """Worst case and root-sum-square, with their source; each answer beside its figures."""
    planned = schedule(demo()[0])
    words = " ".join(" ".join(demo_pages("schedule", paper)).split())
    told = words[words.index("Will it go?") :]

    assert "root-sum-square" in told
    assert "worst case" in told
    assert "F. Scholz, Tolerance Stack Analysis Methods" in told
    assert "± 1/32 ± 3/64 ± ≈3/64 should go; at worst 1/64 too far" in told.replace("\u00a0", " ")
    for line in will_it_go(planned).lines:
        assert line.fronts[0] in told
        assert line.answer.replace("\u00a0", " ") in told.replace("\u00a0", " ")
