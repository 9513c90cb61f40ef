"""Appliances, fillers, end panels and gaps: what stands in a run beside cabinets."""

from collections.abc import Iterator, Mapping
from functools import partial
from itertools import count
from typing import Any

from django import forms

from fronts import models
from fronts.figures.sizes import size
from fronts.models import Cabinet
from fronts.pages.measure.forms.wall_choice import offer_walls
from fronts.pages.measure.things.thing_page import ThingForm, ThingPage, Words
from fronts.pages.shared.kitchen_form import Group, When
from fronts.rules.kinds import words_of
from fronts.rules.lengths import show
from fronts.rules.thing_kinds import RUNS, THING_KINDS
from fronts.rules.wall_facts import Thing
from fronts.selectors.kitchens import walls_of
from shopjobs.models import Job

_KINDS: Mapping[str, str] = words_of(THING_KINDS)
_RUNS: Mapping[str, str] = dict(RUNS.items())
_LETTERS: Mapping[str, str] = {kind: traits.letter for kind, traits in THING_KINDS.items()}
_LONE = "filler"


class BesideField(forms.ChoiceField):
    """Something else that stands in the job; whether it does is seen when it is saved."""

    def valid_value(self, value: Any) -> bool:
        return True


class OtherForm(ThingForm):
    """Something that takes its place in a run."""

    facts = Thing
    groups = (
        Group("", ("kind", "label", "name", "width", "height", "depth"), kind="cells"),
        Group("Where it stands", ("wall", "after", "run", "x", "y"), kind="cells wide"),
        Group("", ("panel",), kind="cells"),
    )

    used_when = {"panel": When("kind", ("appliance",))}

    after = BesideField(
        label="Stands after", choices=[("", "Nothing: it comes first")], required=False
    )

    def __init__(self, *args: Any, held: Any = None, **kwargs: Any) -> None:
        super().__init__(*args, held=held, **kwargs)
        self.offer_places([held.after] if held is not None and held.after else [])

    def offer_places(self, labels: list[str]) -> None:
        """Let it stand after any of these."""
        field = self.fields["after"]
        if isinstance(field, BesideField):
            field.choices = [("", "Nothing: it comes first"), *((each, each) for each in labels)]


def _words(thing: models.Thing, unit: str) -> Words:
    lengths = [each for each in (thing.width, thing.height, thing.depth) if each is not None]
    named = f"{_KINDS[thing.kind]}{f', {thing.name}' if thing.name else ''}"
    return Words(size(unit, *lengths), named, tuple(_notes(thing, unit)))


def _notes(thing: models.Thing, unit: str) -> Iterator[str]:
    if thing.x is not None:
        yield f"{show(thing.x, unit)} from the left"
    else:
        yield f"after {thing.after}" if thing.after else "first on its wall"
    if thing.run:
        yield _RUNS[thing.run].lower()
    if thing.panel:
        yield "takes a panel"


def _next(job: Job) -> dict[str, object]:
    """One like the last, after the last cabinet."""
    rows = list(models.Thing.objects.filter(job=job).order_by("position", "pk"))
    kind = rows[-1].kind if rows else _LONE
    letter, taken = _LETTERS[kind], set(_labels(job))
    label = next(name for name in (f"{letter}{n}" for n in count(1)) if name not in taken)
    last = Cabinet.objects.filter(job=job).order_by("position", "pk").last()
    place = {"wall": last.wall, "after": last.label} if last is not None else {}
    return {"kind": kind, "label": label, **place}


def _labels(job: Job) -> list[str]:
    """What stands in the job, in its order."""
    return [
        label
        for table in (Cabinet, models.Thing)
        for label in table._default_manager.filter(job=job)
        .order_by("position", "pk")
        .values_list("label", flat=True)
    ]


def _settle(form: ThingForm, job: Job, row: Any) -> None:
    """It may stand after everything but itself."""
    if isinstance(form, OtherForm):
        own = None if row is None else row.label
        form.offer_places([label for label in _labels(job) if label != own])
        offer_walls(form, partial(walls_of, job), "wall")


OTHERS = ThingPage(
    form=OtherForm,
    words=_words,
    letter="",
    none="None. Cabinets stand side by side; what stands between them is entered here.",
    offers=_next,
    settle=_settle,
)
