"""A parts file: what a cutting plan is made from, as JSON.

`unit`, `kerf`, `trim` (nothing where left out), `stock`, `parts`; every length is text. Beside its
sizes a stock may carry `count`, `grain` and `price` (decimal text, for one piece); a part `count`,
`grain`, `block` and `order`: parts that name the same block are cut out as one, stacked along the
grain by `order`, and cut up afterwards. Sticks have no `width`.
"""

import re
from collections.abc import Callable
from fractions import Fraction

from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.jobfile.json_text import decoded, parsed
from fronts.jobfile.parts_checks import check
from fronts.jobfile.reader import Page, Place, Record
from fronts.jobfile.sizes import STAND_IN
from fronts.jobfile.values import chosen, one_of, whole
from fronts.rules.lengths import UNITS, LengthError, Mm, exact, read

_UNITS = {unit: unit for unit in UNITS}
WIDEST_KERF = Mm(26)
"""Wider than any saw blade (common practice, no source): what is, was mistyped."""
LEAST_SIZE = Mm(Fraction(1, 10))
MOST_PIECES = 100_000
MOST_ROWS = 2_000
LONGEST_LABEL = 200

FILE_KEYS = ("unit", "kerf", "trim", "stock", "parts")
STOCK_KEYS = ("label", "length", "width", "count", "grain", "price")
PART_KEYS = ("label", "length", "width", "count", "grain", "block", "order")

_PRICE = re.compile(r"[0-9]{1,9}(\.[0-9]{1,6})?")
_SIDES: dict[str, Side] = {"length": "length", "width": "width"}


def read_request(data: bytes) -> Request:
    """The request that a parts file states; `Refused` with a line per fault."""
    page = Page()
    file = Record(Place(page, "", parsed(decoded(data))), FILE_KEYS)
    unit = chosen(file, "unit", _UNITS, "mm")
    kerf = file.need("kerf", _length(unit, Mm(0), WIDEST_KERF), STAND_IN, "this key")
    trim = file.take("trim", _length(unit, Mm(0))) or Mm(0)
    stock = tuple(_stock(row, unit) for row in _rows(file, "stock", STOCK_KEYS))
    parts = tuple(_part(row, unit) for row in _rows(file, "parts", PART_KEYS))
    page.faults.refuse_if_any()
    request = Request(kerf, trim, stock, parts)
    if (pieces := sum(part.count for part in parts)) > MOST_PIECES:
        page.faults.add("parts", f"{pieces:,} pieces", f"at most {MOST_PIECES:,} pieces in all")
    check(request, page.faults)
    return request


def _rows(file: Record, key: str, keys: tuple[str, ...]) -> list[Record]:
    if not file.has(key) or file.at(key).value == []:
        file.fault(
            key, f"a list of 1 to {MOST_ROWS:,} objects", None if file.has(key) else "nothing"
        )
    return [Record(place, keys) for place in file.entries(key, MOST_ROWS)]


def _stock(row: Record, unit: str) -> StockSize:
    return StockSize(
        label=row.need("label", _label, "", "this key"),
        length=row.need("length", _length(unit), STAND_IN, "this key"),
        width=row.take("width", _length(unit)),
        count=row.take("count", whole(1, MOST_PIECES)),
        grain=row.take("grain", one_of(_SIDES)),
        price=row.take("price", _price),
    )


def _part(row: Record, unit: str) -> WantedPart:
    return WantedPart(
        label=row.need("label", _label, "", "this key"),
        length=row.need("length", _length(unit), STAND_IN, "this key"),
        width=row.take("width", _length(unit)),
        count=row.take("count", whole(1, MOST_PIECES)) or 1,
        grain=row.take("grain", one_of(_SIDES)),
        block=row.take("block", _label),
        order=row.take("order", whole(-MOST_PIECES, MOST_PIECES)) or 0,
    )


def _length(
    unit: str, least: Mm = LEAST_SIZE, most: Mm | None = None
) -> Callable[[Place], Mm | None]:
    """A reader of a length as text: a number would lose what JSON readers round off."""

    def read_length(place: Place) -> Mm | None:
        if not isinstance(place.value, str):
            place.fault('a length as text, like "600"')
            return None
        try:
            size = read(place.value, unit)
        except LengthError as error:
            place.fault(f"a length: {error}")
            return None
        if size < least:
            place.fault(f"at least {exact(least)} mm")
        elif most is not None and size > most:
            place.fault(f"at most {exact(most)} mm")
        else:
            return size
        return None

    return read_length


def _label(place: Place) -> str | None:
    if isinstance(place.value, str) and 1 <= len(place.value.strip()) <= LONGEST_LABEL:
        return place.value
    place.fault(f"text of 1 to {LONGEST_LABEL} characters")
    return None


def _price(place: Place) -> Fraction | None:
    if isinstance(place.value, str) and _PRICE.fullmatch(place.value):
        return Fraction(place.value)
    place.fault('a price as decimal text, like "48.50"')
    return None
