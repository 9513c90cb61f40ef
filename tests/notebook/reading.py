"""Notebooks as the tests of them read and look at them."""

from fronts.notebook import Faces, NotebookRefused, read_notebook
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet, Kitchen, Opening
from fronts.rules.lengths import INCH, Mm

STEPS: dict[Unit, Mm] = {"in": INCH / 16, "mm": Mm(1)}
HEAD = "wall North\nbase 30 1/2 high 24 deep 4 up\n"
"""Two lines, after which a cabinet or a thing may stand."""


def kitchen(text: str, unit: Unit = "in", saved: Faces | None = None) -> Kitchen:
    """The kitchen that a whole notebook tells."""
    return read_notebook(text, unit, STEPS[unit], saved or {})


def cabinet(line: str) -> Cabinet:
    """The base cabinet of a line."""
    (only,) = kitchen(HEAD + line).cabinets
    return only


def faults(text: str, unit: Unit = "in") -> list[str]:
    """What is said of a notebook that is refused; nothing where it is read."""
    try:
        kitchen(text, unit)
    except NotebookRefused as refused:
        return [str(fault) for fault in refused.faults]
    return []


def place(opening: Opening) -> tuple[Mm, Mm, Mm, Mm]:
    """Where an opening is, and how large."""
    return opening.x, opening.y, opening.width, opening.height
