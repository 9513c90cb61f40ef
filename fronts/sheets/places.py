"""How many sheets one web process prints at a time: for one shop, and for all of them.

The sheets are made one after another, and who waits holds a thread. So the pages keep one, and
a shop that opens many sheets at once leaves room for another's. Whole sets are printed elsewhere.
"""

from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Lock

from fronts.sheets.pdf import PrintingBusyError

PLACES = 3
PLACES_A_SHOP = 2
_lock = Lock()
_taken: Counter[int] = Counter()


@contextmanager
def printing_place(shop_id: int) -> Iterator[None]:
    """A place for one sheet of the shop; where none is free, nobody waits for it."""
    with _lock:
        if _taken[shop_id] >= PLACES_A_SHOP or _taken.total() >= PLACES:
            raise PrintingBusyError("Other sheets are being made just now.")
        _taken[shop_id] += 1
    try:
        yield
    finally:
        with _lock:
            _taken[shop_id] -= 1
