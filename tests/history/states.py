"""Things that people do to a job."""

import contextlib
import random
from collections.abc import Mapping
from dataclasses import replace

from django.core.exceptions import ValidationError

from fronts import models
from fronts.rules.box_facts import BoxToMake, ShelfPins
from fronts.rules.fits import FitFacts
from fronts.rules.items import HandleItem
from fronts.rules.kitchen import Point
from fronts.rules.order_facts import LineFacts
from fronts.rules.practice import inches
from fronts.rules.wall_facts import Thing
from fronts.selectors.schedules import schedule_of
from fronts.services.along_wall import standing_move
from fronts.services.boxes import box_make, box_remove
from fronts.services.cabinets import cabinet_copy, cabinet_delete
from fronts.services.doors import door_delete
from fronts.services.fits import fit_record
from fronts.services.fronts import front_change
from fronts.services.hardware import hardware_clear, items_set
from fronts.services.openings import opening_delete
from fronts.services.order_lists import order_line_uncheck
from fronts.services.orders import order_check, order_uncheck
from fronts.services.receipts import fronts_receive, receipt_take_back
from fronts.services.stock import practice_set, stock_clear
from fronts.services.things import thing_create, thing_delete
from fronts.snapshot.things import bare
from shopjobs.models import Job, Person
from shopjobs.services.refused import Refused
from tests.factories import NOW, CabinetFactory, DoorOnHandFactory, OpeningFactory
from tests.history.date_deeds import dates_of_job
from tests.history.order_deeds import ORDER_DEEDS
from tests.history.shop_deeds import DEEDS_OF_SHOP, Deed, set_tables
from tests.history.snag_deeds import snag_of_job
from tests.ordering import line_checked
from tests.saying import (
    box_set,
    cabinet_change,
    client_set,
    door_change,
    opening_change,
    shelf_pins_set,
    standard_set,
    stock_set,
)


def resize_cabinet(job: Job, by: Person, chance: random.Random) -> None:
    """Wider, somewhere else."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    cabinet_change(
        cabinet=cabinet,
        width=cabinet.width + inches(1, 8),
        x=(cabinet.x or inches(0)) + inches(1),
        at=NOW,
        by=by,
    )


def resize_opening(job: Job, by: Person, chance: random.Random) -> None:
    """A little lower."""
    opening = an_opening(job, chance)
    opening_change(opening=opening, height=opening.height - inches(1, 16), at=NOW, by=by)


def close_otherwise(job: Job, by: Person, chance: random.Random) -> None:
    """A stack, or something else: fronts come and go, with boxes and records."""
    kinds = {"closed_by": "drawers", "count": 3}, {"closed_by": "door"}, {"closed_by": "open"}
    opening = an_opening(job, chance)
    opening_change(opening=opening, at=NOW, by=by, **chance.choice(kinds))


def delete_opening(job: Job, by: Person, chance: random.Random) -> None:
    """With all that is in it."""
    opening_delete(opening=an_opening(job, chance), at=NOW, by=by)


def enter_opening(job: Job, by: Person, chance: random.Random) -> None:
    """One more."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    OpeningFactory.create(
        cabinet=cabinet, label=f"n{chance.randrange(10**6)}", width=inches(2), height=inches(2),
        x=inches(1), y=inches(1), by=by,
    )  # fmt: skip


def box_behind(job: Job, by: Person, chance: random.Random) -> None:
    """A box, or the holes in its front."""
    openings = models.Opening.objects.filter(cabinet__job=job, closed_by="drawers")
    if not openings:
        return
    opening = chance.choice(list(openings))
    box = models.Box.objects.filter(front__opening=opening, front__position=0).first()
    if box is not None and chance.random() < 0.5:
        pins = ShelfPins(inches(1), inches(1), inches(1), 1 + chance.randrange(50))
        shelf_pins_set(box=box, rows=[pins], at=NOW, by=by)
        return
    box_set(
        opening=opening, index=0, at=NOW, by=by, width=inches(5), height=inches(2),
        front_thickness=inches(1, 2), rise=inches(1, 2) + inches(chance.randrange(9), 16),
    )  # fmt: skip


def lose_box(job: Job, by: Person, chance: random.Random) -> None:
    """A box is taken away."""
    boxes = list(models.Box.objects.filter(front__opening__cabinet__job=job))
    if boxes:
        box_remove(front=chance.choice(boxes).front, at=NOW, by=by)


def copy_cabinet(job: Job, by: Person, chance: random.Random) -> None:
    """To another place on its wall."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    label, x = f"C{chance.randrange(10**6)}", inches(500)
    cabinet_copy(cabinet=cabinet, label=label, x=x, at=NOW, by=by)


def move_cabinet(job: Job, by: Person, chance: random.Random) -> None:
    """Along its wall, where there is a neighbour."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    standing_move(row=cabinet, by_places=chance.choice((-1, 1)), at=NOW, by=by)


def delete_cabinet(job: Job, by: Person, chance: random.Random) -> None:
    """With all that is in it, and records of fit let go."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    cabinet_delete(cabinet=cabinet, at=NOW, by=by)


def change_door(job: Job, by: Person, chance: random.Random) -> None:
    """Wider, with other bores."""
    doors = list(models.DoorOnHand.objects.filter(job=job))
    if doors:
        door = chance.choice(doors)
        door_change(door=door, width=door.width + inches(1, 8), hinge_bores=(), at=NOW, by=by)


def delete_door(job: Job, by: Person, chance: random.Random) -> None:
    """Fronts that were made from it are left to the rules."""
    doors = list(models.DoorOnHand.objects.filter(job=job))
    if doors:
        door_delete(row=chance.choice(doors), at=NOW, by=by)


def standard_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """Another gap, for the job or one of its cabinets."""
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    owner: Job | models.Cabinet = job if chance.random() < 0.5 else cabinet
    standard_set(owner=owner, gap_between=inches(1 + chance.randrange(9), 32), at=NOW, by=by)


def stock_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """Its own shelf, or the shop's again."""
    if chance.random() < 0.3:
        stock_clear(job=job, at=NOW, by=by)
    else:
        lengths = [inches(1), inches(2 + chance.randrange(9))]
        stock_set(owner=job, screw_lengths=lengths, at=NOW, by=by)


def numbers_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """Its own ledge, or the usual one."""
    ledge = chance.choice([None, inches(1, 4), inches(3, 8)])
    practice_set(owner=job, values={"ledge_thickness": ledge}, at=NOW, by=by)


def client_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """Another client."""
    client_set(job, f"Client {chance.randrange(10**6)}", NOW, by)


def fit_front(job: Job, by: Person, chance: random.Random) -> None:
    """A record of how a front fitted."""
    fronts = list(models.Front.objects.filter(opening__cabinet__job=job))
    front = chance.choice(fronts)
    facts = FitFacts(str(front.opening), note=f"snug {chance.randrange(99)}")
    fit_record(front=front, facts=facts, hung="", fingerprint="", by=by, at=NOW)


def check_line(job: Job, by: Person, chance: random.Random) -> None:
    """A line of the order is checked, again, or not any more."""
    need = 1 + chance.randrange(9)
    if chance.random() < 0.3:
        order_uncheck(job=job, item="hinge", by=by, at=NOW)
    else:
        order_check(job=job, item="hinge", facts=LineFacts(need), fingerprint="", by=by, at=NOW)


def make_box(job: Job, by: Person, chance: random.Random) -> None:
    """A box is to be made, instead of one that was measured."""
    fronts = models.Front.objects.filter(
        opening__cabinet__job=job, opening__closed_by="drawers"
    ).select_related("opening__cabinet__job")
    if fronts:
        facts = BoxToMake(shelves=chance.randrange(3))
        box_make(front=chance.choice(list(fronts)), facts=facts, at=NOW, by=by)


def hardware_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """A list of its own, or the shop's again."""
    if chance.random() < 0.5:
        hardware_clear(job=job, at=NOW, by=by)
    else:
        items_set(owner=job, kind=HandleItem, items=[HandleItem("K")], at=NOW, by=by)


def thing_on_wall(job: Job, by: Person, chance: random.Random) -> None:
    """A filler after something, or one that goes."""
    rows = list(models.Thing.objects.filter(job=job))
    if rows and chance.random() < 0.5:
        thing_delete(row=chance.choice(rows), at=NOW, by=by)
        return
    cabinet = chance.choice(list(models.Cabinet.objects.filter(job=job)))
    label = f"F{chance.randrange(10**6)}"
    facts = Thing(label, "filler", cabinet.wall, inches(1), after=cabinet.label)
    thing_create(job=job, facts=facts, at=NOW, by=by)


def an_opening(job: Job, chance: random.Random) -> models.Opening:
    """Any opening of the job."""
    openings = models.Opening.objects.filter(cabinet__job=job).select_related("cabinet__job")
    return chance.choice(list(openings))


def enter_cabinet(job: Job, by: Person, chance: random.Random) -> None:
    """One more, at the end of a wall."""
    label, x = f"K{chance.randrange(10**6)}", inches(500)
    CabinetFactory.create(job=job, label=label, x=x, by=by)


def enter_door(job: Job, by: Person, chance: random.Random) -> None:
    """One more door on hand, with its bores."""
    bores = (Point(inches(1), inches(3)), Point(inches(1), inches(24)))
    label = f"K{chance.randrange(10**6)}"
    DoorOnHandFactory.create(job=job, label=label, hinge_bores=bores, by=by)


def decide_front(job: Job, by: Person, chance: random.Random) -> None:
    """One front of its own thickness."""
    fronts = models.Front.objects.filter(opening__cabinet__job=job)
    front = chance.choice(list(fronts.order_by("pk")))
    thick = inches(chance.randrange(10, 17), 16)
    front_change(front=front, facts=replace(bare(front), thickness=thick), at=NOW, by=by)


def tables_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """Another table of hinges, for the job alone."""
    set_tables(job, by, chance)


def line_of_list(job: Job, by: Person, chance: random.Random) -> None:
    """A line is checked as it is needed, and the list begins; or its mark goes, and the list."""
    found = schedule_of(job)
    begun = models.OrderCheck.objects.filter(job=job, item=found.hardware[0].item).exists()
    item = found.hardware[0].item
    if begun:
        order_line_uncheck(job=job, item=item, by=by, at=NOW)
    else:
        line_checked(job, item, by)


def receive_front(job: Job, by: Person, chance: random.Random) -> None:
    """A front is bought; once one is, what came is checked off or taken back."""
    found = schedule_of(job)
    if not found.bought:
        fronts = models.Front.objects.filter(opening__cabinet__job=job).order_by("pk")
        front = chance.choice(list(fronts))
        front_change(front=front, facts=replace(bare(front), made_by="bought"), at=NOW, by=by)
        return
    line = chance.choice(found.bought).front.short_name
    if chance.random() < 0.3:
        receipt_take_back(job=job, schedule=found, line=line, by=by, at=NOW)
    else:
        note = f"van {chance.randrange(99)}"
        fronts_receive(job=job, schedule=found, line=line, count=1, note=note, by=by, at=NOW)


DEEDS: Mapping[str, Deed] = {
    deed.__name__: deed
    for deed in (
        resize_cabinet, resize_opening, close_otherwise, delete_opening, enter_opening, box_behind,
        lose_box, copy_cabinet, move_cabinet, delete_cabinet, change_door, delete_door,
        standard_of_job, stock_of_job, numbers_of_job, client_of_job, fit_front, check_line,
        enter_cabinet, enter_door, decide_front, tables_of_job, line_of_list, make_box,
        hardware_of_job, thing_on_wall, receive_front, snag_of_job, dates_of_job, *ORDER_DEEDS,
    )
}  # fmt: skip
"""What people do to a job."""


def do(deed: str, job: Job, by: Person, chance: random.Random) -> None:
    """Do it; what can't be done is left."""
    fresh = Job.objects.select_related("shop").get(pk=job.pk)
    with contextlib.suppress(ValidationError, IndexError, Refused):
        {**DEEDS, **DEEDS_OF_SHOP}[deed](fresh, by, chance)
