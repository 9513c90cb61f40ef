"""The shop's list of hardware, and how it makes its boxes; a job's own replaces either whole."""

from fronts import models
from fronts.facts.rows import from_row
from fronts.rules.banded_edges import USUAL_BANDS
from fronts.rules.box_facts import USUAL_BOXES, BoxesMadeOf
from fronts.rules.facts import Fact, rows_of
from fronts.rules.items import NO_ITEMS, Hardware
from fronts.snapshot.in_force import row_in_force
from fronts.snapshot.things import things_of
from shopjobs.models import Job, Shop


def hardware_in_force(owner: Shop | Job) -> Hardware:
    """The job's own list, else its shop's; nothing where there is none: a query a kind at most."""
    row = row_in_force(models.HardwareList, owner)
    return NO_ITEMS if row is None else hardware_of(row)


def hardware_of(row: models.HardwareList) -> Hardware:
    """All items of one list, each kind in the shop's order."""
    return Hardware(**{fact.name: things_of(fact.kind, row) for fact, _ in rows_of(Hardware)})


def boxes_made_of_in_force(owner: Shop | Job) -> BoxesMadeOf:
    """How the job says that its boxes are made, else how its shop does."""
    row = row_in_force(models.BoxesMadeOf, owner)
    return USUAL_BOXES if row is None else from_row(BoxesMadeOf, row)


def bands_in_force(owner: Shop | Job) -> list[tuple[str, str]]:
    """Code and name of each edge band that may be named, the plain ones where none is entered."""
    bands = hardware_in_force(owner).bands or USUAL_BANDS
    return [(band.code, band.name) for band in bands]


def items_in_force(owner: Shop | Job, fact: Fact) -> list[tuple[str, str]]:
    """Code and name of each item of one kind, in the order of the list that holds."""
    row = row_in_force(models.HardwareList, owner)
    return [] if row is None else [(item.code, item.name) for item in things_of(fact.kind, row)]
