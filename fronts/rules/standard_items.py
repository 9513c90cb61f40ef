"""Hinges and handles that a level of the standard names and that no list has: each told once."""

from collections import defaultdict
from collections.abc import Iterator, Sequence

from fronts.rules.findings import FindingWriter
from fronts.rules.hung_door import swings
from fronts.rules.items import HandleItem
from fronts.rules.laying import Laid
from fronts.rules.making import Make
from fronts.rules.results import Finding
from fronts.rules.usual_hinges import Hinge


def standard_item_findings(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    handles: Sequence[HandleItem],
    hinges: Sequence[Hinge],
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Of fronts that would take them: doors for a hinge, what has a handle for a handle."""
    handle_codes = {item.code for item in handles}
    hinge_codes = {hinge.item.code for hinge in hinges}
    without_handle: dict[str, list[str]] = defaultdict(list)
    without_hinge: dict[str, list[str]] = defaultdict(list)
    for front, make in zip(laid, makes, strict=True):
        handle, hinge = front.handle, front.hinge
        if handle and handle not in handle_codes and not front.decided.handle and make.middles:
            without_handle[handle].append(front.label)
        if hinge and hinge not in hinge_codes and not front.decided.hinge and swings(front):
            without_hinge[hinge].append(front.label)
    for code, labels in without_handle.items():
        yield writer.standard_handle_unknown(labels, code)
    for code, labels in without_hinge.items():
        yield writer.standard_hinge_unknown(labels, code)
