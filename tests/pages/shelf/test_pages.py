"""What is in stock on its pages: found, counted, laid by, used; who sees and changes it."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Goods, StockEntry
from fronts.models.shelf import USED
from shopjobs.models import Job, Person, Shop
from tests.dom import Answer, Part, dom
from tests.factories import JobFactory
from tests.pages.shared.sending import as_sent
from tests.pages.suppliers.offered import offer
from tests.stocked import counted, moved, there_is

SignIn = Callable[[Person], Client]
WAY = "/shop/stock/"
PRICE, NAME = "7318.47", "Quillfeather Supply"


@pytest.fixture
def desk(office: Person, signed_in: SignIn) -> Client:
    """A browser in which the office is signed in."""
    return signed_in(office)


@pytest.fixture
def bumpers(shop: Shop, office: Person, job: Job) -> Goods:
    """Twelve on hand, of which five are laid by."""
    goods = counted(shop, office, 12)
    moved(goods, job, office, 5)
    return goods


def page_of(client: Client, way: str = "", status: int = 200) -> Answer:
    """A page below the stock's address."""
    answer = client.get(f"{WAY}{way}")
    assert answer.status_code == status
    return dom(answer)


def sends(client: Client, form: Part, **typed: Any) -> Any:
    """Send a form of the page, as it is but for what is typed."""
    return client.post(form.attribute("action"), as_sent(form, **typed))


def test_an_empty_stock_says_what_to_do(desk: Client) -> None:
    """Where its first count is entered."""
    page = page_of(desk)

    assert "Nothing is in stock yet" in page.one(".empty").words
    assert page.has('.empty a[href="/shop/stock/count/"]')


def test_everything_in_stock_stands_by_group(
    desk: Client, shop: Shop, office: Person, bumpers: Goods
) -> None:
    """On hand, for which jobs, and free; searched by words, also by a job's."""
    counted(shop, office, 100, "edge band E-1")

    page = page_of(desk)

    assert [head.words for head in page.all("section h2")] == ["Edge bands", "Other"]
    band, bumper = page.all(".in-stock tbody tr")
    assert [cell.words for cell in band.all("td")] == ["100 ft", "", "100 ft"]
    assert [cell.words for cell in bumper.all("td")] == ["12", "5 for K-1", "7"]
    for words in ("BUMP", "k-1", "lindqvist 1"):
        shown = page_of(desk, f"?q={words}").all(".in-stock tbody th")
        assert [each.words for each in shown] == ["bumper"]
    assert "Nothing in stock is like that" in page_of(desk, "?q=%00").words


def test_what_is_laid_by_for_a_job_is_taken_out_in_one_press(
    desk: Client, shop: Shop, job: Job, office: Person, bumpers: Goods
) -> None:
    """All of it; what is free stays. The job's own Undo brings it back."""
    counted(shop, office, 3, "hinge screw")
    page = page_of(desk, f"?job={job.pk}")
    assert page.one("h1").words == "Laid by for K-1"
    assert [each.words for each in page.all(".in-stock tbody th")] == ["bumper"]

    answer = sends(desk, page.one('form[action$="/used/"]'))

    assert answer.status_code == 302
    assert there_is(shop) == {"": 7}
    assert "Nothing is laid by for K-1" in dom(desk.get(answer["Location"])).words
    undo = dom(desk.get(f"/jobs/{job.pk}/order/")).one('form[action$="/undo/"]')
    assert sends(desk, undo).status_code == 302
    assert there_is(shop) == {"": 7, "K-1": 5}


def test_something_is_counted_for_the_first_time(desk: Client, shop: Shop) -> None:
    """By the name under which it is bought, with a reason."""
    form = page_of(desk, "count/?item=edge band E-1").one("#stock-new")
    answer = sends(desk, form, amount="12.5", reason="")
    assert answer.status_code == 422
    assert "Say why" in dom(answer).one(".summary").words

    form = dom(answer).one("#stock-new")
    answer = sends(desk, form, amount="12.5", reason="counted the rolls")

    assert answer.status_code == 302
    page = dom(desk.get(answer["Location"]))
    assert page.one("h1").words == "edge band E-1"
    step = page.one(".ledger tbody tr").words
    assert "counted" in step
    assert "+12.5" in step
    assert "counted the rolls" in step


def test_a_count_carries_what_it_was_shown_with(
    desk: Client, shop: Shop, owner: Person, bumpers: Goods, job: Job
) -> None:
    """Another took some meanwhile: that is told, what was typed stays; saved again, it holds."""
    form = page_of(desk, f"{bumpers.pk}/").one("#count")
    moved(bumpers, job, owner, 2, USED)

    answer = sends(desk, form, amount="20", reason="found a box")

    assert answer.status_code == 409
    page = dom(answer)
    assert "Ada changed what there is of bumper (used" in page.one(".summary").words
    assert page.one("#count-amount").value == "20"
    assert there_is(shop) == {"": 7, "K-1": 3}
    assert sends(desk, page.one("#count"), amount="20", reason="found a box").status_code == 302
    assert there_is(shop) == {"": 17, "K-1": 3}


def test_fewer_than_is_laid_by_are_refused_at_the_field(desk: Client, bumpers: Goods) -> None:
    """With who holds what; what was typed stays."""
    form = page_of(desk, f"{bumpers.pk}/").one("#count")

    answer = sends(desk, form, amount="4", reason="lost some")

    assert answer.status_code == 422
    page = dom(answer)
    assert "5 for K-1" in page.one("#count .error").words
    assert page.one("#count-reason").value == "lost some"


def test_some_is_laid_by_given_back_and_used(
    desk: Client, shop: Shop, job: Job, bumpers: Goods
) -> None:
    """Each by its own form; more than there is, is refused where it was typed."""
    second = JobFactory.create(shop=shop, number="K-2")
    way = f"{bumpers.pk}/"
    lay_by = page_of(desk, way).one("#lay-by")
    assert sends(desk, lay_by, job=second.pk, amount="4").status_code == 302
    assert there_is(shop) == {"": 3, "K-1": 5, "K-2": 4}
    of_first = page_of(desk, way).one(f"#laid-by-{job.pk}")
    assert sends(desk, of_first, kind="used", amount="2").status_code == 302
    of_first = page_of(desk, way).one(f"#laid-by-{job.pk}")
    assert sends(desk, of_first, kind="given back").status_code == 302
    assert there_is(shop) == {"": 6, "K-2": 4}

    answer = sends(desk, page_of(desk, way).one(f"#laid-by-{second.pk}"), kind="used", amount="9")

    assert answer.status_code == 422
    page = dom(answer)
    assert "5 more would be taken" in page.one(f"#laid-by-{second.pk} .error").words
    assert page.one(f"#laid-by-{second.pk}-amount").value == "9"
    assert page.one("#lay-by-amount").value == ""
    said = [row.all("td")[1].words for row in page.all(".ledger tbody tr")]
    assert said == [
        "given back from K-1", "used for K-1", "laid by for K-2", "laid by for K-1", "counted",
    ]  # fmt: skip


@pytest.mark.parametrize(
    "typed",
    [
        {"amount": "9" * 40}, {"amount": "x\0"}, {"amount": "-1"}, {"amount": "1.5"},
        {"amount": "0", "kind": "used"}, {"amount": "1", "job": "0"}, {"amount": "1", "job": "%d"},
        {"amount": "1", "kind": "counted"}, {"amount": "1", "job": "٣"}, {"amount": "1" * 25},
        {"reason": "x\0", "amount": "1"}, {"amount": "2", "seen": "9" * 18, "reason": ""},
        {"amount": "2", "seen": "x" * 18, "reason": ""},
    ],
)  # fmt: skip
@pytest.mark.parametrize("form", ["count", "move"])
def test_whatever_is_typed_is_answered_in_words(
    form: str, typed: dict[str, str], desk: Client, shop: Shop, bumpers: Goods
) -> None:
    """And changes nothing."""
    usual = {"kind": "given back", "job": "0", "reason": "as it is", "seen": ""}

    answer = desk.post(f"{WAY}{bumpers.pk}/{form}/", usual | typed)

    assert answer.status_code in (409, 422)
    assert dom(answer).has(".summary li")
    assert there_is(shop) == {"": 7, "K-1": 5}


@pytest.mark.parametrize("way", ["?job=x", "?job=0", f"?job={'9' * 40}", "0/", "99999999/"])
def test_what_is_not_there_is_not_found(way: str, desk: Client) -> None:
    """Whatever an address says."""
    page_of(desk, way, status=404)


def test_the_installer_sees_counts_and_no_prices(
    shop: Shop, job: Job, installer: Person, signed_in: SignIn, bumpers: Goods
) -> None:
    """And changes nothing."""
    offer(shop, "bumper", NAME, PRICE)
    client = signed_in(installer)

    for way in ("", f"?job={job.pk}", f"{bumpers.pk}/"):
        page = page_of(client, way)
        assert "bumper" in page.words
        assert not [each for each in (PRICE, NAME, "/shop/buy/", "/shop/suppliers/")
                    if each in client.get(f"{WAY}{way}").text]  # fmt: skip
        assert not page.has('main form[method="post"][action^="/shop/stock/"]')
    for way in ("count/", f"{bumpers.pk}/count/", f"{bumpers.pk}/move/", f"job/{job.pk}/used/"):
        assert client.post(f"{WAY}{way}", {"amount": "1"}).status_code == 403
    assert there_is(shop) == {"": 7, "K-1": 5}


def test_another_shops_stock_does_not_exist(
    shop: Shop, job: Job, stranger: Person, signed_in: SignIn, bumpers: Goods
) -> None:
    """Neither by its keys nor by its values."""
    assert stranger.shop is not None
    theirs = counted(stranger.shop, stranger, 731)
    client = signed_in(stranger)

    page = page_of(client)

    assert [cell.words for cell in page.all(".in-stock td")] == ["731", "", "731"]
    assert page_of(client, "?q=K-1").has(".empty")
    page_of(client, f"?job={job.pk}", status=404)
    page_of(client, f"{bumpers.pk}/", status=404)
    for way in ("count", "move"):
        assert client.post(f"{WAY}{bumpers.pk}/{way}/", {"amount": "1"}).status_code == 404
    assert client.post(f"{WAY}job/{job.pk}/used/").status_code == 404
    move = {"kind": "laid by", "job": job.pk, "amount": "1"}
    assert client.post(f"{WAY}{theirs.pk}/move/", move).status_code == 422
    assert there_is(shop) == {"": 7, "K-1": 5}


def test_a_form_that_is_sent_twice_moves_once(
    desk: Client, shop: Shop, bumpers: Goods, job: Job
) -> None:
    """A double click lays by what one click does."""
    form = as_sent(page_of(desk, f"{bumpers.pk}/").one("#lay-by"), job=job.pk, amount="2")
    for _ in range(2):
        assert desk.post(f"{WAY}{bumpers.pk}/move/", form).status_code == 302

    assert there_is(shop) == {"": 5, "K-1": 7}


def test_many_steps_come_in_pages(desk: Client, shop: Shop, office: Person) -> None:
    """The latest first."""
    goods = counted(shop, office, 1)
    entry = StockEntry.objects.get()
    StockEntry.objects.bulk_create(
        StockEntry(shop=shop, goods=goods, amount=1, kind="counted", reason=f"no. {number}",
                   entered_by=office, entered_at=entry.entered_at)
        for number in range(60)
    )  # fmt: skip

    assert "no. 59" in page_of(desk, f"{goods.pk}/").one(".ledger").words
    assert "counted the shelf" in page_of(desk, f"{goods.pk}/?page=2").one(".ledger").words
    assert page_of(desk, f"{goods.pk}/?page=x").has(".ledger")
