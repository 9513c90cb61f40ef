"""A cabinet drawn beside its form, as it is or as the form has it."""

from dataclasses import replace

from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.cabinet import cabinet_elevation
from fronts.drawings.drawing import SCREEN
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.schedules import schedule_for
from shopjobs.models import Job

ROOM = (420_00, 400_00)


def drawn_cabinet(job: Job, label: str) -> SafeString:
    """The cabinet as it is now; nothing where there is none of this label."""
    if not label:
        return SafeString("")
    kitchen = placed_kitchen_of(job)
    if all(each.label != label for each in kitchen.cabinets):
        return SafeString("")
    return drawing_of(schedule_for(job, kitchen), kitchen, label)


def drawing_of(found: Schedule, kitchen: Kitchen, label: str) -> SafeString:
    """The cabinet's elevation for the screen."""
    svg = cabinet_elevation(found, kitchen, label, unit=kitchen.job.unit, ink=SCREEN, room=ROOM)
    return mark_safe(svg)  # noqa: S308 - drawn by us, every word in it escaped


def with_cabinet(kitchen: Kitchen, cabinet: CabinetFacts, instead_of: str | None) -> Kitchen:
    """The kitchen with this cabinet in place of another, or after the last."""
    others = tuple(cabinet if each.label == instead_of else each for each in kitchen.cabinets)
    cabinets = others if instead_of is not None else (*others, cabinet)
    return replace(kitchen, cabinets=cabinets)
