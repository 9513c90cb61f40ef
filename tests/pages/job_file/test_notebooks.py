"""A notebook taken in as a job: the shop's own ways, and what its lines say."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import JobStandard, Thing
from fronts.notebook import read_notebook
from fronts.rules.practice import inches
from fronts.services.saved_faces import face_save
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.browser.typing import NOTEBOOKS
from tests.dom import dom
from tests.factories import NOW
from tests.pages.job_file.test_page import upload

SignIn = Callable[[Person], Client]
LONG = "wall N\nbase 30 high 24 deep 4 up\n" + "\n".join(f"B{n} 18 pair" for n in range(1, 302))
TEXT = (NOTEBOOKS / "twenty-five.txt").read_text()


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def test_a_notebook_becomes_a_job(desk: Client, shop: Shop, owner: Person) -> None:
    """All that it says stands on its walls; the shop's ways hold, and its faces are understood."""
    face_save(shop=shop, name="bank", words="5 drawers", at=NOW, by=owner)
    before = Revision.objects.count()
    answer = upload(desk, f"\ufeff# from the site\r\n{TEXT}B30 18 bank\r\n", number="K-9")

    job = Job.objects.get()
    assert answer["Location"] == f"/jobs/{job.pk}/"
    kitchen = kitchen_of(job)
    stated = read_notebook(TEXT, "in", inches(1, 16))
    assert kitchen.cabinets[:-1] == stated.cabinets
    assert len(kitchen.cabinets[-1].openings[0].fronts) == 5
    assert Thing.objects.filter(job=job).count() == len(stated.others)
    assert not JobStandard.objects.exists()
    assert Revision.objects.count() == before + 1


def test_every_line_that_is_not_understood_is_shown(desk: Client) -> None:
    """By its number; nothing is taken in, and what a line may say stands below."""
    answer = upload(desk, "wall North\nB1 18 dor left\nbase 30 high", number="K-9")

    assert answer.status_code == 422
    rows = [row.one("th").words for row in dom(answer).all("table.list tbody tr")]
    assert rows == ["line 2", "line 3"]
    assert "found" not in dom(answer).one(".summary").words
    assert dom(answer).one("details.words").attribute("open") is not None
    assert not Job.objects.exists()


@pytest.mark.parametrize(
    ("text", "number", "message"),
    [
        (TEXT, "", "Give the new job's number: a notebook has none."),
        (TEXT, "K-1", "There is already a job"),
        (b"wall \xff\xfe", "K-9", "Nothing was taken in."),
        (f"wall North\n# {'x' * 200_001}", "K-9", "A notebook has at most 200,000 characters"),
        (LONG, "K-9", "This notebook has 301 cabinets; 300 are taken in at once."),
    ],
)
def test_what_can_not_become_a_job(
    text: str | bytes, number: str, message: str, desk: Client, job: Job
) -> None:
    """It is said at its field."""
    answer = upload(desk, text, number=number)
    assert answer.status_code == 422
    assert message in dom(answer).words
    assert list(Job.objects.all()) == [job]


def test_the_page_explains_itself_in_a_shops_words(desk: Client) -> None:
    """What a file is, and where it comes from; no word of how computers write it."""
    page = dom(desk.get("/jobs/import/"))
    assert "a line for each thing on a wall" in page.words
    assert "JSON" not in page.words
    for content in (b"{", b'{"version": 1e999}', b"\xff\xfe{"):
        assert "JSON" not in dom(upload(desk, content, number="K-9")).words
