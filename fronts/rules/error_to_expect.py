"""Will it go? How far off a front is to be expected, against how far it can be moved.

A front hangs off by what the shop measures, cuts and sets wrongly. Each of the three is a
tolerance: a length that nearly all fronts keep within. Two figures are made of them (F. Scholz,
Tolerance Stack Analysis Methods, 1995):

    worst case          measuring + cutting + setting
    root-sum-square     √(measuring² + cutting² + setting²)

An opening that leans or tapers is no chance but known, so that what it asks for is added to both
as it is, as Scholz stacks shifts of the mean arithmetically: half of what the two ends of a side
differ by, over as much of the opening as the front closes. It counts where a front lies in its
opening and the difference is seen (`tapering.SEEN`): what laps hides it, and nobody trues what
nobody sees (common practice, no source).

Against that stands the play: of the screws in their holes, or what a hinge's screws move, less
what they already take up. A fixed front is set by hand before it is screwed fast and needs none;
a machine's own feet and rails set the panel that it carries.

A root has no end of decimals, so that squares are compared: root + known is within the play
where known is, and the sum of the squares is no more than (play − known)².
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence

from fronts.rules.error_results import Errors, ErrorToExpect, OneWay, Outlook
from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import CLOSINGS, FRONT_KINDS, Unit, is_inset
from fronts.rules.kitchen import Kitchen, Opening
from fronts.rules.labels import opening_label
from fronts.rules.lengths import NOTHING, Mm, ceiling_to
from fronts.rules.opening_sizes import heights_at_ends, lean_of, widths_at_ends
from fronts.rules.practice import Practice, inches
from fronts.rules.results import Finding, Front
from fronts.rules.tapering import SEEN
from fronts.rules.truing import play_left

SHOWN: Mapping[Unit, Mm] = {"in": inches(1, 64), "mm": Mm(1, 10)}
"""Errors are said up to the next of these."""
TOLD_OF_OPENING = frozenset({"opening-tapers", "opening-out-of-square"})
"""Findings that say of an opening what is out of true, and the way out."""


def errors_to_expect(
    fronts: Iterable[Front], fittings: Mapping[str, Fitting], kitchen: Kitchen
) -> tuple[ErrorToExpect, ...]:
    """What is to be expected of every front."""
    openings = {
        (cabinet.label, opening.label): opening
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
    }
    return tuple(
        _of(front, fittings.get(front.label), openings[front.cabinet, front.opening], kitchen)
        for front in fronts
    )


def doubtful_findings(
    expected: Sequence[ErrorToExpect],
    fronts: Iterable[Front],
    found: Iterable[Finding],
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Fronts that may not come true; alike ones together.

    One whose opening alone is to blame, and told of, is not told of again.
    """
    told = {place for one in found if one.code in TOLD_OF_OPENING for place in one.where}
    places = {front.label: opening_label(front.cabinet, front.opening) for front in fronts}
    alike: dict[tuple[bool, OneWay], list[str]] = defaultdict(list)
    for each in expected:
        doubtful = [way for way in each.ways if not way.goes_as_expected]
        if places[each.front] in told:
            doubtful = [way for way in doubtful if not way.errors_alone_go]
        if doubtful:
            alike[each.hung, doubtful[0]].append(each.front)
    step = SHOWN[writer.unit]
    for (hung, way), labels in alike.items():
        yield writer.may_not_come_true(
            labels, way.expected(step), ceiling_to(way.worst, step), way.play,
            ceiling_to(way.known, step), hung=hung,
        )  # fmt: skip


def _of(front: Front, fitting: Fitting | None, opening: Opening, kitchen: Kitchen) -> ErrorToExpect:
    play = play_left(front, fitting, kitchen.practice)
    hung = fitting is None
    if play is None:
        return ErrorToExpect(front.label, hung, None, None, _without_play(front))
    errors = _errors(front, kitchen.practice)
    aside, up = _out_of_true(front, opening, kitchen.job.unit)
    sideways, upright = OneWay(errors, aside, play[0]), OneWay(errors, up, play[1])
    return ErrorToExpect(front.label, hung, sideways, upright, _outlook(sideways, upright))


def _errors(front: Front, practice: Practice) -> Errors:
    """A front that exists and keeps its size has no error of cutting."""
    is_cut = front.is_new or bool(front.trim_width or front.trim_height)
    cutting = practice.cutting_error if is_cut else NOTHING
    return Errors(practice.measuring_error, cutting, practice.setting_error)


def _out_of_true(front: Front, opening: Opening, unit: Unit) -> tuple[Mm, Mm]:
    """What lean and taper ask for sideways, and taper upright."""
    if not is_inset(front.plane):
        return NOTHING, NOTHING
    top, bottom = widths_at_ends(opening)
    left, right = heights_at_ends(opening)
    lean = lean_of(opening, (top + bottom) / 2) or NOTHING
    sides = (abs(top - bottom) / 2 + abs(lean)) * front.height / min(left, right)
    ends = abs(left - right) / 2 * front.width / min(top, bottom)
    aside, up = (differs / 2 if differs > SEEN[unit] else NOTHING for differs in (sides, ends))
    return aside, up


def _outlook(*ways: OneWay) -> Outlook:
    if all(way.goes_at_worst for way in ways):
        return "goes"
    if all(way.goes_as_expected for way in ways):
        return "should-go"
    return "may-not-come-true"


def _without_play(front: Front) -> Outlook:
    if FRONT_KINDS[front.kind].on_machine:
        return "on-machine"
    return "no-box-yet" if CLOSINGS[front.closed_by].on_box else "set-by-hand"
