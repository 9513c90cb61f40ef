"""A kitchen with a door and a drawer, an installer's phone, and the office's desk."""

import json
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from PIL import Image

from fronts.models import Cabinet, Front, Snag
from fronts.rules.snags import SnagFacts
from fronts.services.snags import snag_raise
from shopjobs.models import Job, Person
from tests.factories import NOW, door_and_drawer, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]


@pytest.fixture(autouse=True)
def _uploads(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = str(tmp_path)


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """B1: a door, and a drawer above it."""
    overlaid(job)
    return door_and_drawer(job)


@pytest.fixture
def door(cabinet: Cabinet) -> Front:
    """B1.a."""
    return Front.objects.select_related("opening__cabinet").get(opening__label="a")


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer on site."""
    return signed_in(installer)


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner."""
    return signed_in(owner)


@pytest.fixture
def snag(job: Job, door: Front, installer: Person) -> Snag:
    """A scratch on the door, which the installer wrote down."""
    return snag_raise(
        job=job, facts=SnagFacts("front", "scratched", "B1.a"), front=door,
        cabinet=door.opening.cabinet, by=installer, at=NOW,
    )  # fmt: skip


def a_photo() -> bytes:
    """A small picture as a camera makes it."""
    file = BytesIO()
    Image.new("RGB", (40, 20), "white").save(file, "JPEG")
    return file.getvalue()


def write(client: Client, job: Job, on: str, words: str = "scratched", **more: Any) -> Any:
    """Write a snag down, as the phone sends it."""
    said = {"on": on, "words": words, **more}
    return client.post(f"/jobs/{job.pk}/snags/", said, headers=HTMX)


def jpeg(name: str = "a.jpg") -> SimpleUploadedFile:
    return SimpleUploadedFile(name, a_photo(), "image/jpeg")


UNSETTLED = json.dumps({"done_note": ""})
"""What the form of an open snag was shown with."""
