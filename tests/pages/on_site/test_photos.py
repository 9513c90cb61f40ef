"""Photos of the walls: small and plain, of one job, and back with Undo."""

from collections.abc import Callable
from contextlib import suppress
from datetime import timedelta
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from django.core.exceptions import ValidationError
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from django.utils import timezone
from PIL import Image
from PIL.ExifTags import GPS, IFD, Base

from fronts.models import WallPhoto
from fronts.pages.shared.pictures import LONGEST_SIDE, small_picture
from shopjobs.models import Job, Person, Revision
from shopjobs.services.jobs import job_delete
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, JobFactory, OpeningFactory
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]


@pytest.fixture(autouse=True)
def _uploads(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = str(tmp_path)


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer on site."""
    return signed_in(installer)


def taken(size: tuple[int, int] = (40, 20), kind: str = "JPEG", *, turn: int = 1) -> bytes:
    """A photo with where and with what it was taken; `turn` is how the phone was held."""
    picture = Image.new("RGB", size, "white")
    picture.putpixel((0, 0), (255, 0, 0))
    exif = Image.Exif()
    exif[Base.Orientation] = turn
    exif[Base.Make] = "A phone"
    exif.get_ifd(IFD.GPSInfo)[GPS.GPSLatitude] = (52.0, 30.0, 0.0)
    file = BytesIO()
    picture.save(file, kind, exif=exif)
    return file.getvalue()


def send(phone: Client, job: Job, content: bytes, **more: str) -> Any:
    """Send a photo of wall North."""
    image = SimpleUploadedFile("IMG_1.jpg", content, "image/jpeg")
    return phone.post(
        f"/jobs/{job.pk}/photos/", {"wall": "North", "image": image, **more}, headers=HTMX
    )


def test_a_photo_says_nothing_but_what_is_seen() -> None:
    """Neither place nor camera; upright, however the phone was held (Exif 2.32, orientation 6)."""
    small = Image.open(BytesIO(small_picture(BytesIO(taken((400, 200), turn=6)))))

    assert small.size == (200, 400)
    assert not small.getexif()
    assert b"A phone" not in small_picture(BytesIO(taken()))


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_a_photo_is_made_small(kind: str) -> None:
    """As long as it has to be to read a tape on it."""
    small = Image.open(BytesIO(small_picture(BytesIO(taken((4000, 3000), kind)))))
    assert (small.format, small.size) == ("JPEG", (LONGEST_SIDE, 1200))


@pytest.mark.parametrize(
    "content", [b"", b"GIF89a", b"\xff\xd8\xff\xe0", taken()[:200], b"<svg/>", b"\x00" * 5000],
    ids=["nothing", "a gif", "a beginning", "torn", "a drawing", "zeros"],
)  # fmt: skip
def test_what_is_no_photo_is_refused(content: bytes) -> None:
    """In words."""
    with pytest.raises(ValidationError, match="no photo that can be read"):
        small_picture(BytesIO(content))


def test_a_picture_that_would_fill_the_memory_is_refused() -> None:
    """A few bytes can claim any size."""
    file = BytesIO()
    Image.new("1", (6_000, 5_000)).save(file, "PNG")
    with pytest.raises(ValidationError, match="too large"):
        small_picture(BytesIO(file.getvalue()))


def test_a_photo_is_kept_shown_and_taken_along(job: Job, phone: Client) -> None:
    """With who took it, at its wall; the page of a wall without openings has it too."""
    answer = send(phone, job, taken())

    assert answer.status_code == 200
    (photo,) = WallPhoto.objects.all()
    src = f"/jobs/{job.pk}/photos/{photo.pk}/"
    assert dom(answer).one("img").attribute("src") == src
    page = dom(phone.get(f"/jobs/{job.pk}/measuring/"))
    assert page.one("figure img").attribute("src") == src
    assert "ines" in page.one("figcaption").words.lower()
    image = phone.get(src)
    assert image.headers["Content-Type"] == "image/jpeg"
    assert Image.open(BytesIO(image.content)).size == (40, 20)
    assert src in phone.get(f"/jobs/{job.pk}/along/").json()["pages"]


def test_a_photo_sent_twice_is_one(job: Job, phone: Client) -> None:
    """A lost answer, a second tap."""
    content = taken()
    for _ in range(2):
        assert send(phone, job, content, form_key="k").status_code == 200
    assert WallPhoto.objects.count() == 1


def test_a_photo_that_waited_was_taken_when_it_was_entered(job: Job, phone: Client) -> None:
    """History says when it came; what can't be a time of taking it is when it came."""
    before = timezone.now() - timedelta(hours=20)
    later, long_ago = timezone.now() + timedelta(hours=1), before - timedelta(days=100)
    wrong = ["yesterday", "2027-99-99T10:00:00Z", later.isoformat(), long_ago.isoformat()]
    for said in (before.isoformat(), *wrong):
        image = SimpleUploadedFile("IMG_1.jpg", taken(), "image/jpeg")
        phone.post(
            f"/jobs/{job.pk}/photos/", {"wall": "North", "image": image},
            headers={**HTMX, "X-Entered": said},
        )  # fmt: skip

    first, *others = WallPhoto.objects.order_by("pk")
    came = Revision.objects.filter(text="Took a photo of wall North").order_by("pk")[0].at
    assert first.taken_at == before
    assert all(came <= photo.taken_at <= timezone.now() for photo in others)
    assert len(others) == len(wrong)
    shown = dom(phone.get(f"/jobs/{job.pk}/measuring/"))
    said = timezone.localtime(before).strftime("%H:%M")
    assert said in shown.all("figcaption")[-1].words  # The latest stands first.


def test_what_is_no_photo_is_told_where_it_was_chosen(job: Job, phone: Client) -> None:
    """And nothing is kept."""
    answer = send(phone, job, b"no photo")
    assert answer.status_code == 422
    field = dom(answer).one("[type='file'][aria-invalid='true']")
    told = dom(answer).one(f"[id='{field.attribute('aria-describedby')}']")
    assert "no photo that can be read" in told.words
    assert not WallPhoto.objects.exists()
    plain = phone.post(f"/jobs/{job.pk}/photos/", {"wall": "North"}, follow=True)
    assert "Choose a photo" in dom(plain).words
    far = phone.post(f"/jobs/{job.pk}/photos/", {"wall": "x" * 400}, follow=True)
    assert "characters" in dom(far).words


def test_a_deleted_photo_comes_back(job: Job, owner: Person, signed_in: SignIn) -> None:
    """With its file."""
    desk = signed_in(owner)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    send(desk, job, taken())
    (photo,) = WallPhoto.objects.all()
    kept = "A deleted photo stays in History"
    assert kept in dom(desk.get(f"/jobs/{job.pk}/measuring/")).words
    left = desk.post(f"/jobs/{job.pk}/photos/{photo.pk}/delete/", headers=HTMX)
    assert kept not in dom(left).words
    assert not WallPhoto.objects.exists()
    src = f"/jobs/{job.pk}/photos/{photo.pk}/"
    assert desk.get(src).status_code == 404

    revision = Revision.objects.latest("pk")
    assert revision.text == "Deleted a photo of wall North"
    desk.post(f"/jobs/{job.pk}/undo/", {"revision": revision.pk})
    assert desk.get(src).status_code == 200


def test_another_shop_sees_no_photo(
    job: Job, phone: Client, stranger: Person, signed_in: SignIn
) -> None:
    """Neither by the job's address nor by its own job's."""
    send(phone, job, taken())
    (photo,) = WallPhoto.objects.all()
    other = signed_in(stranger)
    assert other.get(f"/jobs/{job.pk}/photos/{photo.pk}/").status_code == 404
    assert other.post(f"/jobs/{job.pk}/photos/{photo.pk}/delete/").status_code == 404
    assert send(other, job, taken()).status_code == 404


def test_a_photo_whose_file_is_gone(job: Job, phone: Client, tmp_path: Path) -> None:
    """It is not found; the page stands."""
    send(phone, job, taken())
    (photo,) = WallPhoto.objects.all()
    Path(photo.image.path).unlink()
    assert phone.get(f"/jobs/{job.pk}/photos/{photo.pk}/").status_code == 404
    assert phone.get(f"/jobs/{job.pk}/measuring/").status_code == 200


@pytest.mark.parametrize("wall", ["100%", "50% x", "a%d", "8' wall", 'a "b"', "\\"])
def test_a_wall_may_be_called_anything(wall: str, job: Job, phone: Client) -> None:
    """Good and bad photos of it alike."""
    image = SimpleUploadedFile("a.jpg", taken(), "image/jpeg")
    address = f"/jobs/{job.pk}/photos/"
    assert phone.post(address, {"wall": wall, "image": image}, headers=HTMX).status_code == 200
    assert phone.post(address, {"wall": wall}, headers=HTMX).status_code == 422
    assert phone.get(f"/jobs/{job.pk}/measuring/").status_code == 200


def test_a_row_without_a_file_is_no_page(job: Job, phone: Client) -> None:
    """Its file was gone when its shop moved."""
    send(phone, job, taken())
    WallPhoto.objects.update(image="")
    (photo,) = WallPhoto.objects.all()
    assert phone.get(f"/jobs/{job.pk}/photos/{photo.pk}/").status_code == 404
    assert phone.get(f"/jobs/{job.pk}/measuring/").status_code == 200


def test_made_up_words_in_a_photo_are_no_failure() -> None:
    """Whatever bytes stand where the camera says what it is."""
    content = bytearray(taken((60, 40)))
    for place in range(20, 200):
        torn = content.copy()
        torn[place] = 0xFF
        with suppress(ValidationError):
            small_picture(BytesIO(bytes(torn)))


@pytest.mark.django_db(transaction=True)
def test_photos_go_with_a_job_that_is_gone_for_good(
    owner: Person, signed_in: SignIn, job: Job
) -> None:
    """Also those that were deleted before."""
    desk = signed_in(owner)
    send(desk, job, taken())
    (photo,) = WallPhoto.objects.all()
    file = Path(photo.image.path)
    job_delete(job=job, by=owner, at=NOW)
    assert file.exists()
    later = NOW + timedelta(days=Job.DAYS_KEPT + 1)
    job_delete(job=JobFactory.create(shop=job.shop, number="K-9"), by=owner, at=later)
    assert not file.exists()
