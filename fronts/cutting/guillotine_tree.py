"""A packed board as a tree of edge-to-edge cuts, breaking down first.

A node is a rectangle in whole units: cut one way into children, or a part, or left over. Building
the tree also tidies: children move together, those of one size side by side, and what is left over
gathers at one end.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from fronts.cutting.integer_problem import Orientation


class Spot(NamedTuple):
    """An item lying on a board, from its lower left corner, in whole units."""

    item: int
    x: int
    y: int
    orientation: Orientation


@dataclass(slots=True)
class CutNode:
    """`across` says that its children stand side by side along y (else along x)."""

    x: int
    y: int
    length: int
    width: int
    across: bool = False
    children: tuple["CutNode", ...] = ()
    spot: Spot | None = None


class NotEdgeToEdgeError(ValueError):
    """These places cannot be cut apart by cuts that go right across."""


def cut_tree(length: int, width: int, spots: Sequence[Spot], *, rips_first: bool = True) -> CutNode:
    """The board as a tree of cuts; `rips_first` settles ties for cuts along the length."""
    return _node(CutNode(0, 0, length, width), list(spots), rips_first=rips_first)


def _node(node: CutNode, spots: list[Spot], *, rips_first: bool) -> CutNode:
    if not spots:
        return node
    rows, columns = _groups(spots, across=True), _groups(spots, across=False)
    up = node.width - sum(size for size, _ in rows)
    along = node.length - sum(size for size, _ in columns)
    if len(spots) == 1 and up == 0 and along == 0:
        node.spot = spots[0]._replace(x=node.x, y=node.y)
        return node
    can_rip, can_cross = len(rows) > 1 or up > 0, len(columns) > 1 or along > 0
    if not (can_rip or can_cross):
        raise NotEdgeToEdgeError
    rip = can_rip and (not can_cross or _prefers(node, up, along, rips_first=rips_first))
    _split(node, rows if rip else columns, rip=rip, rips_first=rips_first)
    return node


def _prefers(node: CutNode, up: int, along: int, *, rips_first: bool) -> bool:
    """Rip where that leaves the larger piece over; the waste of the two is cut off whole."""
    left_by_rip, left_by_cross = up * node.length, along * node.width
    if left_by_rip == left_by_cross:
        return rips_first
    return left_by_rip > left_by_cross


def _split(
    node: CutNode, groups: list[tuple[int, list[Spot]]], *, rip: bool, rips_first: bool
) -> None:
    node.across = rip
    children: list[CutNode] = []
    place = 0
    for size, spots in sorted(groups, key=lambda group: (-group[0], -len(group[1]))):
        if rip:
            child = CutNode(node.x, node.y + place, node.length, size)
        else:
            child = CutNode(node.x + place, node.y, size, node.width)
        children.append(_node(child, spots, rips_first=rips_first))
        place += size
    whole = node.width if rip else node.length
    if place < whole:
        rest = (
            CutNode(node.x, node.y + place, node.length, whole - place)
            if rip
            else CutNode(node.x + place, node.y, whole - place, node.width)
        )
        children.append(rest)
    node.children = tuple(children)


def _groups(spots: list[Spot], *, across: bool) -> list[tuple[int, list[Spot]]]:
    """The spots that no cut in this direction can part, each with the room that they take."""
    if across:
        ordered = sorted((s.y, s.y + s.orientation.width, s) for s in spots)
    else:
        ordered = sorted((s.x, s.x + s.orientation.length, s) for s in spots)
    groups: list[tuple[int, list[Spot]]] = []
    start, end, members = ordered[0][0], ordered[0][1], [ordered[0][2]]
    for low, high, spot in ordered[1:]:
        if low >= end:
            groups.append((end - start, members))
            start, members = low, []
        end = max(end, high)
        members.append(spot)
    groups.append((end - start, members))
    return groups
