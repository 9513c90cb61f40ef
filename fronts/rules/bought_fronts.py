"""Fronts that a door maker makes: which they are, and what the maker has to be told of each.

A door on hand and a front that exists are neither made nor bought. Hinges, handles, boxes and
panes are the shop's as ever; the frame for a pane comes ready for it.
"""

from collections.abc import Iterator, Sequence

from fronts.rules.bought_results import BoughtFront, BoughtLine
from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.laying import Laid
from fronts.rules.materials import has_grain
from fronts.rules.parts import has_middle_rail
from fronts.rules.practice import Practice
from fronts.rules.results import Finding, Front
from fronts.rules.standard_keys import Settled
from fronts.rules.weight import panel_material

BOUGHT = "bought"
UPRIGHT, ACROSS = "upright", "across"


def is_bought(laid: Laid) -> bool:
    """Whether a maker makes it: what is said of the front itself holds, else its standard."""
    made_by = laid.decided.made_by or laid.standard.made_by
    return made_by == BOUGHT and laid.door is None and not laid.exists


def bought_lines(
    fronts: Sequence[Front], laid: Sequence[Laid], practice: Practice
) -> tuple[BoughtLine, ...]:
    """The fronts that are bought, those that are alike together, where the first of them stands."""
    alike: dict[BoughtFront, list[str]] = {}
    for front, laid_front in zip(fronts, laid, strict=True):
        if front.bought:
            told = _told(front, laid_front.standard, practice)
            alike.setdefault(told, []).append(front.label)
    return tuple(BoughtLine(told, tuple(labels)) for told, labels in alike.items())


def bought_findings(lines: Sequence[BoughtLine], writer: FindingWriter) -> Iterator[Finding]:
    """No maker can begin a five-piece front without its style; a slab has none to name."""
    nameless = [
        label
        for line in lines
        if FRONT_BUILDS[line.front.build].framed and not line.front.style
        for label in line.labels
    ]
    if nameless:
        yield writer.no_door_style(nameless)


def _told(front: Front, standard: Settled, practice: Practice) -> BoughtFront:
    """What the maker is told: all that decides how the front comes out."""
    framed = FRONT_BUILDS[front.build].framed
    panelled = framed and not front.glass
    hinge = front.hinge
    return BoughtFront(
        kind=front.kind,
        width=front.width,
        height=front.height,
        thickness=front.thickness,
        build=front.build,
        hand=front.hinged,
        style=standard.door_style or "",
        material=front.material,
        species=standard.species or "",
        stile=front.stile if framed else None,
        rail=front.rail if framed else None,
        middle_rail=framed and has_middle_rail(front.height, practice),
        panel=panel_material(front.material, practice) if panelled else "",
        panel_thickness=front.panel_thickness if panelled else None,
        edge_profile=standard.edge_profile or "",
        panel_profile=(standard.panel_profile or "") if panelled else "",
        grain=_grain(front),
        bores=front.hinge_centres if hinge else (),
        bore_diameter=hinge.cup_diameter if hinge else None,
        bore_depth=hinge.cup_depth if hinge else None,
        bore_from_edge=hinge.cup_from_edge if hinge else None,
        glass=front.glass,
        finish=standard.finish or "",
    )


def _grain(front: Front) -> str:
    """As the shop would cut it itself."""
    if not has_grain(front.material):
        return ""
    return UPRIGHT if front.grain_upright else ACROSS
