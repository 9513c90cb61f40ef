"""Offers as files: out and in again, looked through first."""

import csv
import io
from collections.abc import Callable
from decimal import Decimal
from typing import Any

import pytest
from django.test import Client

from fronts.models import Goods, Offer, Supplier
from fronts.rules.items import HandleItem
from fronts.services.hardware import item_add
from shopjobs.models import Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW
from tests.pages.suppliers.offered import offer, supplier
from tests.pages.suppliers.sent_file import HEAD, TAKE, cells, counts, hidden, sent

SignIn = Callable[[Person], Client]


def said() -> list[tuple[Any, ...]]:
    """All offers there are, the preferred one of each thing first."""
    rows = Offer.objects.order_by("goods__name", "place")
    return list(
        rows.values_list(
            "goods__name", "supplier__name", "code", "pack", "unit", "price", "currency",
            "lead_days", "least", "note",
        )
    )  # fmt: skip


def some_offers(shop: Shop) -> None:
    """Offers with all that an offer may say."""
    odd = {"code": "=1+1", "note": "'=cmd; -2 «é»", "lead_days": 0, "least": 3}
    offer(shop, "bumper", "Ash", "4.60", pack=Decimal(100), **odd)
    offer(shop, "bumper", "Birch", "0.05", preferred=True)
    offer(shop, "edge band E-1", "Ash", "1234.50", currency="EUR", pack=Decimal("2.5"), unit="m")
    offer(shop, "foam tape 1 in × 1/8 in", "Ash", "7", currency="JPY")
    offer(shop, "@home", "-Ash-", "1.005", currency="KWD")


@pytest.mark.parametrize("kind", ["csv", "xlsx"])
def test_what_goes_out_comes_back_as_it_was(
    kind: str, desk: Client, shop: Shop, stranger: Person, signed_in: SignIn
) -> None:
    """Unchanged in this shop, all of it in another; exact, with the preferred ones."""
    some_offers(shop)
    before = said()
    file = desk.get(f"/shop/suppliers/prices.{kind}").content

    assert counts(sent(desk, file)) == ["0 new", "0 changed", "5 as before", "0 can’t be read"]

    theirs = signed_in(stranger)
    answer = sent(theirs, file)
    assert counts(answer)[0] == "5 new"
    Supplier.objects.filter(shop=shop).delete()
    Goods.objects.filter(shop=shop).delete()
    assert theirs.post(TAKE, hidden(answer)).status_code == 302
    assert said() == before
    assert theirs.get(f"/shop/suppliers/prices.{kind}").content[:40] == file[:40]


def test_columns_are_in_plain_words_and_no_cell_is_a_formula(desk: Client, shop: Shop) -> None:
    """As every file of the site."""
    some_offers(shop)

    content = desk.get("/shop/suppliers/prices.csv").content.decode("utf-8-sig")

    rows = list(csv.reader(io.StringIO(content)))
    assert ",".join(rows[0]) == HEAD
    assert rows[1][:2] == ["'@home", "'-Ash-"]
    assert rows[3][2] == "'=1+1"
    assert rows[3][5:] == ["4.60", "USD", "0", "3", "no", rows[3][10]]


def test_a_file_is_looked_through_before_anything_changes(desk: Client, shop: Shop) -> None:
    """What is new, changed, as before, or can't be read: by line and column."""
    offer(shop, "bumper", "Ash", "4.60", code="CB")
    offer(shop, "hinge screw", "Ash", "9")
    before = said()
    lines = (
        "Bumper,ASH,CB,,,5.00,,,,,",
        "hinge screw,Ash,,,,9,,,,,",
        "varnish,New Yard,V,5,m,12,,,,,",
        "varnish,New Yard,W,five,,12,,soon,,,",
    )

    answer = sent(desk, "\n".join([HEAD, *lines]))

    assert counts(answer) == ["1 new", "1 changed", "1 as before", "1 can’t be read"]
    faults, rows = dom(answer).all("table.preview")
    assert cells(faults) == [
        ["5", "pack", "“five”", "a number like 12.50 may stand here"],
        ["5", "lead days", "“soon”", "whole working days, or nothing"],
    ]
    assert "4.60 → 5.00" in rows.words
    assert "a supplier that you have not entered yet" in rows.words
    assert said() == before


def test_all_or_some_of_it_is_taken_in_as_one_step(desk: Client, shop: Shop) -> None:
    """Undo takes it back whole."""
    offer(shop, "bumper", "Ash", "4.60")
    before = said()
    lines = ("bumper,Ash,,,,5.00,,,,,", "varnish,Yard,,,,12,,,,,", "oil,Yard,,,,13,,,,,")
    answer = sent(desk, "\n".join([HEAD, *lines]))

    assert desk.post(TAKE, hidden(answer) | {"leave": ["3"]}).status_code == 302

    assert [(row[0], row[5]) for row in said()] == [("bumper", Decimal(5)), ("oil", Decimal(13))]
    step = Revision.objects.latest("pk")
    assert step.text == "Took offers in from a file: 1 new, 1 changed"
    assert desk.post("/shop/undo/", {"revision": step.pk}).status_code == 302
    assert said() == before
    assert not Supplier.objects.filter(name="Yard").exists()


def test_sent_twice_it_is_taken_in_once(desk: Client, shop: Shop) -> None:
    """As every form."""
    form = hidden(sent(desk, f"{HEAD}\noil,Yard,,,,13,,,,,"))

    assert [desk.post(TAKE, form).status_code for _ in range(2)] == [302, 302]
    assert Offer.objects.count() == 1


def test_what_was_seen_beside_other_offers_is_seen_again(desk: Client, shop: Shop) -> None:
    """The list changed since: nothing is taken in, what was left out stays so."""
    form = hidden(sent(desk, f"{HEAD}\noil,Yard,,,,13,,,,,\nwax,Yard,,,,14,,,,,"))
    offer(shop, "oil", "Yard", "12")

    answer = desk.post(TAKE, form | {"leave": ["3"]})

    assert answer.status_code == 409
    assert "changed suppliers or prices since" in dom(answer).one(".summary").words
    assert "12.00 → 13.00" in dom(answer).one("table.preview").words
    assert [each.attribute("value") for each in dom(answer).all("[name=leave][checked]")] == ["3"]
    assert desk.post(TAKE, hidden(answer)).status_code == 302
    assert Offer.objects.count() == 2


@pytest.mark.parametrize(
    "given",
    [
        {},
        {"cells": ""},
        {"cells": "[[1, ["},
        {"cells": "[" * 5000},
        {"cells": "7"},
        {"cells": '[["a", []]]'},
        {"cells": '[[1, ["a"]]]'},
        {"cells": "a\0b"},
        {"cells": "[]", "leave": ["x", "\0", "9" * 5000]},
    ],
)
def test_a_preview_that_came_back_broken_is_refused(given: dict[str, Any], desk: Client) -> None:
    """With what to do; never a failure."""
    answer = desk.post(TAKE, given)

    assert answer.status_code in (409, 422)
    assert not Offer.objects.exists()


def test_what_comes_back_is_read_as_a_file_is(desk: Client, shop: Shop) -> None:
    """Whatever somebody put into the page."""
    form = hidden(sent(desk, f"{HEAD}\noil,Yard,,,,13,,,,,"))
    form["cells"] = form["cells"].replace("13", "a thousand").replace("oil", "o\\u0000l")

    assert desk.post(TAKE, form).status_code == 302
    assert not Offer.objects.exists()


def test_a_limit_that_is_met_on_the_way_leaves_nothing_half_done(
    desk: Client, shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The line is named, and what came before it is not kept."""
    monkeypatch.setattr("fronts.services.offers.MOST_OFFERS", 1)
    form = hidden(sent(desk, f"{HEAD}\noil,Yard,,,,13,,,,,\nwax,Yard,,,,14,,,,,"))

    answer = desk.post(TAKE, form)

    assert answer.status_code == 422
    assert "Line 3" in dom(answer).one(".summary").words
    assert not Offer.objects.exists()
    assert not Supplier.objects.exists()


def test_an_item_of_the_list_is_known_whatever_its_capitals(desk: Client, shop: Shop) -> None:
    """It is no other item."""
    item_add(owner=shop, item=HandleItem("K-1"), at=NOW)
    supplier(shop, "Ash")

    answer = sent(desk, f"{HEAD}\nKnob or Pull k-1,ash,,,,1,,,,,")

    assert "not on your list" not in dom(answer).one("table.preview").words
    desk.post(TAKE, hidden(answer))
    assert Offer.objects.get().goods.name == "knob or pull K-1"
    assert Supplier.objects.count() == 1
