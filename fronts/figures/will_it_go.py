"""Will it go? How far off fronts are likely to come out, beside how far they can be moved."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.figures.sizes import on_one_line
from fronts.rules.error_results import ErrorToExpect, OneWay, Outlook
from fronts.rules.error_to_expect import SHOWN
from fronts.rules.kinds import Unit
from fronts.rules.lengths import ceiling_to, show
from fronts.rules.results import Schedule

_ANSWERS: Mapping[Outlook, tuple[str, str]] = {
    "may-not-come-true": ("may not come true", "may not come true"),
    "should-go": ("should go", "should go"),
    "goes": ("goes", "sure to go"),
    "set-by-hand": ("set by hand before it is screwed: needs no play", "set by hand"),
    "on-machine": ("its machine’s own feet and rails set it", "set by a machine’s own feet"),
    "no-box-yet": ("not known before its box is", "without a box yet"),
}
"""What is said beside a front, and after a count; what is worst comes first."""


@dataclass(frozen=True, slots=True)
class OutlookLine:
    """Fronts that are alike in what is said here, the way in which it is tightest.

    "" where they need no play, or where none is known.
    """

    fronts: tuple[str, ...]
    moved_by: str
    expected: str
    worst: str
    play: str
    answer: str
    doubtful: bool


@dataclass(frozen=True, slots=True)
class WillItGo:
    """All fronts of a job; `summary` counts them by their answers, worst first."""

    lines: tuple[OutlookLine, ...]
    summary: str

    @property
    def doubtful(self) -> bool:
        """Whether any front may not come true."""
        return any(line.doubtful for line in self.lines)


def will_it_go(schedule: Schedule) -> WillItGo:
    """What is to be expected of every front, alike ones together, in the job's unit."""
    unit, order = schedule.job.unit, list(_ANSWERS)
    worst_first = sorted(schedule.errors, key=lambda each: order.index(each.outlook))
    alike: dict[OutlookLine, list[str]] = {}
    for each in worst_first:
        alike.setdefault(_line(each, unit), []).append(each.front)
    lines = [replace(line, fronts=tuple(labels)) for line, labels in alike.items()]
    return WillItGo(tuple(lines), ", ".join(_counted(schedule.errors)))


def _counted(errors: Sequence[ErrorToExpect]) -> list[str]:
    """`12 should go`, `23 sure to go`."""
    counts = [(sum(each.outlook == one for each in errors), one) for one in _ANSWERS]
    return [f"{count} {_ANSWERS[one][1]}" for count, one in counts if count]


def _line(error: ErrorToExpect, unit: Unit) -> OutlookLine:
    """Without its front yet."""
    way, answer = error.tightest, _ANSWERS[error.outlook][0]
    doubtful = error.outlook == "may-not-come-true"
    if way is None:
        return OutlookLine((), "", "", "", "", answer, doubtful)
    step = SHOWN[unit]
    return OutlookLine(
        fronts=(),
        moved_by="hinges" if error.hung else "screws",
        expected=on_one_line(show(way.expected(step), unit)),
        worst=on_one_line(show(ceiling_to(way.worst, step), unit)),
        play=f"{on_one_line(show(way.play, unit))}{_which(error, way)}",
        answer=f"{answer}{_why(error, way, unit)}",
        doubtful=doubtful,
    )


def _which(error: ErrorToExpect, way: OneWay) -> str:
    """Which way it is tightest, where that is not both ways alike."""
    if error.sideways == error.upright:
        return ""
    return " sideways" if way == error.sideways else " up and down"


def _why(error: ErrorToExpect, way: OneWay, unit: Unit) -> str:
    step, why = SHOWN[unit], ""
    if error.outlook == "should-go":
        too_far = on_one_line(show(ceiling_to(way.worst - way.play, step), unit))
        why += f"; at worst {too_far} too far"
    if way.known:
        known = show(ceiling_to(way.known, step), unit)
        why += f"; {known} of it as the opening leans or tapers"
    return why
