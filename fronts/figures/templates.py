"""What templates are called and say of themselves, in words."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import TypeAlias

from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm, show
from fronts.rules.template_results import (
    BoredBefore,
    HoleTemplate,
    JigProfile,
    Purpose,
    TemplateFace,
    TemplateUse,
)

_TITLES: Mapping[Purpose, str] = {
    "mounting": "Mounting hole", "pilot": "Pilot hole", "recess": "Recess for screw head",
    "handle": "Knob", "cup": "Hinge cup", "plate": "Hinge plate",
}  # fmt: skip
_FACES: Mapping[TemplateFace, str] = {
    "box": "On the box’s front, seen from the front.",
    "back": "On the front’s back, seen from behind.",
    "front": "On the front’s face, seen from the front.",
    "cabinet-side": "On the cabinet’s side, seen from inside.",
    "cabinet-level": "On the cabinet’s top or bottom, seen from inside.",
}
_UP: Mapping[Side, str] = {"bottom": "lower", "top": "upper"}
_CORNERS: tuple[str, ...] = ("lower left", "lower right", "upper left", "upper right")
_EVERY_CORNER = "Every corner"
_HALF_ROUND = "turned half round"
_LINE_FIRST = "Mark a line there first; the chain line goes on it."
_HALF_MM = 2
"""Hardware is metric in steps of half a millimetre."""

_OF_WOOD = "{} edge", "{} edge"
_EDGES: Mapping[TemplateFace, tuple[str, str]] = {
    "cabinet-side": ("{} side", "{} of the opening"),
    "cabinet-level": ("{} end of the opening", "cabinet’s {}"),
}
"""What a template is laid along inside a cabinet: an upright edge, and a level one."""

SaidUses: TypeAlias = tuple[tuple[str, tuple[str, ...]], ...]
"""Places, and the fronts that have them there."""


@dataclass(frozen=True, slots=True)
class EdgeWords:
    """What a template's edges are called: the level one, those at the left and the right."""

    level: str
    left: str
    right: str


def in_both_units(length: Mm, unit: str) -> str:
    """A length in the job's unit; a metric one that no fraction of an inch is, in both."""
    shown = show(length, unit)
    metric = unit != "mm" and shown.startswith("≈") and (length * _HALF_MM).denominator == 1
    return f"{shown} ({show(length, 'mm')} mm)" if metric else shown


def template_title(template: HoleTemplate) -> str:
    """`Hinge cup`; what has a handle with two holes is a pull's."""
    pull = template.purpose == "handle" and len(template.marks) > 1
    return "Pull" if pull else _TITLES[template.purpose]


def template_about(template: HoleTemplate, unit: str) -> list[str]:
    """What it is laid on, what is bored there, and what is done first."""
    about = [_FACES[template.face], _bored(template, unit)]
    if any(use.across is not None or use.up is not None for use in template.uses):
        about.append(_LINE_FIRST)
    return about


def _bored(template: HoleTemplate, unit: str) -> str:
    if template.diameter is None:
        return "Screws by the plate’s maker."
    if (template.diameter * _HALF_MM).denominator == 1:
        return f"⌀ {in_both_units(template.diameter, unit)}"
    return f"⌀ {show(template.diameter, unit, finest=64)}"


def said_uses(template: HoleTemplate, unit: str) -> SaidUses:
    """Where on which fronts the template goes; fronts that have it at the same places together."""
    places: dict[str, list[tuple[str, str]]] = {}
    for use in template.uses:
        said = _how(template, use), _place(template, use, unit)
        places.setdefault(use.front, []).append(said)
    together: dict[str, list[str]] = {}
    for front, those in places.items():
        together.setdefault(_all_places(those), []).append(front)
    return tuple((words, tuple(fronts)) for words, fronts in together.items())


def _how(template: HoleTemplate, use: TemplateUse) -> str:
    """What is done with the paper for this use; "" where it lies as it is printed."""
    ways = ("over" * template.turned_over(use), "half round" * template.turned(use))
    return f"turned {' and '.join(filter(None, ways))}" if any(ways) else ""


def _all_places(places: Iterable[tuple[str, str]]) -> str:
    """`Lower left, lower right; turned half round: upper left, upper right`."""
    ways: dict[str, list[str]] = {"": []}
    for how, words in dict.fromkeys(places):
        ways.setdefault(how, []).append(words)
    if set().union(*ways.values()) == set(_CORNERS) and set(ways) == {"", _HALF_ROUND}:
        return f"{_EVERY_CORNER}, {_HALF_ROUND} at the top"
    parts = [f"{how}: {', '.join(words)}" if how else ", ".join(words)
             for how, words in ways.items() if words]  # fmt: skip
    whole = "; ".join(parts)
    return whole[0].upper() + whole[1:]


def _place(template: HoleTemplate, use: TemplateUse, unit: str) -> str:
    """Where it is laid, as one looks at the face: a corner, or an edge and a line."""
    if use.across is None and use.up is None and template.face not in _EDGES:
        return f"{_UP[use.level]} {use.upright}"
    upright, level = (edge.format(side) for edge, side in zip(
        _EDGES.get(template.face, _OF_WOOD), (use.upright, use.level), strict=True))  # fmt: skip
    across = upright if use.across is None else f"{_from(use.across, unit)} {upright}"
    up = level if use.up is None else f"{_from(use.up, unit)} {level}"
    return f"{across}, {up}"


def _from(length: Mm, unit: str) -> str:
    return f"{in_both_units(length, unit)} from the"


def edge_words(template: HoleTemplate) -> EdgeWords:
    """The names along its edges: of one that serves at either end, both."""
    turned = any(template.turned(use) for use in template.uses)
    over = any(template.turned_over(use) for use in template.uses)
    low, high = ("top", "bottom") if template.upside_down else ("bottom", "top")
    left, right = ("right", "left") if template.upside_down else ("left", "right")
    if template.face == "cabinet-level":
        return EdgeWords("front edge", "end of the opening", "end of the opening")
    level = f"{low} (turned: {high})" if turned else low
    if template.face == "cabinet-side":
        return EdgeWords(f"opening’s {level}", "front edge", "front edge")
    if turned or over:
        return EdgeWords(f"{level} edge", "side edge", "side edge")
    return EdgeWords(f"{low} edge", f"{left} edge", f"{right} edge")


def profile_about(profile: JigProfile, unit: str) -> list[str]:
    """How long the jigs are that end so."""
    lengths = ", ".join(show(length, unit) for length in profile.lengths)
    return ["Seen from the side, ledges flush behind.", f"Length of the block: {lengths}"]


def slot_about() -> list[str]:
    """Where it is cut, and what for."""
    return ["Seen from the front, in the middle of the jig’s length: clears the slide."]


_ALREADY: Mapping[str, str] = {
    "cups-bought": "hinge cups: bored by the door maker",
    "cups-old": "hinge cups: in bores that the door has",
    "handle": "knob: the door brings its hole",
}


def already_words(bored: BoredBefore) -> str:
    """Why there is no template: `hinge cups: bored by the door maker`."""
    return _ALREADY[bored.what]
