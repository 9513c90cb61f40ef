"""A printed sheet beside the kitchen as it is now: still true, or what has changed since."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from django.urls import reverse

from fronts.figures.cabinet_words import cabinet_words
from fronts.figures.shown_figures import CARE, HOLE, WORK, shown_figures
from fronts.models import Cabinet, PrintedSheet
from fronts.rules.fingerprint import sheet_code
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.shown_figures import FigureChanged, changed_figures, under_label
from fronts.selectors.kitchens import cabinets_of
from fronts.selectors.schedules import worked_out
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class ChangedOf:
    """What changed of one front, one opening, or the cabinet itself; `holes` apart, folded."""

    of: str
    figures: tuple[FigureChanged, ...]
    holes: tuple[FigureChanged, ...]


@dataclass(frozen=True, slots=True)
class SheetNow:
    """A sheet as printed, and its cabinet now: `number` leads there, None where it has gone.

    `words` are steps and cautions that are put otherwise, told apart from the figures.
    """

    job: Job
    label: str
    code: str
    printed_at: datetime
    label_now: str
    code_now: str
    number: int | None
    changed: tuple[ChangedOf, ...]
    words: tuple[FigureChanged, ...]

    @property
    def is_true(self) -> bool:
        return self.code == self.code_now

    @property
    def is_gone(self) -> bool:
        return self.number is None

    @property
    def count(self) -> int:
        """How many figures are otherwise."""
        return sum(len(each.figures) + len(each.holes) for each in self.changed)

    @property
    def fit_page(self) -> str:
        """The cabinet's own page."""
        return reverse("fronts:job-fit-cabinet", args=[self.job.pk, self.number])

    @property
    def new_sheet(self) -> str:
        """Its sheet as it is printed now."""
        return reverse("fronts:cabinet-sheet", args=[self.job.pk, self.number])


def sheet_now(printed: PrintedSheet) -> SheetNow:
    """The sheet beside its cabinet, or beside the one that bears its label by now."""
    job, cabinet = printed.job, _cabinet(printed)
    if cabinet is None:
        return _beside(printed, "", "", None, ())
    kitchen, schedule = worked_out(job)
    jigs = merged_jigs(schedule, kitchen)
    words = cabinet_words(schedule, kitchen, kitchen.cabinet(cabinet.label), jigs)
    figures = shown_figures(words)
    shown = under_label(printed.shown, printed.label, cabinet.label)
    changed = changed_figures(shown, figures)
    return _beside(printed, cabinet.label, sheet_code(figures), cabinet.pk, changed)


def _cabinet(printed: PrintedSheet) -> Cabinet | None:
    if printed.cabinet is not None:
        return printed.cabinet
    return cabinets_of(printed.job).prefetch_related(None).filter(label=printed.label).first()


def _beside(
    printed: PrintedSheet, label: str, code: str, number: int | None,
    changed: Sequence[FigureChanged],
) -> SheetNow:  # fmt: skip
    words = tuple(each for each in changed if each.name in (WORK, CARE))
    figures = [each for each in changed if each.name not in (WORK, CARE)]
    return SheetNow(
        job=printed.job,
        label=printed.label,
        code=printed.code,
        printed_at=printed.printed_at,
        label_now=label,
        code_now=code,
        number=number,
        changed=tuple(
            _changed_of(of, [each for each in figures if each.of == of])
            for of in dict.fromkeys(each.of for each in figures)
        ),
        words=words,
    )


def _changed_of(of: str, figures: Iterable[FigureChanged]) -> ChangedOf:
    plain: list[FigureChanged] = []
    holes: list[FigureChanged] = []
    for each in figures:
        (holes if each.name.startswith(HOLE) else plain).append(each)
    return ChangedOf(of, tuple(plain), tuple(holes))
