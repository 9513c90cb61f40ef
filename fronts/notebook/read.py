"""A kitchen as a person writes it down on site, line by line, or everything that is wrong with it.

Nothing is guessed: a line that can't be read whole is refused, and with it the notebook.
"""

import re

from fronts.notebook.face import NO_FACES, Faces
from fronts.notebook.faults import LineFault, NotebookRefused, NotUnderstood
from fronts.notebook.lines import CabinetLine, Line, LostLine, lost_line, read_line, without_remark
from fronts.notebook.standing import Standing
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.standards import COMMON_STOCK

NUMBER = "NOTEBOOK"
"""What the job is called until somebody gives it its own number."""
_LINE_END = re.compile(r"\r\n?|\n")


def read_notebook(text: str, unit: Unit, step: Mm, saved: Faces = NO_FACES) -> Kitchen:
    """The kitchen that a notebook tells; `NotebookRefused` with every fault in it.

    A bare number is in `unit`; openings are shared down to the `step`.
    """
    standing = Standing(unit, step)
    take_lines(text, unit, standing, saved)
    return Kitchen(
        job=JobFacts(NUMBER, unit=unit, step=step),
        cabinets=tuple(standing.cabinets),
        others=tuple(standing.others),
        walls=standing.walls.all,
        stock=COMMON_STOCK,
    )


def take_lines(text: str, unit: Unit, standing: Standing, saved: Faces) -> None:
    """Let every line of the text stand behind what stands already, or refuse all of them."""
    faults: list[LineFault] = []
    lines = _lines(text, unit, saved, faults)
    standing.labels.write(
        (number, line.label) for number, line in lines if isinstance(line, CabinetLine)
    )
    for number, line in lines:
        try:
            standing.take(number, line)
        except NotUnderstood as fault:
            faults.append(LineFault(number, fault.found, fault.wanted))
    if faults:
        raise NotebookRefused(tuple(sorted(faults, key=lambda fault: fault.line)))


def _lines(
    text: str, unit: Unit, saved: Faces, faults: list[LineFault]
) -> list[tuple[int, Line | LostLine]]:
    """Each line that says something, by its number; of those refused what others rest on."""
    lines: list[tuple[int, Line | LostLine]] = []
    for number, whole in enumerate(_LINE_END.split(text), start=1):
        said = without_remark(whole)
        if not said:
            continue
        try:
            lines.append((number, read_line(said, unit, saved)))
        except NotUnderstood as fault:
            faults.append(LineFault(number, fault.found, fault.wanted))
            lost = lost_line(said)
            if lost is not None:
                lines.append((number, lost))
    return lines
