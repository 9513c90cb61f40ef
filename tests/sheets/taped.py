"""Templates as they lie once cut out: parts taped by their crosses, edges and holes measured."""

import re
from collections import defaultdict
from collections.abc import Iterable, Sequence

import pytest

from fronts.figures.templates import in_both_units, template_title
from fronts.rules.template_results import HoleTemplate, JigProfile
from tests.sheets.true_size import Card, Circle, Drawn, Line, Place

NEAR = 0.1
"""Millimetres."""
EDGE, CHAIN, REGISTER = 0.9, 0.6, 1.2
"""How wide strokes are, in CSS pixels: edges, lines that are marked first, register marks."""
_RING = 1.0
_REGISTER_NAME = re.compile(r"T\d+ ([A-Z]\d)")


def near(length: object) -> object:
    """A length as it is measured on paper."""
    return pytest.approx(float(length), abs=NEAR)  # type: ignore[arg-type]


def taped(pages: Iterable[Drawn]) -> dict[int, Card]:
    """Every template by its number, its parts laid so that their crosses meet."""
    parts: dict[int, list[Card]] = defaultdict(list)
    for page in pages:
        for card in page.cards:
            parts[card.number].append(card)
    return {number: _laid_together(cards) for number, cards in parts.items()}


def _laid_together(cards: Sequence[Card]) -> Card:
    """On the first one's place; both crosses of each seam must meet."""
    whole, rest = cards[0], list(cards[1:])
    placed = dict(registers(whole))
    while rest:
        card = next(each for each in rest if placed.keys() & registers(each).keys())
        rest.remove(card)
        own = registers(card)
        shared = sorted(placed.keys() & own.keys())
        assert len(shared) >= 2
        by = [(placed[name][0] - own[name][0], placed[name][1] - own[name][1]) for name in shared]
        for each in by:
            assert each == (near(by[0][0]), near(by[0][1]))
        moved = card.moved(*by[0])
        placed.update(registers(moved))
        whole.lines += moved.lines
        whole.circles += moved.circles
        whole.texts += moved.texts
    return whole


def registers(card: Card) -> dict[str, Place]:
    """The crosses' middles by their names, which stand over them."""
    found = {}
    for text in card.texts:
        named = _REGISTER_NAME.fullmatch(text.text.strip())
        if named:
            crosses = [each.centre for each in card.circles if each.width == REGISTER]
            found[named[1]] = min(crosses, key=lambda at: _apart(at, text.place))
    assert len(found) == len(set(found.values()))
    return found


def _apart(one: Place, other: Place) -> float:
    return abs(one[0] - other[0]) + abs(one[1] - other[1])


def holes_lie(card: Card, template: HoleTemplate, unit: str) -> None:
    """Each hole from the edges and lines, as wide as it is bored; all fronts are named."""
    level, upright = edges(card)
    assert len(level) == template.level_edge
    assert len(upright) == len(template.hands)
    up = -1 if template.upside_down else 1
    across = -up if template.hands == ("right",) else up
    rings = [each.centre for each in card.circles if each.diameter == near(_RING)
             and each.width < EDGE]  # fmt: skip
    lines = chains(card)
    found = [(_inwards(x, upright, lines[1], across), _inwards(y, level, lines[0], up))
             for x, y in rings]  # fmt: skip
    assert len(found) == len(template.marks)
    for mark in template.marks:
        assert (near(mark.x), near(mark.y)) in found, (found, card.words)
    if template.diameter is not None:
        bored = [each for each in card.circles if each.diameter == near(template.diameter)]
        for ring in rings:
            assert any(_apart(each.centre, ring) < NEAR for each in bored)
    _hatched_outside(card, template)
    _named(card, template, unit)


def _inwards(at: float, edge: Sequence[float], chain: Sequence[float], way: int) -> float:
    """From its edge into the wood, the same from both where there are two; else from its line."""
    if len(edge) > 1:
        assert at - edge[0] == near(edge[1] - at)
        return at - edge[0]
    (line,) = edge or chain
    return (at - line) * way


def edges(card: Card) -> tuple[list[float], list[float]]:
    """Where edge lines are: level ones, and upright ones."""
    return _of_width(card.lines, EDGE)


def chains(card: Card) -> tuple[list[float], list[float]]:
    """Where the lines are that are marked on the wood first."""
    return _of_width([each for each in card.lines if len(each.dashes) > 2], CHAIN)


def _of_width(lines: Iterable[Line], width: float) -> tuple[list[float], list[float]]:
    same = [each for each in lines if each.width == width]
    level = _distinct(each.start[1] for each in same if each.is_level)
    return level, _distinct(each.start[0] for each in same if each.is_upright)


def _distinct(places: Iterable[float]) -> list[float]:
    """Those that are one line, though in parts, once."""
    found: list[float] = []
    for place in sorted(places):
        if not found or place - found[-1] > NEAR:
            found.append(place)
    return found


def _hatched_outside(card: Card, template: HoleTemplate) -> None:
    """Edges are hatched off the wood: a level one below, or above where it is at the top."""
    level, upright = edges(card)
    up = -1 if template.upside_down else 1
    hatches = [each for each in card.lines
               if each.width < CHAIN and not each.is_level and not each.is_upright]  # fmt: skip
    assert bool(hatches) == bool(level or upright)
    for stroke in hatches:
        off = [(stroke.end[1] - y) * up < 0 for y in level if stroke.start[1] == near(y)]
        for x in upright:
            left = (x == upright[0]) if len(upright) > 1 else (template.hands == ("left",)) == (
                up > 0)  # fmt: skip
            if stroke.start[0] == near(x):
                off.append((stroke.end[0] < x) == left)
        assert any(off)


def _named(card: Card, template: HoleTemplate, unit: str) -> None:
    words = "".join(card.words.split())
    assert "".join(template_title(template).split()) in words
    for label in template.fronts:
        assert "".join(label.split()) in words
    for use in template.uses:
        for line, side in ((use.across, use.upright), (use.up, use.level)):
            if line is not None:
                said = f"{in_both_units(line, unit)} from the {side}"
                assert "".join(said.split()) in words


def jig_lies(card: Card, profile: JigProfile) -> None:
    """Ledge and block as thick and deep as they are made, flush at the right, behind."""
    ledges = profile.ledges
    level, upright = edges(card)
    left, block, back = upright
    assert back - left == near(ledges.overhang + ledges.block_depth)
    assert block - left == near(ledges.overhang)
    low, between, high = level
    assert between - low == near(ledges.thickness)
    assert high - between == near(profile.thickness)
    hidden = [each for each in card.lines if each.dashes]
    if profile.slot and profile.slot.depth < profile.thickness:
        assert [high - each.start[1] for each in hidden] == [near(profile.slot.depth)]
    else:
        assert hidden == []
    for label in profile.fronts:
        assert "".join(label.split()) in "".join(card.words.split())


def slot_lies(card: Card, profile: JigProfile) -> None:
    """As wide and deep as it is cut, about the middle line."""
    assert profile.slot
    level, (left, right) = edges(card)
    _, (middle,) = chains(card)
    assert right - left == near(profile.slot.width)
    assert middle - left == near(profile.slot.width / 2)
    assert level[-1] - level[0] == near(profile.thickness)
    deep = min(profile.slot.depth, profile.thickness)
    assert any(level[-1] - each == near(deep) for each in level)


def bored_circles(card: Card) -> list[Circle]:
    """What is drawn as wide as it is bored."""
    return [each for each in card.circles if each.diameter != near(_RING)
            and each.width != REGISTER]  # fmt: skip
