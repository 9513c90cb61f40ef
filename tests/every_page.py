"""Every page of the site that has an address without anything special about it."""

from collections.abc import Iterator
from datetime import date
from typing import Any

from django.test import Client
from django.urls import NoReverseMatch, URLPattern, URLResolver, get_resolver, reverse

from fronts.models import DoorOnHand, Opening
from fronts.pages.standard.forms.short_pages import SHORT_PAGES
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.rules.snags import SnagFacts
from fronts.services.dates import closed_days_add
from fronts.services.snags import snag_raise
from shopjobs.models import Job, Person
from tests.factories import NOW
from tests.frozen_sheets import frozen_code
from tests.stocked import counted


def addresses(patterns: list[URLPattern | URLResolver]) -> Iterator[URLPattern]:
    """Every address of the site."""
    for pattern in patterns:
        if isinstance(pattern, URLResolver):
            yield from addresses(pattern.url_patterns)
        else:
            yield pattern


def every_page(client: Client, job: Job, owner: Person) -> Iterator[tuple[str, str, Any]]:
    """Each page's name, its path and what comes, for a job with a small kitchen (`furnish`)."""
    drawer = Opening.objects.filter(closed_by="drawer", cabinet__job=job).first()
    door = DoorOnHand.objects.filter(job=job).first()
    if drawer is None or door is None:
        raise ValueError("the job has no drawer, or no door on hand")
    facts = SnagFacts("job", "paint on the floor")
    snag = snag_raise(job=job, facts=facts, by=owner, at=NOW)
    closed = ClosedFacts(date(2027, 8, 2), date(2027, 8, 13), "summer holidays")
    shut = closed_days_add(shop=job.shop, facts=closed, by=owner, at=NOW)
    in_stock = counted(job.shop, owner, 40)
    known: dict[str, Any] = {
        "job_id": job.pk, "cabinet_id": drawer.cabinet_id, "opening_id": drawer.pk, "index": 0,
        "page": "doors", "kind": "hinges", "size": "width_top", "topic": next(iter(SHORT_PAGES)),
        "key": door.pk, "snag_id": snag.pk, "cabinet_kind": "base", "person_id": owner.pk,
        "code": frozen_code(job, "B1"), "closed_id": shut.pk, "client_id": job.client_id,
        "goods_id": in_stock.pk,
    }  # fmt: skip
    for address in addresses(get_resolver().url_patterns):
        if not address.pattern.converters.keys() <= known.keys():
            continue
        asked = {name: known[name] for name in address.pattern.converters}
        namespace = "fronts" if "fronts." in address.lookup_str else "shopjobs"
        try:
            path = reverse(f"{namespace}:{address.name}", kwargs=asked)
        except NoReverseMatch:  # What is known is of another kind.
            continue
        answer = client.get(path)
        if answer.status_code == 200 and answer.content.lstrip()[:9].lower() == b"<!doctype":
            yield str(address.name), path, answer
