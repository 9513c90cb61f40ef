"""Which sheets a job has, under which file names, and how each is made."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import partial

from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.sheets import fitting, front_schedule, hardware, jigs
from fronts.sheets.sheet_page import Imprint

_LONGEST_NAME = 60
_UNSAFE = re.compile(r"[^A-Za-z0-9_]+")


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: its file, its title, its HTML when asked for, and its cabinet if it is for one."""

    file: str
    title: str
    html: Callable[[], str]
    cabinet: str | None = None


def every_sheet(schedule: Schedule, kitchen: Kitchen, imprint: Imprint) -> list[Sheet]:
    """The job's sheets in the order of the work."""
    whole = (schedule, kitchen, imprint)
    labels = fitting.fitted_cabinets(schedule, kitchen)
    found = [
        Sheet("front-schedule.pdf", "Front schedule and cut sheet",
              partial(front_schedule.content, *whole)),
        Sheet("hardware.pdf", "Hardware", partial(hardware.content, schedule, imprint)),
        Sheet("jigs-and-shims.pdf", "Jigs and shims", partial(jigs.content, *whole)),
    ]  # fmt: skip
    for label, file in zip(labels, _files(labels), strict=True):
        html = partial(fitting.content, *whole, [label])
        found.append(Sheet(file, f"Fitting sheet {label}", html, label))
    if len(labels) > 1:
        found.append(
            Sheet("fitting-all.pdf", "Fitting sheets", partial(fitting.content, *whole, labels))
        )
    return found


def _files(labels: list[str]) -> Iterator[str]:
    """File names that are safe anywhere and differ even where capitals don't count."""
    used = {"all"}
    for label in labels:
        plain = _UNSAFE.sub("-", label).strip("-")[:_LONGEST_NAME] or "cabinet"
        name, number = plain, 2
        while name.lower() in used:
            name, number = f"{plain}-{number}", number + 1
        used.add(name.lower())
        yield f"fitting-{name}.pdf"
