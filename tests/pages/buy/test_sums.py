"""Screen, paper, files and message say the same to the piece and the cent, whatever is needed."""

from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from fractions import Fraction

from django.http import HttpResponse
from django.template.loader import render_to_string
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.figures.purchase import PurchaseWords
from fronts.models import Goods, Offer, Supplier
from fronts.pages.buy.rows.files import purchase_csv, purchase_xlsx
from fronts.pages.buy.rows.purchases import bought_rows
from fronts.pages.shared.purchase_asked import Asked
from fronts.rules.buying import SupplierOffer, Wanted, buying
from fronts.rules.kitchen import Kitchen
from fronts.rules.offers import BUY_UNITS
from fronts.rules.schedule import schedule
from fronts.rules.shelf import amount_in, kept, with_stock
from fronts.selectors.needed import needs_of
from fronts.selectors.purchases import ShopBuying
from fronts.sheets import purchase
from shopjobs.models import Job
from tests.dom import dom
from tests.pages.buy import read_back
from tests.rules.buying import buying as kitchens_that_buy
from tests.rules.laws import KITCHEN_LAW

SELLERS = {
    key: Supplier(pk=key, name=f"Seller {key}", account="=1+1", lead_days=key) for key in (1, 2, 3)
}
_PRICES = st.decimals(min_value=0, max_value=500, places=2)
_PACKS = st.integers(1, 120).map(Decimal)


@st.composite
def offers(draw: st.DrawFn, names: Sequence[str]) -> list[Offer]:
    """Offers of some of the things, in packs and money of any kind, some in another unit."""
    found: list[Offer] = []
    for name in names:
        for seller in draw(st.sets(st.sampled_from((1, 2, 3)), max_size=2)):
            found.append(
                Offer(
                    pk=len(found) + 1, goods=Goods(pk=1, name=name), supplier=SELLERS[seller],
                    price=draw(_PRICES), pack=draw(_PACKS), least=draw(st.integers(1, 6)),
                    currency=draw(st.sampled_from(("USD", "USD", "EUR"))),
                    unit=draw(st.sampled_from(("piece", "piece", "piece", *BUY_UNITS))),
                )
            )  # fmt: skip
    return found


def asked_for(wanted: list[Wanted], rows: list[Offer]) -> Asked:
    """What is bought of these offers."""
    by_name: dict[str, list[SupplierOffer]] = {}
    for row in rows:
        told = SupplierOffer(row.pk, row.supplier_id, row.facts, row.days)
        by_name.setdefault(row.goods.name, []).append(told)
    jobs = (Job(pk=1, number="T-1"),)
    found = buying(wanted, by_name)
    return Asked(ShopBuying(jobs, found, {row.pk: row for row in rows}, SELLERS), (), frozenset())


def check_all(asked: Asked) -> None:
    """Every hand-over read back; together they are what the screen says."""
    page = bought_rows(asked, "Alder Row", date(2027, 3, 1))
    sums: dict[str, Decimal] = {}
    for supplier in page.suppliers:
        words: PurchaseWords = supplier.words
        expected = [(row.name, row.packs, row.cost.amount) for row in words.rows]
        context = {"supplier": supplier, "asked": asked, "bought": page}
        shown = dom(HttpResponse(render_to_string("fronts/buy/supplier.html", context)))
        paper = dom(HttpResponse(purchase.content(words, "Alder Row", date(2027, 3, 1))))

        assert read_back.of_csv(purchase_csv(words)) == expected
        assert read_back.of_xlsx(purchase_xlsx(words)) == expected
        bare = [row[1:] for row in expected]
        assert read_back.of_page(shown) == bare
        assert read_back.of_paper(paper) == bare
        assert read_back.of_message(shown.one("textarea").value) == bare
        assert words.costs in paper.words
        assert words.costs in shown.one("tfoot").words
        assert f"In all {words.costs}" in shown.one("textarea").value
        for row in words.rows:
            sums[row.cost.currency] = sums.get(row.cost.currency, Decimal(0)) + row.cost.amount
    assert {each.currency: each.amount for each in asked.bought.buying.costs} == sums


@settings(KITCHEN_LAW, max_examples=10)
@given(st.data(), kitchens_that_buy())
def test_everything_that_is_handed_over_says_the_same(data: st.DataObject, of: Kitchen) -> None:
    """Line by line, of any kitchen and any offers."""
    wanted = list(needs_of(schedule(of), None))
    names = list(dict.fromkeys(each.name for each in wanted))

    check_all(asked_for(wanted, data.draw(offers(names))))


@settings(KITCHEN_LAW, max_examples=6)
@given(st.data(), kitchens_that_buy())
def test_so_does_what_stock_leaves_to_buy(data: st.DataObject, of: Kitchen) -> None:
    """Of each thing just so much less is bought as is laid by of it, down to nothing."""
    needed = list(needs_of(schedule(of), None))
    names = list(dict.fromkeys(each.name for each in needed))
    amounts = st.integers(0, 40).map(Fraction)
    units = {each.name: each.unit for each in needed}
    held = {name: kept(data.draw(amounts), units[name]) for name in names}

    wanted = with_stock(needed, held)

    check_all(asked_for(wanted, data.draw(offers(names))))
    for name in names:
        before = sum(each.amount for each in needed if each.name == name)
        after = sum(each.amount for each in wanted if each.name == name)
        assert after == max(before - amount_in(held[name], units[name]), 0)


_NAMES = ("hinge H-1", "bumper", "edge band E-1", "=2+2", "sheet MDF 3/4 in, 96 × 48 in")
_WANTED = st.builds(
    Wanted, name=st.sampled_from(_NAMES), job=st.sampled_from(("T-1", "T-2")),
    need=st.none() | st.integers(0, 400).map(Fraction), spares=st.integers(0, 9).map(Fraction),
    covered=st.integers(0, 200).map(Fraction), unit=st.sampled_from(("", "", "ft", "m")),
)  # fmt: skip


@settings(max_examples=40, deadline=None)
@given(st.data(), st.lists(_WANTED, max_size=12))
def test_so_do_needs_of_several_jobs(data: st.DataObject, wanted: list[Wanted]) -> None:
    """With lengths in feet and metres, and what was sent for already."""
    check_all(asked_for(wanted, data.draw(offers(_NAMES))))
