"""Clients and their sites: found by what is typed, changed, made one, let go."""

from datetime import datetime
from typing import TypeVar

from django.core.exceptions import ValidationError
from django.db.models import RestrictedError

from shopjobs.models import Client, Job, Person, Shop, Site
from shopjobs.services.change_words import words_of_rows
from shopjobs.services.recording import Told, deleted, recorded, saved, tell
from shopjobs.services.refused import Refused, refuse_twice

_MEANWHILE = "Somebody else entered the same at the same moment. Send it again."
Row = TypeVar("Row", Client, Site)
CONTACT = ("contact", "phone", "email", "note")
"""What is known of a client beside the name."""


def client_named(shop: Shop, name: str) -> Client | None:
    """The shop's client of just this name, a new one where there is none; nobody without a name.

    It is a part of the recorded service at work. `ValidationError` at `client` where nobody can
    be called so.
    """
    if not name.strip():
        return None
    # What no name can be is not looked for: PostgreSQL refuses NUL as a fault of ours.
    row = _sound(Client(shop=shop, name=name), "name", "client")
    known = Client.objects.filter(shop=shop, name=row.name).first()
    with refuse_twice(_MEANWHILE, field="client"):
        return known or saved(row)


def site_at(shop: Shop, client: Client | None, address: str) -> Site | None:
    """The client's site of just this address, a new one where there is none.

    `ValidationError` at `site` where no site can be called so.
    """
    if not address.strip():
        return None
    row = _sound(Site(shop=shop, client=client, address=address), "address", "site")
    known = Site.objects.filter(shop=shop, client=client, address=row.address).first()
    with refuse_twice(_MEANWHILE, field="site"):
        return known or saved(row)


def _sound(row: Row, column: str, field: str) -> Row:
    """The row, if it can be called so."""
    try:
        row.clean_fields(exclude={"shop", "client"})
    except ValidationError as error:
        raise ValidationError({field: error.message_dict[column]}) from error
    return row


@recorded
def client_change(
    *,
    client: Client,
    name: str,
    contact: str,
    phone: str,
    email: str,
    note: str,
    by: Person,
    at: datetime,
) -> Client:
    """Change what is known of a client; all jobs of the client say the new name."""
    client.name = name
    client.contact, client.phone, client.email, client.note = contact, phone, email, note
    words = f"There is already a client {name} in this shop; the two can be made one."
    with refuse_twice(words, field="name"):
        saved(client, ("name", *CONTACT))
    text = f"Changed client {name}"
    tell(Told(shop=client.shop, text=text, at=at, by=by, counts=True, words=words_of_rows))
    return client


@recorded
def clients_merge(*, client: Client, into: Client, by: Person, at: datetime) -> Client:
    """Make two clients one: jobs and sites go to `into`, which keeps what it says itself."""
    if client.pk == into.pk:
        raise Refused("Choose another client.", field="into")
    _sites_move(client, into)
    for job in Job.with_deleted.filter(client=client):
        job.client = into
        saved(job, ["client_id"])
    said = {name: getattr(into, name) or getattr(client, name) for name in CONTACT}
    for name, value in said.items():
        setattr(into, name, value)
    saved(into, CONTACT)
    deleted([client])
    text = f"Made client {client.name} one with {into.name}"
    tell(Told(shop=into.shop, text=text, at=at, by=by, counts=True))
    return into


def _sites_move(client: Client, into: Client) -> None:
    """The client's sites become the other's; one that the other has already is that one."""
    there = {site.address: site for site in Site.objects.filter(client=into)}
    for site in Site.objects.filter(client=client):
        same = there.get(site.address)
        if same is None:
            site.client = into
            saved(site, ["client_id"])
            continue
        for job in Job.with_deleted.filter(site=site):
            job.site = same
            saved(job, ["site_id"])
        deleted([site])


@recorded
def client_delete(*, client: Client, by: Person, at: datetime) -> None:
    """Let go of a client for whom there is no job."""
    shop, name = client.shop, client.name
    _let_go(client, f"There are jobs for {name}, or were until lately; the client stays.")
    tell(Told(shop=shop, text=f"Deleted client {name}", at=at, by=by))


@recorded
def site_delete(*, site: Site, by: Person, at: datetime) -> None:
    """Let go of a site at which there is no job."""
    shop, address = site.shop, site.address
    _let_go(site, f"There are jobs at {address}, or were until lately; the site stays.")
    tell(Told(shop=shop, text=f"Deleted site {address}", at=at, by=by))


def _let_go(row: Client | Site, in_use: str) -> None:
    try:
        deleted([row])
    except RestrictedError as error:
        raise Refused(in_use) from error
