"""Sheets printed again: what has not changed is the PDF that it was, and nobody waits."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.utils import timezone

from fronts.models import Cabinet, PrintedSheet, SheetFile, SheetSet
from fronts.rules.practice import inches
from fronts.sheets.pdf import PageSize, render
from shopjobs.models import BackgroundTask, Paper, Person
from tests.factories import JobFactory, door_and_drawer
from tests.pages.sheets.test_whole_set import NAMES, cabinet, page_of, text_of, unpacked
from tests.queue_work import in_queue, work_off

__all__ = ["cabinet"]

SignIn = Callable[[Person], Client]


@pytest.fixture
def rendered(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The titles of what is rendered from now on, while it is rendered as ever."""
    seen: list[str] = []

    def counted(html: str, paper: PageSize) -> bytes:
        seen.append(html.split("<title>")[1].split("</title>")[0])
        return render(html, paper)

    monkeypatch.setattr("fronts.tasks.sheet_set.render", counted)
    monkeypatch.setattr("fronts.pages.sheets.views.single.render", counted)
    return seen


def test_printed_again_only_what_changed_is_rendered(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, rendered: list[str]
) -> None:
    """Of what has not changed the PDF is the same; nothing at all is rendered where nothing has."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    first = unpacked(client, job)
    assert len(rendered) == 9
    rendered.clear()

    client.post(page_of(job))
    assert rendered == []
    assert unpacked(client, job) == first

    Cabinet.objects.filter(label="B3").update(height=inches(31))
    client.post(page_of(job))
    now = unpacked(client, job)
    fitting = [each for each in rendered if "Fitting" in each]
    assert fitting == ["K-1 – Fitting sheet B3"]
    assert [name for name in now if name.startswith("fitting") and now[name] != first[name]] == [
        "fitting-B3.pdf", "fitting-all.pdf",
    ]  # fmt: skip
    together = text_of(now["fitting-all.pdf"])
    assert all(
        f"Sheet {PrintedSheet.objects.filter(label=label).latest('pk').code}" in together
        for label in ("B1", "B2", "B3")
    )


def test_another_day_is_no_other_fitting_sheet(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, rendered: list[str]
) -> None:
    """It says when it was printed first; the other sheets bear today's date, and are rendered."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    rendered.clear()
    PrintedSheet.objects.update(printed_at=timezone.now())
    SheetFile.objects.exclude(name__startswith="fitting").update(made_from="of another day")

    client.post(page_of(job))

    assert len(rendered) == 6
    assert not [each for each in rendered if "Fitting" in each]


def test_another_paper_is_rendered_anew(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, rendered: list[str]
) -> None:
    """The same figures on A4 are other PDFs."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    rendered.clear()
    job.shop.paper = Paper.A4
    job.shop.save()

    client.post(page_of(job))

    assert len(rendered) == 9


def test_a_cabinets_own_sheet_is_taken_from_the_set(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, rendered: list[str]
) -> None:
    """While that holds just this; changed, it is rendered."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    rendered.clear()
    path = f"{page_of(job)}fitting/{cabinet.pk}/"

    assert client.get(path).content == unpacked(client, job)["fitting-B1.pdf"]
    assert rendered == []
    Cabinet.objects.filter(pk=cabinet.pk).update(depth=inches(23))
    client.get(path)
    assert rendered == ["K-1 – Fitting sheet B1"]


def test_a_set_that_was_called_off_costs_the_one_before_nothing(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, rendered: list[str]
) -> None:
    """What was printed before it is taken again; of three sets one is kept."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    with in_queue:
        client.post(page_of(job))
        work_off(1)
        client.post(f"{page_of(job)}set/cancel/")
        work_off()
    rendered.clear()

    client.post(page_of(job))

    assert rendered == []
    assert SheetSet.objects.count() == 1
    assert list(unpacked(client, job)) == NAMES


def test_two_jobs_of_one_shop_are_printed_in_turns(
    cabinet: Cabinet, installer: Person, office: Person, signed_in: SignIn
) -> None:
    """And two shops': neither waits until the other's set is done."""
    other = JobFactory.create(shop=cabinet.job.shop, number="K-2")
    door_and_drawer(other)
    with in_queue:
        signed_in(installer).post(page_of(cabinet.job))
        signed_in(office).post(page_of(other))
        work_off(2)
        done = dict(BackgroundTask.objects.values_list("job__number", "done"))

    assert done == {"K-1": 1, "K-2": 1}
