"""Where one is signed in, and how sessions end."""

import io
import re
from collections.abc import Callable
from datetime import timedelta

import pytest
from django.core.management import call_command
from django.test import Client
from django.utils import timezone

from shopjobs.browsers import browser_words
from shopjobs.models import Person, Session, Shop
from shopjobs.sessions import SEEN_ANEW
from tests.dom import Answer, Part, dom
from tests.factories import PASSWORD, PersonFactory

SignIn = Callable[[Person], Client]
FIREFOX = "Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:132.0) Gecko/20100101 Firefox/132.0"
IPHONE = (
    "Mozilla/5.0 (iPhone; CPU iPhone OS 17_7 like Mac OS X) AppleWebKit/605.1.15 "
    "(KHTML, like Gecko) Version/17.4.1 Mobile/15E148 Safari/604.1"
)


def browser(person: Person, user_agent: str = FIREFOX, address: str = "192.0.2.7") -> Client:
    """A browser in which the person signs in as people do."""
    client = Client(headers={"User-Agent": user_agent}, REMOTE_ADDR=address)
    typed = {"username": person.username, "password": PASSWORD}
    assert client.post("/sign-in/", typed).status_code == 302
    return client


def rows(page: Answer) -> list[str]:
    """The sessions, each in words."""
    return [row.words for row in page.all("tbody tr")]


def end_of(page: Answer, words: str) -> str:
    """Where the button goes that ends the session with these words."""
    (row,) = (row for row in page.all("tbody tr") if words in row.words)
    return row.one("form").attribute("action")


def is_in(client: Client) -> bool:
    """Whether the browser is signed in."""
    return client.get("/jobs/").status_code == 200


def forms(page: Answer) -> list[Part]:
    """The page's own forms."""
    return page.all("main form")


def test_a_person_sees_where_they_are_signed_in(owner: Person) -> None:
    """Browser, address, since when and when last; which is this one; the key nowhere."""
    browser(owner, IPHONE, "198.51.100.4")
    desk = browser(owner)

    answer = desk.get("/sessions/")

    today = f"{timezone.now():%Y}"
    here, there = rows(dom(answer))
    assert re.fullmatch(rf"Firefox on Windows 192\.0\.2\.7 .*{today}.*{today}.* this one", here)
    assert there.startswith("Safari on iPhone 198.51.100.4")
    assert " End the session of Safari on iPhone" in there
    for session in Session.objects.all():
        assert session.session_key not in answer.text


def test_a_session_is_ended_from_another(owner: Person) -> None:
    """The phone that was lost is out at once; this browser stays in."""
    phone, desk = browser(owner, IPHONE), browser(owner)

    answer = desk.post(end_of(dom(desk.get("/sessions/")), "iPhone"), follow=True)

    assert "Signed out: Safari on iPhone." in dom(answer).words
    assert (is_in(phone), is_in(desk)) == (False, True)
    assert len(rows(dom(answer))) == 1


def test_all_others_are_ended(owner: Person, office: Person) -> None:
    """One's own others go, this one and other people's stay; then there is nothing to end."""
    others = [browser(owner, IPHONE), browser(owner)]
    desk, colleague = browser(owner), browser(office)
    assert [form.attribute("action") for form in forms(dom(desk.get("/sessions/")))][-1] == (
        "/sessions/others/end/"
    )

    answer = desk.post("/sessions/others/end/", follow=True)

    assert "You are signed in nowhere but here." in dom(answer).words
    assert [is_in(client) for client in (*others, desk, colleague)] == [False, False, True, True]
    assert forms(dom(answer)) == []


def test_nobody_sees_or_ends_anybody_elses(owner: Person, office: Person, stranger: Person) -> None:
    """Neither another shop's nor a colleague's: not on the page, and not by its address."""
    theirs = [browser(person, IPHONE, "198.51.100.4") for person in (office, stranger)]
    desk = browser(owner)
    handles = [session.handle for session in Session.objects.filter(person__in=[office, stranger])]

    page = desk.get("/sessions/")
    ends = [desk.post(f"/sessions/{handle}/end/").status_code for handle in handles]

    assert "198.51.100.4" not in page.text
    assert not any(handle in page.text for handle in handles)
    assert ends == [404, 404]
    assert [is_in(client) for client in theirs] == [True, True]


def test_an_end_needs_a_post(owner: Person) -> None:
    """A link ends nothing."""
    desk = browser(owner)
    handle = Session.objects.get(person=owner).handle

    assert desk.get(f"/sessions/{handle}/end/").status_code == 405
    assert desk.get("/sessions/others/end/").status_code == 405
    assert Client().post("/sessions/others/end/")["Location"].startswith("/sign-in/")


def test_an_opened_account_revives_no_session(owner: Person, installer: Person) -> None:
    """Who was signed in when the account was closed signs in anew once it is open again."""
    phone, desk = browser(installer, IPHONE), browser(owner)

    desk.post(f"/people/{installer.pk}/close/")
    assert not Session.objects.filter(person=installer).exists()
    desk.post(f"/people/{installer.pk}/open/")

    assert not is_in(phone)
    assert is_in(browser(installer))


def test_a_new_password_ends_all_other_sessions(owner: Person) -> None:
    """They are gone from the page too; this one keeps when it began."""
    phone, desk = browser(owner, IPHONE), browser(owner)
    began = dom(desk.get("/sessions/")).all("tbody tr")[0].all("td")[1].words

    desk.post("/password/", {"old_password": PASSWORD, "password": "a drawer of shims"})

    (row,) = dom(desk.get("/sessions/")).all("tbody tr")
    assert "this one" in row.words
    assert row.all("td")[1].words == began
    assert (is_in(phone), is_in(desk)) == (False, True)


def test_signing_out_leaves_no_session(owner: Person) -> None:
    """The row goes with the session."""
    desk = browser(owner)
    assert Session.objects.count() == 1

    desk.post("/sign-out/")

    assert not Session.objects.exists()


def test_when_and_where_a_session_was_seen_is_kept_now_and_then(owner: Person) -> None:
    """Reading pages writes only where the last sight is some minutes old, or from elsewhere."""
    desk = browser(owner)
    lately = timezone.now() - SEEN_ANEW / 2
    Session.objects.update(seen_at=lately)
    desk.get("/jobs/")
    assert Session.objects.get().seen_at == lately

    Session.objects.update(seen_at=timezone.now() - 2 * SEEN_ANEW)
    desk.get("/jobs/")
    assert timezone.now() - Session.objects.get().seen_at < SEEN_ANEW

    Session.objects.update(seen_at=lately)
    desk.get("/jobs/", REMOTE_ADDR="198.51.100.4")
    assert Session.objects.get().address == "198.51.100.4"
    assert Session.objects.get().seen_at > lately


def test_what_nobody_uses_is_cleared(owner: Person, office: Person) -> None:
    """`clearsessions` removes what has expired, and nothing else."""
    old, new = browser(office), browser(owner)
    Session.objects.filter(person=office).update(expire_date=timezone.now() - timedelta(days=1))

    call_command("clearsessions")

    assert [session.person for session in Session.objects.all()] == [owner]
    assert (is_in(old), is_in(new)) == (False, True)


def test_the_operator_changes_a_password(
    owner: Person, office: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    """`changepassword` takes a new one that keeps the rules; the person's sessions end."""
    theirs, others = browser(owner), browser(office)
    typed = iter(["12345678", "12345678", "a drawer of shims", "a drawer of shims"])
    monkeypatch.setattr("getpass.getpass", lambda prompt: next(typed))
    said, faults = io.StringIO(), io.StringIO()

    call_command("changepassword", "ada", stdout=said, stderr=faults)

    assert "entirely numeric" in faults.getvalue()
    assert "Password changed successfully for user 'ada'" in said.getvalue()
    assert (is_in(theirs), is_in(others)) == (False, True)
    owner.refresh_from_db()
    assert owner.check_password("a drawer of shims")
    assert [rows(dom(others.get("/sessions/")))[0].endswith("this one")] == [True]


def test_a_session_from_under_an_older_password_is_not_shown(owner: Person) -> None:
    """It lets nobody in, so nobody need end it."""
    browser(owner, IPHONE)
    owner.set_password(PASSWORD)
    owner.save()
    desk = browser(owner)

    assert Session.objects.filter(person=owner).count() == 2
    assert [row.split(" 1")[0] for row in rows(dom(desk.get("/sessions/")))] == [
        "Firefox on Windows"
    ]


@pytest.mark.parametrize(
    ("user_agent", "words"),
    [
        (FIREFOX, "Firefox on Windows"),
        (IPHONE, "Safari on iPhone"),
        (
            "Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) "
            "Chrome/130.0.0.0 Mobile Safari/537.36",
            "Chrome on Android",
        ),
        (
            "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) "
            "Chrome/130.0.0.0 Safari/537.36 Edg/130.0.2849.80",
            "Edge on Windows",
        ),
        (
            "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 "
            "(KHTML, like Gecko) Version/18.0.1 Safari/605.1.15",
            "Safari on Mac",
        ),
        ("Mozilla/5.0 (X11; Linux x86_64)", "Linux"),
        ("curl/8.5.0", ""),
        ("<b>" * 200, ""),
    ],
)
def test_a_browser_is_told_in_few_words(user_agent: str, words: str) -> None:
    """From what browsers say of themselves (as MDN's page on User-Agent shows it; memory)."""
    assert browser_words(user_agent) == words


@pytest.mark.parametrize("address", ["close/", "password/"])
def test_who_ends_their_own_sessions_is_sent_to_sign_in(
    address: str, owner: Person, shop: Shop
) -> None:
    """An owner who closes their own account, or sets their password on the people's page."""
    PersonFactory.create(shop=shop, owner=True, username="olga")
    desk = browser(owner)

    answer = desk.post(
        f"/people/{owner.pk}/{address}", {"password": "a drawer of shims"}, follow=True
    )

    assert answer.status_code == 200
    assert dom(answer).one("h1").words == "Sign in"
    assert not Session.objects.exists()
