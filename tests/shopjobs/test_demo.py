"""The demo shop, and the shop of a new installation."""

import io
import socket
from pathlib import Path

import pytest
from django.core.management import CommandError, call_command
from django.test import Client

from shopjobs.management.commands.demo import free_port
from shopjobs.models import Person, Role, Shop
from shopjobs.services.demo import demo_passwords
from tests.factories import PASSWORD


@pytest.fixture
def data_home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of this test's own for secrets."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    return tmp_path


def _demo() -> str:
    said = io.StringIO()
    call_command("demo", "--no-serve", stdout=said)
    return said.getvalue()


@pytest.mark.django_db(transaction=True)
def test_the_demo_says_how_to_get_in(data_home: Path) -> None:
    """Owner, installer and office are printed with passwords that work."""
    said = dict(line.split() for line in _demo().splitlines()[1:] if line.strip())

    assert set(said) == {"owner", "installer", "office"}
    for username, password in said.items():
        assert Client().login(username=username, password=password)
        assert Person.objects.get(username=username).role == username


@pytest.mark.django_db(transaction=True)
def test_the_demo_keeps_what_is_there(data_home: Path) -> None:
    """Started again, it prints the same, and adds nothing."""
    first = _demo()
    Shop.objects.update(paper="a4")

    assert _demo() == first
    assert Person.objects.count() == 3
    assert Shop.objects.get().paper == "a4"


@pytest.mark.django_db(transaction=True)
def test_a_password_that_a_person_changed_is_not_printed(data_home: Path) -> None:
    """The demo says that a password was changed instead of printing one that fails."""
    _demo()
    office = Person.objects.get(username="office")
    office.set_password(PASSWORD)
    office.save()

    assert "office        changed since" in _demo()


def test_demo_passwords_are_only_the_users_to_read(tmp_path: Path) -> None:
    """They are kept beside the key, outside the repository."""
    passwords = demo_passwords({"XDG_DATA_HOME": str(tmp_path)})

    (file,) = (tmp_path / "shopjobs").iterdir()
    assert file.stat().st_mode & 0o077 == 0
    assert passwords == demo_passwords({"XDG_DATA_HOME": str(tmp_path)})


def test_a_taken_port_is_passed_over() -> None:
    """The next free port is taken; one that was asked for is refused when it is not free."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        taken = other.getsockname()[1]

        with pytest.raises(CommandError, match=f"Port {taken} is taken"):
            free_port(taken)

    assert free_port(None) >= 8000


def test_a_new_shop_has_an_owner(db: None, monkeypatch: pytest.MonkeyPatch) -> None:
    """On a new installation one command makes a shop and its owner, or neither."""
    answers = iter(["12345", PASSWORD])
    monkeypatch.setattr(
        "shopjobs.management.commands.new_shop.getpass", lambda prompt: next(answers)
    )

    with pytest.raises(CommandError, match="too short"):
        call_command("new_shop", "Alder Row", "--owner", "ada", stdout=io.StringIO())
    assert not Shop.objects.exists()

    call_command("new_shop", "Alder Row", "--owner", "ada", stdout=io.StringIO())
    owner = Person.objects.get(username="ada")
    assert owner.shop
    assert (owner.shop.name, owner.role) == ("Alder Row", Role.OWNER)
