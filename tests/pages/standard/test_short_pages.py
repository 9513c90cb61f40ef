"""The index of the shop's standard, and its short pages: every field once, every field drawn."""

from collections import Counter
from collections.abc import Callable
from pathlib import Path

import pytest
from django.test import Client

from fronts.facts.rows import column_names
from fronts.pages.standard.forms.short_pages import SHORT_PAGES
from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.practice import NUMBER_NAMES, TABLES
from fronts.rules.standard_keys import Standard
from shopjobs.models import Person
from tests.dom import Answer, dom
from tests.pages.standard.short_pages import FORM, address_of, post_own

SignIn = Callable[[Person], Client]
MOST_FIELDS = 12
STYLES = (Path(__file__).parents[3] / "static" / "css" / "standard.css").read_text(encoding="utf-8")
PAGES = list(SHORT_PAGES)


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def _page(desk: Client, path: str) -> Answer:
    return dom(desk.get(f"/shop/standard/{path}/"))


def _fields(page: Answer) -> list[str]:
    every = page.one(FORM).all("input:not([type=hidden]), select, textarea")
    return [field.attribute("name") for field in every]


def test_every_field_is_reached_exactly_once(desk: Client) -> None:
    """By links from the index: each key, number, table and box stock, as they are declared."""
    links = dom(desk.get("/shop/standard/")).one("ul.standard-index").all("h2 a")
    pages = [dom(desk.get(link.attribute("href"))) for link in links]
    shown = Counter(name for page in pages for name in _fields(page))

    boxes = [f"boxes_{name}" for name in column_names(BoxesMadeOf).values()]
    declared = [*column_names(Standard).values(), *NUMBER_NAMES, *TABLES, *boxes]
    assert shown == Counter(declared)
    assert max(len(_fields(page)) for page in pages) <= MOST_FIELDS


@pytest.mark.parametrize("path", PAGES)
def test_every_field_is_named_once_in_its_drawing(path: str, desk: Client) -> None:
    """With the number that lets the page mark it while it has the focus."""
    page = _page(desk, path)
    form = page.one(FORM)
    numbers = [
        field.attribute("data-of")
        for field in form.all("input:not([type=hidden]), select, textarea")
    ]
    drawn = [mark.attribute("data-of") for mark in form.all("svg .measure") if mark.has("text")]

    assert numbers == [str(place) for place in range(1, len(numbers) + 1)]
    assert sorted(drawn, key=int) == numbers
    assert all(f'[data-of="{number}"]:focus' in STYLES for number in numbers)


@pytest.mark.parametrize("path", PAGES)
def test_a_page_saved_as_it_stands_changes_nothing(path: str, desk: Client) -> None:
    """What is usual stays unsaid; the page is shown again and says that it is saved."""
    form = _page(desk, path).one(FORM)
    shown = {name: form.field(name).value for name in [*_fields(_page(desk, path)), "seen"]}

    answer = desk.post(f"/shop/standard/{path}/", shown, follow=True)

    assert answer.redirect_chain == [(f"/shop/standard/{path}/", 302)]
    again = dom(answer).one(FORM)
    assert {name: again.field(name).value for name in shown} == shown


def test_the_index_says_the_few_figures_and_whose_they_are(
    desk: Client, stranger: Person, signed_in: SignIn
) -> None:
    """This shop's own stand out; another shop's index stays as it was."""
    post_own(desk, {"least_gap": "3/32"})
    post_own(desk, {f"inset_{side}": size for side, size in
                    (("left", "1/8"), ("right", "1/8"), ("top", "1/8"), ("bottom", "5/32"))}
             | {"least_gap": "3/32"})  # fmt: skip

    ours = dom(desk.get("/shop/standard/")).one("ul.standard-index").words
    theirs = dom(signed_in(stranger).get("/shop/standard/")).one("ul.standard-index").words

    assert "Least anywhere 3/32 This shop" in ours
    assert "Inset gap 1/8, 1/8, 1/8, 5/32 This shop" in ours
    assert "6 fields, 5 set by this shop" in ours
    assert "Screw 0.164 ASME B18.6.1: 0.060 + 0.013 × 8 in" in ours
    assert "3/32 This shop" not in theirs
    assert "5/32" not in theirs


def test_the_drawing_follows_what_is_typed(desk: Client) -> None:
    """Name and value at once, its part moved; what can't be read is drawn as it was."""
    address = f"{address_of('knob_from_end')}drawing/"

    def drawn(typed: dict[str, str]) -> Answer:
        return dom(desk.get(address, typed))

    post_own(desk, {"wide_drawer": "27"})
    before, after = drawn({"wide_drawer": "27"}), drawn({"knob_from_end": "5 1/2",
                                                         "wide_drawer": "2 1/"})  # fmt: skip

    assert "from end 3" in before.words
    assert "from end 5 1/2" in after.words
    assert "two knobs from 27" in after.words
    assert "What can’t be read yet is drawn as it was." in after.words
    assert _lines(before, "2") != _lines(after, "2")
    assert _lines(before, "6") == _lines(after, "6")
    assert not _page(desk, "knobs").field("knob_from_end").value


def _lines(answer: Answer, number: str) -> list[str]:
    return [path.attribute("d") for path in answer.all(f'.measure[data-of="{number}"] path')]


def test_a_page_says_its_own_values_apart_from_the_usual(desk: Client) -> None:
    """In the drawing what the shop says is marked, and its unit follows."""
    post_own(desk, {"humidity_low": "25", "made_at": "8"})
    drawing = _page(desk, "materials").one("svg")

    own = [mark.words for mark in drawing.all(".measure.is-own") if mark.has("text")]
    usual = [mark.words for mark in drawing.all(".measure.is-usual") if mark.has("text")]
    assert sorted(own) == ["driest air 25 %", "wood when made 8 %"]
    assert "room 69.8 °F" in usual


def test_an_unknown_page_does_not_exist(desk: Client) -> None:
    """Nor does its drawing; the index takes nothing."""
    assert desk.get("/shop/standard/nothing/").status_code == 404
    assert desk.get("/shop/standard/nothing/drawing/").status_code == 404
    assert desk.post("/shop/standard/", {"form": "numbers"}).status_code == 405
