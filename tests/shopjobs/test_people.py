"""The people of a shop."""

from collections.abc import Callable
from decimal import Decimal

import pytest
from django.test import Client

from shopjobs.models import Person, Role
from shopjobs.services.people import person_deactivate
from shopjobs.services.refused import Refused
from tests.dom import dom
from tests.factories import NOW, PASSWORD
from tests.jsonlog import JsonLog

SignIn = Callable[[Person], Client]
NEW = {"username": "maria", "first_name": "Maria", "role": "office", "password": PASSWORD}


def test_the_owner_adds_a_person_who_can_sign_in(owner: Person, signed_in: SignIn) -> None:
    """A person who was added signs in with the password that was set."""
    answer = signed_in(owner).post("/people/", NEW, follow=True)

    maria = Person.objects.get(username="maria")
    assert "Maria can sign in now as “maria”." in dom(answer).words
    assert (maria.shop, maria.role) == (owner.shop, Role.OFFICE)
    assert Client().login(username="maria", password=PASSWORD)


@pytest.mark.parametrize(
    ("field", "typed", "words"),
    [
        ("username", "", "Enter a sign-in name, like maria."),
        ("username", "two words", "Enter a valid username."),
        ("username", "ADA", "The sign-in name “ADA” is taken."),
        ("role", "king", "Choose one from the list"),
        ("password", "", "Enter a password."),
        ("password", "sawdust", "too short"),
        ("password", "password", "too common"),
        ("password", "20270312", "entirely numeric"),
        ("password", "maria2027", "too similar"),
    ],
)
def test_a_bad_person_is_refused_at_the_field(
    field: str, typed: str, words: str, owner: Person, signed_in: SignIn
) -> None:
    """A message stands at the field, what was typed stays, nobody is added."""
    answer = signed_in(owner).post("/people/", NEW | {field: typed})

    assert answer.status_code == 422
    assert words in dom(answer).words
    assert dom(answer).has(f"[id='id_{field}_error']")
    assert "Maria" in dom(answer).values
    assert Person.objects.count() == 1


def test_a_persons_role_changes(owner: Person, installer: Person, signed_in: SignIn) -> None:
    """The new role holds from the next page on."""
    signed_in(owner).post(f"/people/{installer.pk}/", {"first_name": "Ines", "role": "office"})

    installer.refresh_from_db()
    assert (installer.first_name, installer.role) == ("Ines", Role.OFFICE)


def test_the_shop_keeps_an_owner(owner: Person, signed_in: SignIn) -> None:
    """The last owner neither changes role nor closes their own account."""
    client = signed_in(owner)
    changed = client.post(f"/people/{owner.pk}/", {"role": "office"})
    closed = client.post(f"/people/{owner.pk}/close/", follow=True)

    assert changed.status_code == 422
    for answer in (changed, closed):
        assert "Ada is the shop's last owner." in dom(answer).words
    owner.refresh_from_db()
    assert (owner.role, owner.is_active) == (Role.OWNER, True)


def test_one_of_two_owners_may_go(owner: Person, office: Person, signed_in: SignIn) -> None:
    """With another owner in the shop, an owner's account may be closed; but not both."""
    client = signed_in(owner)
    client.post(f"/people/{office.pk}/", {"role": "owner"})
    client.post(f"/people/{office.pk}/close/")

    office.refresh_from_db()
    assert not office.is_active
    with pytest.raises(Refused):
        person_deactivate(person=owner, by=office, at=NOW)


def test_a_closed_account_is_out_at_once(
    owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """Closing an account ends its sessions; opening it lets the person in again."""
    theirs = signed_in(installer)
    client = signed_in(owner)

    client.post(f"/people/{installer.pk}/close/")
    assert theirs.get("/jobs/").status_code == 302
    assert not Client().login(username="ines", password=PASSWORD)

    client.post(f"/people/{installer.pk}/open/")
    assert Client().login(username="ines", password=PASSWORD)


def test_the_owner_sets_a_password(owner: Person, installer: Person, signed_in: SignIn) -> None:
    """The new password counts, the old one doesn't, and old sessions end."""
    theirs = signed_in(installer)

    signed_in(owner).post(f"/people/{installer.pk}/password/", {"password": "a drawer of shims"})

    assert Client().login(username="ines", password="a drawer of shims")
    assert not Client().login(username="ines", password=PASSWORD)
    assert theirs.get("/jobs/").status_code == 302


def test_ones_own_password_needs_the_old_one(installer: Person, signed_in: SignIn) -> None:
    """With the old password one sets a new one, and stays signed in."""
    client = signed_in(installer)
    new = {"password": "a drawer of shims"}

    wrong = client.post("/password/", new | {"old_password": "guess"})
    assert wrong.status_code == 422
    assert "That is not the password that you sign in with now." in dom(wrong).words

    right = client.post("/password/", new | {"old_password": PASSWORD}, follow=True)
    assert "Your password is changed." in dom(right).words


def test_wrong_old_passwords_are_limited_as_at_the_sign_in(
    installer: Person, signed_in: SignIn, json_log: JsonLog
) -> None:
    """After five guesses even the right one waits, here and at the sign-in; each is logged."""
    client = signed_in(installer)
    new = {"password": "a drawer of shims"}
    for _ in range(5):
        client.post("/password/", new | {"old_password": "guess"})

    locked = client.post("/password/", new | {"old_password": PASSWORD})

    words = "Too many attempts with this name. Wait 15 minutes, then try again."
    assert locked.status_code == 422
    assert words in dom(locked).words
    assert installer.check_password(PASSWORD)
    typed = {"username": "ines", "password": PASSWORD}
    assert words in dom(Client().post("/sign-in/", typed)).words
    lines = json_log.of("shopjobs.services.sign_in")
    assert [line["sign_in_name"] for line in lines] == ["ines"] * 7
    assert [line["locked"] for line in lines] == [False] * 5 + [True] * 2


def test_the_shop_is_changed_by_its_owner(
    owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Name, unit, step and paper change; another shop's name is refused."""
    client = signed_in(owner)
    wanted = {"name": "Alder Row", "unit": "mm", "step": "1", "paper": "a4"}

    wanted["seen"] = dom(client.get("/shop/")).field("seen").value
    taken = client.post("/shop/", wanted | {"name": "Birch Lane Joiners"})
    assert taken.status_code == 422
    assert "There is already a shop called “Birch Lane Joiners”." in dom(taken).words
    assert dom(taken).one("a.site-name").words == "Alder Row Cabinets"

    assert "The shop's settings are saved." in dom(client.post("/shop/", wanted, follow=True)).words
    assert owner.shop
    owner.shop.refresh_from_db()
    assert (owner.shop.name, owner.shop.unit, owner.shop.step, owner.shop.paper) == (
        "Alder Row",
        "mm",
        Decimal(1),
        "a4",
    )


def test_a_superuser_without_a_shop_is_told_so(db: None, signed_in: SignIn) -> None:
    """Who belongs to no shop sees no shop's pages."""
    root = Person.objects.create_superuser("root", None, PASSWORD)

    assert signed_in(root).get("/jobs/").status_code == 403
