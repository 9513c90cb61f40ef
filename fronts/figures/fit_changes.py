"""What has changed of a front since it was fitted, in words."""

from collections.abc import Iterable

from fronts.rules.fit_changes import FitChange, HandChange, SizeChange
from fronts.rules.lengths import show

_MORE = {"width": ("wider", "narrower"), "height": ("higher", "lower"),
         "thickness": ("thicker", "thinner")}  # fmt: skip


def fit_change_words(changes: Iterable[FitChange], unit: str) -> list[str]:
    """`1/16 wider`, `hinged right, was left`, `the left gap planned 3/32, was 1/8`."""
    return [_words(change, unit) for change in changes]


def _words(change: FitChange, unit: str) -> str:
    if isinstance(change, SizeChange):
        more, less = _MORE[change.name]
        by = change.now - change.was
        return f"{show(abs(by), unit)} {more if by > 0 else less}"
    if isinstance(change, HandChange):
        return f"{_hung(change.now)}, was {_hung(change.was)}"
    now = "no longer planned" if change.now is None else f"planned {show(change.now, unit)}"
    return f"the {change.side} gap {now}, was {show(change.was, unit)}"


def _hung(hinged: str) -> str:
    return f"hinged {hinged}" if hinged else "without hinges"
