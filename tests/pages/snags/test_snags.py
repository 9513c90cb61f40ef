"""Snags are written down on the phone, seen by the owner, settled, and none is lost."""

import gzip
from datetime import date, timedelta
from io import BytesIO
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from django.utils import timezone
from PIL import Image

from fronts.models import Cabinet, Front, Snag, SnagPhoto
from fronts.rules.limits import MOST_SNAG_PHOTOS
from fronts.rules.snags import SnagFacts
from fronts.services.snags import snag_raise
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import NOW, PersonFactory
from tests.pages.kitchens import HTMX
from tests.pages.snags.conftest import UNSETTLED, SignIn, jpeg, write


def test_a_snag_on_a_front_is_seen_everywhere(
    job: Job, door: Front, phone: Client, desk: Client, owner: Person
) -> None:
    """At its cabinet, on the list of jobs, on every page of the job, in the drawing."""
    answer = write(
        phone, job, f"front {door.pk} B1.a", "scratched\nat the corner", who=owner.pk,
        due="2020-02-03", image=[jpeg(), jpeg("b.jpg")],
    )  # fmt: skip
    assert answer.status_code == 200
    snag = Snag.objects.get()
    assert (snag.front, snag.cabinet, snag.words) == (
        door, door.opening.cabinet, "scratched at the corner"
    )  # fmt: skip
    assert (snag.assigned_to, snag.due, snag.photos.count()) == (owner, date(2020, 2, 3), 2)

    row = dom(phone.get(f"/jobs/{job.pk}/snags/")).one(f"#snag-{snag.pk}")
    for words in ("Late", "Front B1.a", "scratched at the corner", "Ada settles it", "3 Feb 2020"):
        assert words in row.words
    assert "1 snag, 1 late" in dom(desk.get("/jobs/")).one(".register").words
    wall = dom(desk.get(f"/jobs/{job.pk}/"))
    assert "Snags 1 open, 1 late" in wall.one(".steps").words
    link = wall.one(f"svg a[href='/jobs/{job.pk}/openings/{door.opening_id}/']")
    assert "1 snag, 1 late" in link.attribute("aria-label")
    assert wall.one(".drawn-snags").words == "1"
    fit = dom(phone.get(f"/jobs/{job.pk}/fit/"))
    assert "1 snag, 1 late" in fit.one(".cabinets li").words
    at_wall = dom(phone.get(f"/jobs/{job.pk}/fit/{door.opening.cabinet_id}/"))
    assert "scratched at the corner" in at_wall.one("#snags").words


def test_what_a_snag_may_be_on(job: Job, cabinet: Cabinet, phone: Client) -> None:
    """A cabinet, or the whole job; what is no such thing is refused at its field."""
    write(phone, job, f"cabinet {cabinet.pk} B1")
    write(phone, job, "job")
    assert [(one.of, one.label, one.cabinet) for one in Snag.objects.order_by("pk")] == [
        ("cabinet", "B1", cabinet), ("job", "", None)
    ]  # fmt: skip
    for on in ("", "front", "front 1", "door 1 B1", "cabinet x B1", f"front {'9' * 30} B1.a",
               "front ² B1", f"front 1 {'x' * 200}"):  # fmt: skip
        answer = write(phone, job, on)
        assert answer.status_code == 422, on
        assert dom(answer).one("#snag-new textarea").value == "scratched"
    assert Snag.objects.count() == 2


@pytest.mark.parametrize(
    ("wrong", "says"),
    [
        ({"words": " "}, "Say what is wrong"),
        ({"words": "x" * 401}, "Keep it to 400 characters"),
        ({"words": "a\x07b"}, "plain text"),
        ({"due": "soon"}, "Enter a date"),
        ({"who": "999999"}, "Choose one from the list"),
    ],
)
def test_what_is_wrong_is_told_at_its_field(
    wrong: dict[str, str], says: str, job: Job, phone: Client
) -> None:
    """And what was typed stays."""
    answer = write(phone, job, "job", **({"words": "paint on the floor"} | wrong))
    assert answer.status_code == 422
    assert says in dom(answer).one(".summary").words
    assert not Snag.objects.exists()


def faulty(answer: Any) -> list[str]:
    """What is told of the photos that were chosen, as each input says it."""
    page = dom(answer)
    fields = page.all("[type='file'][aria-invalid='true']")
    return [page.one(f"[id='{one.attribute('aria-describedby')}']").words for one in fields]


def test_what_is_no_photo_is_refused(job: Job, phone: Client) -> None:
    """At its field; so is an empty file, and so are more of them than a snag has."""
    for content in (b"no photo", b""):
        torn = SimpleUploadedFile("a.jpg", content, "image/jpeg")
        camera, device = faulty(write(phone, job, "job", image=torn))
        assert camera == device
        assert "no photo that can be read" in camera
    few = [jpeg() for _ in range(10)]
    assert write(phone, job, "job", image=few).status_code == 200
    snag = Snag.objects.get()
    answer = phone.post(
        f"/jobs/{job.pk}/snags/{snag.pk}/photos/", {"image": [jpeg() for _ in few]}, headers=HTMX
    )
    assert answer.status_code == 422
    assert "HX-Trigger-After-Settle" not in answer
    [told] = faulty(answer)
    assert f"{MOST_SNAG_PHOTOS} photos at most" in told
    assert SnagPhoto.objects.count() == 10


def test_a_snag_sent_twice_is_one(job: Job, phone: Client) -> None:
    """A lost answer: the phone sends it again. Another one from the same form is another."""
    for _ in range(2):
        assert write(phone, job, "job", form_key="k").status_code == 200
    assert Snag.objects.count() == 1
    write(phone, job, "job", "another", form_key="k")
    assert Snag.objects.count() == 2


def test_a_snag_on_what_has_gone_meanwhile_is_kept(
    job: Job, door: Front, cabinet: Cabinet, phone: Client
) -> None:
    """A phone without signal for days; it finds what is called so now, or says what it was."""
    write(phone, job, f"front {door.pk + 1000} B1.a")
    write(phone, job, f"cabinet {cabinet.pk + 1000} B1")
    write(phone, job, "front 77 Z9.a")
    found = list(Snag.objects.order_by("pk"))
    assert [(one.front, one.cabinet, one.label) for one in found] == [
        (door, cabinet, "B1.a"), (None, cabinet, "B1"), (None, None, "Z9.a"),
    ]  # fmt: skip
    row = dom(phone.get(f"/jobs/{job.pk}/snags/")).one(f"#snag-{found[2].pk}")
    assert "Front Z9.a has gone since" in row.words


def test_a_snag_outlives_its_front(snag: Snag, desk: Client, job: Job) -> None:
    """And finds it again where it comes back with Undo."""
    desk.post(f"/jobs/{job.pk}/cabinets/{snag.cabinet_id}/delete/", headers=HTMX)
    snag.refresh_from_db()
    assert (snag.front, snag.cabinet) == (None, None)
    assert "Front B1.a has gone since" in dom(desk.get(f"/jobs/{job.pk}/snags/")).words
    desk.post(f"/jobs/{job.pk}/undo/", {"revision": Revision.objects.latest("pk").pk})
    snag.refresh_from_db()
    assert snag.front is not None


def test_a_snag_says_what_its_front_is_called_now(snag: Snag, phone: Client, job: Job) -> None:
    """It points at the front, not at its label."""
    Cabinet.objects.update(label="B7")
    assert "Front B7.a" in dom(phone.get(f"/jobs/{job.pk}/snags/")).one(f"#snag-{snag.pk}").words


def test_a_photo_of_a_snag(
    snag: Snag, phone: Client, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """Small and plain, taken along, to its shop alone; deleted, and back with Undo."""
    here = f"/jobs/{job.pk}/snags/{snag.pk}/photos/"
    answer = phone.post(here, {"image": jpeg()}, headers=HTMX)
    photo = SnagPhoto.objects.get()
    src = f"{here}{photo.pk}/"
    assert dom(answer).one("img").attribute("src") == src
    assert Image.open(BytesIO(phone.get(src).content)).size == (40, 20)
    assert {src, f"/jobs/{job.pk}/snags/"} <= {*phone.get(f"/jobs/{job.pk}/along/").json()["pages"]}
    other = signed_in(stranger)
    for path in (src, f"{src}delete/", f"/jobs/{job.pk}/snags/{snag.pk}/done/"):
        assert other.post(path).status_code in (404, 405)
    assert other.get(src).status_code == 404

    phone.post(f"{src}delete/", headers=HTMX)
    assert phone.get(src).status_code == 404
    assert Revision.objects.latest("pk").text == "Deleted a photo of the snag on front B1.a"
    phone.post(f"/jobs/{job.pk}/undo/", {"revision": Revision.objects.latest("pk").pk})
    assert phone.get(src).status_code == 200


def test_photos_that_waited_were_taken_when_the_snag_was_written(
    job: Job, phone: Client, snag: Snag
) -> None:
    """With a new snag, and one that is added to it later."""
    before = timezone.now() - timedelta(hours=20)
    late = {**HTMX, "X-Entered": before.isoformat()}
    said = {"on": "job", "words": "scratched", "image": [jpeg()]}
    phone.post(f"/jobs/{job.pk}/snags/", said, headers=late)
    phone.post(f"/jobs/{job.pk}/snags/{snag.pk}/photos/", {"image": jpeg()}, headers=late)

    assert [photo.taken_at for photo in SnagPhoto.objects.all()] == [before, before]
    assert Snag.objects.latest("pk").raised_at == before
    assert Revision.objects.filter(job=job).latest("pk").at > before


def test_who_may_take_a_snag_away(
    snag: Snag, desk: Client, job: Job, shop: Any, signed_in: SignIn
) -> None:
    """Who wrote it down, and who may change the kitchen; Undo brings it back."""
    other = signed_in(PersonFactory.create(shop=shop, installer=True))
    address = f"/jobs/{job.pk}/snags/{snag.pk}/delete/"
    assert other.post(address).status_code == 403
    assert desk.post(address).status_code == 302
    assert not Snag.objects.exists()
    desk.post(f"/jobs/{job.pk}/undo/", {"revision": Revision.objects.latest("pk").pk})
    assert Snag.objects.get().words == "scratched"


def test_late_is_from_the_day_after(snag: Snag, phone: Client, job: Job) -> None:
    """On the day itself there is time still."""
    today = timezone.localdate()
    for due, late in ((today, False), (today - timedelta(days=1), True), (None, False)):
        Snag.objects.update(due=due)
        words = dom(phone.get(f"/jobs/{job.pk}/snags/")).one(f"#snag-{snag.pk}").words
        assert ("Late" in words) == late


def test_without_scripts(job: Job, door: Front, cabinet: Cabinet, phone: Client) -> None:
    """Each form leads back to the page where one was; what is wrong is told on a page."""
    address = f"/jobs/{job.pk}/snags/"
    said = {"on": f"front {door.pk} B1.a", "words": "rubs", "here": cabinet.pk}
    assert phone.post(address, said).url.startswith(  # type: ignore[attr-defined]
        f"/jobs/{job.pk}/fit/{cabinet.pk}/#snag-"
    )
    snag = Snag.objects.get()
    wrong = phone.post(f"{address}{snag.pk}/done/", {"done_note": "x" * 401})
    assert wrong.status_code == 422
    assert "Keep it to 400" in dom(wrong).one(".summary").words
    torn = SimpleUploadedFile("a.jpg", b"no photo", "image/jpeg")
    assert "no photo" in faulty(phone.post(f"{address}{snag.pk}/photos/", {"image": torn}))[0]
    done = phone.post(f"{address}{snag.pk}/done/", {"seen": UNSETTLED, "done_note": "eased"})
    assert done.url == f"{address}#snag-{snag.pk}"  # type: ignore[attr-defined]


def test_a_cabinet_answers_with_its_own_part(
    job: Job, door: Front, cabinet: Cabinet, phone: Client
) -> None:
    """Entered at the cabinet, it comes back there, with an empty form."""
    answer = write(phone, job, f"front {door.pk} B1.a", here=str(cabinet.pk))
    part = dom(answer)
    assert part.one("#snags-head").words == "Snags"
    assert "Written down: scratched" in part.words
    assert part.one("#snag-new textarea").value == ""
    assert write(phone, job, "", here=str(cabinet.pk)).status_code == 422


def test_many_snags_take_few_queries_and_little_of_a_signal(
    job: Job, door: Front, owner: Person, desk: Client, django_assert_max_num_queries: Any
) -> None:
    """As many as a small kitchen may come to have."""
    for number in range(30):
        snag_raise(
            job=job, facts=SnagFacts("front", f"scratch {number}", "B1.a"), front=door,
            cabinet=door.opening.cabinet, by=owner, at=NOW,
        )  # fmt: skip
    for path in (f"/jobs/{job.pk}/snags/", "/jobs/"):
        with django_assert_max_num_queries(25):
            answer = desk.get(path)
        assert len(gzip.compress(answer.content)) < 10_000
