"""What the doors on hand could become: each with the front that the assignment gives it."""

from dataclasses import dataclass

from fronts.rules.kitchen import CHOOSE, DoorOnHand, Kitchen, Opening
from fronts.rules.labels import opening_label
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding, Front
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.rules.suited_standard import open_to_doors


@dataclass(frozen=True, slots=True)
class ProposedUse:
    """A door over an opening, whose place is on its wall; `front` is what it becomes there.

    `decided`: somebody said so by name already. `findings` are those that it would bring.
    """

    door: DoorOnHand
    front: Front
    opening: Opening
    x: Mm
    y: Mm
    decided: bool
    findings: tuple[Finding, ...]


def proposed_uses(kitchen: Kitchen) -> list[ProposedUse]:
    """The uses if every front whose size the rules give could be a door on hand.

    In the order of the doors; a door without one serves nowhere.
    """
    kitchen = stood(kitchen)
    now, then = schedule(kitchen), schedule(open_to_doors(kitchen))
    known = {(finding.code, finding.where) for finding in now.findings}
    doors = {door.label: door for door in kitchen.doors_on_hand}
    fronts = {front.label: front for front in then.fronts}
    found = {}
    for use in then.doors_on_hand:
        front = fronts[use.front]
        cabinet = kitchen.cabinet(front.cabinet)
        opening = next(one for one in cabinet.openings if one.label == front.opening)
        around = {front.label, opening_label(front.cabinet, front.opening)}
        new = (one for one in then.findings if around & {*one.where})
        found[use.door] = ProposedUse(
            door=doors[use.door],
            front=front,
            opening=opening,
            x=cabinet.left + opening.x,
            y=cabinet.y + opening.y,
            decided=any(one.door_on_hand not in (None, CHOOSE) for one in opening.fronts),
            findings=tuple(one for one in new if (one.code, one.where) not in known),
        )
    return [found[label] for label in doors if label in found]
