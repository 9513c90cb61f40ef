"""One size of an opening after the other, as an installer takes them: with and without scripts."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person, Revision
from tests.dom import Answer, dom
from tests.factories import NOW, door_and_drawer
from tests.pages.kitchens import HTMX, posted_by
from tests.pages.standard.short_pages import post_own
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
SIZES = ("width-top", "width-bottom", "height-left", "height-right", "diagonal-1", "diagonal-2")


@pytest.fixture
def door(job: Job) -> Opening:
    """An opening 15 × 19 behind an inset door, over one 15 × 7 behind a drawer front."""
    standard_set(owner=job, at=NOW, mount="inset")
    return Opening.objects.get(cabinet=door_and_drawer(job), label="a")


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer's."""
    return signed_in(installer)


def at(opening: Opening, size: str) -> str:
    """Where a size of the opening is taken."""
    return f"/jobs/{opening.cabinet.job_id}/measuring/{opening.pk}/{size}/"


def take(client: Client, address: str, typed: str, **more: Any) -> Any:
    """Open the page, type a size, and press Next."""
    form = dom(client.get(address)).one(".size-form")
    return send(client, form, typed, **more)


def send(client: Client, form: Any, typed: str, **more: Any) -> Any:
    """Send a form with this in its field."""
    field = form.one("[data-reading]").attribute("name")
    sent = {**posted_by(form), field: typed, **more.pop("data", {})}
    return client.post(form.attribute("action"), sent, **more)


def measured(opening: Opening) -> list[Any]:
    """The six sizes in their order."""
    opening.refresh_from_db()
    return [getattr(opening, f"measured_{size.replace('-', '_')}") for size in SIZES]


def test_six_sizes_follow_one_another(door: Opening, phone: Client) -> None:
    """Each is saved by itself, one step to undo, but for the diagonals, which go together."""
    typed = ("15 1/16", "15", "19", "19 1/8", "24 1/4", "24 1/8")
    way = at(door, "width-top")
    for size, text in zip(SIZES, typed, strict=True):
        assert way.partition("?")[0] == at(door, size)
        answer = take(phone, way, text)
        assert answer.status_code == 302
        way = answer["Location"]

    assert measured(door) == [
        inches(241, 16), inches(15), inches(19), inches(153, 8), inches(97, 4), inches(193, 8),
    ]  # fmt: skip
    assert Revision.objects.filter(job=door.cabinet.job, text__contains="measured").count() == 5
    assert way == at(Opening.objects.get(label="b"), "width-top")
    # (24 1/4² − 24 1/8²) / (4 × 15 1/16) = 0.1004 in, and 1/10 is on no tape's mark
    assert "It leans ≈3/32 to the right." in dom(phone.get(way)).words


def test_the_page_shows_what_is_taken_and_what_is_missing(door: Opening, phone: Client) -> None:
    """The side by its name, planned size, progress, six sizes, digits and fractions."""
    take(phone, at(door, "width-top"), "15 1/16")

    page = dom(phone.get(at(door, "width-bottom")))

    assert page.one("h2").words == "B1.a, width at the bottom planned 15 in; wall North"
    assert "1 of 2, 0 measured" in page.words
    assert [part.words for part in page.all(".sizes strong")] == ["15 1/16", *"–––––"]
    assert page.one(".sizes [aria-current] .aside").words == "width at the bottom:"
    assert page.one(".alike").words == "15 1/16 as at the top"
    assert page.has(".drawn .line-measured")
    keys = [key.words for key in page.all(".keys button")]
    assert sorted(keys[:12]) == sorted([*"0123456789", "C", "⌫"])
    assert keys[12:] == ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8", "+1/16"]
    assert page.one("[data-reading]").attribute("inputmode") == "text"


def test_scripts_get_the_next_size_in_place(door: Opening, phone: Client) -> None:
    """With its address and title, what was kept, and word that the job has changed."""
    answer = take(phone, at(door, "width-top"), "15 1/16", headers=HTMX)

    assert answer.status_code == 200
    assert answer["HX-Replace-Url"] == at(door, "width-bottom")
    assert "job-changed" in answer["HX-Trigger-After-Settle"]
    page = dom(answer)
    assert page.all("title")[0].words.startswith("B1.a, width at the bottom")
    assert page.one("#said").words == (
        "B1.a, width at the top: 15 1/16, 1/16 more than planned. What follows stands below."
    )
    assert not page.has("h1")


def question_in(answer: Any) -> Answer:
    """The page that asks, and not a size kept yet."""
    assert answer.status_code == 422
    return dom(answer)


@pytest.mark.parametrize("headers", [{}, HTMX], ids=["plain", "htmx"])
def test_a_size_far_off_is_asked_about_and_kept(
    headers: dict[str, str], door: Opening, phone: Client
) -> None:
    """Never refused: it is kept as soon as somebody says so."""
    asked = question_in(take(phone, at(door, "width-top"), "33 7/16", headers=headers))

    assert asked.all(".question p")[0].words == "18 7/16 more than planned (15): is it 33 7/16?"
    assert asked.one("[data-reading]").value == "33 7/16"
    assert measured(door)[0] is None

    sure = {"sure": asked.one("button[name='sure']").attribute("value")}
    send(phone, asked.one(".size-form"), "33 7/16", data=sure, headers=headers)
    assert measured(door)[0] == inches(535, 16)


def test_each_shop_says_how_far_is_far(
    door: Opening, phone: Client, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Another shop's numbers change nothing here, its own do."""
    for person, inch in ((stranger, "30"), (owner, "3")):
        desk = signed_in(person)
        assert "is it 18 1/16?" in question_in(take(phone, at(door, "width-top"), "18 1/16")).words
        assert post_own(desk, {"asked_off_plan": inch}).status_code == 302

    assert take(phone, at(door, "width-top"), "18").status_code == 302
    assert measured(door)[0] == inches(18)


def test_another_size_than_the_one_that_is_sure_is_asked_about_too(
    door: Opening, phone: Client
) -> None:
    """Yes is said to one figure."""
    asked = question_in(take(phone, at(door, "width-top"), "33"))

    again = send(phone, asked.one(".size-form"), "51", data={"sure": "33"})

    assert "is it 51?" in question_in(again).words
    assert send(phone, asked.one(".size-form"), "15").status_code == 302
    assert measured(door)[0] == inches(15)


def test_the_first_diagonal_waits_for_the_second(door: Opening, phone: Client) -> None:
    """It is checked and asked about at once, carried along, and kept with the other."""
    assert (
        "its width and height make (24 3/16): is it 42?"
        in question_in(take(phone, at(door, "diagonal-1"), "42")).words
    )

    way = take(phone, at(door, "diagonal-1"), "24 1/4")["Location"]
    assert way == f"{at(door, 'diagonal-2')}?pair=24+1%2F4"
    assert measured(door)[4:] == [None, None]
    page = dom(phone.get(way))
    assert "Diagonal ↗: 24 1/4. It is kept with the other diagonal." in page.words
    assert page.one(".alike").words == "24 1/4 as the other"

    take(phone, way, "24 1/4")
    assert measured(door)[4:] == [inches(97, 4), inches(97, 4)]


def test_a_size_that_is_taken_away_is_missing_again(door: Opening, phone: Client) -> None:
    """Of two diagonals none stays alone."""
    take(phone, take(phone, at(door, "diagonal-1"), "24")["Location"], "24")
    take(phone, at(door, "width-top"), "15")

    take(phone, at(door, "width-top"), "")
    take(phone, at(door, "diagonal-1"), "")

    assert measured(door) == [None] * 6


@pytest.mark.parametrize("typed", ["1/0", "twelve", "-15", "1e400", "100 m", "0"])
@pytest.mark.parametrize("size", ["width-top", "diagonal-1"])
def test_what_is_no_size_is_refused_beside_the_field(
    size: str, typed: str, door: Opening, phone: Client
) -> None:
    """What was typed stays, and nothing is saved."""
    answer = take(phone, at(door, size), typed)

    assert answer.status_code == 422
    assert typed in dom(answer).one(".error").words
    assert dom(answer).one("[data-reading]").value == typed
    assert measured(door) == [None] * 6


@pytest.mark.parametrize("pair", ["1/0", "x" * 500, "-4", "%00", ""])
def test_a_pair_that_is_none_is_as_if_it_were_not_there(
    pair: str, door: Opening, phone: Client
) -> None:
    """An address is whatever people make of it."""
    answer = take(phone, f"{at(door, 'diagonal-2')}?pair={pair}", "24 1/8")

    assert answer["Location"] == f"{at(door, 'diagonal-1')}?pair=24+1%2F8"


def test_what_is_sent_twice_is_saved_once_and_answered_alike(door: Opening, phone: Client) -> None:
    """A phone whose answer got lost sends it again, also after somebody measured anew."""
    form = dom(phone.get(at(door, "width-top"))).one(".size-form")
    first = send(phone, form, "15 1/16")
    take(phone, at(door, "width-top"), "15 1/8")

    again = send(phone, form, "15 1/16")

    assert (again.status_code, again["Location"]) == (302, first["Location"])
    assert measured(door)[0] == inches(121, 8)


def test_two_people_at_one_opening_lose_nothing(
    door: Opening, phone: Client, office: Person, signed_in: SignIn
) -> None:
    """Different sizes go together; of the same size both are shown."""
    desk = signed_in(office)
    mine = dom(phone.get(at(door, "width-top"))).one(".size-form")
    take(desk, at(door, "height-left"), "19 1/8")
    take(desk, at(door, "width-top"), "15 1/8")

    clash = send(phone, mine, "15 1/16")

    assert clash.status_code == 409
    assert "made this “15 1/8” while you were typing" in dom(clash).one(".error").words
    assert dom(clash).one("button[name='theirs']").words == "Take 15 1/8"
    send(phone, dom(clash).one(".size-form"), "15 1/16")
    assert measured(door)[:3] == [inches(241, 16), None, inches(153, 8)]


def test_each_size_is_one_step_to_undo(door: Opening, phone: Client) -> None:
    """The one before stays."""
    take(phone, at(door, "width-top"), "15 1/16")
    take(phone, at(door, "width-bottom"), "15 1/8")

    undo = dom(phone.get(at(door, "height-left"))).one(".undo-bar form")
    assert phone.post(undo.attribute("action"), posted_by(undo)).status_code == 302

    assert measured(door)[:2] == [inches(241, 16), None]


def test_one_may_skip_go_back_and_go_to_the_next_opening(door: Opening, phone: Client) -> None:
    """Skipping passes by what is there; nothing is saved."""
    take(phone, at(door, "width-bottom"), "15")
    drawer = Opening.objects.get(label="b")

    ways = {part.words: part.attribute("href")
            for part in dom(phone.get(at(door, "width-top"))).all(".ways a")}  # fmt: skip
    assert ways == {"Skip": at(door, "height-left"), "Next opening": at(drawer, "width-top")}
    back = dom(phone.get(at(drawer, "width-top"))).all(".ways a")[0]
    assert (back.words, back.attribute("href")) == ("Previous", at(door, "diagonal-2"))


def test_after_the_last_size_all_openings_are_shown(door: Opening, phone: Client) -> None:
    """With what was kept said there; scripts are sent there too."""
    drawer = Opening.objects.get(label="b")
    way = take(phone, at(drawer, "diagonal-1"), "16 1/2")["Location"]

    answer = take(phone, way, "16 1/2", headers=HTMX)

    assert answer["HX-Redirect"] == f"/jobs/{door.cabinet.job_id}/measuring/"
    assert "It stands square." in dom(phone.get(answer["HX-Redirect"])).words
