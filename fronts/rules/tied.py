"""Things in groups, such that those that are tied are in one."""

from collections.abc import Iterable, Sequence
from typing import TypeVar

T = TypeVar("T")


def together(things: Iterable[T], ties: Iterable[Sequence[T]]) -> list[list[T]]:
    """The things in as many groups as there are when those that are tied are in one.

    Groups come in the order of their first things.
    """
    group_of: dict[T, list[T]] = {thing: [thing] for thing in things}
    for first, *others in ties:
        for other in others:
            one, two = (group_of.setdefault(each, [each]) for each in (first, other))
            if one is not two:
                one += two
                group_of.update(dict.fromkeys(two, one))
    groups = {id(group): group for group in group_of.values()}
    return list(groups.values())
