"""What a service writes of a row: what was changed, and nothing that somebody else changed."""

import pytest
from django.core.exceptions import ValidationError
from django.db import transaction
from django.utils import timezone

from fronts.models import Cabinet
from fronts.rules.practice import inches
from shopjobs.models import Job
from tests.factories import CabinetFactory
from tests.saying import cabinet_change

NOW = timezone.now()


def kept(cabinet: Cabinet) -> Cabinet:
    """The cabinet as the database has it."""
    return Cabinet.objects.get(pk=cabinet.pk)


def test_only_what_was_changed_is_written(job: Job) -> None:
    """What another saved meanwhile in other columns stays."""
    cabinet = kept(CabinetFactory.create(job=job, depth=inches(24)))
    Cabinet.objects.filter(pk=cabinet.pk).update(depth=inches(12))

    cabinet_change(cabinet=cabinet, at=NOW, width=inches(20))

    assert (kept(cabinet).width, kept(cabinet).depth) == (inches(20), inches(12))


def test_what_is_changed_back_is_written(job: Job) -> None:
    """A row that is changed twice ends as it was."""
    cabinet = kept(CabinetFactory.create(job=job, depth=inches(24)))

    cabinet_change(cabinet=cabinet, at=NOW, depth=inches(12))
    cabinet_change(cabinet=cabinet, at=NOW, depth=inches(24))

    assert kept(cabinet).depth == inches(24)


def test_what_was_undone_is_written_again(job: Job) -> None:
    """A change that was taken back with its transaction can be made once more."""
    cabinet = kept(CabinetFactory.create(job=job, depth=inches(24)))
    with transaction.atomic():
        cabinet_change(cabinet=cabinet, at=NOW, depth=inches(12))
        transaction.set_rollback(True)
    assert kept(cabinet).depth == inches(24)

    cabinet_change(cabinet=cabinet, at=NOW, depth=inches(12))

    assert kept(cabinet).depth == inches(12)


def test_what_was_read_again_counts_as_changed(job: Job) -> None:
    """A row that was read once more takes its first value back."""
    cabinet = kept(CabinetFactory.create(job=job, depth=inches(24)))
    cabinet_change(cabinet=cabinet, at=NOW, width=inches(20))
    Cabinet.objects.filter(pk=cabinet.pk).update(depth=inches(12))
    cabinet.refresh_from_db()

    cabinet_change(cabinet=cabinet, at=NOW, depth=inches(24))

    assert kept(cabinet).depth == inches(24)


def test_a_refused_label_leaves_the_service_undone(job: Job) -> None:
    """Nothing of it is kept, and the transaction around it goes on."""
    CabinetFactory.create(job=job, label="B1")
    cabinet = kept(CabinetFactory.create(job=job, label="B2", depth=inches(24)))

    with pytest.raises(ValidationError, match="already a cabinet B1"):
        cabinet_change(cabinet=cabinet, at=NOW, label="B1", depth=inches(12))

    assert (kept(cabinet).label, kept(cabinet).depth) == ("B2", inches(24))
