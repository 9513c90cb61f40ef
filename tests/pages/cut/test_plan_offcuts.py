"""Offcuts on the cut page: used first by a plan, kept of one, gone once it is sawn."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client
from django.urls import reverse

from fronts.cutting.plan_json import stored_request
from fronts.models import CutPlan, Offcut
from fronts.rules.lengths import INCH
from fronts.rules.offcuts import MOST_OFFERED, OffcutFacts
from fronts.services.offcuts import offcut_change, offcut_enter, offcut_throw_away
from fronts.sheets.cutting_plan import content
from fronts.sheets.job_source import source_of_job
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, JobFactory
from tests.pages.cut.planned import address, cut_kitchen, groups, make_plan
from tests.pages.standard.short_pages import post_own
from tests.plans_to_look_at import no_search_for_offcuts

__all__ = ["no_search_for_offcuts"]

SignIn = Callable[[Person], Client]
BIRCH = OffcutFacts("birch plywood", 3 * INCH / 4, 40 * INCH, 30 * INCH)


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """The job with a kitchen in plywood, maple and MDF."""
    return cut_kitchen(job)


def rack(job: Job, *facts: OffcutFacts, laid_by: Job | None = None) -> list[Offcut]:
    """Pieces on the rack of the job's shop."""
    return [offcut_enter(shop=job.shop, facts=one, job=laid_by, by=None, at=NOW) for one in facts]


def offcuts_page(job: Job) -> str:
    return reverse("fronts:cut-offcuts", args=[job.pk])


def deed(client: Client, job: Job, do: str, *pieces: str) -> object:
    """Press a button of the plan's offcuts; the page that follows."""
    plan = CutPlan.objects.filter(job=job).latest("pk")
    posted = {"plan": plan.pk, "do": do, "piece": list(pieces)}
    return client.post(offcuts_page(job), posted, follow=True)


def plan_with(client: Client, job: Job, *labels: str) -> CutPlan:
    """Make the plan with these offcuts of the plywood ticked."""
    ticked: dict[str, Any] = {f"{groups(job)['birch plywood'].key}-offcuts": list(labels)}
    answer = make_plan(client, job, **ticked)
    assert answer.status_code == 302, dom(answer).words
    return CutPlan.objects.filter(job=job).latest("pk")


def test_a_material_s_offcuts_are_offered_ticked_the_largest_first(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    other = JobFactory.create(shop=kitchen_job.shop)
    thin = OffcutFacts("birch plywood", INCH / 2, 40 * INCH, 30 * INCH)
    tiny = OffcutFacts("birch plywood", 3 * INCH / 4, 5 * INCH, 4 * INCH)
    large = OffcutFacts("Birch Plywood", 3 * INCH / 4, 60 * INCH, 30 * INCH)
    rack(kitchen_job, BIRCH, thin, tiny, large)
    rack(kitchen_job, BIRCH, laid_by=other)
    rack(kitchen_job, BIRCH, laid_by=kitchen_job)
    rack(JobFactory.create(), BIRCH)
    page = dom(signed_in(office).get(address(kitchen_job)))
    boxes = page.all('[name$="-offcuts"]')
    assert [box.value for box in boxes] == ["R6", "R4", "R1"]
    assert all(box.carries("checked") for box in boxes)
    assert "R6, 40 × 30 in, laid by for this job" in page.words


def test_many_offcuts_are_offered_a_few_at_a_time(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    rack(kitchen_job, *[BIRCH] * (MOST_OFFERED + 3))
    page = dom(signed_in(office).get(address(kitchen_job)))
    assert len(page.all('[name$="-offcuts"]')) == MOST_OFFERED
    assert "3 more stay on the rack" in page.words


def test_a_plan_says_which_offcut_it_takes_and_lays_it_by(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    [row] = rack(kitchen_job, BIRCH)
    client = signed_in(office)
    plan = plan_with(client, kitchen_job, "R1")
    page = dom(client.get(address(kitchen_job)))
    assert "offcut R1, 40 × 30 in" in page.words
    assert "Offcut R1, 40 × 30 in" in page.words
    assert page.words.count("1 of 96 × 48 in") == 2
    row.refresh_from_db()
    assert (row.job, row.by_plan, row.gone_at) == (kitchen_job, True, None)
    used = next(one for one in map(stored_request, plan.asked) if len(one.stock) == 2)
    assert used.stock[1].own


def test_what_a_later_plan_leaves_alone_is_free_again(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    [row] = rack(kitchen_job, BIRCH)
    [by_hand] = rack(kitchen_job, BIRCH, laid_by=kitchen_job)
    client = signed_in(office)
    plan_with(client, kitchen_job, "R1")
    plan_with(client, kitchen_job)
    row.refresh_from_db()
    by_hand.refresh_from_db()
    assert (row.job, row.by_plan) == (None, False)
    assert by_hand.job == kitchen_job


def test_an_offcut_that_is_gone_is_refused_at_its_field(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    gone: dict[str, Any] = {f"{groups(kitchen_job)['birch plywood'].key}-offcuts": "R77"}
    rack(kitchen_job, BIRCH)
    answer = make_plan(signed_in(office), kitchen_job, **gone)
    assert answer.status_code == 422
    assert "R77 is not to be had any more" in dom(answer).words


def test_one_that_another_job_took_meanwhile_is_said_and_not_bought_around(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    [row] = rack(kitchen_job, BIRCH)
    client = signed_in(office)
    plan_with(client, kitchen_job, "R1")
    row.refresh_from_db()
    other = JobFactory.create(shop=kitchen_job.shop, number="K-77")
    offcut_change(row=row, facts=row.facts, job=other, by=office, at=NOW)
    page = dom(client.get(address(kitchen_job)))
    assert "Offcut R1 is laid by for job K-77. Make the plan again." in page.words
    refused = client.post(
        offcuts_page(kitchen_job),
        {"plan": CutPlan.objects.get(job=kitchen_job).pk, "do": "sawn"},
    )
    assert refused.status_code == 422
    assert "R1 is laid by for job K-77. Make the plan again." in dom(refused).words


def test_pieces_are_kept_once_and_come_with_a_number_to_write_on_them(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    client = signed_in(office)
    plan_with(client, kitchen_job)
    offered = [box.value for box in dom(client.get(address(kitchen_job))).all(
        '#plan-keep [name="piece"]'
    )]  # fmt: skip
    assert len(offered) >= 3
    for _ in range(2):
        page = dom(deed(client, kitchen_job, "keep", *map(str, offered[:2])))
    assert [row.label for row in Offcut.objects.order_by("number")] == ["R1", "R2"]
    assert not Offcut.objects.filter(is_there=True).exists()
    assert "not sawn yet" in page.words
    assert "write R1 on it" in dom(client.get(address(kitchen_job))).words
    none = client.post(
        offcuts_page(kitchen_job),
        {"plan": CutPlan.objects.get(job=kitchen_job).pk, "do": "keep"},
    )
    assert none.status_code == 422


def test_a_sawn_plan_uses_its_offcuts_up_and_its_pieces_are_there_and_back_again(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    [row] = rack(kitchen_job, BIRCH)
    client = signed_in(office)
    plan_with(client, kitchen_job, "R1")
    first = dom(client.get(offcuts_page(kitchen_job))).all('[name="piece"]')[0].value
    deed(client, kitchen_job, "keep", str(first))
    page = dom(deed(client, kitchen_job, "sawn"))
    row.refresh_from_db()
    kept = Offcut.objects.get(number=2)
    assert row.gone_why == f"sawn for {kitchen_job.number}"
    assert kept.is_there
    assert "R1 went into it" in page.words
    assert "Make the plan again" not in page.words
    deed(client, kitchen_job, "unsawn")
    row.refresh_from_db()
    kept.refresh_from_db()
    assert (row.gone_at, row.job, kept.is_there) == (None, kitchen_job, False)


def test_what_is_laid_by_for_another_keeps_the_plan_sawn(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    client = signed_in(office)
    plan_with(client, kitchen_job)
    first = dom(client.get(offcuts_page(kitchen_job))).all('[name="piece"]')[0].value
    deed(client, kitchen_job, "keep", str(first))
    deed(client, kitchen_job, "sawn")
    other = JobFactory.create(shop=kitchen_job.shop)
    row = Offcut.objects.get()
    offcut_change(row=row, facts=row.facts, job=other, by=office, at=NOW)
    page = dom(deed(client, kitchen_job, "unsawn"))
    assert "So it must be sawn" in page.words
    assert CutPlan.objects.get(job=kitchen_job).sawn_at is not None


def test_what_was_never_sawn_goes_with_its_plan(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    client = signed_in(office)
    plan_with(client, kitchen_job)
    first = dom(client.get(offcuts_page(kitchen_job))).all('[name="piece"]')[0].value
    deed(client, kitchen_job, "keep", str(first))
    plan_with(client, kitchen_job)
    assert Offcut.objects.get().gone_how == "unmade"
    offcut = rack(kitchen_job, BIRCH)[0]
    assert offcut.label == "R2"  # R1 is never given again.


def test_an_installer_sees_it_and_changes_nothing(
    kitchen_job: Job, office: Person, installer: Person, signed_in: SignIn
) -> None:
    plan_with(signed_in(office), kitchen_job)
    client = signed_in(installer)
    assert client.get(offcuts_page(kitchen_job)).status_code == 200
    plan = CutPlan.objects.get(job=kitchen_job)
    posted = {"plan": plan.pk, "do": "sawn"}
    assert client.post(offcuts_page(kitchen_job), posted).status_code == 403


@pytest.mark.parametrize(
    "posted", [{}, {"plan": "1e99", "do": "x"}, {"plan": "9", "do": "keep", "piece": "\0"}]
)
def test_nonsense_is_answered_in_words(
    kitchen_job: Job, office: Person, signed_in: SignIn, posted: dict[str, str]
) -> None:
    client = signed_in(office)
    assert client.post(offcuts_page(kitchen_job), posted).status_code == 404
    plan_with(client, kitchen_job)
    assert client.post(offcuts_page(kitchen_job), posted).status_code == 422


def test_the_printed_plan_names_offcuts_and_what_to_write_on_the_rest(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    [row] = rack(kitchen_job, BIRCH)
    client = signed_in(office)
    plan_with(client, kitchen_job, "R1")
    pieces = dom(client.get(offcuts_page(kitchen_job))).all('[name="piece"]')
    deed(client, kitchen_job, "keep", *(piece.value for piece in pieces))
    row.refresh_from_db()
    sheet = printed(kitchen_job)
    assert "Offcut R1, 40 × 30 in" in sheet
    assert [f"write R{number} on it" in sheet for number in (2, 3)] == [True, True]
    assert "STOP — an offcut is not there" not in sheet
    offcut_throw_away(row=row, why="split", by=office, at=NOW)
    assert "Offcut R1 has gone: split. Make the plan again before cutting." in printed(kitchen_job)


def printed(job: Job) -> str:
    """The printed plan of the job, as HTML."""
    plan = CutPlan.objects.get(job=job)
    html = content(source_of_job(Job.objects.get(pk=job.pk), NOW.date(), plan))
    return html.replace("\u00a0", " ")


def test_the_shop_says_how_large_a_piece_is_offered_to_be_kept(
    kitchen_job: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Its own word alone counts; what was kept before stays, whatever it says since."""
    client = signed_in(owner)
    plan_with(client, kitchen_job)

    def offered() -> list[str]:
        page = dom(client.get(address(kitchen_job)))
        return [str(box.value) for box in page.all('#plan-keep [name="piece"]')]

    first, *others = offered()
    elsewhere = {"offcut_narrow": "700", "offcut_long": "700", "offcut_stick": "700"}
    assert post_own(signed_in(stranger), elsewhere).status_code == 302
    assert offered() == [first, *others]

    deed(client, kitchen_job, "keep", first)
    assert post_own(client, elsewhere).status_code == 302
    assert offered() == []
    assert "not sawn yet" in dom(client.get(address(kitchen_job))).words
    deed(client, kitchen_job, "keep", *others)
    assert Offcut.objects.get().place == first

    every = {"offcut_narrow": "0", "offcut_long": "0", "offcut_stick": "0"}
    assert post_own(client, every).status_code == 302
    assert set(others) < set(offered())
