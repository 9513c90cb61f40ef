"""How a door hangs: how many hinges, which, and where along its edge.

A door on hand hangs in the bores that it has where they serve, else clear of them. A hinge that
somebody chose is taken, and told where it does not fit.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.findings import FindingWriter
from fronts.rules.hinge_choice import HingeSetting
from fronts.rules.hinge_reasons import door_hinge, hinge_findings
from fronts.rules.hinge_results import DoorHinge
from fronts.rules.hinges import hinge_centres, hinge_count, is_clear, too_heavy
from fronts.rules.hung_door import HungDoor, reused_bores, setting_of
from fronts.rules.kinds import is_upright
from fronts.rules.kitchen import Point
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.old_bores import CLEAR, at_hinge_side, plugged, too_near
from fronts.rules.results import Finding


@dataclass(frozen=True, slots=True)
class Hanging:
    """How a door hangs, and what is wrong with it; `plugged` are old bores that serve no hinge."""

    count: int = 0
    centres: tuple[Mm, ...] = ()
    hinge: DoorHinge | None = None
    plugged: tuple[Point, ...] = ()
    findings: tuple[Finding, ...] = ()


def hang(hung: HungDoor, writer: FindingWriter) -> Hanging:
    """The hinges of a door: how many, which, their centres, and what is wrong."""
    again, count = reused_bores(hung), hung.count
    setting = again.setting if again else setting_of(hung)
    findings = [*_too_large(hung, writer), *hinge_findings(hung, setting, writer)]
    if again:
        count, centres = len(again.centres), again.centres
        half = hung.kitchen.practice.hinge_half
        if not all(is_clear(at, _rails(hung), half) for at in centres):
            findings.append(writer.no_hinge_place(hung.laid.label))
    else:
        centres, nowhere = _new_centres(hung, setting, writer)
        findings += nowhere
    left_over = plugged(hung.door, hung.hinged, again) if hung.door else []
    findings += [*_close(hung, centres, writer), *_plugs(hung, left_over, writer)]
    return Hanging(
        count,
        centres,
        None if setting is None else door_hinge(hung, setting, again, writer),
        tuple(left_over),
        tuple(findings),
    )


def _too_large(hung: HungDoor, writer: FindingWriter) -> list[Finding]:
    label, practice = hung.laid.label, hung.kitchen.practice
    if hinge_count(hung.length, hung.weight, practice) is not None:
        return []
    if too_heavy(hung.weight, practice):
        return [writer.too_heavy(label, writer.say_weight(hung.weight))]
    return [writer.too_tall(label, hung.length)]


def _rails(hung: HungDoor) -> list[tuple[Mm, Mm]]:
    """What of the door's length lies on the members beside its opening."""
    laid = hung.laid
    upright = is_upright(hung.hinged)
    low, start = (laid.rect.y, laid.y) if upright else (laid.rect.x, laid.x)
    high = laid.rect.top if upright else laid.rect.right
    return [(NOTHING, low - start), (high - start, hung.length)]


def _new_centres(
    hung: HungDoor, setting: HingeSetting | None, writer: FindingWriter
) -> tuple[tuple[Mm, ...], list[Finding]]:
    """Where new cups go; none where they find no place."""
    practice, label = hung.kitchen.practice, hung.laid.label

    def centres(bores: Sequence[tuple[Mm, Mm]]) -> tuple[Mm, ...] | None:
        return hinge_centres(
            hung.length, hung.count, hung.laid.standard.hinge_end,
            _rails(hung), practice.hinge_half, bores,
        )  # fmt: skip

    inward = practice.cup_from_edge
    if setting is not None:
        inward = setting.bore + setting.hinge.item.cup_diameter / 2
    near = too_near(hung.door, hung.hinged, inward) if hung.door else []
    clear = centres(near)
    if clear is not None:
        return clear, []
    if hung.door and near and centres(()) is not None:
        return (), [writer.bores_clash(label, hung.door.label, CLEAR)]
    return (), [writer.no_hinge_place(label)]


def _close(hung: HungDoor, centres: Sequence[Mm], writer: FindingWriter) -> list[Finding]:
    """The outermost hinges of a door stand further apart than it measures across (makers' rule)."""
    if not centres:
        return []
    apart = centres[-1] - centres[0]
    if apart > hung.across:
        return []
    return [writer.hinges_close(hung.laid.label, apart, hung.across)]


def _plugs(hung: HungDoor, bores: Sequence[Point], writer: FindingWriter) -> list[Finding]:
    """Old bores elsewhere are told as what shows."""
    door = hung.door
    count = sum(1 for bore in bores if door and at_hinge_side(bore, door, hung.hinged))
    if door is None or not count:
        return []
    return [writer.bores_to_plug(hung.laid.label, door.label, count)]
