"""The choice of a hinge or a handle for a front, from the list that holds for its job."""

from collections.abc import Callable, Iterable, Mapping
from functools import cache, partial
from typing import TypeAlias

from fronts.facts.item_form_field import ItemField
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.rules.facts import Fact
from fronts.rules.items import BandItem
from fronts.rules.kitchen import FrontFacts
from fronts.services.hardware import ITEM_FACTS
from fronts.services.named_items import IN_STANDARD, NAMED_AS
from fronts.snapshot.hardware import bands_in_force, items_in_force
from shopjobs.models import Job, Shop

Items: TypeAlias = Mapping[str, Callable[[], Iterable[tuple[str, str]]]]
"""Codes and names of items, by the fact or column that names one; asked for where shown."""
LISTED: Mapping[str, Fact] = {name: ITEM_FACTS[kind][0] for kind, name in NAMED_AS.items()}
NO_LIST: Items = dict.fromkeys(LISTED, list)


def items_of(job: Job) -> Items:
    """What the job's list, or its shop's, has of each; asked for once."""
    return {name: cache(partial(items_in_force, job, fact)) for name, fact in LISTED.items()}


def standard_items(owner: Shop | Job) -> Items:
    """What may be named in each column of the owner's standard that names an item."""
    bands = cache(partial(bands_in_force, owner))
    offered: dict[str, Callable[[], Iterable[tuple[str, str]]]] = {}
    for kind, columns in IN_STANDARD.items():
        listed = bands if kind is BandItem else partial(items_in_force, owner, ITEM_FACTS[kind][0])
        offered |= dict.fromkeys(columns, cache(listed))
    return offered


def offer_items(
    form: KitchenForm, items: Items, fronts: Iterable[FrontFacts], prefix: str = ""
) -> None:
    """Let a form's fields offer the items; what a front names already stays in the choice."""
    named = list(fronts)
    for name, listed in items.items():
        field = form.fields.get(f"{prefix}{name}")
        if isinstance(field, ItemField):
            field.offer(listed, [getattr(front, name) for front in named])
