"""Records of people who are not in the shop come through on the way back, with their names."""

from typing import Any

import pytest

from fronts.rules.practice import inches
from tests.factories import NOW, JobFactory, PersonFactory
from tests.models.steps import migrated, newest

pytestmark = pytest.mark.thorough

BEFORE = ("fronts", "0008_sheet_sets")


def test_names_and_gaps_at_two_ends_go_back_and_come_again(now: Any) -> None:
    """The owner stands in for who is not there, and the note says who it was."""
    job, empty = JobFactory.create(), JobFactory.create()
    owner = PersonFactory.create(shop=job.shop, owner=True)
    fitter = PersonFactory.create(shop=job.shop, installer=True)
    fits, checks = now("fronts", "FitRecord").objects, now("fronts", "OrderCheck").objects
    for number, by in (
        (job, {"fitted_by_name": "Kim", "note": "snug"}),
        (job, {"fitted_by_id": fitter.pk}),
        (empty, {"fitted_by_name": "Kim"}),
    ):
        fits.create(
            job_id=number.pk, label="B1.a", fitted_at=NOW, gap_left=inches(1, 8),
            gap_right_top=inches(1, 8), gap_right_bottom=inches(1, 4), **by,
        )  # fmt: skip
    checks.create(
        job_id=job.pk, item="hinge", need=2, checked_at=NOW, checked_by_name="Bo", note=""
    )

    before = migrated(BEFORE)

    assert [
        (fit.job_id, fit.fitted_by_id, fit.note, fit.gap_left, fit.gap_right)
        for fit in before("fronts", "FitRecord").objects.order_by("pk")
    ] == [
        (job.pk, owner.pk, "Kim: snug", inches(1, 8), inches(3, 16)),
        (job.pk, fitter.pk, "", inches(1, 8), inches(3, 16)),
    ]
    check = before("fronts", "OrderCheck").objects.get()
    assert (check.checked_by_id, check.note) == (owner.pk, "Bo")

    again = newest()("fronts", "FitRecord").objects.order_by("pk")
    assert [(fit.fitted_by_id, fit.state) for fit in again] == [
        (owner.pk, "done"), (fitter.pk, "done"),
    ]  # fmt: skip


def test_a_note_by_itself_no_longer_counts_as_done(now: Any) -> None:
    """It said nothing of how the front stood; a gap beside it did."""
    job = JobFactory.create()
    before = migrated(("fronts", "0019_wall_photos"))("fronts", "FitRecord").objects
    said = {"job_id": job.pk, "label": "B1.a", "fitted_at": NOW, "note": "NOT HUNG: split"}
    before.create(**said)
    before.create(**said, gap_right_top=inches(1, 8), gap_right_bottom=inches(1, 8))

    after = newest()("fronts", "FitRecord").objects.order_by("pk")

    assert [record.state for record in after] == ["noted", "done"]
