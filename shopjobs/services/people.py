"""Adding, changing and letting go of people."""

from datetime import datetime

from shopjobs.models import Person, Role, Shop
from shopjobs.selectors import is_sign_in_name, owners_of
from shopjobs.services.change_words import words_of_rows
from shopjobs.services.notes import note
from shopjobs.services.recording import Told, recorded, saved, tell
from shopjobs.services.refused import Refused, refuse_twice
from shopjobs.services.sessions import sessions_end, ways_in_end


@recorded
def person_create(
    *,
    shop: Shop,
    username: str,
    role: str,
    password: str,
    at: datetime,
    first_name: str = "",
    last_name: str = "",
    by: Person | None = None,
) -> Person:
    """Add a person to the shop. The password was checked by whoever asks."""
    taken = f"The sign-in name “{username}” is taken. Give another one."
    if is_sign_in_name(username):
        raise Refused(taken, field="username")
    names = {"first_name": first_name, "last_name": last_name}
    with refuse_twice(taken, field="username"):
        person = Person.objects.create_user(username, None, password, shop=shop, role=role, **names)
    note(shop=shop, text=f"Added {person} as {role}", at=at, person=by)
    return person


@recorded
def person_change(
    *, person: Person, first_name: str, last_name: str, role: str, by: Person, at: datetime
) -> Person:
    """Change a person's name and role; the shop keeps an owner."""
    if role != Role.OWNER:
        _refuse_last_owner(person, "role")
    person.first_name, person.last_name, person.role = first_name, last_name, role
    saved(person, ["first_name", "last_name", "role"])
    text = f"Changed {person} to {role}"
    tell(Told(shop=_shop(person), text=text, at=at, by=by, words=words_of_rows))
    return person


@recorded
def person_deactivate(*, person: Person, by: Person, at: datetime) -> Person:
    """Let a person sign in no more, and end their sessions and private addresses for good.

    What they did keeps their name.
    """
    _refuse_last_owner(person, None)
    person.is_active = False
    saved(person, ["is_active"])
    ways_in_end(person=person)
    tell(Told(shop=_shop(person), text=f"Closed the account of {person}", at=at, by=by))
    return person


@recorded
def person_reactivate(*, person: Person, by: Person, at: datetime) -> Person:
    """Let a person sign in again."""
    person.is_active = True
    saved(person, ["is_active"])
    tell(Told(shop=_shop(person), text=f"Opened the account of {person}", at=at, by=by))
    return person


@recorded
def password_set(*, person: Person, password: str, by: Person, at: datetime) -> Person:
    """Set a password, checked by whoever asks; sessions under the old one end."""
    person.set_password(password)
    person.save(update_fields=["password"])
    sessions_end(person=person)
    whose = "their own password" if person == by else f"the password of {person}"
    note(shop=_shop(person), text=f"Set {whose}", at=at, person=by)
    return person


def _shop(person: Person) -> Shop:
    if person.shop is None:
        raise Refused("This person doesn't belong to a shop.")
    return person.shop


def _refuse_last_owner(person: Person, field: str | None) -> None:
    owners = owners_of(person).select_for_update()
    if [owner.pk for owner in owners] == [person.pk]:
        raise Refused(
            f"{person.shown_name} is the shop's last owner. Make someone else an owner first.",
            field=field,
        )
