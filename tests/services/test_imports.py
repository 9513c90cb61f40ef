"""A kitchen from a file into a shop."""

import json
from dataclasses import fields, replace
from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError

from fronts.jobfile import read
from fronts.models import Cabinet, FitRecord, Front, JobStandard, ShopNumber, Stock
from fronts.rules.fits import FitFacts
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import INCH
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import DEFAULTS, settled
from fronts.selectors.fits import fit_records_of
from fronts.services.fits import fit_record
from fronts.services.imports import job_import
from fronts.services.stock import practice_set
from fronts.snapshot import kitchen_of
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.refused import Refused
from tests.factories import NOW, ShopFactory
from tests.kitchen_files import SAMPLES, small
from tests.saying import standard_set, stock_set


@pytest.fixture
def kitchen() -> Kitchen:
    """A kitchen of one cabinet."""
    return read(json.dumps(small()))


def test_silence_stays_silence_where_the_shop_has_no_say(shop: Shop, kitchen: Kitchen) -> None:
    """The job's level holds what the file says, and nothing more."""
    job = job_import(kitchen=replace(kitchen, standard=Standard(skin=INCH)), shop=shop, at=NOW)

    assert standard_of(JobStandard.objects.get(job=job)) == Standard(skin=INCH)
    assert not Stock.objects.exists()
    assert not ShopNumber.objects.exists()


def test_a_files_silence_means_the_files_defaults(shop: Shop, kitchen: Kitchen) -> None:
    """In a shop that does otherwise, the job says the default itself."""
    wide = inches(1, 4)
    standard_set(
        owner=shop, at=NOW, mount="inset", bite=INCH, skin=DEFAULTS.skin,
        inset_left=wide, inset_right=wide, inset_top=wide, inset_bottom=wide,
    )  # fmt: skip
    stock_set(owner=shop, knob_thread="M4", at=NOW)
    practice_set(owner=shop, values={"spares": Fraction(20)}, at=NOW)
    job = job_import(kitchen=kitchen, shop=shop, at=NOW)
    found = kitchen_of(job)

    assert settled(kitchen.standard) == settled(found.standard)
    assert (kitchen.stock, kitchen.practice) == (found.stock, found.practice)
    assert schedule(kitchen) == schedule(found)
    assert standard_of(JobStandard.objects.get(job=job)).skin is None


def test_what_is_exported_is_imported_unchanged_in_any_shop(shop: Shop, kitchen: Kitchen) -> None:
    """With a shop that differs in every key of the standard."""
    half = inches(1, 2)
    lengths = ("gap_between", "least_gap", "front_thickness", "trim_limit", "least_stile",
               "skin", "bite", "hinge_end")  # fmt: skip
    standard_set(owner=shop, at=NOW, **dict.fromkeys(lengths, half), mount="inset")  # type: ignore[arg-type]
    job = job_import(kitchen=kitchen, shop=shop, at=NOW)
    there = kitchen_of(job)
    again = job_import(kitchen=there, shop=shop, at=NOW, replace=True)

    assert there == kitchen_of(again)
    for key in (each.name for each in fields(Standard)):
        assert getattr(settled(kitchen.standard), key) == getattr(settled(there.standard), key)


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name)
def test_the_samples_come_out_as_they_went_in(shop: Shop, sample: object) -> None:
    """Each of the three, from its file into the database and out again."""
    kitchen = read(sample.read_text(encoding="utf-8"))  # type: ignore[attr-defined]

    assert kitchen == kitchen_of(job_import(kitchen=kitchen, shop=shop, at=NOW))


def test_a_number_that_is_there_is_refused(shop: Shop, kitchen: Kitchen) -> None:
    """Unless the file is to replace it; another shop may have the same number."""
    first = job_import(kitchen=kitchen, shop=shop, at=NOW)
    with pytest.raises(Refused, match="already a job T-1") as refused:
        job_import(kitchen=kitchen, shop=shop, at=NOW)
    assert refused.value.field == "number"
    other = job_import(kitchen=kitchen, shop=ShopFactory.create(name="Elm End"), at=NOW)

    assert {first.pk, other.pk} == set(Job.objects.values_list("pk", flat=True))


def test_a_replaced_job_keeps_what_was_recorded_on_it(
    shop: Shop, kitchen: Kitchen, installer: Person
) -> None:
    """Its kitchen is the new file's; its page has the same address."""
    job = job_import(kitchen=kitchen, shop=shop, at=NOW)
    record_fit(job, installer)
    cabinet = replace(kitchen.cabinets[0], label="B9", openings=())
    later = replace(kitchen, cabinets=(cabinet,), standard=Standard(), doors_on_hand=())
    again = job_import(kitchen=later, shop=shop, at=NOW, replace=True)

    assert again.pk == job.pk
    assert kitchen_of(again) == later
    assert FitRecord.objects.filter(job=again).exists()


def test_a_record_of_fit_finds_its_front_in_the_new_file(
    shop: Shop, kitchen: Kitchen, installer: Person
) -> None:
    """The front is entered anew under its old label, and counts as fitted still."""
    job = job_import(kitchen=kitchen, shop=shop, at=NOW)
    record_fit(job, installer)
    job_import(kitchen=kitchen, shop=shop, at=NOW, replace=True)

    assert list(fit_records_of(job)) == ["B1.a"]
    assert FitRecord.objects.get().front == Front.objects.get()


def record_fit(job: Job, by: Person) -> None:
    """Say of the job's only front that it fitted."""
    facts = FitFacts("B1.a", note="snug")
    front = Front.objects.get(opening__cabinet__job=job)
    fit_record(front=front, facts=facts, hung="", fingerprint="x", by=by, at=NOW)


def test_what_cannot_be_kept_is_refused_with_its_place(shop: Shop, kitchen: Kitchen) -> None:
    """A file may say a third of an inch; a shop's database may not. Nothing is left behind."""
    cabinet = replace(kitchen.cabinets[0], width=INCH * 55 / 3)
    with pytest.raises(ValidationError) as refused:
        job_import(kitchen=replace(kitchen, cabinets=(cabinet,)), shop=shop, at=NOW)

    assert refused.value.messages[0].startswith("cabinet B1, width: this length can't be kept")
    assert not Job.objects.exists()


def test_a_step_that_cannot_be_kept_is_refused(shop: Shop, kitchen: Kitchen) -> None:
    """As any other length."""
    odd = replace(kitchen, job=replace(kitchen.job, step=Fraction(1, 3)))
    with pytest.raises(ValidationError) as refused:
        job_import(kitchen=odd, shop=shop, at=NOW)

    assert set(refused.value.message_dict) == {"step"}


def test_a_door_that_is_not_on_hand_is_refused(shop: Shop, kitchen: Kitchen) -> None:
    """The message names the opening and the door."""
    cabinet = kitchen.cabinets[0]
    opening = cabinet.openings[0]
    asking = replace(opening, fronts=(FrontFacts(door_on_hand="D7"),))
    wrong = replace(kitchen, cabinets=(replace(cabinet, openings=(asking,)),))
    with pytest.raises(ValidationError, match=r"opening B1\.a: no door on hand is called D7"):
        job_import(kitchen=wrong, shop=shop, at=NOW)

    assert not Cabinet.objects.exists()


def test_labels_that_are_given_twice_are_refused(shop: Shop, kitchen: Kitchen) -> None:
    """Cabinets, openings and doors."""
    cabinet, door = kitchen.cabinets[0], kitchen.doors_on_hand[0]
    twice = (
        replace(kitchen, cabinets=(cabinet, cabinet)),
        replace(kitchen, cabinets=(replace(cabinet, openings=cabinet.openings * 2),)),
        replace(kitchen, doors_on_hand=(door, door)),
    )
    for wrong in twice:
        with pytest.raises(ValidationError):
            job_import(kitchen=wrong, shop=shop, at=NOW)

    assert not Job.objects.exists()


def test_an_import_is_in_the_diary(shop: Shop, owner: Person, kitchen: Kitchen) -> None:
    """Under the name of whoever did it."""
    job_import(kitchen=kitchen, shop=shop, by=owner, at=NOW)
    line = Revision.objects.order_by("pk").last()

    assert line is not None
    assert (line.text, line.person) == ("Imported job T-1", owner)
