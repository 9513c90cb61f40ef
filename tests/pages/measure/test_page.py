"""The job's main page: its walls, its findings, its fronts, and what was entered."""

from collections.abc import Callable

from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext

from fronts.models import Cabinet, Opening
from fronts.models.kept import kept_tables
from fronts.rules.kitchen import BESIDE_CABINETS
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, furnish

SignIn = Callable[[Person], Client]


def test_an_empty_job_starts_with_its_first_cabinet(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """What to do first is said; it is typed as a row, without scripts in the form that is open."""
    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))

    assert "Start with the first cabinet" in page.words
    assert page.has("noscript form#first-cabinet [id='cabinet-new-width']")
    assert page.one("#row-new.is-first [name=width]").attribute("autofocus") is not None
    assert "What closes it is said from the top: door left" in page.one("#row-new").words


def test_an_empty_job_offers_the_installer_nothing_to_enter(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Who may not enter cabinets gets no form for them."""
    page = dom(signed_in(installer).get(f"/jobs/{job.pk}/"))

    assert "The owner or the office enters the cabinets" in page.words
    assert not page.has("main form")


def test_the_wall_is_drawn_and_its_fronts_lead_to_their_openings(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """Each front of the elevation is a link to the form of its opening."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B1")

    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))

    link = page.one(f"svg a[href='/jobs/{job.pk}/openings/{opening.pk}/']")
    assert link.attribute("aria-label") == "B1.a 16 × 28 1/2 door, hinged left"


def test_the_schedule_shows_sizes_laps_and_gaps(job: Job, owner: Person, signed_in: SignIn) -> None:
    """15 × 27 1/2 in with half an inch of overlay: 16 × 28 1/2 in, 2 in from its neighbour."""
    furnish(job)

    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))

    cells = page.all("table.fronts tbody tr:first-child td")
    assert [cell.words for cell in cells] == [
        "16",
        "28 1/2",
        "3/4",
        *["1/2"] * 4,
        "–",
        "2",
        "–",
        "–",
        "left",
        "slab, MDF",
    ]


def test_a_finding_leads_to_its_cause(job: Job, owner: Person, signed_in: SignIn) -> None:
    """A drawer without a box is named in words, with a link to where the box is entered."""
    overlaid(job)
    drawer = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="drawer")

    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))

    finding = page.one(".finding-check")
    assert finding.one("strong").words == "Check."
    assert "its box is not measured" in finding.words
    assert f"/jobs/{job.pk}/openings/{drawer.pk}/boxes/0/" in finding.addresses


def test_one_missing_word_is_one_finding(job: Job, owner: Person, signed_in: SignIn) -> None:
    """Where nobody said how far fronts lap, that is said once, with the place that mends it."""
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job, label="B2", x=inches(18)))

    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))

    assert page.words.count("Nobody has said how far fronts lap") == 1
    finding = page.one(".finding-stop")
    assert f"/jobs/{job.pk}/standard/" in finding.addresses
    assert "B1.a" in finding.words
    assert "B2.a" in finding.words


def test_what_is_worked_out_comes_by_itself(job: Job, owner: Person, signed_in: SignIn) -> None:
    """After a change, htmx gets the wall, its table, the findings and the fronts, no more."""
    furnish(job)

    desk = signed_in(owner)
    answer = desk.get(f"/jobs/{job.pk}/", headers={**HTMX, "HX-Target": "follows"})
    beside = desk.get(f"/jobs/{job.pk}/", headers={**HTMX, "HX-Target": "follows-drawn"})

    assert len(dom(answer).all("svg")) == 1
    assert not dom(beside).all("svg")
    assert dom(beside).has("[id='cabinets'][hx-swap-oob='true']")
    assert dom(answer).has("[id='findings']")
    assert dom(answer).has("[id='fronts']")
    assert dom(answer).has("[id='cabinets'][hx-swap-oob='true']")
    assert not dom(answer).has("[id='doors']")
    assert not dom(answer).is_whole
    assert "HX-Request" in answer["Vary"]


def test_history_gets_the_whole_page(job: Job, owner: Person, signed_in: SignIn) -> None:
    """A restored page is a page, not a part of one."""
    headers = {**HTMX, "HX-History-Restore-Request": "true"}

    assert dom(signed_in(owner).get(f"/jobs/{job.pk}/", headers=headers)).is_whole


def test_a_part_that_is_not_there_is_not_found(job: Job, owner: Person, signed_in: SignIn) -> None:
    """A part of a cabinet that is gone, or of no name that the page knows, is a 404."""
    client = signed_in(owner)

    for target in ("cabinet-99999", "opening-99999", "opening-new-99999", "door-99999", "nothing"):
        answer = client.get(f"/jobs/{job.pk}/", headers={**HTMX, "HX-Target": target})
        assert answer.status_code == 404, target


def test_the_installer_may_only_measure(job: Job, installer: Person, signed_in: SignIn) -> None:
    """The installer's page offers the measured sizes of each opening, and no other form."""
    furnish(job)
    opening = Opening.objects.get(cabinet__label="B1")

    page = dom(signed_in(installer).get(f"/jobs/{job.pk}/"))

    assert f"/jobs/{job.pk}/openings/{opening.pk}/measured/" in page.addresses
    assert f"/jobs/{job.pk}/openings/{opening.pk}/" not in page.addresses
    for word in ("Add an opening", "Copy", "Delete"):
        assert word not in page.one("main").words, word
    for end in ("doors/new/", "standard/", "stock/"):
        assert not page.has(f"main a[href$='{end}']"), end


def test_another_shops_kitchen_does_not_exist(
    job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """Every address of the job is a 404 for another shop's owner."""
    furnish(job)
    client, cabinet = signed_in(stranger), Cabinet.objects.filter(job=job).first()
    opening = Opening.objects.filter(cabinet__job=job).first()
    assert cabinet is not None
    assert opening is not None
    for end in (
        "", "file/", "cabinets/new/", f"cabinets/{cabinet.pk}/", f"cabinets/{cabinet.pk}/copy/",
        f"cabinets/{cabinet.pk}/delete/", f"cabinets/{cabinet.pk}/openings/new/",
        f"openings/{opening.pk}/", f"openings/{opening.pk}/measured/", "doors/new/", "standard/",
        "stock/", f"openings/{opening.pk}/preview/", f"openings/{opening.pk}/fronts/0/",
    ):  # fmt: skip
        unknown = 405 if end.endswith("delete/") else 404
        assert client.get(f"/jobs/{job.pk}/{end}").status_code == unknown, end
        assert client.post(f"/jobs/{job.pk}/{end}").status_code in (404, 405), end


def test_things_of_another_job_do_not_exist_here(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """A cabinet or opening is found under its own job only."""
    furnish(job)
    other = Job.objects.create(shop=job.shop, number="K-2")
    cabinet, opening = Cabinet.objects.first(), Opening.objects.first()
    assert cabinet is not None
    assert opening is not None
    client = signed_in(owner)

    for end in (
        f"cabinets/{cabinet.pk}/", f"openings/{opening.pk}/", f"openings/{opening.pk}/fronts/0/",
    ):  # fmt: skip
        assert client.get(f"/jobs/{other.pk}/{end}").status_code == 404


def queries_of(client: Client, job: Job, **headers: str) -> int:
    """How often the job's page asks the database."""
    with CaptureQueriesContext(connection) as asked:
        client.get(f"/jobs/{job.pk}/", headers=headers)
    return len(asked)


def test_the_number_of_queries_does_not_grow(job: Job, owner: Person, signed_in: SignIn) -> None:
    """The page of a large kitchen asks the database no more often than that of a small one."""
    overlaid(job)
    client = signed_in(owner)
    client.get(f"/jobs/{job.pk}/")  # The first request of a session notes it once.
    asked = []
    for end in (2, 12):
        for place in range(Cabinet.objects.filter(job=job).count(), end):
            cabinet = CabinetFactory.create(job=job, label=f"B{place + 1}", x=inches(18) * place)
            BoxFactory.create(opening=OpeningFactory.create(cabinet=cabinet, closed_by="drawer"))
        asked.append([
            queries_of(client, job), queries_of(client, job, **{**HTMX, "HX-Target": "follows"}),
        ])  # fmt: skip

    assert asked[0] == asked[1]
    most = 13 + len(kept_tables()) + len(BESIDE_CABINETS)
    assert max(asked[0]) <= most
