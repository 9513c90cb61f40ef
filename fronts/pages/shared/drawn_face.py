"""A face drawn in a cabinet of a usual size, for lists and explanations."""

from collections.abc import Mapping
from typing import cast

from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.example_face import example_face
from fronts.notebook import Around, Face, NotUnderstood, openings_of
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.member_width import member_width
from fronts.rules.practice import inches

_USUAL: Mapping[Unit, tuple[Mm, Mm, Mm]] = {
    "in": (inches(36), inches(61, 2), inches(1, 16)),
    "mm": (Mm(900), Mm(760), Mm(1)),
}
"""Width, height and step: a base cabinet (common practice, no source)."""


def drawn_face(face: Face, unit: str) -> SafeString:
    """The face as an `<svg>`; nothing where such a cabinet has no room for it."""
    spoken = cast(Unit, unit)
    width, height, step = _USUAL[spoken]
    around = Around(width, height, member_width("face-frame", spoken), spoken, step)
    try:
        openings = tuple(openings_of(face, around))
    except NotUnderstood:
        return SafeString("")
    nothing = Mm(0)
    cabinet = Cabinet("B1", "base", "face-frame", "A", nothing, nothing, width, height, height,
                      openings)  # fmt: skip
    return mark_safe(example_face(cabinet))  # noqa: S308 - drawn by us, every word in it escaped
