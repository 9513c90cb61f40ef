"""Uploaded files that nothing names: only they go, and only what was put here."""

from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from django.core.files.storage import FileSystemStorage
from django.test import Client
from django.utils import timezone

from fronts.models import WallPhoto
from fronts.services.photos import photo_add, photo_delete
from shopjobs.models import FilePut, Job, Person, Revision
from shopjobs.services.jobs import job_delete
from shopjobs.services.unnamed_files import files_tidy
from tests.factories import NOW, JobFactory
from tests.pictures import picture_put

SignIn = Callable[[Person], Client]


@pytest.fixture(autouse=True)
def folder(settings: Any, tmp_path: Path) -> Path:
    """Where uploaded files lie."""
    settings.MEDIA_ROOT = str(tmp_path)
    return tmp_path


def photo(job: Job) -> WallPhoto:
    """A photo, the file of which nobody has settled yet."""
    return photo_add(job=job, wall="North", image=picture_put(job=job, picture=b"a photo"), at=NOW)


def file_of(taken: WallPhoto, folder: Path) -> Path:
    """Where a photo lies."""
    return folder / str(taken.image.name)


def tomorrow() -> datetime:
    """When no row can come any more of what is put now."""
    return timezone.now() + timedelta(hours=25)


def test_only_what_nothing_names_goes(job: Job, owner: Person, folder: Path) -> None:
    """What a row names stays, what history can bring back, and what was put by others."""
    taken, deleted = photo(job), photo(job)
    kept = [file_of(taken, folder), file_of(deleted, folder)]
    photo_delete(photo=deleted, by=owner, at=NOW)
    kept.append(kept[0].with_name(f"{'a' * 24}.jpg"))
    kept[-1].write_bytes(b"another installation's")
    lost = folder / picture_put(job=job, picture=b"lost")

    files_tidy(at=timezone.now() + timedelta(hours=23))
    assert lost.exists()  # Its row may still be to come.
    files_tidy(at=tomorrow())

    assert all(file.exists() for file in kept)
    assert not lost.exists()
    assert not FilePut.objects.exists()


def test_a_deleted_photo_comes_back_with_its_file(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """However often was tidied up meanwhile."""
    taken = photo(job)
    key = taken.pk
    photo_delete(photo=taken, by=owner, at=NOW)
    files_tidy(at=timezone.now() + timedelta(days=90))
    desk = signed_in(owner)

    desk.post(f"/jobs/{job.pk}/undo/", {"revision": Revision.objects.latest("pk").pk})

    assert desk.get(f"/jobs/{job.pk}/photos/{key}/").content == b"a photo"


@pytest.mark.django_db(transaction=True)
def test_files_go_with_their_job_wherever_they_lie(job: Job, owner: Person, folder: Path) -> None:
    """A shop that came from elsewhere keeps the names of its photos, in another job's folder."""
    other = JobFactory.create(shop=job.shop, number="K-8")
    own = photo(job)
    elsewhere, lent = (picture_put(job=of, picture=b"a") for of in (other, job))
    photo_add(job=job, wall="North", image=elsewhere, at=NOW)
    photo_add(job=other, wall="North", image=lent, at=NOW)
    job_delete(job=job, by=owner, at=NOW)

    later = NOW + timedelta(days=Job.DAYS_KEPT + 1)
    job_delete(job=JobFactory.create(shop=job.shop, number="K-9"), by=owner, at=later)

    assert not file_of(own, folder).exists()
    assert not (folder / elsewhere).exists()
    assert (folder / lent).exists()


class AwayStore(FileSystemStorage):
    """A store that lists what it has, and can't remove anything now."""

    def delete(self, name: str) -> None:
        raise OSError(f"{name} is held")


def test_a_store_that_will_not_now_is_asked_again(settings: Any, job: Job, folder: Path) -> None:
    """Nothing fails for it."""
    lost = folder / picture_put(job=job, picture=b"lost")
    was = settings.STORAGES
    path = f"{AwayStore.__module__}.{AwayStore.__name__}"
    settings.STORAGES = {**was, "default": {"BACKEND": path}}
    files_tidy(at=tomorrow())
    assert lost.exists()

    settings.STORAGES = was
    files_tidy(at=tomorrow())
    assert not lost.exists()
