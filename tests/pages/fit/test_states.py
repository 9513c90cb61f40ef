"""How fronts stand: said by one tap, seen everywhere, corrected, by one or by two people."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from fronts.models import Cabinet, FitRecord
from fronts.rules.practice import inches
from shopjobs.models import Job, Person, Revision
from tests.dom import Answer, Part, dom
from tests.factories import NOW, PersonFactory, door_and_drawer
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with an inset door (gaps of 3/32 in) and a drawer."""
    standard_set(owner=job, at=NOW, mount="inset")
    return door_and_drawer(job)


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer's."""
    return signed_in(installer)


def address(cabinet: Cabinet) -> str:
    """The page of the cabinet."""
    return f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"


def say(client: Client, cabinet: Cabinet, state: str, **more: str) -> Answer:
    """Press the button that says how the door stands."""
    sent = {"front": "B1.a", "state": state} | more
    return dom(client.post(address(cabinet), sent, headers=HTMX))


def shown(client: Client, cabinet: Cabinet) -> Part:
    """The door's record on the page."""
    return dom(client.get(address(cabinet))).one("[id='record-B1.a']")


def test_as_planned_is_one_tap(cabinet: Cabinet, phone: Client) -> None:
    """The front is done, its gaps are what was planned, and what was planned is kept with it."""
    answer = say(phone, cabinet, "as planned")

    record = FitRecord.objects.get()
    assert record.state == "done"
    assert {record.gap_left, record.gap_right, record.gap_top, record.gap_bottom} == {inches(3, 32)}
    assert record.planned_left == inches(3, 32)
    assert record.was_hinged == "left"
    assert answer.one("[id='record-B1.a']").one(".state").words == "✓ done"
    assert "It hangs as planned." in answer.words
    assert answer.one("#where-next").words == "Next: B1.b"
    assert [link.words for link in answer.all("#fronts-here a")] == ["a ✓", "b ○"]


@pytest.mark.parametrize(
    ("state", "words", "sign"),
    [
        ("done", "done", "✓"), ("to-adjust", "hung, to adjust", "◐"), ("not-hung", "not hung", "○"),
        ("to-remake", "to remake", "✕"), ("missing", "missing", "✕"), ("damaged", "damaged", "✕"),
        ("wrong-size", "wrong size", "✕"),
    ],
)  # fmt: skip
def test_only_done_counts_and_each_state_is_seen(
    state: str, words: str, sign: str, cabinet: Cabinet, phone: Client, owner: Person,
    signed_in: SignIn,
) -> None:  # fmt: skip
    """On the cabinet's page, in the owner's list of the job, and in the wall's drawing."""
    say(phone, cabinet, state, note="front split at its top")

    said = shown(phone, cabinet)
    assert said.one(".state").words == f"{sign} {words}"
    assert "front split at its top" in said.words
    assert "ines" in said.words
    job = dom(signed_in(owner).get(f"/jobs/{cabinet.job_id}/fit/"))
    done = int(state == "done")
    assert f"{done} of 2 fronts done" in job.words
    assert ("1 problem" in job.words) == (sign == "✕")
    drawn = job.one(".stands-drawn svg")
    assert f"hinged left, {words}" in " ".join(
        link.attribute("aria-label") for link in drawn.all("a")
    )
    assert sign in [text.words for text in drawn.all("text")]


@pytest.mark.parametrize(
    ("typed", "asked"),
    [
        ({"gap_left": "125"}, "Left 125, far from planned, 3/32: is it so?"),
        ({"gap_top": "0"}, "Top 0, under the least gap, 1/16: is it so?"),
        ({"gap_left": "125", "gap_bottom": "1/32"},
         "Left 125, far from planned, 3/32; bottom 1/32, under the least gap, 1/16: is it so?"),
    ],
)  # fmt: skip
def test_a_gap_that_looks_misread_is_asked_about(
    typed: dict[str, str], asked: str, cabinet: Cabinet, phone: Client
) -> None:
    """Nothing is recorded before the answer; what was typed stays; other gaps are asked anew."""
    answer = say(phone, cabinet, "done", note="tight", **typed)

    assert asked in answer.one(".question").words
    assert "tight" in answer.values
    assert not FitRecord.objects.exists()
    sure = answer.one("input[name=sure]").attribute("value")
    again = say(phone, cabinet, "done", sure=sure, **typed | {"gap_right": "130"})
    assert "ight 130, far from planned" in again.words
    say(phone, cabinet, "done", sure=sure, **typed)
    assert FitRecord.objects.get().state == "done"


def test_how_a_front_stands_must_be_said(cabinet: Cabinet, phone: Client) -> None:
    """Enter in a gap's field records nothing by itself."""
    answer = say(phone, cabinet, "", gap_left="1/8")

    assert "Say how the front stands" in answer.one(".error").words
    assert "1/8" in answer.values
    assert not FitRecord.objects.exists()


def test_a_side_at_both_ends_wants_both(cabinet: Cabinet, phone: Client) -> None:
    """The fault stands at the end that is missing; both say how far the front leans."""
    answer = say(phone, cabinet, "to-adjust", gap_left_top="1/8")
    assert answer.has("[id='record-B1.a-gap_left_bottom_error']")

    answer = say(
        phone, cabinet, "to-adjust", gap_left_top="1/8", gap_left_bottom="3/32",
        gap_right_top="1/16", gap_right_bottom="3/32",
    )  # fmt: skip
    assert "to the left, upper hinge" in answer.words
    record = FitRecord.objects.get()
    assert (record.gap_left, record.gap_left_top) == (None, inches(1, 8))


def test_a_record_is_corrected_and_what_was_said_before_stays(
    cabinet: Cabinet, phone: Client
) -> None:
    """The last counts; those before it are in its history, each with who and how it stood."""
    say(phone, cabinet, "to-adjust", gap_left="1/8", note="rubs")
    say(phone, cabinet, "done", gap_left="3/32", note="planed")

    said = shown(phone, cabinet)
    assert said.one(".state").words == "✓ done"
    (before,) = said.all(".earlier li")
    for words in ("hung, to adjust", "ines", "left 1/8", "rubs"):
        assert words in before.words


def test_two_on_one_front_both_keep_what_they_wrote(
    cabinet: Cabinet, installer: Person, phone: Client, signed_in: SignIn
) -> None:
    """The second is told that the first has recorded it meanwhile, and both are there."""
    other = PersonFactory.create(shop=installer.shop, installer=True, username="ben")
    seen = shown(phone, cabinet).one("input[name=seen]").attribute("value")
    say(signed_in(other), cabinet, "damaged", note="dented", seen=seen)

    answer = say(phone, cabinet, "to-adjust", gap_left="1/8", seen=seen)

    assert "ben recorded B1.a too" in answer.words
    assert "Both are kept; the later one counts." in answer.words
    said = shown(phone, cabinet)
    assert said.one(".state").words == "◐ hung, to adjust"
    assert "dented" in said.one(".earlier").words
    latest = FitRecord.objects.order_by("pk").last()
    assert latest is not None
    assert "too" not in say(phone, cabinet, "done", seen=str(latest.pk)).words


def test_what_waited_for_a_signal_is_of_when_it_was_entered(
    cabinet: Cabinet, phone: Client
) -> None:
    """What was entered later counts, whichever comes first; a time that can't be is now."""
    say(phone, cabinet, "done")
    before = timezone.now() - timedelta(hours=3)
    sent = {"front": "B1.a", "state": "to-adjust"}
    headers = {**HTMX, "X-Entered": before.isoformat()}
    phone.post(address(cabinet), sent, headers=headers)

    late = FitRecord.objects.get(state="to-adjust")
    assert late.fitted_at == before
    assert shown(phone, cabinet).one(".state").words == "✓ done"
    for wrong in ("soon", "2026-13-45T00:00:00Z", "1970-01-01T00:00:00Z", "2999-01-01T00:00:00Z"):
        phone.post(address(cabinet), sent, headers={**HTMX, "X-Entered": wrong})
    others = FitRecord.objects.filter(state="to-adjust").exclude(pk=late.pk)
    assert others.count() == 4
    assert all(one.fitted_at > timezone.now() - timedelta(minutes=5) for one in others)


def test_a_later_change_of_the_kitchen_shows_as_such(
    cabinet: Cabinet, owner: Person, phone: Client
) -> None:
    """With the day, and by how much; without a change nothing is said."""
    Revision.objects.update(at=timezone.now() - timedelta(days=1))
    say(phone, cabinet, "as planned")
    assert "change" not in shown(phone, cabinet).one(".by").words

    three = inches(1, 8)
    standard_set(
        owner=cabinet, at=timezone.now(), by=owner, mount="inset", inset_left=three,
        inset_right=three, inset_top=three, inset_bottom=three,
    )  # fmt: skip

    said = shown(phone, cabinet).words
    day = timezone.now()
    assert f"This is another front now, since {day.day} {day:%b}" in said
    assert "1/16 narrower; 1/16 lower" in said
    assert "the left gap planned 1/8, was 3/32" in said
    assert shown(phone, cabinet).one(".state").words == "○ not hung"


def test_the_list_leads_to_the_first_front_that_can_be_done(
    cabinet: Cabinet, phone: Client
) -> None:
    """A problem is passed over; where each is done or a problem, nothing leads on."""

    def leads() -> list[tuple[str, str]]:
        page = dom(phone.get(f"/jobs/{cabinet.job_id}/fit/"))
        return [(link.words, link.attribute("href")) for link in page.all(".go-on")]

    assert leads() == [("Begin with B1.a", f"{address(cabinet)}#record-B1.a-front")]
    say(phone, cabinet, "damaged")
    assert leads() == [("Begin with B1.b", f"{address(cabinet)}#record-B1.b-front")]
    say(phone, cabinet, "as planned", front="B1.b")
    assert leads() == []
