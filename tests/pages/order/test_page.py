"""The hardware order: gone through line by line, and taken away as a file."""

import csv
import io
from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.models import Opening, OrderCheck
from fronts.rules.practice import inches
from fronts.services.boxes import box_remove
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import (
    HINGES,
    NOW,
    BoxFactory,
    OpeningFactory,
)
from tests.ordering import facts_of
from tests.saying import front_of, standard_set

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


def address(job: Job) -> str:
    """The order page of the job."""
    return f"/jobs/{job.pk}/order/"


def mark(client: Client, job: Job, **changes: str | int) -> Any:
    """Look at the page and check the hinges, unless told otherwise."""
    posted: dict[str, str | int] = {"item": HINGES, "need": 2, "mark": "check", "note": ""}
    posted |= changes
    forms = dom(client.get(address(job))).all(".mark form")
    shown = [form for form in forms if form.field("item").value == posted["item"]]
    hidden = {name: shown[0].field(name).value if shown else "" for name in ("seen", "looked_at")}
    return client.post(address(job), {**hidden, **posted})


def add_door(job: Job) -> None:
    """A second cabinet with a door: two more hinges."""
    OpeningFactory.create(
        cabinet__job=job, cabinet__label="B2", cabinet__x=inches(18), height=inches(19)
    )


def test_each_line_says_how_many_why_and_for_which_fronts(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The hinges of the door stand there with their number, their reason and their front."""
    page = dom(signed_in(office).get(address(kitchen_job)))

    (row,) = [row for row in page.all("tr") if row.has(".item") and f"{HINGES} by" in row.words]
    assert "by each door's height and weight" in row.words
    assert "B1.a: 2" in row.words
    assert "0 of" in page.words


@pytest.mark.parametrize("username", ["ada", "otto"])
def test_the_desk_checks_a_line(
    username: str, kitchen_job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Owner and office mark a line with their name and the time; the progress counts it."""
    person = Person.objects.get(username=username)
    client = signed_in(person)

    answer = mark(client, kitchen_job, note="from the spring order")

    assert answer.status_code == 302
    page = dom(client.get(address(kitchen_job)))
    assert f"2 checked by {person.shown_name}" in page.words
    assert "from the spring order" in page.words
    assert "1 of" in page.words


def test_the_installer_reads_but_does_not_check(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """The installer sees the list without buttons, and is refused where they are tried."""
    client = signed_in(installer)

    assert not dom(client.get(address(kitchen_job))).has("main button")
    assert mark(client, kitchen_job).status_code == 403
    assert not OrderCheck.objects.exists()


def test_a_mark_is_taken_back(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """Unchecking a line leaves it as if nobody had looked at it."""
    client = signed_in(office)
    mark(client, kitchen_job)
    mark(client, kitchen_job, mark="uncheck")

    assert "checked by" not in dom(client.get(address(kitchen_job))).words


def test_htmx_gets_the_list_alone(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """Checking in place answers with the list, not with a page round it."""
    client, shown = signed_in(office), facts_of(kitchen_job)[HINGES].short_name
    asked = {"item": HINGES, "need": 2, "mark": "check", "looked_at": shown}
    answer = client.post(address(kitchen_job), asked, headers=HTMX)

    assert answer.status_code == 200
    assert dom(answer).first.id == "order-list"
    assert "job-changed" in answer["HX-Trigger-After-Settle"]  # Undo follows it.
    assert "2 checked by otto" in dom(answer).words
    assert "HX-Request" in answer["Vary"]


def test_what_has_changed_since_is_named(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """More of a thing, a new thing and a thing no longer needed all show."""
    client = signed_in(office)
    mark(client, kitchen_job)
    slides = next(each for each in _items(client, kitchen_job) if each.startswith("side slides"))
    mark(client, kitchen_job, item=slides, need=1)
    add_door(kitchen_job)
    drawer = Opening.objects.get(cabinet__job=kitchen_job, label="b")
    box_remove(front=front_of(drawer), by=office, at=NOW)
    BoxFactory.create(opening=drawer, height=inches(5), depth=inches(18), slide="under")

    page = dom(client.get(address(kitchen_job)))

    assert "order 2 more for B2." in page.words
    assert "1 over: no longer needed" in page.words
    assert "new since this list was begun" in page.words
    assert "The kitchen has changed since" in page.words
    assert "Check 4 now" in page.words


def test_a_line_that_was_never_looked_at_is_not_called_new(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Only what came after somebody began is new; the rest just waits."""
    client = signed_in(office)

    assert "new since" not in dom(client.get(address(kitchen_job))).words
    mark(client, kitchen_job)
    assert "new since" not in dom(client.get(address(kitchen_job))).words


def test_a_need_that_changed_meanwhile_is_not_checked(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Whoever looked at 2 hinges does not check 4; the note stays as typed."""
    client = signed_in(office)
    add_door(kitchen_job)

    answer = mark(client, kitchen_job, note="brass ones")

    assert answer.status_code == 422
    assert f"it was 2 × {HINGES} when you looked, now it is 4" in dom(answer).words
    assert "brass ones" in dom(answer).values
    assert not OrderCheck.objects.exists()


@pytest.mark.parametrize(
    "typed",
    [
        {"need": "two"}, {"need": "-1"}, {"need": "9" * 30}, {"need": ""}, {"item": ""},
        {"item": "gold hinge"}, {"item": "x" * 300}, {"mark": "burn"}, {"note": "x" * 500},
        {"note": "two\nlines"}, {"item": "a\x00b"},
    ],
)  # fmt: skip
def test_what_makes_no_sense_is_refused(
    typed: dict[str, str], kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A mark that can't be is answered in words, and nothing is kept."""
    answer = mark(signed_in(office), kitchen_job, **typed)

    assert answer.status_code == 422
    assert "There is a problem" in dom(answer).words
    assert not OrderCheck.objects.exists()


def test_a_job_without_fronts_says_what_the_page_is_for(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """An empty list leads to where it is filled."""
    page = dom(signed_in(office).get(address(job)))

    assert "Nothing to order yet" in page.words
    assert f"/jobs/{job.pk}/" in page.addresses


def test_stops_are_named_on_top(job: Job, office: Person, signed_in: SignIn) -> None:
    """A kitchen that can't be cut as it is should not be ordered for either."""
    standard_set(owner=job, at=NOW, mount="inset", least_gap=inches(1, 2))
    OpeningFactory.create(
        cabinet__job=job, measured_diagonal_1=inches(32), measured_diagonal_2=inches(31)
    )

    page = dom(signed_in(office).get(address(job)))

    assert "stop" in page.words
    assert "don’t order yet" in page.words


@pytest.mark.parametrize("path", ["order/", "order.csv"])
def test_another_shop_sees_nothing(
    path: str, kitchen_job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """The list of another shop does not exist."""
    client = signed_in(stranger)

    assert client.get(f"/jobs/{kitchen_job.pk}/{path}").status_code == 404
    assert mark(client, kitchen_job).status_code == 404


def test_other_methods_are_refused(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """The page is read and posted to, the file is read."""
    client = signed_in(office)

    assert client.delete(address(kitchen_job)).status_code == 405
    assert client.post(f"/jobs/{kitchen_job.pk}/order.csv").status_code == 405


def test_the_page_takes_few_queries(
    kitchen_job: Job,
    office: Person,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """However many lines there are."""
    client = signed_in(office)

    with django_assert_max_num_queries(27):
        client.get(address(kitchen_job))


def test_the_file_holds_every_line(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """A spreadsheet gets the same needs, and who checked them."""
    client = signed_in(office)
    mark(client, kitchen_job, note="=1+1")

    answer = client.get(f"/jobs/{kitchen_job.pk}/order.csv")

    rows = list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))
    assert answer["Content-Disposition"] == 'attachment; filename="K-1 order.csv"'
    assert rows[0] == [
        "item", "need", "spares", "why", "fronts", "checked by", "checked at",
        "need when checked", "change", "note", "unit", "approved", "sent", "came",
        "from stock",
    ]  # fmt: skip
    hinge = next(row for row in rows if row[0] == HINGES)
    assert (hinge[1], hinge[4], hinge[5]) == ("2", "B1.a: 2", "otto")
    assert hinge[3].startswith("by each door's height and weight")
    assert (hinge[7], hinge[9]) == ("2", "'=1+1")


def test_spares_stand_beside_the_need(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """Eight screws and the usual 5 % of them, which is less than one, make one spare."""
    client = signed_in(office)

    page = dom(client.get(address(kitchen_job)))
    answer = client.get(f"/jobs/{kitchen_job.pk}/order.csv")

    rows = list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))
    screws = next(row for row in rows if row[0] == "hinge screw")
    assert screws[1:3] == ["8", "1"]
    assert "8 and 1 spare" in page.words
    assert "Spares are the shop’s own share" in page.words


def _items(client: Client, job: Job) -> list[str]:
    answer = client.get(f"/jobs/{job.pk}/order.csv")
    return [row[0] for row in csv.reader(io.StringIO(answer.content.decode("utf-8-sig")))]


@pytest.mark.parametrize("decision", ["check", "uncheck"])
def test_what_another_checked_since_stands(
    decision: str, kitchen_job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Whoever didn't see a check neither replaces it nor takes it back; both notes are shown."""
    mark(signed_in(owner), kitchen_job, note="from the shelf")

    answer = mark(signed_in(office), kitchen_job, mark=decision, note="brass ones", seen="")

    assert answer.status_code == 409
    told = dom(answer).one(".summary").words
    assert f"checked 2 × {HINGES} with the note “from the shelf” since you looked" in told
    assert told.partition("Ada, at ")[1]
    assert "Your note was “brass ones”." in told
    assert OrderCheck.objects.get().note == "from the shelf"
    assert mark(signed_in(office), kitchen_job, mark="uncheck").status_code == 302
