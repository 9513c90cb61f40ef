"""What jobs wait for of what they ordered, from whom, and how long that takes: in a few reads."""

from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from datetime import date

from django.db.models import F, OuterRef, Subquery, Sum
from django.db.models.functions import Coalesce

from fronts.models import ApprovedLine, Offer, SentLine, Supplier
from fronts.rules.delivery import Awaited
from fronts.rules.job_stages import JobCounts
from fronts.selectors.order_progress import names_to_send
from shopjobs.models import Shop

Coming = tuple[int, str, str, date]
"""The job's key, what is to come, from whom, and the day on which it was sent for."""


def awaited_by(
    shop: Shop, counts: Mapping[int, JobCounts], *, sellers: bool
) -> dict[int, list[Awaited]]:
    """What each job of the shop waits for, where its order is approved and not all is fitted.

    What is still to be sent for is bought by its preferred offer, and says whose that is where
    `sellers` are told; what was sent for comes from whom it was sent to. The reads are as many
    for many jobs as for one.
    """
    held = {
        key: counted for key, counted in counts.items()
        if counted.approved and counted.done < counted.fronts
    }  # fmt: skip
    if not held:
        return {}
    to_send = names_to_send(key for key, counted in held.items() if not counted.sent)
    coming = list(_coming(held))
    wanted = {name for names in to_send.values() for name in names}
    offers = _offers(shop, wanted | {name for _, name, *_ in coming})
    found: dict[int, list[Awaited]] = {key: [] for key in held}
    for key, names in to_send.items():
        preferred = [next(iter(offers.get(name, ())), Awaited(name)) for name in names]
        found[key] += preferred if sellers else [replace(each, supplier="") for each in preferred]
    usual = _usual_days(shop) if coming else {}
    for key, name, seller, sent_on in coming:
        asked = (each.days for each in offers.get(name, ()) if _is(each.supplier, seller))
        days = next(asked, usual.get(seller.casefold()))
        found[key].append(Awaited(name, seller, days, sent_on))
    return found


def _is(one: str, other: str) -> bool:
    return one.casefold() == other.casefold()


def _coming(jobs: Iterable[int]) -> Iterable[Coming]:
    """What was sent for and has not come; each thing by its buying name, as it was approved."""
    lines = ApprovedLine.objects.filter(approval__job=OuterRef("sending__job"))
    lines = lines.filter(item=OuterRef("item")).exclude(bought_as="").order_by("-pk")
    rows = SentLine.objects.filter(sending__job__in=list(jobs)).order_by("pk")
    rows = rows.annotate(came=Coalesce(Sum("arrivals__amount"), 0)).filter(came__lt=F("amount"))
    named = rows.annotate(name=Coalesce(Subquery(lines.values("bought_as")[:1]), F("item")))
    return named.values_list("sending__job", "name", "sending__supplier", "sending__sent_on")


def _offers(shop: Shop, names: Collection[str]) -> dict[str, list[Awaited]]:
    """Who sells each of these things, the preferred one first, and how long it takes to come."""
    found: dict[str, list[Awaited]] = defaultdict(list)
    if names:
        rows = Offer.objects.filter(goods__shop=shop, goods__name__in=names)
        days = Coalesce("lead_days", "supplier__lead_days")
        asked = rows.annotate(takes=days).order_by("goods", "place", "pk")
        for name, seller, takes in asked.values_list("goods__name", "supplier__name", "takes"):
            found[name].append(Awaited(name, seller, takes))
    return found


def _usual_days(shop: Shop) -> dict[str, int | None]:
    """How long what each supplier sends usually takes."""
    rows = Supplier.objects.filter(shop=shop).values_list("name", "lead_days")
    return {name.casefold(): days for name, days in rows}
