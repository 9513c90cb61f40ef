"""What the tables keep, a job file can carry: the same words, of the same lengths."""

from fractions import Fraction
from functools import partial
from typing import Any

import pytest
from django.core.exceptions import ValidationError
from django.db.models import CharField

from fronts.jobfile import read, write
from fronts.models import Cabinet, DoorOnHand, Front, JobStandard, Opening
from fronts.rules.kitchen import Point
from fronts.rules.limits import (
    LONGEST_CLIENT,
    LONGEST_LABEL,
    LONGEST_MATERIAL,
    LONGEST_SITE,
    MOST_BORES,
    MOST_FRONTS,
    MOST_OPENINGS,
)
from fronts.rules.practice import inches
from fronts.rules.screws import thread_diameter
from fronts.services.saving import checked
from fronts.services.standards import tables_set
from fronts.snapshot import kitchen_of
from shopjobs.models import Client, Job, Shop, Site
from shopjobs.services.jobs import job_create
from tests.factories import (
    NOW,
    CabinetFactory,
    DoorOnHandFactory,
    JobFactory,
    OpeningFactory,
)
from tests.saying import door_change, stock_set


@pytest.mark.parametrize(
    ("table", "name", "longest"),
    [
        (Job, "number", LONGEST_LABEL),
        (Client, "name", LONGEST_CLIENT),
        (Site, "address", LONGEST_SITE),
        (Cabinet, "label", LONGEST_LABEL),
        (Cabinet, "wall", LONGEST_LABEL),
        (Opening, "label", LONGEST_LABEL),
        (Front, "material", LONGEST_MATERIAL),
        (DoorOnHand, "label", LONGEST_LABEL),
        (DoorOnHand, "material", LONGEST_MATERIAL),
        (JobStandard, "material", LONGEST_MATERIAL),
        (JobStandard, "frame_material", LONGEST_MATERIAL),
    ],
)
def test_a_file_and_a_table_hold_texts_of_the_same_length(
    table: type[Job], name: str, longest: int
) -> None:
    """What is exported can be imported, and what is read can be kept."""
    field = table._meta.get_field(name)

    assert isinstance(field, CharField)
    assert field.max_length == longest


def test_the_longest_words_come_back_from_a_file(shop: Shop) -> None:
    """A kitchen whose every text is as long as it may be is written and read again."""
    label, material = "L" * LONGEST_LABEL, "m" * LONGEST_MATERIAL
    job = JobFactory.create(
        shop=shop, number=label, client="c" * LONGEST_CLIENT, site="s" * LONGEST_SITE
    )
    cabinet = CabinetFactory.create(job=job, label=label, wall=label)
    OpeningFactory.create(cabinet=cabinet, label=label, front_material=material)
    DoorOnHandFactory.create(job=job, label=label, material=material)
    kitchen = kitchen_of(job)

    assert read(write(kitchen)) == kitchen


@pytest.mark.parametrize("text", ["two\nlines", "tab\tstop", "nul\0", "bell\a", "line\u2028end"])
@pytest.mark.parametrize("name", ["number", "client", "site"])
def test_what_no_file_may_hold_is_kept_out_of_a_job(shop: Shop, name: str, text: str) -> None:
    """The message is at the field."""
    said: dict[str, Any] = {"shop": shop, "number": "K-9", name: text}
    keep = (
        partial(checked, Job(**said)) if name == "number" else partial(job_create, at=NOW, **said)
    )
    with pytest.raises(ValidationError) as refused:
        keep()

    assert refused.value.message_dict[name][0] == "Use plain text on one line."


@pytest.mark.parametrize("thread", ["coarse", "M0", "8-32 ", " M4", "8-32\n"])
def test_a_thread_that_no_file_may_hold_is_kept_out_of_the_stock(shop: Shop, thread: str) -> None:
    """The reader of files and the table know the same threads, each without space around it."""
    with pytest.raises(ValidationError) as refused:
        stock_set(owner=shop, knob_thread=thread, at=NOW)

    assert "enter a thread like 8-32, 1/4-20 or M4" in refused.value.message_dict["knob_thread"]


@pytest.mark.parametrize("thread", ["8-32", "#8-32", "1/4-20", "M4", "m 4"])
def test_a_thread_comes_back_from_a_file(job: Job, thread: str) -> None:
    """Each way in which people write one."""
    stock_set(owner=job, knob_thread=thread, at=NOW)
    kitchen = kitchen_of(job)

    assert thread_diameter(thread) is not None
    assert read(write(kitchen)).stock.knob_thread == thread


def test_a_stack_has_as_many_fronts_in_a_file_as_in_a_table(job: Job) -> None:
    """The most come back from a file."""
    OpeningFactory.create(cabinet__job=job, closed_by="drawers", count=MOST_FRONTS)
    kitchen = kitchen_of(job)

    assert len(kitchen.cabinets[0].openings[0].fronts) == MOST_FRONTS
    assert read(write(kitchen)) == kitchen


def test_a_door_has_no_more_bores_than_a_file_may_hold(job: Job) -> None:
    """The most come back from a file; one more is refused at the bores."""
    bores = [Point(inches(1), inches(n, 4)) for n in range(MOST_BORES)]
    door = DoorOnHandFactory.create(job=job, hinge_bores=bores)
    kitchen = kitchen_of(job)
    assert read(write(kitchen)) == kitchen

    with pytest.raises(ValidationError) as refused:
        door_change(door=door, hinge_bores=[*bores, Point(inches(2), inches(2))], at=NOW)

    assert refused.value.message_dict == {"hinge_bores": ["enter at most 50 bores"]}


def test_a_cabinet_has_no_more_openings_than_a_file_may_hold(job: Job) -> None:
    """The most come back from a file; one more is refused."""
    cabinet = CabinetFactory.create(job=job)
    for number in range(MOST_OPENINGS):
        OpeningFactory.create(cabinet=cabinet, label=f"n{number}", closed_by="open")
    kitchen = kitchen_of(job)
    assert read(write(kitchen)) == kitchen

    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(cabinet=cabinet, label="more", closed_by="open")

    assert refused.value.messages == ["cabinet B1 has 60 openings, the most"]


@pytest.mark.parametrize("load", [Fraction(1, 2000), Fraction(1001)])
def test_a_load_that_no_file_may_hold_is_kept_out_of_the_tables(job: Job, load: Fraction) -> None:
    """Half a gram, and more than a ton, are slips of the finger."""
    for name, rows in (("slide_classes", [load]), ("hinges_by_weight", [(load, 2)])):
        said = {"hinges_by_height": None, "hinges_by_weight": None, "slide_classes": None}
        with pytest.raises(ValidationError) as refused:
            tables_set(
                owner=job, material="", frame_material="", at=NOW,
                **{**said, name: rows},  # type: ignore[arg-type]
            )  # fmt: skip

        assert set(refused.value.message_dict) == {name}
