"""What is held while it is changed, in one order, so that no two wait for each other.

First the shop, then its jobs by their keys, then other things. Whoever holds a job asks for no
shop any more: a page of a job whose services hold the shop holds both from its beginning.
None of these locks keeps anybody from adding a row that leads to what is held.
"""

from shopjobs.models import Shop


def shop_lock(shop_id: int) -> Shop:
    """The shop as it is now; nobody else who holds it goes on until the transaction is through."""
    return Shop.objects.select_for_update(no_key=True).get(pk=shop_id)
