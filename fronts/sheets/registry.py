"""Every sheet there is, once: for its address, its link, the command that prints them all.

A sheet is a file with a `content`, and a line in `SHEETS`.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from types import MappingProxyType

from fronts.sheets import (
    bought,
    boxes,
    cutting_plan,
    fitting,
    front_schedule,
    hardware,
    jigs,
    labels,
    set_up,
    sign_off,
    templates,
)
from fronts.sheets.merged import merged
from fronts.sheets.pdf import PageSize, made_from
from fronts.sheets.sheet_page import SheetSource

_LONGEST_NAME = 60
_UNSAFE = re.compile(r"[^A-Za-z0-9_]+")
FITTING = "fitting"
"""The sheet that each cabinet also has for itself."""
FITTINGS_TOGETHER = "fitting-all.pdf"


@dataclass(frozen=True, slots=True)
class Sheet:
    """A kind of sheet: its key in addresses, its name in files, the words of its link.

    `is_there` says whether a job has it: every job, where nothing else is said. What shows
    records is of the moment, and none of the printed set.
    """

    key: str
    name: str
    words: str
    content: Callable[[SheetSource], str]
    needs_plan: bool = False
    needs_records: bool = False
    is_there: Callable[[SheetSource], bool] = lambda _: True


@dataclass(frozen=True, slots=True)
class Printout:
    """One file of a job: its name, its HTML when asked for, and the cabinet it is for.

    `said` is what the HTML follows from, where that is told sooner.
    """

    file: str
    html: Callable[[], str]
    cabinet: str = ""
    said: Callable[[], str] | None = None

    def made_from(self, paper: PageSize) -> str:
        """A name for all that its PDF is made from."""
        return made_from((self.said or self.html)(), paper)


SHEETS: Mapping[str, Sheet] = MappingProxyType(
    {
        sheet.key: sheet
        for sheet in (
            Sheet("schedule", "front schedule", "Front schedule and cut sheet",
                  front_schedule.content),
            Sheet("hardware", "hardware", "Hardware sheet", hardware.content),
            Sheet("bought", "bought fronts", "Bought fronts", bought.content,
                  is_there=lambda source: bool(source.schedule.bought)),
            Sheet("jigs", "jigs and shims", "Jigs and shims", jigs.content),
            Sheet("templates", "templates", "Templates at true size", templates.content,
                  is_there=templates.has_templates),
            Sheet("cutting", "cutting plan", "Cutting plan", cutting_plan.content,
                  needs_plan=True, is_there=lambda source: source.plan is not None),
            Sheet("boxes", "boxes", "Boxes to make", boxes.content, is_there=boxes.has_boxes),
            Sheet("labels", "labels", "Labels for the parts", labels.content),
            Sheet("set-up", "set-up", "Set-up and order of cabinets", set_up.content),
            Sheet(FITTING, "fitting sheets", "All fitting sheets", fitting.content),
            Sheet("sign-off", "sign-off", "Sign-off", sign_off.content, needs_records=True),
        )
    }
)  # fmt: skip
"""In the order of the work."""


def every_printout(source: SheetSource) -> Iterator[Printout]:
    """The job's files in the order of the work; a plan or boxes only where there are any.

    Where several are for cabinets, `FITTINGS_TOGETHER` has those in one.
    """
    for sheet in SHEETS.values():
        if sheet.key == FITTING:
            yield from _fittings(source)
        elif sheet.is_there(source) and not sheet.needs_records:
            yield Printout(f"{_plain(sheet.name)}.pdf", partial(sheet.content, source))


def has_fittings_together(cabinets: Iterable[str]) -> bool:
    """Whether several of the files are for cabinets, so that those come in one file too.

    Said by the cabinet of each file, "" where it has none.
    """
    return sum(map(bool, cabinets)) > 1


def _fittings(source: SheetSource) -> Iterator[Printout]:
    cabinets = fitting.fitted_cabinets(source)
    for label, file in zip(cabinets, _files(cabinets), strict=True):
        yield fitting_printout(source, label, file)


def fitting_printout(source: SheetSource, label: str, file: str = "") -> Printout:
    """The fitting sheet of one cabinet."""
    said = partial(fitting.said_on, source, label)
    return Printout(file, partial(fitting.content, source, [label]), label, said)


def fittings_together(number: str, files: Iterable[tuple[str, bytes]]) -> bytes:
    """The fitting sheets of a job's cabinets, by their labels, in one file to print at once."""
    return merged(files, f"{number} – Fitting sheets")


def _files(labels: list[str]) -> Iterator[str]:
    """File names that are safe anywhere and differ even where capitals don't count."""
    used = {"all"}
    for label in labels:
        plain = _plain(label) or "cabinet"
        name, number = plain, 2
        while name.lower() in used:
            name, number = f"{plain}-{number}", number + 1
        used.add(name.lower())
        yield f"fitting-{name}.pdf"


def _plain(name: str) -> str:
    return _UNSAFE.sub("-", name).strip("-")[:_LONGEST_NAME]
