"""Snags are settled and said otherwise, by two people at once too; nothing of it is lost."""

from datetime import date

from django.test import Client

from fronts.models import Snag
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.pages.kitchens import HTMX
from tests.pages.snags.conftest import UNSETTLED


def test_done_and_opened_again(snag: Snag, phone: Client, desk: Client, job: Job) -> None:
    """By whom, when, what was done; the history keeps it, and Undo takes it back."""
    answer = desk.post(
        f"/jobs/{job.pk}/snags/{snag.pk}/done/", {"seen": UNSETTLED, "done_note": "polished"},
        headers=HTMX,
    )  # fmt: skip
    assert "Done by Ada" in dom(answer).words
    assert "polished" in dom(answer).words
    assert "Snags" in dom(desk.get(f"/jobs/{job.pk}/")).one(".steps").words
    page = dom(phone.get(f"/jobs/{job.pk}/snags/"))
    assert f"snag-{snag.pk}" == page.one("details.settled li").attribute("id")
    assert "No snag is open." in page.words

    phone.post(f"/jobs/{job.pk}/snags/{snag.pk}/open/", headers=HTMX)
    snag.refresh_from_db()
    assert (snag.done_at, snag.done_by, snag.done_note) == (None, None, "")
    texts = list(Revision.objects.order_by("pk").values_list("text", flat=True))[-2:]
    assert texts == [
        "Settled the snag on front B1.a: scratched – polished",
        "Opened the snag on front B1.a again: scratched",
    ]
    phone.post(f"/jobs/{job.pk}/undo/", {"revision": Revision.objects.latest("pk").pk})
    snag.refresh_from_db()
    assert snag.done_note == "polished"


def test_two_at_once_are_told(snag: Snag, phone: Client, desk: Client, job: Job) -> None:
    """Who settles it second sees what the first said; theirs stays typed, and may be put first."""
    address = f"/jobs/{job.pk}/snags/{snag.pk}/done/"
    seen = dom(phone.get(f"/jobs/{job.pk}/snags/")).one(f"#snag-{snag.pk}-settle").field("seen")
    desk.post(address, {"seen": seen.value, "done_note": "polished"}, headers=HTMX)

    answer = phone.post(address, {"seen": seen.value, "done_note": "filled"}, headers=HTMX)
    assert answer.status_code == 409
    told = dom(answer)
    assert all(words in told.words for words in ("“polished”", "“filled”", "Ada"))
    snag.refresh_from_db()
    assert snag.done_note == "polished"

    again = told.one(f"#snag-{snag.pk}-settle").field("seen").value
    phone.post(address, {"seen": again, "done_note": "filled"}, headers=HTMX)
    snag.refresh_from_db()
    assert (snag.done_note, snag.settled_by) == ("filled", "ines")


def test_done_twice_with_the_same_words_stays_as_it_was(
    snag: Snag, phone: Client, desk: Client, job: Job
) -> None:
    """Nobody's word is put in the place of the same word."""
    for client in (desk, phone):
        client.post(f"/jobs/{job.pk}/snags/{snag.pk}/done/", {"done_note": ""}, headers=HTMX)
    snag.refresh_from_db()
    assert snag.settled_by == "Ada"


def test_a_snag_said_otherwise(
    snag: Snag, phone: Client, desk: Client, job: Job, owner: Person
) -> None:
    """What two people change of it goes together; the same thing changed by both is asked."""
    address = f"/jobs/{job.pk}/snags/{snag.pk}/"
    form = dom(phone.get(address)).one("#snag-change")
    held = {"seen": form.field("seen").value, "words": "scratched", "who": "", "due": ""}
    assert desk.post(address, held | {"who": owner.pk, "due": "2027-03-12"}).status_code == 302
    assert phone.post(address, held | {"words": "deep scratch"}).status_code == 302
    snag.refresh_from_db()
    assert (snag.words, snag.assigned_to, snag.due) == ("deep scratch", owner, date(2027, 3, 12))

    answer = desk.post(address, held | {"words": "a dent"})
    assert answer.status_code == 409
    assert "deep scratch" in dom(answer).one(".summary").words
    assert dom(answer).one("#snag-change textarea").value == "a dent"
