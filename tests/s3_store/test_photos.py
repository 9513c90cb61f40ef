"""Photos in a bucket: kept, shown to their shop alone, deleted, moved; a store that is away."""

from collections.abc import Callable
from datetime import timedelta
from io import BytesIO
from typing import Any

import pytest
from django.core.exceptions import ImproperlyConfigured
from django.core.files.base import ContentFile
from django.core.files.storage import default_storage
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from PIL import Image

from fronts.models import WallPhoto
from shopjobs.environment import read_environment
from shopjobs.models import Job, Person
from shopjobs.services.jobs import job_delete
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.importing import shop_import
from shopjobs.uploads import uploads_folder, uploads_storage
from tests.factories import NOW, JobFactory
from tests.pages.kitchens import HTMX
from tests.pages.on_site.test_photos import taken
from tests.s3_store.store import BUCKET, Store

SignIn = Callable[[Person], Client]
NOBODY_THERE = "http://127.0.0.1:9"
"""The port of RFC 863, at which nothing answers here."""


def keep_in(settings: Any, monkeypatch: pytest.MonkeyPatch, store: Store, place: str) -> None:
    """Let the site keep its photos there, told by its environment alone."""
    for name, value in store.environ.items():
        monkeypatch.setenv(name, value)
    told = {"SHOPJOBS_UPLOADS": place, "SHOPJOBS_SECRET_KEY": "k" * 60, **store.environ}
    environment = read_environment(told, root=settings.BASE_DIR)
    settings.MEDIA_ROOT = uploads_folder(environment)
    settings.STORAGES = {**settings.STORAGES, "default": uploads_storage(environment)}


@pytest.fixture
def bucket(settings: Any, monkeypatch: pytest.MonkeyPatch, store: Store) -> Store:
    """The site keeps its photos in a folder of the bucket."""
    keep_in(settings, monkeypatch, store, f"s3://{BUCKET}/kitchens")
    return store


def send(phone: Client, job: Job) -> Any:
    """Send a photo of wall North."""
    image = SimpleUploadedFile("IMG_1.jpg", taken(), "image/jpeg")
    return phone.post(f"/jobs/{job.pk}/photos/", {"wall": "North", "image": image}, headers=HTMX)


def test_a_photo_is_kept_and_read_back_through_the_site(
    bucket: Store, job: Job, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """By its shop alone; what lies in the bucket has no link, and is nobody's without a key."""
    phone = signed_in(installer)
    assert send(phone, job).status_code == 200
    photo = WallPhoto.objects.get()
    assert bucket.names() == [f"kitchens/{photo.image.name}"]
    address = f"/jobs/{job.pk}/photos/{photo.pk}/"
    answer = phone.get(address)
    assert Image.open(BytesIO(answer.content)).size == (40, 20)
    assert "no-store" in answer.headers["Cache-Control"]
    assert signed_in(stranger).get(address).status_code == 404
    assert Client().get(address).status_code == 302

    page = phone.get(f"/jobs/{job.pk}/measuring/").text
    assert bucket.address not in page
    assert BUCKET not in page
    with pytest.raises(ValueError, match="not accessible by a link"):
        _ = photo.image.url
    grants = bucket.client().get_object_acl(Bucket=BUCKET, Key=bucket.names()[0])["Grants"]
    assert [one["Permission"] for one in grants] == ["FULL_CONTROL"]


def test_a_name_is_never_given_twice(bucket: Store) -> None:
    """What is there is not written over."""
    first = default_storage.save("a/b.jpg", ContentFile(b"first"))
    second = default_storage.save("a/b.jpg", ContentFile(b"second"))
    assert first != second
    with default_storage.open(first) as file:
        assert file.read() == b"first"


def test_a_photo_that_is_gone_from_the_bucket(
    bucket: Store, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """It is not found, and the page stands."""
    phone = signed_in(installer)
    send(phone, job)
    photo = WallPhoto.objects.get()
    bucket.empty_bucket()
    assert phone.get(f"/jobs/{job.pk}/photos/{photo.pk}/").status_code == 404
    assert phone.get(f"/jobs/{job.pk}/measuring/").status_code == 200


@pytest.mark.django_db(transaction=True)
def test_photos_go_with_a_job_that_is_gone_for_good(
    bucket: Store, job: Job, owner: Person, signed_in: SignIn
) -> None:
    """As they do from a folder."""
    send(signed_in(owner), job)
    assert len(bucket.names()) == 1
    job_delete(job=job, by=owner, at=NOW)
    assert len(bucket.names()) == 1
    later = NOW + timedelta(days=Job.DAYS_KEPT + 1)
    job_delete(job=JobFactory.create(shop=job.shop, number="K-9"), by=owner, at=later)
    assert bucket.names() == []


def test_a_shop_moves_with_its_photos(
    bucket: Store, settings: Any, job: Job, owner: Person, signed_in: SignIn, tmp_path: Any
) -> None:
    """Out of a bucket into a folder, and back: the same under the same name."""
    send(signed_in(owner), job)
    photo = WallPhoto.objects.get()
    to = BytesIO()
    shop_export(shop=job.shop, to=to)
    with photo.image.open() as file:
        content = file.read()

    in_bucket = settings.STORAGES
    settings.MEDIA_ROOT = str(tmp_path)
    settings.STORAGES = {
        **in_bucket,
        "default": {"BACKEND": "django.core.files.storage.FileSystemStorage"},
    }
    shop_import(file=BytesIO(to.getvalue()), name="Cedar Yard", with_people=False)
    assert (tmp_path / photo.image.name).read_bytes() == content

    settings.STORAGES, settings.MEDIA_ROOT = in_bucket, ""
    bucket.empty_bucket()
    arrival = shop_import(file=BytesIO(to.getvalue()), name="Dogwood Lane", with_people=False)
    moved = WallPhoto.objects.get(job__shop=arrival.shop)
    with moved.image.open() as file:
        assert file.read() == content


def test_a_store_that_is_away_is_told(
    settings: Any, monkeypatch: pytest.MonkeyPatch, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Not now, in words; nothing is kept of it, and the phone sends it again later."""
    keep_in(settings, monkeypatch, Store(address=NOBODY_THERE), f"s3://{BUCKET}")
    phone = signed_in(installer)
    answer = send(phone, job)
    assert answer.status_code == 503
    assert "doesn’t answer" in answer.text
    assert not WallPhoto.objects.exists()
    ready = Client().get("/readyz")
    assert (ready.status_code, ready.json()["photos"]) == (503, "failed")


def test_a_store_that_answers_is_ready(bucket: Store, db: None) -> None:
    """As the site is."""
    assert Client().get("/readyz").json()["photos"] == "ok"


@pytest.mark.parametrize("place", ["s3://", "s3:///x", "s3://a?b", "s3://a#b", "s3://me:pw@a"])
def test_a_place_that_is_none_is_refused(place: str, settings: Any) -> None:
    """When the site starts, in words."""
    told = {"SHOPJOBS_UPLOADS": place, "SHOPJOBS_SECRET_KEY": "k" * 60}
    environment = read_environment(told, root=settings.BASE_DIR)
    with pytest.raises(ImproperlyConfigured, match="give s3://BUCKET"):
        uploads_storage(environment)


def test_where_the_bucket_is_decides_how_it_is_asked(settings: Any) -> None:
    """By its name at the first store of this kind, by a path elsewhere."""
    told = {"SHOPJOBS_UPLOADS": "s3://a/b/c", "SHOPJOBS_SECRET_KEY": "k" * 60}
    there = {"AWS_ENDPOINT_URL_S3": "https://store.example"}
    options = {"bucket_name": "a", "location": "b/c"}
    for more, style in (({}, {}), (there, {"addressing_style": "path"})):
        environment = read_environment(told | more, root=settings.BASE_DIR)
        assert uploads_storage(environment)["OPTIONS"] == options | style
        assert uploads_folder(environment) == ""
