"""Records that come with a file: by whom, of which front, none of them lost and none twice."""

import json
from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.jobfile import JobFile, read_job, write
from fronts.models import Cabinet, FitRecord, Front, FrontReceipt, Opening, OrderCheck
from fronts.rules.fits import FitFacts, Gaps, RecordedFit
from fronts.rules.lengths import Mm
from fronts.rules.order_facts import LineFacts
from fronts.rules.practice import inches
from fronts.rules.records import CheckFacts, RecordedCheck, Records
from fronts.selectors.fits import fit_records_of
from fronts.selectors.order_lists import items_known
from fronts.selectors.orders import order_lines
from fronts.selectors.records import records_of
from fronts.selectors.schedules import schedule_of
from fronts.services.fits import fit_record
from fronts.services.history import revision_undo
from fronts.services.imports import job_import
from fronts.services.openings import opening_delete
from fronts.services.orders import order_check
from fronts.services.receipts import fronts_receive
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.factories import HINGES, NOW, PersonFactory, ShopFactory, door_and_drawer, overlaid
from tests.history.rows_as_they_stand import state_of_shops
from tests.kitchen_files import small
from tests.ordering import line_checked
from tests.saying import cabinet_change

LATER = NOW + timedelta(hours=1)
FIT = RecordedFit("B1.a", NOW, "ines", FitFacts("B1.a", Gaps(left=inches(1, 8))))
CHECK = RecordedCheck(CheckFacts(HINGES, 2, "ordered"), NOW, "otto", "77-ab")


def taken_in(shop: Shop, *fits: RecordedFit, checks: tuple[RecordedCheck, ...] = (),
             **said: Any) -> Job:  # fmt: skip
    """The small kitchen with these records, as a job of the shop; in its place if it is there."""
    kitchen = read_job(json.dumps(small())).kitchen
    records = Records(fits, checks)
    return job_import(kitchen=kitchen, records=records, shop=shop, at=NOW, replace=True, **said)


def backed_up(job: Job) -> JobFile:
    """The job as its file states it."""
    return read_job(write(kitchen_of(job), records_of(job)))


def brought_back(file: JobFile, shop: Shop) -> Job:
    """The file as a job of the shop, in the place of the one that is there."""
    return job_import(kitchen=file.kitchen, records=file.records, shop=shop, at=LATER, replace=True)


@pytest.fixture
def worked_on(job: Job, installer: Person, office: Person) -> Job:
    """A job with a door that was fitted twice, a list that was begun, and two fronts that came."""
    overlaid(job)
    door_and_drawer(job)
    Front.objects.update(made_by="bought")
    front = Front.objects.get(opening__label="a")
    for minutes, gap in ((0, inches(1, 8)), (1, inches(1, 16))):
        fit_record(
            front=front, facts=FitFacts("B1.a", Gaps(left=gap), planned=Gaps(left=inches(1, 4))),
            hung="9c2", fingerprint="77-ab", by=installer, at=NOW + timedelta(minutes=minutes),
        )  # fmt: skip
    schedule = schedule_of(job)
    line_checked(job, HINGES, office)
    for line in schedule.bought:
        fronts_receive(
            job=job, schedule=schedule, line=line.front.short_name, count=1, by=office, at=NOW,
            note="by van",
        )  # fmt: skip
    return Job.objects.get(pk=job.pk)


def test_a_record_is_of_its_front_and_its_person(shop: Shop, installer: Person) -> None:
    """The person of that name in the shop, by the name that others read or sign-in name."""
    installer.first_name, installer.last_name = "Ines", "Ford"
    installer.save()
    job = taken_in(shop, FIT, replace(FIT, at=LATER, by="Ines Ford"))

    assert {row.fitted_by for row in FitRecord.objects.all()} == {installer}
    assert {row.front for row in FitRecord.objects.all()} == {Front.objects.get()}
    assert fit_records_of(job)["B1.a"].fitted_at == LATER
    assert {fit.by for fit in records_of(job).fits} == {"Ines Ford"}


def test_where_nobody_is_called_so_the_name_is_kept(
    shop: Shop, installer: Person, stranger: Person
) -> None:
    """A person of another shop is nobody here."""
    job = taken_in(shop, replace(FIT, by="boris"), checks=(replace(CHECK, by="Bo"),))

    assert [(row.fitted_by, row.by) for row in FitRecord.objects.all()] == [(None, "boris")]
    assert [(row.checked_by, row.by) for row in OrderCheck.objects.all()] == [(None, "Bo")]
    records = records_of(job)
    assert (records.fits[0].by, records.checks[0].by) == ("boris", "Bo")


def test_two_people_of_one_name_stay_apart(shop: Shop) -> None:
    """A file names them by what they sign in with."""
    first, second = (
        PersonFactory.create(shop=shop, installer=True, username=name, first_name="Kim")
        for name in ("kim1", "kim2")
    )
    job = taken_in(shop, replace(FIT, by="kim1"), replace(FIT, by="kim2"))

    assert [fit.by for fit in records_of(job).fits] == ["kim1", "kim2"]
    job = brought_back(backed_up(job), shop)
    assert [row.fitted_by for row in FitRecord.objects.order_by("pk")] == [first, second]


def test_a_backup_brought_back_elsewhere_is_the_same(worked_on: Job) -> None:
    """Names, times, figures, what was planned, what hung, and where the list was begun."""
    other = ShopFactory.create(name="Elm End")
    file = backed_up(worked_on)

    job = brought_back(file, other)

    assert backed_up(job) == file
    assert items_known(job) == items_known(worked_on)
    assert {row.by for row in FitRecord.objects.filter(job=job)} == {"ines"}
    assert not FitRecord.objects.filter(job=job, fitted_by__isnull=False).exists()
    assert FitRecord.objects.filter(job=worked_on).count() == 2


def test_a_backup_brought_back_over_its_job_doubles_nothing(worked_on: Job) -> None:
    """Rows stay the rows that they were, with their people and their fronts."""
    rows = FitRecord.objects.order_by("pk").values_list("pk", "fitted_by", "gap_left")
    before = list(rows)
    file = backed_up(worked_on)

    job = brought_back(file, worked_on.shop)

    assert list(rows.all()) == before
    assert OrderCheck.objects.count() == 1
    assert [row.front for row in FrontReceipt.objects.order_by("pk")] == list(
        Front.objects.order_by("opening__label")
    )
    assert backed_up(job) == file


def test_a_cabinet_that_was_renamed_since_keeps_its_records(worked_on: Job) -> None:
    """Under whichever name the file knows it; what it was called then is kept too."""
    older = backed_up(worked_on)
    cabinet_change(cabinet=Cabinet.objects.get(), label="Sink", at=NOW)
    newer = backed_up(worked_on)
    assert {(fit.front, fit.facts.label) for fit in newer.records.fits} == {("Sink.a", "B1.a")}

    for file, label in ((newer, "Sink.a"), (older, "B1.a"), (newer, "Sink.a")):
        job = brought_back(file, worked_on.shop)
        assert list(fit_records_of(job)) == [label]
        assert FitRecord.objects.count() == 2
        assert backed_up(job) == file


def test_a_record_that_the_file_does_not_hold_finds_its_front(worked_on: Job) -> None:
    """By what the front was called just before; where the file has no such front, by none."""
    file = replace(backed_up(worked_on), records=Records())
    job = brought_back(file, worked_on.shop)
    assert list(fit_records_of(job)) == ["B1.a"]

    bare = replace(file, kitchen=replace(file.kitchen, cabinets=()))
    job = brought_back(bare, worked_on.shop)
    assert fit_records_of(job) == {}
    assert FitRecord.objects.filter(job=job, front=None).count() == 2


def test_a_record_of_a_front_that_has_gone_is_not_anothers(worked_on: Job) -> None:
    """Not even of one that is called as it was."""
    opening_delete(opening=Opening.objects.get(label="a"), at=NOW)
    gone = backed_up(worked_on)
    assert [fit.gone for fit in gone.records.fits] == [True, True]
    again = replace(gone, kitchen=replace(gone.kitchen, cabinets=(
        replace(gone.kitchen.cabinets[0], openings=tuple(
            replace(one, label="a") for one in gone.kitchen.cabinets[0].openings)),
    )))  # fmt: skip

    job = brought_back(again, worked_on.shop)

    assert fit_records_of(job) == {}
    assert FitRecord.objects.filter(job=job, label="B1.a", front=None).count() == 2


def test_the_later_mark_of_an_item_holds(shop: Shop, office: Person) -> None:
    """Whether it stands in the file or in the job."""
    job = taken_in(shop, checks=(CHECK,))
    taken_in(shop, checks=(replace(CHECK, at=LATER, facts=CheckFacts(HINGES, 3)),))
    assert (OrderCheck.objects.get().need, OrderCheck.objects.get().checked_at) == (3, LATER)

    taken_in(shop, checks=(CHECK,))
    assert OrderCheck.objects.get().need == 3
    order_check(job=job, item=HINGES, facts=LineFacts(4), fingerprint="", by=office, at=LATER)
    assert OrderCheck.objects.get().checked_by == office


def test_what_stood_on_the_list_is_not_new(shop: Shop, office: Person) -> None:
    """What the file does not name is new since it was begun."""
    job = taken_in(shop, checks=(RecordedCheck(CheckFacts("knob")), CHECK))

    assert items_known(job) == frozenset({"knob", HINGES})
    line = next(one for one in order_lines(job, schedule_of(job)) if one.item == HINGES)
    assert (line.was, line.checked_by, line.note) == (2, "otto", "ordered")
    assert [check.facts.item for check in records_of(job).checks] == ["knob", HINGES]


def test_one_record_said_twice_is_one(shop: Shop) -> None:
    """Same front, time, person and values; another gap is another record."""
    taken_in(shop, FIT, FIT, replace(FIT, facts=replace(FIT.facts, gaps=Gaps(left=Mm(1)))))

    assert FitRecord.objects.count() == 2


def test_a_gap_that_cannot_be_kept_is_refused_by_its_record(shop: Shop) -> None:
    """A third of a millimetre; nothing of the file stays."""
    third = replace(FIT, facts=FitFacts("B1.a", Gaps(right_top=Mm(1, 3), right_bottom=Mm(1))))
    with pytest.raises(ValidationError) as refused:
        taken_in(shop, third)

    (message,) = refused.value.messages
    assert message.startswith("record of fit of B1.a, ")
    assert "gap_right_top: this length can't be kept exactly" in message
    assert not Job.objects.exists()


def test_what_is_planned_is_kept_however_it_was_reckoned(worked_on: Job, installer: Person) -> None:
    """A gap of a third of a millimetre is kept to the last decimal of a column."""
    front = Front.objects.get(opening__label="b")
    facts = FitFacts("B1.b", Gaps(left=Mm(1)), planned=Gaps(left=Mm(1, 3), top=inches(1, 128)))
    record = fit_record(front=front, facts=facts, hung="", fingerprint="", by=installer, at=NOW)

    kept = FitRecord.objects.get(pk=record.pk)
    assert (kept.planned_left, kept.planned_top) == (Mm(33333333, 10**8), inches(1, 128))


def test_an_import_with_its_records_is_taken_back_whole(worked_on: Job, owner: Person) -> None:
    """One revision: kitchen and records are as they were, to the row."""
    before, file = state_of_shops(), backed_up(worked_on)
    fits = (*file.records.fits, replace(FIT, at=LATER))
    brought_back(replace(file, records=Records(fits, (replace(CHECK, at=LATER),))), worked_on.shop)
    assert (FitRecord.objects.count(), OrderCheck.objects.get().checked_at) == (3, LATER)

    revision = Revision.objects.filter(job=worked_on).order_by("-pk")[0]
    revision_undo(revision=revision, at=LATER, by=owner)

    assert state_of_shops() == before
    assert backed_up(worked_on) == file


def test_of_two_receipts_of_a_front_the_later_holds(worked_on: Job) -> None:
    """As where somebody checks it off again; an older one changes nothing."""
    file = backed_up(worked_on)
    first = file.records.receipts[0]
    for minutes, note in ((-1, "older"), (1, "later")):
        said = replace(
            first, at=NOW + timedelta(minutes=minutes), facts=replace(first.facts, note=note)
        )
        records = replace(file.records, receipts=(said,))
        brought_back(replace(file, records=records), worked_on.shop)

    notes = FrontReceipt.objects.order_by("label").values_list("label", "note")
    assert list(notes) == [("B1.a", "later"), ("B1.b", "by van")]
