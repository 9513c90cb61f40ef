"""The door maker's list: looked through, and checked off as fronts come."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Front, FrontReceipt, Opening
from fronts.rules.practice import inches
from fronts.services.cabinets import cabinet_delete
from shopjobs.models import Job, Person, Shop
from tests.dom import Part, dom
from tests.factories import (
    NOW,
    CabinetFactory,
    JobFactory,
    OpeningFactory,
    PersonFactory,
    ShopFactory,
    overlaid,
)
from tests.saying import opening_change, standard_set

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.fixture
def bought_job(job: Job) -> Job:
    """Three doors alike and one that is wider, all of them bought."""
    buy(job)
    return job


def buy(job: Job, style: str = "shaker") -> None:
    """Three doors alike and one that is wider, all of them bought."""
    overlaid(job)
    standard_set(owner=job, at=NOW, made_by="bought", door_style=style, finish="white lacquer")
    for number in range(4):
        width = inches(15) if number < 3 else inches(14)
        case = CabinetFactory.create(job=job, label=f"B{number + 1}", x=inches(18 * number))
        OpeningFactory.create(cabinet=case, width=width)


def address(job: Job) -> str:
    """The page of the list."""
    return f"/jobs/{job.pk}/bought/"


def lines(client: Client, job: Job) -> list[Part]:
    """The lines as the page shows them."""
    return dom(client.get(address(job))).all(".bought tbody tr")


def send(client: Client, job: Job, line: Part, mark: str = "check", **said: str) -> Any:
    """Post the form of a line as it stands, but for what is said."""
    fields = {each.attribute("name"): each.value for each in line.all("form input")}
    return client.post(address(job), {**fields, "mark": mark, **said})


def widen(job: Job, label: str, by: Person) -> None:
    """One opening a quarter of an inch wider."""
    opening = Opening.objects.get(cabinet__job=job, cabinet__label=label)
    opening_change(opening=opening, width=opening.width - inches(1, 4), at=NOW, by=by)


def test_a_line_says_how_many_and_all_that_a_maker_is_told(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Fronts that are alike together; each leads to its opening."""
    first, second = lines(signed_in(office), bought_job)

    assert first.one(".need").words == "3"
    assert "slab door, hinged left" in first.words
    assert "Style shaker" in first.words
    assert "Finish white lacquer" in first.words
    assert "⌀ 35 mm" in first.words
    opening = Opening.objects.get(cabinet__job=bought_job, cabinet__label="B2")
    (way,) = [link for link in first.all(".where a") if link.words == "B2.a"]
    assert f"/openings/{opening.pk}/" in way.attribute("href")
    assert [link.words for link in second.all(".where a")] == ["B4.a"]


def test_what_is_bought_is_cut_nowhere(bought_job: Job, office: Person, signed_in: SignIn) -> None:
    """The page of what is cut has no part of it, and no plan can be asked for."""
    page = dom(signed_in(office).get(f"/jobs/{bought_job.pk}/cut/"))

    assert "B1.a" not in page.one("main").words


@pytest.mark.parametrize("username", ["ada", "otto"])
def test_a_short_delivery_stays_in_sight_until_the_rest_comes(
    username: str, bought_job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Two of three, then the third: each with who, when and a note."""
    person = Person.objects.get(username=username)
    client = signed_in(person)
    answer = send(client, bought_job, lines(client, bought_job)[0], came="2", note="one is late")

    assert answer.status_code == 302
    line, _ = lines(client, bought_job)
    assert f"2 came, checked by {person.shown_name}" in line.words
    assert "one is late" in line.words
    assert "1 still to come" in line.words
    assert line.field("came").value == "1"

    send(client, bought_job, line)
    line, _ = lines(client, bought_job)
    assert "still to come" not in line.words
    assert f"1 came, checked by {person.shown_name}" in line.words
    assert "3 of 4 came" in dom(client.get(address(bought_job))).one(".progress").words


def test_what_came_last_is_taken_back(bought_job: Job, office: Person, signed_in: SignIn) -> None:
    """And what came before stays."""
    client = signed_in(office)
    send(client, bought_job, lines(client, bought_job)[0], came="2")
    send(client, bought_job, lines(client, bought_job)[0], came="1")
    send(client, bought_job, lines(client, bought_job)[0], mark="uncheck", came="")

    assert sorted(row.label for row in FrontReceipt.objects.all()) == ["B1.a", "B2.a"]


@pytest.mark.parametrize(
    ("came", "says"),
    [("", "Enter how many came."), ("many", "whole number"), ("0", "1 or more"),
     ("4", "3 are still to come"), ("9" * 30, "at most")],
)  # fmt: skip
def test_a_number_that_cannot_have_come_is_refused(
    came: str, says: str, bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """At the field, with what was typed still in it."""
    client = signed_in(office)
    answer = send(client, bought_job, lines(client, bought_job)[0], came=came, note="by van")

    assert answer.status_code == 422
    line = dom(answer).all(".bought tbody tr")[0]
    assert says in line.one(".error").words
    assert (line.field("came").value, line.field("note").value) == (came, "by van")
    assert not FrontReceipt.objects.exists()


def test_the_second_of_two_is_told_what_the_first_checked_off(
    bought_job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Neither counts twice."""
    client, other = signed_in(office), Client()
    other.force_login(owner)
    seen = lines(client, bought_job)[0]
    send(other, bought_job, lines(other, bought_job)[0], came="2", note="by van")
    answer = send(client, bought_job, seen, came="3", note="all here")

    assert answer.status_code == 409
    assert f"{owner.shown_name} checked off 2 of this line with the note “by van”" in answer.text
    assert "Your note was “all here”." in answer.text
    assert FrontReceipt.objects.count() == 2


def test_a_line_that_has_changed_since_somebody_looked_is_not_checked_off(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The list has no such line any more."""
    client = signed_in(office)
    seen = lines(client, bought_job)[1]
    widen(bought_job, "B4", office)
    answer = send(client, bought_job, seen)

    assert answer.status_code == 422
    assert "The kitchen has changed" in answer.text
    assert not FrontReceipt.objects.exists()


def test_a_front_that_changed_after_it_came_is_to_come_again_and_says_what_differs(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Only that one: the others of its line came as they are."""
    client = signed_in(office)
    send(client, bought_job, lines(client, bought_job)[0])
    widen(bought_job, "B2", office)
    rows = {row.one(".where").words: row for row in lines(client, bought_job)}

    assert "width 16 → 15 3/4" in rows["B2.a"].words
    assert rows["B2.a"].field("came").value == "1"
    assert not rows["B1.a, B3.a"].has('[value="check"]')

    send(client, bought_job, rows["B2.a"])
    assert "→" not in dom(client.get(address(bought_job))).one("main").words


def test_what_came_for_a_front_that_has_gone_is_said_until_it_is_taken_off(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A front that is made here by now, or went with its cabinet."""
    client = signed_in(office)
    send(client, bought_job, lines(client, bought_job)[0])
    cabinet_delete(cabinet=Cabinet.objects.get(label="B1"), at=NOW, by=office)
    Front.objects.filter(opening__cabinet__label="B2").update(made_by="here")
    *_, first, second = lines(client, bought_job)

    assert "came for B1.a, which is not bought any more" in first.words
    assert "came for B2.a" in second.words
    for line in (first, second):
        send(client, bought_job, line, mark="drop")
    assert "not bought any more" not in dom(client.get(address(bought_job))).words


def test_the_installer_reads_but_does_not_check_off(
    bought_job: Job, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """Without buttons, and refused where they are tried."""
    line = lines(signed_in(office), bought_job)[0]
    client = signed_in(installer)

    assert not dom(client.get(address(bought_job))).has("main form")
    assert send(client, bought_job, line).status_code == 403


def test_checking_off_in_place_answers_with_the_list_alone(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """And Undo follows it."""
    client = signed_in(office)
    line = lines(client, bought_job)[0]
    sent = {"item": line.field("item").value, "seen": "", "mark": "check", "came": "1"}
    answer = client.post(address(bought_job), sent, headers=HTMX)

    assert dom(answer).first.id == "bought-list"
    assert "job-changed" in answer["HX-Trigger-After-Settle"]


def test_a_job_that_buys_nothing_says_where_that_is_said(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """With the way to its standard; no files of nothing."""
    page = dom(signed_in(office).get(address(job)))

    assert "No front of this job is bought." in page.words
    assert f"/jobs/{job.pk}/standard/" in page.one(".empty a").attribute("href")
    assert not page.has("main .actions")


def test_another_shops_list_is_not_there_and_its_words_are_nowhere(
    bought_job: Job, shop: Shop, office: Person, signed_in: SignIn
) -> None:
    """Neither what it buys nor what came."""
    theirs = JobFactory.create(shop=ShopFactory.create(name="Birch Lane Joiners"))
    buy(theirs, style="beaded")
    client, other = signed_in(office), Client()
    other.force_login(PersonFactory.create(shop=theirs.shop, owner=True))
    send(other, theirs, lines(other, theirs)[0], note="theirs alone")

    for ending in ("/", ".csv", ".xlsx"):
        assert client.get(f"/jobs/{theirs.pk}/bought{ending}").status_code == 404
    page = client.get(address(bought_job)).text
    assert "beaded" not in page
    assert "theirs alone" not in page
    assert "0 of 4 came" in dom(client.get(address(bought_job))).words
    row = FrontReceipt.objects.first()
    assert row is not None
    sent = {"item": str(row.pk), "seen": "", "mark": "drop"}
    assert client.post(address(bought_job), sent).status_code == 422
    assert FrontReceipt.objects.filter(job=theirs).count() == 3
