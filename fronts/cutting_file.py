"""A parts file in, a cutting plan out, both as JSON.

The parts file: `unit`, `kerf`, `trim` (nothing where left out), `stock`, `parts`; every length is
text. Beside its sizes a stock may carry `count`, `grain` and `price` (decimal text, for one piece);
a part `count`, `grain`, `block` and `order`: parts that name the same block are cut out as one,
stacked along the grain by `order`, and cut up afterwards. Sticks have no `width`.

The plan: places and cuts are measured from the lower left corner of the full, untrimmed sheet.
`cuts` can be replayed from the full sheet: each divides one piece right across from `from` to `to`
(the piece's own ends) into what lies below `at` and what lies from `at` + kerf on. The trims come
first, so that everything after them can as well be replayed from a sheet already trimmed on all
sides: those have `kind` "trim" and lie wholly within the trim. Where the trim is narrower than
the saw, the first cut's kerf starts outside the sheet and its `at` is negative. On a stick, `along`
is "width" and `from` and `to` are 0. `lower_bound` counts pieces of stock.
"""

import re
from dataclasses import dataclass, field
from fractions import Fraction
from typing import cast

from fronts.cutting.cut_units import CutUnit, misfits
from fronts.cutting.faults import Fault, PartsFileError, parsed, short, shown
from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.cutting.plan_json import plan_as_json
from fronts.rules.lengths import LengthError, Mm, exact, read

__all__ = ["Fault", "PartsFileError", "plan_as_json", "read_request"]

UNITS = ("mm", "cm", "m", "in", "ft")
WIDEST_KERF = Mm(26)
"""Wider than any saw blade (common practice, no source): what is, was mistyped."""
LEAST_SIZE = Mm(Fraction(1, 10))
MOST_PIECES = 100_000
FINEST = 10**9
MOST_ROWS = 2_000
LONGEST_LABEL = 200
HIGHEST_PRICE = 10**9

_TOP = {"unit", "kerf", "trim", "stock", "parts"}
_STOCK = {"label", "length", "width", "count", "grain", "price"}
_PART = {"label", "length", "width", "count", "grain", "block", "order"}


def read_request(data: bytes) -> Request:
    """The request that a parts file states; PartsFileError with a line per fault."""
    reader = _Reader()
    found = reader.request(parsed(data))
    if found is None or reader.faults:
        raise PartsFileError(reader.faults)
    return found


@dataclass(slots=True)
class _Reader:
    """Reads on after a fault, so that a person sees all of them at once."""

    faults: list[Fault] = field(default_factory=list)
    unit: str = "mm"

    def request(self, data: object) -> Request | None:
        if not isinstance(data, dict):
            self._fault("(file)", data, "an object with unit, kerf, stock and parts")
            return None
        self._keys("", data, _TOP, {"unit", "kerf", "stock", "parts"})
        if "unit" in data and data["unit"] not in UNITS:
            self._fault("unit", data["unit"], "one of " + ", ".join(UNITS))
            return None
        self.unit = data.get("unit", "mm")
        kerf = self._length(data, "", "kerf", least=Mm(0), most=WIDEST_KERF)
        trim = self._length(data, "", "trim", least=Mm(0)) if "trim" in data else Mm(0)
        stock = [self._stock(row, path) for row, path in self._rows(data, "stock")]
        parts = [self._part(row, path) for row, path in self._rows(data, "parts")]
        if self.faults:
            return None
        request = Request(kerf, trim, tuple(filter(None, stock)), tuple(filter(None, parts)))
        self._together(request)
        return request

    def _stock(self, row: dict[str, object], path: str) -> StockSize | None:
        self._keys(path, row, _STOCK, {"label", "length"})
        return StockSize(
            label=self._label(row, path, "label") or "",
            length=self._length(row, path, "length"),
            width=self._length(row, path, "width") if "width" in row else None,
            count=self._count(row, path) if row.get("count") is not None else None,
            grain=self._grain(row, path),
            price=self._price(row, path),
        )

    def _part(self, row: dict[str, object], path: str) -> WantedPart | None:
        self._keys(path, row, _PART, {"label", "length"})
        order = row.get("order", 0)
        if type(order) is not int or abs(order) > MOST_PIECES:
            self._fault(f"{path}.order", order, "a whole number")
            order = 0
        return WantedPart(
            label=self._label(row, path, "label") or "",
            length=self._length(row, path, "length"),
            width=self._length(row, path, "width") if "width" in row else None,
            count=self._count(row, path) if "count" in row else 1,
            grain=self._grain(row, path),
            block=self._label(row, path, "block") if row.get("block") is not None else None,
            order=order,
        )

    def _together(self, request: Request) -> None:
        """What no row shows alone: sheets with sticks, too much of all, and what fits no stock."""
        flat = request.stock[0].width is not None
        wanted = "a width, as the first stock has one" if flat else "no width, for sticks"
        widths = [(f"stock[{i}].width", stock.width) for i, stock in enumerate(request.stock)]
        widths += [(f"parts[{i}].width", part.width) for i, part in enumerate(request.parts)]
        for path, width in widths:
            if (width is not None) != flat:
                self.faults.append(Fault(path, "none" if width is None else exact(width), wanted))
        self._fine(request)
        self._trims(request)
        self._prices(request)
        self._blocks(request)
        if (pieces := sum(part.count for part in request.parts)) > MOST_PIECES:
            self._fault("parts", pieces, f"at most {MOST_PIECES} pieces in all")
        if not self.faults:
            for unit in misfits(request):
                self._misfit(request, unit)

    def _fine(self, request: Request) -> None:
        """Lengths so fine that together they have no common unit of any use."""
        lengths = [(f"stock[{i}]", s.length, s.width) for i, s in enumerate(request.stock)]
        lengths += [(f"parts[{i}]", p.length, p.width) for i, p in enumerate(request.parts)]
        for path, *sizes in [("kerf", request.kerf, None), ("trim", request.trim, None), *lengths]:
            for size in sizes:
                if isinstance(size, Fraction) and size.denominator > FINEST:
                    size_shown, wanted = (
                        short(exact(size)),
                        "a length no finer than 8 decimals of a mm",
                    )
                    self.faults.append(Fault(path, f"{size_shown} mm", wanted))

    def _trims(self, request: Request) -> None:
        for index, stock in enumerate(request.stock):
            for side, size in (("length", stock.length), ("width", stock.width)):
                if size is not None and size <= 2 * request.trim:
                    wanted = f"more than twice the trim of {exact(request.trim)} mm"
                    self.faults.append(Fault(f"stock[{index}].{side}", f"{exact(size)} mm", wanted))

    def _prices(self, request: Request) -> None:
        """A counted piece without a price is paid for already; one to be bought must have one."""
        if all(stock.price is None for stock in request.stock):
            return
        for index, stock in enumerate(request.stock):
            if stock.price is None and stock.count is None:
                self.faults.append(
                    Fault(f"stock[{index}].price", "none", "a price, as other stock has one")
                )

    def _blocks(self, request: Request) -> None:
        first: dict[str, WantedPart] = {}
        for index, part in enumerate(request.parts):
            if part.block is None:
                continue
            head = first.setdefault(part.block, part)
            if part.count != head.count:
                wanted = f"{head.count}, as in the rest of block {part.block}"
                self._fault(f"parts[{index}].count", part.count, wanted)
            if part.grain != head.grain:
                wanted = f"{head.grain or 'none'}, as in the rest of block {part.block}"
                self._fault(f"parts[{index}].grain", part.grain, wanted)

    def _misfit(self, request: Request, unit: CutUnit) -> None:
        """Name a part, or a whole block, that is larger than every stock."""
        index = unit.parts[0]
        part = request.parts[index]
        size = f"{exact(unit.length)}"
        size += f" x {exact(unit.width)} mm" if part.width is not None else " mm"
        name = part.label if len(unit.parts) == 1 else f"block {part.block}"
        largest = "no larger than some stock inside its trim, the way its grain lets it lie"
        self.faults.append(Fault(f"parts[{index}]", f"{name}, {size}", largest))

    def _rows(self, data: dict[str, object], key: str) -> list[tuple[dict[str, object], str]]:
        rows = data.get(key)
        if key not in data:
            return []
        if not isinstance(rows, list) or not 1 <= len(rows) <= MOST_ROWS:
            self._fault(key, rows, f"a list of 1 to {MOST_ROWS} objects")
            return []
        found = []
        for index, row in enumerate(rows):
            if isinstance(row, dict):
                found.append((cast(dict[str, object], row), f"{key}[{index}]"))
            else:
                self._fault(f"{key}[{index}]", row, "an object")
        return found

    def _keys(self, path: str, row: dict[str, object], known: set[str], needed: set[str]) -> None:
        for key in row:
            if key not in known:
                wanted = "one of " + ", ".join(sorted(known))
                self.faults.append(Fault(_under(path, short(key)), "an unknown key", wanted))
        for key in sorted(needed - row.keys()):
            self.faults.append(Fault(_under(path, key), "nothing", "this key"))

    def _length(
        self,
        row: dict[str, object],
        path: str,
        key: str,
        *,
        least: Mm = LEAST_SIZE,
        most: Mm | None = None,
    ) -> Mm:
        """The length at a key; faults are noted and a harmless length stands in."""
        if key not in row:
            return Mm(1)
        text = row[key]
        if not isinstance(text, str):
            self._fault(_under(path, key), text, 'a length as text, like "600"')
            return Mm(1)
        try:
            found = read(text, self.unit)
        except LengthError as error:
            self._fault(_under(path, key), text, f"a length: {error}")
            return Mm(1)
        if found < least:
            self._fault(_under(path, key), text, f"at least {exact(least)} mm")
        if most is not None and found > most:
            self._fault(_under(path, key), text, f"at most {exact(most)} mm")
        return found

    def _count(self, row: dict[str, object], path: str) -> int:
        count = row["count"]
        if type(count) is not int or not 1 <= count <= MOST_PIECES:
            self._fault(f"{path}.count", count, f"a whole number from 1 to {MOST_PIECES}")
            return 1
        return count

    def _grain(self, row: dict[str, object], path: str) -> Side | None:
        grain = row.get("grain")
        if grain not in (None, "length", "width"):
            self._fault(f"{path}.grain", grain, "length, width or null")
            return None
        return grain

    def _label(self, row: dict[str, object], path: str, key: str) -> str | None:
        label = row.get(key)
        if key not in row:
            return None
        if not isinstance(label, str) or not 1 <= len(label.strip()) <= LONGEST_LABEL:
            self._fault(f"{path}.{key}", label, f"text of 1 to {LONGEST_LABEL} characters")
            return None
        return label

    def _price(self, row: dict[str, object], path: str) -> Fraction | None:
        price = row.get("price")
        if price is None:
            return None
        if not isinstance(price, str) or not re.fullmatch(r"[0-9]{1,9}(\.[0-9]{1,6})?", price):
            self._fault(f"{path}.price", price, 'a price as decimal text, like "48.50"')
            return None
        return Fraction(price)

    def _fault(self, path: str, found: object, wanted: str) -> None:
        self.faults.append(Fault(path, shown(found), wanted))


def _under(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key
