"""What people put their names to: order lines and fits."""

from datetime import timedelta

import pytest
from django.core.exceptions import ValidationError

from fronts.models import FitRecord, Front, FrontCut, Opening, OrderCheck, WorkTick
from fronts.rules.fits import FitFacts, Gaps, hung_as
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.selectors.fits import fit_records_of
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.orders import OrderLine, order_lines
from fronts.selectors.schedules import schedule_for, schedule_of
from fronts.services.boxes import box_remove
from fronts.services.fits import fit_record
from fronts.services.front_cuts import fronts_mark_cut
from fronts.services.imports import job_import
from fronts.services.openings import opening_delete
from fronts.services.orders import order_check, order_uncheck
from fronts.services.work_ticks import step_tick
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.factories import (
    HINGES,
    NOW,
    CabinetFactory,
    OpeningFactory,
    door_and_drawer,
    overlaid,
)
from tests.saying import front_of, opening_change


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A job with one drawer, and one door with its hinges."""
    overlaid(job)
    door_and_drawer(job)
    return job


def lines_of(job: Job) -> dict[str, OrderLine]:
    """The job's order lines by item."""
    return {line.item: line for line in order_lines(job, schedule_of(job))}


def check(job: Job, item: str, by: Person) -> OrderCheck:
    """Check a line as the schedule has it."""
    facts = lines_of(job)[item].facts
    return order_check(job=job, item=item, facts=facts, fingerprint="old", by=by, at=NOW)


def test_nothing_is_checked_at_first(kitchen_job: Job) -> None:
    """Each line says what is needed, why, and for which fronts."""
    line = lines_of(kitchen_job)[HINGES]

    assert (line.need, line.fronts, line.is_checked, line.is_changed) == (
        2,
        ("B1.a",),
        False,
        False,
    )
    assert line.why


def test_a_checked_line_has_a_name_and_a_time(kitchen_job: Job, office: Person) -> None:
    """And the need as it was."""
    check(kitchen_job, HINGES, office)
    line = lines_of(kitchen_job)[HINGES]

    assert (line.checked_by, line.checked_at) == (office.shown_name, NOW)
    assert (line.was, line.is_changed) == (2, False)
    assert line.kitchen_changed


def test_a_line_shows_that_its_need_changed_since(kitchen_job: Job, office: Person) -> None:
    """With what it was when it was checked."""
    check(kitchen_job, HINGES, office)
    cabinet = CabinetFactory.create(job=kitchen_job, label="B2", x=inches(18))
    OpeningFactory.create(cabinet=cabinet, height=inches(19))
    line = lines_of(kitchen_job)[HINGES]

    assert (line.was, line.need, line.is_changed) == (2, 4, True)


def test_a_line_that_fell_away_is_still_told(kitchen_job: Job, office: Person) -> None:
    """Somebody may have ordered it."""
    slides = next(item for item in lines_of(kitchen_job) if item.startswith("side slides"))
    check(kitchen_job, slides, office)
    box_remove(front=Front.objects.get(opening__label="b"), at=NOW)
    line = lines_of(kitchen_job)[slides]

    assert (line.need, line.was, line.fronts) == (0, 1, ())


def test_checking_again_replaces_the_mark(kitchen_job: Job, office: Person, owner: Person) -> None:
    """One mark an item, the last one counts."""
    check(kitchen_job, HINGES, office)
    check(kitchen_job, HINGES, owner)

    assert OrderCheck.objects.get().checked_by == owner


def test_a_mark_is_taken_back(kitchen_job: Job, office: Person) -> None:
    """Twice is once."""
    check(kitchen_job, HINGES, office)
    for _ in range(2):
        order_uncheck(job=kitchen_job, item=HINGES, by=office, at=NOW)

    assert not lines_of(kitchen_job)[HINGES].is_checked


@pytest.fixture
def hung(job: Job) -> Front:
    """A door that can be fitted."""
    return front_of(OpeningFactory.create(cabinet__job=job))


def record(front: Front, by: Person, **gaps: Mm) -> FitRecord:
    """Record these gaps round the front."""
    facts = FitFacts("B1.a", Gaps(**gaps))
    return fit_record(front=front, facts=facts, hung="", fingerprint="x", by=by, at=NOW)


def test_a_record_says_of_which_front_it_is_and_what_hung_there(
    kitchen_job: Job, installer: Person
) -> None:
    """The front's row, its name then, and a short name of what it was."""
    front = Front.objects.get(opening__label="a")
    hung = next(each for each in schedule_of(kitchen_job).fronts if each.label == "B1.a")
    fit_record(
        front=front, facts=FitFacts("B1.a", Gaps(top=inches(1, 8))), hung=hung_as(hung),
        fingerprint="x", by=installer, at=NOW,
    )  # fmt: skip
    kept = FitRecord.objects.get()

    assert (kept.job, kept.front, kept.label) == (kitchen_job, front, "B1.a")
    assert (kept.gap_top, kept.gap_left, kept.hung) == (inches(1, 8), None, hung_as(hung))
    assert (kept.fitted_by, kept.fitted_at) == (installer, NOW)


def test_the_last_record_of_a_front_counts(hung: Front, job: Job, installer: Person) -> None:
    """The earlier ones stay."""
    for hours, gap in ((1, inches(1, 8)), (0, inches(1, 16))):
        fit_record(
            front=hung, facts=FitFacts("B1.a", Gaps(left=gap)), hung="",
            fingerprint="x", by=installer, at=NOW + timedelta(hours=hours),
        )  # fmt: skip

    assert fit_records_of(job)["B1.a"].gap_left == inches(1, 8)
    assert FitRecord.objects.count() == 2


def test_a_record_goes_with_its_front_whatever_that_is_called(
    hung: Front, job: Job, installer: Person
) -> None:
    """Another label, and a stack that grows: the front that was fitted keeps its record."""
    record(hung, installer, left=inches(1, 8))
    opening_change(opening=hung.opening, label="z", closed_by="drawers", count=2, at=NOW)

    assert list(fit_records_of(job)) == ["B1.z.1"]
    assert FitRecord.objects.get().label == "B1.a"


def test_a_record_outlives_its_front(hung: Front, job: Job, installer: Person) -> None:
    """It no longer counts for any front of the job, but stays."""
    record(hung, installer, left=inches(1, 8))
    opening_delete(opening=Opening.objects.get(), at=NOW)

    assert fit_records_of(job) == {}
    assert FitRecord.objects.get().front is None


def test_a_gap_that_is_no_size_is_refused_at_its_field(hung: Front, installer: Person) -> None:
    """A gap is not negative."""
    with pytest.raises(ValidationError) as refused:
        record(hung, installer, top=inches(-1))

    assert set(refused.value.message_dict) == {"gap_top"}


def test_cuts_and_ticks_stay_with_fronts_that_a_file_replaces(
    hung: Front, installer: Person
) -> None:
    """By what the fronts are called; nothing computed takes what was frozen away."""
    job = hung.opening.cabinet.job
    overlaid(job)
    kitchen = placed_kitchen_of(job)
    worked_out = schedule_for(job, kitchen)
    (front,) = worked_out.fronts
    fronts_mark_cut(
        job=job, kitchen=kitchen, schedule=worked_out, seen={front.label: hung_as(front)},
        by=installer, at=NOW,
    )  # fmt: skip
    step_tick(front=hung, step="Box in.", by=installer, at=NOW)

    job_import(kitchen=kitchen_of(job), shop=job.shop, at=NOW, by=installer, replace=True)

    cut, tick = FrontCut.objects.get(), WorkTick.objects.get()
    assert cut.front_id == tick.front_id != hung.pk
    assert (cut.width, tick.step) == (front.width, "Box in.")
