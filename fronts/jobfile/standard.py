"""The house standard of one level, as a job file gives it."""

from fronts.jobfile import sizes, values, words
from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import SIDES, Reveal, Sides, Standard
from fronts.rules.lengths import Mm

KEYS = (
    "mount", "overlay", "reveal", "gap_between", "least_gap", "inset_gap",
    "front_thickness", "trim_limit", "least_stile", "skin", "bite", "hinge_end",
)  # fmt: skip


def standard(record: Record) -> Standard:
    """What `record`'s key `standard` says; an empty standard where it is left out."""
    return record.take("standard", _standard) or Standard()


def _standard(place: Place) -> Standard | None:
    record = Record(place, KEYS)
    if record.has("overlay") and record.has("reveal"):
        record.fault("reveal", "only one of overlay and reveal on one level", "both")
    found = Standard(
        mount=record.take("mount", _mount),
        overlay=record.take("overlay", _sides),
        reveal=record.take("reveal", _reveal),
        gap_between=sizes.given(record, "gap_between", sizes.OR_ZERO),
        least_gap=sizes.given(record, "least_gap", sizes.OR_ZERO),
        inset_gap=record.take("inset_gap", _sides),
        front_thickness=sizes.given(record, "front_thickness"),
        trim_limit=sizes.given(record, "trim_limit", sizes.OR_ZERO),
        least_stile=sizes.given(record, "least_stile", sizes.OR_ZERO),
        skin=sizes.given(record, "skin", sizes.OR_ZERO),
        bite=sizes.given(record, "bite", sizes.OR_ZERO),
        hinge_end=sizes.given(record, "hinge_end", sizes.OR_ZERO),
    )
    return found if record.sound("mount") else None


_mount = values.one_of(words.MOUNTS)


def _sides(place: Place) -> Sides[Mm]:
    record = Record(place, SIDES)
    return Sides(*(sizes.needed(record, side, sizes.OR_ZERO) for side in SIDES))


def _reveal(place: Place) -> Reveal:
    record = Record(place, ("between", "end"))
    between = sizes.needed(record, "between", sizes.OR_ZERO)
    nothing = Sides(Mm(0), Mm(0), Mm(0), Mm(0))
    end = record.need("end", _sides, nothing, "a length for left, right, top and bottom")
    return Reveal(between, end)
