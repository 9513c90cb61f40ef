"""What to do with a front that was cut, in words."""

from fronts.models import FrontCut
from fronts.rules.cut_fronts import AfterCut, after_cut
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.results import Front
from fronts.selectors.cuts import cut_to_of

_LACKING = {"width": "too narrow", "height": "too low", "thickness": "off in its thickness"}


def cut_todo(cut: FrontCut | None, front: Front, kitchen: Kitchen) -> str:
    """What is to be done with a front that was cut; "" where it holds, or was not cut."""
    if cut is None:
        return ""
    return after_cut_words(after_cut(cut_to_of(cut), front, kitchen), kitchen.job.unit)


def after_cut_words(after: AfterCut, unit: str) -> str:
    """`trim 1/16 off the right`, or `make again: 1/16 too narrow`; "" where it holds."""
    if after.lacks:
        lacks = (f"{show(by, unit)} {_LACKING[name]}" for name, by in after.lacks.items())
        return f"make again: {', '.join(lacks)}"
    trims = ", ".join(f"{show(by, unit)} off the {side}" for side, by in after.trims.items())
    if after.too_far:
        return f"make again: {trims} is more than may be trimmed"
    return f"trim {trims}" if trims else ""
