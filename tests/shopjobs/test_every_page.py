"""The same questions for every page of the site."""

from collections.abc import Callable

import pytest
from django.test import Client

from shopjobs.models import Job, Person
from tests.dom import dom

SignIn = Callable[[Person], Client]

PAGES = {
    # address: (who gets it, what it heads)
    "/jobs/": ("ada otto ines", "Jobs"),
    "/jobs/{job}/settings/": ("ada otto", "Settings of job K-1"),
    "/clients/": ("ada otto ines", "Clients"),
    "/people/": ("ada", "People"),
    "/people/{person}/": ("ada", "ines"),
    "/shop/": ("ada", "Shop"),
    "/password/": ("ada otto ines", "Your password"),
    "/sessions/": ("ada otto ines", "Where you are signed in"),
}
POSTS = ("/people/{person}/password/", "/people/{person}/close/", "/people/{person}/open/")
OF_THE_SHOP = [address for address in (*PAGES, *POSTS) if "{" in address]


@pytest.fixture
def fill(job: Job, installer: Person) -> Callable[[str], str]:
    """Return what puts the shop's job and installer into an address."""
    return lambda address: address.format(job=job.pk, person=installer.pk)


@pytest.mark.parametrize("address", PAGES)
def test_it_works(
    address: str, fill: Callable[[str], str], owner: Person, signed_in: SignIn
) -> None:
    """The owner gets the page, whole, and no cache keeps it."""
    answer = signed_in(owner).get(fill(address))

    assert answer.status_code == 200
    assert dom(answer).one("h1").words == PAGES[address][1]
    assert "no-store" in answer["Cache-Control"]


@pytest.mark.parametrize("address", [*PAGES, *POSTS])
def test_it_needs_a_sign_in(address: str, fill: Callable[[str], str]) -> None:
    """A stranger is sent to sign in, and then back."""
    answer = Client().get(fill(address))

    assert answer.status_code == 302
    assert answer["Location"] == f"/sign-in/?next={fill(address)}"


@pytest.mark.parametrize("address", PAGES)
@pytest.mark.parametrize("username", ["ada", "otto", "ines"])
def test_only_its_roles_get_it(
    address: str,
    username: str,
    fill: Callable[[str], str],
    owner: Person,
    office: Person,
    signed_in: SignIn,
) -> None:
    """Each role gets its own pages, and a page that says no to the others."""
    person = Person.objects.get(username=username)
    allowed = username in PAGES[address][0].split()

    answer = signed_in(person).get(fill(address))

    assert answer.status_code == (200 if allowed else 403)
    assert ("Not yours to do" in dom(answer).words) is not allowed


@pytest.mark.parametrize("address", POSTS)
def test_only_the_owner_changes_people(
    address: str, fill: Callable[[str], str], office: Person, signed_in: SignIn
) -> None:
    """The office does not close, open or set passwords of accounts."""
    assert signed_in(office).post(fill(address), {"password": "x"}).status_code == 403


@pytest.mark.parametrize("address", OF_THE_SHOP)
@pytest.mark.parametrize("method", ["get", "post"])
def test_another_shop_finds_nothing(
    address: str, method: str, fill: Callable[[str], str], stranger: Person, signed_in: SignIn
) -> None:
    """Another shop's data does not exist."""
    answer = getattr(signed_in(stranger), method)(fill(address))

    wrong_method = method == "get" and address in POSTS
    assert answer.status_code == (405 if wrong_method else 404)
    assert Job.objects.exists()


@pytest.mark.parametrize("address", [*PAGES, *POSTS])
def test_it_rejects_other_methods(
    address: str, fill: Callable[[str], str], owner: Person, signed_in: SignIn
) -> None:
    """A page is read and posted to, nothing else; an action is only posted to."""
    client = signed_in(owner)

    assert client.delete(fill(address)).status_code == 405
    if address in POSTS:
        assert client.get(fill(address)).status_code == 405


@pytest.mark.parametrize(
    ("address", "part"),
    [
        ("/jobs/", "new-job"),
        ("/jobs/{job}/settings/", "job-form"),
        ("/people/", "new-person"),
        ("/people/{person}/", "person-form"),
        ("/people/{person}/password/", "password-form"),
        ("/shop/", "shop-form"),
        ("/password/", "own-password"),
    ],
)
def test_a_refused_form_keeps_its_page(
    address: str, part: str, fill: Callable[[str], str], owner: Person, signed_in: SignIn
) -> None:
    """Refused, htmx gets the form with its messages, and a browser the whole page: 422."""
    client = signed_in(owner)
    whole = client.post(fill(address), {})
    only_part = client.post(fill(address), {}, headers={"HX-Request": "true"})

    assert (whole.status_code, only_part.status_code) == (422, 422)
    assert dom(whole).has("h1")
    assert dom(whole).has(f"[id='{part}']")
    assert (dom(only_part).first.name, dom(only_part).first.id) == ("form", part)
    assert "There is a problem" in dom(whole).words
    assert "There is a problem" in dom(only_part).words
    assert "HX-Request" in only_part["Vary"]


def test_history_gets_the_whole_page(owner: Person, signed_in: SignIn) -> None:
    """The back button gets the page, not a part of it."""
    headers = {"HX-Request": "true", "HX-History-Restore-Request": "true"}

    assert dom(signed_in(owner).get("/jobs/", headers=headers)).one("h1").words == "Jobs"


def test_htmx_is_sent_to_sign_in_with_the_whole_page(db: None) -> None:
    """A part asked for after the session ended sends the page away, and back to itself."""
    headers = {"HX-Request": "true", "HX-Current-URL": "http://testserver/jobs/?page=2"}

    answer = Client().post("/jobs/", {"number": "K-2"}, headers=headers)

    assert answer.status_code == 401
    assert answer["HX-Redirect"] == "/sign-in/?ended=yes&next=/jobs/%3Fpage%3D2"
    assert answer.text == ""
