"""The order of the cabinets in which the least is set up anew.

From one cabinet to the next everything that the next one uses and the last one did not is set
up; in all that is, for each tool, how often cabinets that use it begin to follow one another:
consecutive block minimization (Kou, 1977, "Polynomial complete consecutive information retrieval
problems"; SR17 in Garey and Johnson; memory). It is a shortest path whose steps cost what two
cabinets do not share, and is found exactly.

Before that cabinets are taken together that can stand next to each other in a cheapest order.
What a cabinet uses alone, or all use, costs the same in every order, and is left out. Cabinets
that then use the same follow each other: to move one beside another like it never costs more,
since of what two neighbours A, C share with B between them, |A∩B| + |B∩C| − |B| ≤ |A∩C|. What
only they use is theirs alone from then on, and so on. Cabinets that share nothing with others go
by themselves. Of orders that cost as little the one that strays least from the wall's order.
"""

from collections.abc import Hashable, Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from itertools import chain
from typing import Generic, TypeVar

from fronts.rules.shortest_path import EXACT_BY_SETS, Costs, Path, path_by_sets
from fronts.rules.subtour_elimination import path_by_cuts
from fronts.rules.tied import together

T = TypeVar("T", bound=Hashable)


@dataclass(frozen=True, slots=True)
class Step(Generic[T]):
    """Cabinets that follow one another with one set-up; `new` is what is set up for them."""

    cabinets: tuple[str, ...]
    tools: frozenset[T]
    new: frozenset[T]


@dataclass(frozen=True, slots=True)
class Order(Generic[T]):
    """The steps in their order; `changes` in all, and how many no order can be under."""

    steps: tuple[Step[T], ...]
    changes: int
    least: int


def changes_along(order: Sequence[AbstractSet[T]]) -> int:
    """How many tools are set up when these set-ups follow one another."""
    before: AbstractSet[T] = frozenset()
    changes = 0
    for tools in order:
        changes += len(tools - before)
        before = tools
    return changes


def least_changes(set_ups: Mapping[str, frozenset[T]]) -> Order[T]:
    """The cabinets, which come in the order in which they stand, in the order of least changes.

    Those that need nothing set up are left out.
    """
    cabinets = {label: tools for label, tools in set_ups.items() if tools}
    order: list[str] = []
    over = 0
    for island in _islands(cabinets):
        labels, more = _ordered({label: cabinets[label] for label in island})
        order += labels
        over += more
    changes = changes_along([cabinets[label] for label in order])
    return Order(_steps(order, cabinets), changes, changes - over)


def _steps(order: Sequence[str], cabinets: Mapping[str, frozenset[T]]) -> tuple[Step[T], ...]:
    steps: list[Step[T]] = []
    for label in order:
        tools = cabinets[label]
        before = steps[-1].tools if steps else frozenset()
        if steps and tools == before:
            steps[-1] = Step((*steps[-1].cabinets, label), tools, steps[-1].new)
        else:
            steps.append(Step((label,), tools, tools - before))
    return tuple(steps)


def _islands(cabinets: Mapping[str, frozenset[T]]) -> list[list[str]]:
    """Cabinets that share something with one another, directly or by others between them."""
    users: dict[T, list[str]] = {}
    for label, tools in cabinets.items():
        for tool in tools:
            users.setdefault(tool, []).append(label)
    place = {label: at for at, label in enumerate(cabinets)}
    islands = together(cabinets, users.values())
    return [sorted(island, key=place.__getitem__) for island in islands]


def _ordered(cabinets: Mapping[str, frozenset[T]]) -> tuple[list[str], int]:
    """One island's order, and by how many changes it may be over the fewest."""
    groups = [([label], tools) for label, tools in cabinets.items()]
    while (fewer := _together(groups)) != groups:
        groups = fewer
    sets = [tools for _, tools in groups]
    path, most = _path(sets)
    labels = list(chain.from_iterable(groups[at][0] for at in path.order))
    return labels, -(-(path.cost - path.bound) // most)


_Group = tuple[list[str], frozenset[T]]


def _together(groups: Sequence[_Group[T]]) -> list[_Group[T]]:
    """The groups without what one alone or all use, those that are then alike as one."""
    used: dict[T, int] = {}
    for _, tools in groups:
        for tool in tools:
            used[tool] = used.get(tool, 0) + 1
    tells = {tool for tool, count in used.items() if 1 < count < len(groups)}
    alike: dict[frozenset[T], list[str]] = {}
    for labels, tools in groups:
        alike.setdefault(tools & tells, []).extend(labels)
    return [(labels, tools) for tools, labels in alike.items()]


def _path(sets: Sequence[frozenset[T]]) -> tuple[Path, int]:
    """The cheapest order of the sets, and what one change costs in it.

    A step costs what is not shared, and by far less how far it strays along the wall.
    """
    count = len(sets)
    change = count * count
    most = max((len(one) for one in sets), default=0)
    costs: Costs = [
        [change * (most - len(one & two)) + abs(at - to) for to, two in enumerate(sets)]
        for at, one in enumerate(sets)
    ]
    path = path_by_sets(costs) if count <= EXACT_BY_SETS else path_by_cuts(costs)
    return path, change
