"""Files of photos: put while nobody waits for them, and gone where nothing came of them."""

import errno
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import IO, Any, ClassVar

import pytest
from django.core.files.storage import FileSystemStorage
from django.core.files.uploadedfile import SimpleUploadedFile
from django.db import connection
from django.test import Client

from fronts.models import Snag, SnagPhoto, WallPhoto
from fronts.rules.limits import MOST_PHOTOS
from shopjobs.models import Job, Person
from shopjobs.services.jobs import job_delete
from tests.factories import NOW
from tests.pages.kitchens import HTMX
from tests.pages.on_site.test_photos import taken

SignIn = Callable[[Person], Client]


class SlowStore(FileSystemStorage):
    """A store that takes its time; `meanwhile` is what others do while it does."""

    meanwhile: ClassVar[Callable[[], None]]

    def save(self, name: str | None, content: IO[Any], max_length: int | None = None) -> str:
        """Keep a file, late."""
        type(self).meanwhile()
        return super().save(name, content, max_length)


@pytest.fixture(autouse=True)
def store(settings: Any, tmp_path: Path) -> Iterator[type[SlowStore]]:
    """The site keeps its photos in such a store, in which nothing happens meanwhile."""
    settings.MEDIA_ROOT = str(tmp_path)
    path = f"{SlowStore.__module__}.{SlowStore.__name__}"
    settings.STORAGES = {**settings.STORAGES, "default": {"BACKEND": path}}
    SlowStore.meanwhile = lambda: None
    yield SlowStore
    del SlowStore.meanwhile


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer on site."""
    return signed_in(installer)


def image() -> SimpleUploadedFile:
    """A photo as a camera makes it."""
    return SimpleUploadedFile("IMG_1.jpg", taken(), "image/jpeg")


def of_wall(phone: Client, job: Job, **more: str) -> Any:
    """Send a photo of wall North."""
    said = {"wall": "North", "image": image(), **more}
    return phone.post(f"/jobs/{job.pk}/photos/", said, headers=HTMX)


def of_snag(phone: Client, job: Job, photos: int = 1) -> Any:
    """Write a snag down, with photos."""
    said = {"on": "job", "words": "scratched", "image": [image() for _ in range(photos)]}
    return phone.post(f"/jobs/{job.pk}/snags/", said, headers=HTMX)


def more_of_snag(phone: Client, job: Job) -> Any:
    """Add a photo to the snag that there is."""
    snag = Snag.objects.get(words="loose")
    said = {"image": image()}
    return phone.post(f"/jobs/{job.pk}/snags/{snag.pk}/photos/", said, headers=HTMX)


def files(tmp_path: Path) -> list[Path]:
    """All that lies in the store."""
    return [file for file in tmp_path.rglob("*") if file.is_file()]


@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize("send", [of_wall, of_snag, more_of_snag])
def test_others_work_on_the_job_while_a_photo_is_put(
    send: Callable[..., Any],
    job: Job,
    phone: Client,
    owner: Person,
    signed_in: SignIn,
    store: type[SlowStore],
    tmp_path: Path,
) -> None:
    """No transaction is open as long, so that nobody waits for it."""
    desk = signed_in(owner)
    desk.post(f"/jobs/{job.pk}/snags/", {"on": "job", "words": "loose"}, headers=HTMX)
    seen: list[bool] = []

    def meanwhile() -> None:
        seen.append(connection.in_atomic_block)
        said = {"on": "job", "words": "paint on the floor"}
        seen.append(desk.post(f"/jobs/{job.pk}/snags/", said, headers=HTMX).status_code != 200)

    store.meanwhile = meanwhile
    assert send(phone, job).status_code == 200

    assert seen == [False, False]
    (name,) = [
        str(photo.image.name) for table in (WallPhoto, SnagPhoto) for photo in table.objects.all()
    ]
    assert files(tmp_path) == [tmp_path / name]
    assert Snag.objects.filter(words="paint on the floor").exists()


@pytest.mark.parametrize("send", [of_wall, of_snag])
def test_a_photo_of_a_job_that_goes_meanwhile_leaves_nothing(
    send: Callable[..., Any],
    job: Job,
    phone: Client,
    owner: Person,
    store: type[SlowStore],
    tmp_path: Path,
) -> None:
    """There is no such job any more."""
    store.meanwhile = lambda: job_delete(job=Job.objects.get(pk=job.pk), by=owner, at=NOW)

    assert send(phone, job).status_code == 404

    assert files(tmp_path) == []


def test_a_photo_too_many_leaves_nothing(job: Job, phone: Client, tmp_path: Path) -> None:
    """It is refused at its field."""
    WallPhoto.objects.bulk_create(
        WallPhoto(job=job, wall="North", image=f"a/{key}.jpg", taken_at=NOW)
        for key in range(MOST_PHOTOS)
    )

    answer = of_wall(phone, job)

    assert (answer.status_code, str(MOST_PHOTOS) in answer.text) == (422, True)
    assert files(tmp_path) == []


def test_a_store_that_fails_on_the_way_keeps_nothing(
    job: Job, phone: Client, store: type[SlowStore], tmp_path: Path
) -> None:
    """Neither the first of two photos nor the snag: the phone sends both again."""
    there: list[int] = []

    def meanwhile() -> None:
        there.append(len(files(tmp_path)))
        if len(there) == 2:
            raise OSError(errno.EHOSTUNREACH, "away")

    store.meanwhile = meanwhile
    assert of_snag(phone, job, 2).status_code == 503

    assert (there, files(tmp_path), Snag.objects.exists()) == ([0, 1], [], False)


def test_what_is_sent_twice_lies_there_once(job: Job, phone: Client, tmp_path: Path) -> None:
    """The answer to the first got lost."""
    for _ in range(2):
        assert of_wall(phone, job, form_key="k").status_code == 200

    assert files(tmp_path) == [tmp_path / str(WallPhoto.objects.get().image.name)]
