"""Each front as the schedule says it: laid out, made, hung, weighed."""

from collections.abc import Mapping, Sequence
from fractions import Fraction

from fronts.rules.appliance_panels import machine_of
from fronts.rules.bought_fronts import is_bought
from fronts.rules.boxes_on_slides import Standing
from fronts.rules.door_hanging import Hanging, hang
from fronts.rules.findings import FindingWriter
from fronts.rules.fixed_fronts import fixed_screws
from fronts.rules.handles import Handle, handles_at, thinnest
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.making import Make, hung_door, make_findings
from fronts.rules.neighbours import Facing
from fronts.rules.opening_sizes import lean_of
from fronts.rules.results import Edge, Finding, Front, Movement
from fronts.rules.screws import knob_screw_alone
from fronts.rules.standard_keys import Sides
from fronts.rules.tip_outs import tray_of
from fronts.rules.usual_hinges import Hinge


def front_rows(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    weights: Sequence[Fraction],
    boxes: Mapping[str, Standing],
    moves: Sequence[Movement | None],
    faced: Sequence[Mapping[Side, Facing]],
    kitchen: Kitchen,
    hinges: Sequence[Hinge],
    writer: FindingWriter,
) -> tuple[list[Front], list[Finding]]:
    """Each front with all that is known of it by now, and what is wrong with how it is made."""
    fronts, findings = [], []
    for index, (front, make) in enumerate(zip(laid, makes, strict=True)):
        weight = weights[index]
        hung = hung_door(front, make, weight, kitchen, hinges)
        hanging = hang(hung, writer) if hung else Hanging(plugged=make.bores)
        findings += [*hanging.findings, *make_findings(front, make, kitchen.practice, writer)]
        thread = kitchen.stock.knob_thread
        handles = handles_at(make.middles, make.handle, make.kind, make.face, thread)
        move = moves[index]
        if move and move.least_gap <= 0:
            findings.append(writer.gap_closes(front.label, move.grows))
        fronts.append(
            Front(
                label=front.label, cabinet=front.cabinet.label, opening=front.opening.label,
                wall=front.cabinet.wall, kind=make.kind, closed_by=front.opening.closed_by,
                plane=front.plane, hinged=front.hinged, width=front.width, height=front.height,
                thickness=make.face.thickness, x=front.x, y=front.y,
                edges=_edges(front, faced[index], laid), build=make.build, material=make.material,
                frame=make.face.frame, panel_thickness=make.face.panel_thickness, glass=make.glass,
                door_on_hand=front.door.label if front.door else None, trim=make.trim.sides,
                is_new=front.door is None and not front.exists, handles=handles,
                knob_screw=None if front.label in boxes else _knob_screw(make, handles, kitchen),
                bores=make.bores, plugged=hanging.plugged, hinges=hanging.count,
                hinge_centres=hanging.centres, hinge=hanging.hinge,
                weight_kg=weight, lean=lean_of(front.opening, front.rect.width), movement=move,
                fixed_by=fixed_screws(front, make.face.thickness, kitchen),
                tray=tray_of(front, kitchen.practice), machine=machine_of(front),
                grain_upright=make.grain_upright,
                bought=is_bought(front),
            )
        )  # fmt: skip
    return fronts, findings


def _knob_screw(make: Make, handles: Sequence[Handle], kitchen: Kitchen) -> Mm | None:
    if not handles:
        return None
    stack = make.face.stack(thinnest(handles), None)
    return knob_screw_alone(kitchen.stock, handles[0].thread, stack)


def _edges(laid: Laid, faced: Mapping[Side, Facing], fronts: Sequence[Laid]) -> Sides[Edge]:
    edges = {}
    for side in SIDES:
        neighbour = faced.get(side)
        gap, faces = (
            (neighbour.gap, fronts[neighbour.fronts[0]].label) if neighbour else (None, None)
        )
        edges[side] = Edge(laid.overlays[side], gap, faces)
    return Sides(**edges)
