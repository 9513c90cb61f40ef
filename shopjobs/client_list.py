"""The clients of a shop: a page of those that are looked for, and whom a person may see."""

from typing import Any

from django.core.paginator import Page, Paginator
from django.db.models import Count, Exists, OuterRef, Q, QuerySet

from shopjobs.job_list import A_PAGE, MOST_WORDS, word_in
from shopjobs.models import Client, Job, Person, Role, Site

MOST_OFFERED = 300
_LOOKED_IN = ("name", "contact", "phone", "email", "sites__address")


def clients_of(person: Person) -> QuerySet[Client]:
    """The clients of the person's shop; for an installer those with a job that stands on the list.

    Those are the ones to call about what is to be fitted.
    """
    clients = Client.objects.filter(shop__people=person)
    if person.role == Role.INSTALLER:
        jobs = Job.objects.filter(shop__people=person, archived_at=None)
        clients = clients.filter(pk__in=jobs.order_by().values("client"))
    return clients


def client_page(person: Person, words: str, number: str) -> Page[Any]:
    """Page `number` of the clients in whom each of the words is found, with their jobs counted."""
    clients = clients_of(person)
    for word in words.split()[:MOST_WORDS]:
        found = Client.objects.filter(word_in(_LOOKED_IN, word))
        clients = clients.filter(pk__in=found.values("pk"))
    there = Q(jobs__deleted_at=None)
    counted = clients.annotate(count=Count("jobs", filter=there)).order_by("name", "pk")
    return Paginator(counted, A_PAGE).get_page(number)


def jobs_for(client: Client) -> QuerySet[Job]:
    """The jobs for a client, the latest changed first."""
    return Job.objects.filter(client=client).order_by("-updated_at", "-pk")


def sites_of(client: Client) -> QuerySet[Any, Any]:
    """A client's sites by their addresses; `in_use` where a job is there, a deleted one too."""
    jobs = Job.with_deleted.filter(site=OuterRef("pk"))
    return client.sites.annotate(in_use=Exists(jobs)).order_by("address")


def names_offered(shop: int) -> list[str]:
    """Names of the shop's clients to choose from, the latest first."""
    rows = Client.objects.filter(shop=shop).order_by("-pk").values_list("name", flat=True)
    return list(rows[:MOST_OFFERED])


def sites_offered(shop: int) -> list[str]:
    """Addresses of the shop's sites to choose from, the latest first, each once."""
    rows = Site.objects.filter(shop=shop).order_by("-pk").values_list("address", flat=True)
    return list(dict.fromkeys(rows[:MOST_OFFERED]))
