"""The drawings of the shop's standard: legible and whatever the numbers are."""

from dataclasses import replace
from fractions import Fraction
from functools import cache

import pytest

from fronts.drawings.standard.figure import Figures
from fronts.facts.rows import columns_of
from fronts.pages.standard.forms.held import Held
from fronts.pages.standard.forms.short_pages import SHORT_PAGES, ShortPage
from fronts.pages.standard.forms.ways import WaysForm
from fronts.rules.box_facts import USUAL_BOXES
from fronts.rules.kinds import Unit
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import DEFAULTS
from fronts.selectors.standards import KEY_OF, InForce
from tests.drawings.reading import meetings, parsed, texts

PAGES = list(SHORT_PAGES.values())
WIDE = 400_00
TIMES = [Fraction(0), Fraction(1, 4), Fraction(1, 2), Fraction(1), Fraction(2), Fraction(9)]


@cache
def _figures(page: ShortPage, unit: Unit) -> Figures:
    usual = columns_of(Standard(**{key: getattr(DEFAULTS, key) for key in set(KEY_OF.values())}))
    levels = {name: InForce(name, usual[name], "default", False, usual[name], "default")
              for name in KEY_OF}  # fmt: skip
    held = Held(unit, levels, PRACTICE, USUAL_BOXES, {})
    return WaysForm(page=page, held=held).figures()


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("times", TIMES, ids=str)
@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.path)
def test_no_two_labels_meet(page: ShortPage, times: Fraction, unit: Unit) -> None:
    """With all numbers as is usual, nothing, or many times as large; and none leaves the sheet."""
    figures = {
        name: replace(figure, value=figure.value * times, own=times > 1)
        if isinstance(figure.value, Fraction)
        else figure
        for name, figure in _figures(page, unit).items()
    }

    svg = page.draw(figures)

    assert meetings(svg) == []
    assert [each.text for each in texts(svg) if each.area.left < 0 or each.area.right > WIDE] == []


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.path)
def test_each_length_moves_its_drawing(page: ShortPage) -> None:
    """Half as long again, and something else is drawn, not only said."""
    figures = _figures(page, "in")

    def shape(changed: Figures) -> list[str]:
        root = parsed(page.draw(changed))
        drawn = [each for each in root.iter() if not each.tag.endswith(("text", "title"))]
        return [str(sorted(each.attrib.items())) for each in drawn[1:]]

    still = [
        name
        for name, figure in figures.items()
        if isinstance(figure.usual, Fraction)
        and figure.usual
        and shape({**figures, name: replace(figure, value=figure.value * Fraction(3, 2))})
        == shape(figures)
    ]

    assert set(still) <= SAID_ONLY


SAID_ONLY = {
    "drawer_load", "load_margin", "guide_times", "pilot_softwood", "pilot_hardwood", "jig_play",
}  # fmt: skip
"""Loads and shares, which are said beside their places."""
