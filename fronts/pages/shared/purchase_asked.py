"""What an address asks to buy: for which jobs, and from which offers where not the preferred."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from django.http import Http404, QueryDict

from fronts.figures.purchase import PurchaseWords, purchase_words
from fronts.selectors.needed import MOST_JOBS
from fronts.selectors.purchases import ShopBuying, jobs_to_buy_for, shop_buying
from shopjobs.models import Shop

JOB, OFFER = "job", "offer"
_KEY = re.compile(r"[0-9]{1,18}", re.ASCII)


@dataclass(frozen=True, slots=True)
class Asked:
    """What is bought, and what of the address could not be followed, in words."""

    bought: ShopBuying
    faults: tuple[str, ...]
    chosen: frozenset[int]

    @property
    def query(self) -> str:
        """What names the same purchase in another address."""
        keys = [(JOB, job.pk) for job in self.bought.jobs]
        return urlencode([*keys, *((OFFER, key) for key in sorted(self.chosen))])


def purchase_asked(shop: Shop, asked: QueryDict) -> Asked:
    """What the address asks for of this shop; what is another's does not exist."""
    jobs, offers = asked.getlist(JOB), asked.getlist(OFFER)
    faults = []
    if len(set(jobs)) > MOST_JOBS:
        faults.append(f"Choose at most {MOST_JOBS} jobs at a time; the others are left out.")
        jobs = sorted(set(jobs), key=jobs.index)[:MOST_JOBS]
    found = jobs_to_buy_for(shop, _keys(jobs))
    if len(found) < len(set(jobs)):
        faults.append("A job that was chosen is not there any more; it is left out.")
    wanted = _keys(offers)
    bought = shop_buying(shop, found, wanted)
    known = frozenset(wanted & bought.offers.keys())
    if len(known) < len(set(offers)):
        faults.append("An offer that was chosen is not there any more; the preferred one is taken.")
    return Asked(bought, tuple(faults), known)


def purchase_from(shop: Shop, asked: QueryDict, supplier: int) -> PurchaseWords:
    """What one supplier is asked for; a file of anything else would be another order."""
    found = purchase_asked(shop, asked)
    for words in purchase_words(found.bought):
        if words.supplier.pk == supplier and not found.faults:
            return words
    raise Http404


def _keys(texts: Sequence[str]) -> frozenset[int]:
    return frozenset(int(text) for text in texts if _KEY.fullmatch(text))
