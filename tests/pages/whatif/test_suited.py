"""Which standard suits the doors on hand: tried, told apart, and led on from."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import DoorOnHand, Front
from fronts.rules.practice import inches
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.factories import DoorOnHandFactory
from tests.pages.kitchens import furnish

SignIn = Callable[[Person], Client]
USUAL = {"mount": "overlay", "least": "", "most": "", "by": "", "fronts": "every"}


@pytest.fixture
def desk(job: Job, owner: Person, signed_in: SignIn) -> Client:
    """The owner's browser; a door 16 1/2 × 29 on hand for an opening 15 × 27 1/2."""
    furnish(job)
    DoorOnHand.objects.filter(job=job).update(width=inches(33, 2), height=inches(29))
    return signed_in(owner)


def ask(client: Client, job: Job, **asked: str) -> Part:
    return dom(client.get(f"/jobs/{job.pk}/what-if/doors/", asked))


def rows_of(page: Part) -> dict[str, list[str]]:
    """The figures of each choice, by its words."""
    rows = page.all(".tried tbody tr")
    return {row.one("th").words: [cell.words for cell in row.all("td")][:5] for row in rows}


def test_the_usual_range_is_tried_at_once(desk: Client, job: Job) -> None:
    """1/4 to 3/4 in by the job's step; the door serves from 1/4 on, and at 3/4 as it is."""
    before = kitchen_of(job)
    page = ask(desk, job)

    assert page.one("#suited-head").words == "Best: 3/4 all round"
    assert "Of 1 door on hand 1 would serve; 0 in would be sawn off in all." in page.words
    assert "As many doors serve with 9 of the choices; least is sawn off" in page.words
    rows = rows_of(page)
    assert len(rows) == 10
    assert rows["1/4 all round"][:3] == ["1", "0", "2"]
    assert rows["3/4 all round Best"][:3] == ["1", "0", "0"]
    assert rows["As it is now"][:3] == ["1", "0", "1"]
    assert "D1 becomes B1.a, as it is" in page.one(".doors").words
    assert kitchen_of(job) == before


def test_an_address_that_says_little_is_as_usual(desk: Client, job: Job) -> None:
    """What it leaves out is as the empty form has it."""
    assert list(rows_of(ask(desk, job, most="5/16"))) == [
        "As it is now", "1/4 all round", "5/16 all round Best",
    ]  # fmt: skip


def test_a_choice_leads_to_what_it_would_change(desk: Client, job: Job) -> None:
    """With the same laps, and no reveal beside them."""
    Front.objects.filter(opening__closed_by="door").update(choose=True)
    page = ask(desk, job, **USUAL | {"least": "3/8", "most": "3/8"})
    (link,) = [each for each in page.all(".tried a") if "3/8 all round" in each.words]

    shown = dom(desk.get(link.attribute("href")))
    form = shown.one("#what-if-form")

    assert form.field("overlay_bottom").value == "3/8"
    assert form.field("reveal_between").value == ""
    assert "door D1, trim 3/8 off the left and the right" in shown.all(".compared")[0].words


def test_only_fronts_that_take_one_where_any_does(desk: Client, job: Job) -> None:
    """The other doors of the kitchen are made new whatever is on hand."""
    assert "Fronts that take one" not in ask(desk, job).words
    DoorOnHandFactory.create(job=job, label="D2", width=inches(40), height=inches(40))
    Front.objects.filter(opening__closed_by="door").update(choose=True)

    page = ask(desk, job)

    assert page.field("fronts").value == "asked"
    assert "once its opening says so" not in page.words
    assert "once its opening says so" in ask(desk, job, fronts="every").words
    assert rows_of(page)["1/4 all round"][:2] == ["1", "0"]


def test_inset_has_a_range_of_its_own(desk: Client, job: Job) -> None:
    """Gaps of 1/16 to 3/16; no door of 16 1/2 is trimmed to 14 3/4."""
    page = ask(desk, job, **USUAL | {"mount": "inset"})

    assert page.one("#suited-head").words == "No door serves with any of these"
    assert list(rows_of(page))[1:3] == ["inset 1/16 all round Best", "inset 3/32 all round"]


def test_sides_and_ends_apart(desk: Client, job: Job) -> None:
    """Each pair is a choice; of many the best are shown."""
    page = ask(desk, job, **USUAL | {"apart": "on"})

    assert "81 choices tried, the best 30 shown" in page.words
    assert len(rows_of(page)) == 31


@pytest.mark.parametrize(
    ("asked", "field", "words"),
    [
        ({"by": "1/128", "apart": "on"}, "by", "Give a coarser step"),
        ({"least": "3/4", "most": "1/4"}, "most", "less than the smallest"),
        ({"by": "0"}, "by", "“0” is nothing"),
        ({"least": "-1/4"}, "least", "is negative"),
        ({"least": "a bit"}, "least", "a bit"),
        ({"mount": "sideways"}, "mount", "Choose one from the list"),
    ],
    ids=["too fine", "the wrong way round", "no step", "below nothing", "no length", "no mount"],
)
def test_bad_input_is_told_at_its_field(
    desk: Client, job: Job, asked: dict[str, str], field: str, words: str
) -> None:
    """422, with what was typed still there."""
    answer = desk.get(f"/jobs/{job.pk}/what-if/doors/", USUAL | asked)
    page = dom(answer)

    assert answer.status_code == 422
    assert words in page.one(f"#{page.field(field).id}_error").words
    assert not page.has(".tried")
    if field != "mount":
        assert page.field(field).value == asked[field]


def test_without_doors_it_says_where_to_enter_them(desk: Client, job: Job) -> None:
    """Nothing is tried."""
    DoorOnHand.objects.all().delete()

    page = ask(desk, job)

    assert "There are no doors on hand in this job." in page.one(".empty").words
    assert not page.has("#suited-form")
