"""Screws and lengths on the shelf as a CSV file, out and in, and drawn."""

from collections.abc import Callable

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from fronts.models import Stock
from fronts.rules.practice import inches
from fronts.snapshot.stock import stock_in_force
from shopjobs.models import Person, Shop
from tests.dom import dom

SignIn = Callable[[Person], Client]
FILE = "/shop/hardware/stock/file/"
CSV = "/shop/hardware/stock/stock.csv"


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def sent(desk: Client, text: str) -> object:
    """What is answered to such a file."""
    return desk.post(FILE, {"file": SimpleUploadedFile("s.csv", text.encode(), "text/csv")})


def test_out_and_in_again_is_the_same(desk: Client, shop: Shop, stranger: Person) -> None:
    """And one figure changed in it is changed here, in no other shop."""
    assert stranger.shop is not None
    held, others = stock_in_force(shop), stock_in_force(stranger.shop)
    text = desk.get(CSV).content.decode("utf-8-sig")

    assert getattr(sent(desk, text), "status_code", 0) == 302
    assert stock_in_force(shop) == held

    first = str(float(held.screw_lengths[0] / inches(1)))
    sent(desk, text.replace(first, "0.875", 1))
    assert stock_in_force(shop).screw_lengths[0] == inches(7, 8)
    assert stock_in_force(stranger.shop) == others


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (lambda text: text.replace("8-32", "8x32"), "Enter a thread like 8-32"),
        (lambda text: text + text.splitlines()[1] + "\r\n", "One line stands under the headings"),
        (lambda text: text.replace("thread", "treat", 1), "no column is called"),
    ],
)
def test_what_is_wrong_is_told_by_line_and_column(
    change: Callable[[str], str], told: str, desk: Client
) -> None:
    """Nothing of it is taken in."""
    text = change(desk.get(CSV).content.decode("utf-8-sig"))

    answer = sent(desk, text)

    assert getattr(answer, "status_code", 0) == 422
    assert told in dom(answer).words
    assert not Stock.objects.exists()


def test_the_lengths_are_drawn(desk: Client) -> None:
    """With a figure of what is kept; the page of hardware leads to the file."""
    page = dom(desk.get("/shop/hardware/stock/"))

    assert "thread's depth 1/2" in page.one("svg").words
    assert {FILE, CSV} <= set(dom(desk.get("/shop/hardware/")).one("#screws").addresses)
