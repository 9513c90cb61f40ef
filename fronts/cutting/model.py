"""What a cutting plan is made from, and what it says: frozen, in exact millimetres."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.usual_stock import SAFE_WIDTH

Side: TypeAlias = Literal["length", "width"]

HOLD_RIP = "narrow strip: push block past the blade, or cut it as the piece that falls off"
HOLD_CROSS = "small piece: clamp it to a sled or jig; never by hand or against the fence"


@dataclass(frozen=True, slots=True)
class StockSize:
    """A size that can be had: `count` None means as many as needed; sticks have no width.

    `grain` is the side that the grain runs along; None is stock without grain.
    `price` is for one piece, in whatever money the shop counts.
    `own` is an offcut that the shop has, by its label: it costs nothing, and is not trimmed, as
    its edges are sawn.
    """

    label: str
    length: Mm
    width: Mm | None = None
    count: int | None = None
    grain: Side | None = None
    price: Fraction | None = None
    own: bool = False


@dataclass(frozen=True, slots=True)
class WantedPart:
    """A size to cut: `grain` is the side that the grain runs along; None may turn.

    Parts that name the same `block` are cut as one, and the block is cut up afterwards: stacked
    along the grain by `order`, or each with its lower left corner at its `place` in the block,
    apart by a kerf at least. Blocks of one `sequence` lie on neighbouring sheets, by `order`.
    """

    label: str
    length: Mm
    width: Mm | None = None
    count: int = 1
    grain: Side | None = None
    block: str | None = None
    order: int = 0
    place: tuple[Mm, Mm] | None = None
    sequence: str | None = None


@dataclass(frozen=True, slots=True)
class Request:
    """`trim` is cut off every edge of a sheet, or each end of a stick, before anything else."""

    kerf: Mm
    trim: Mm
    stock: tuple[StockSize, ...]
    parts: tuple[WantedPart, ...]
    safe_width: Mm = SAFE_WIDTH

    @property
    def sticks(self) -> bool:
        """Whether this is a plan for sticks: lengths only."""
        return self.stock[0].width is None

    def trim_of(self, stock: StockSize) -> Mm:
        """What is cut off every edge of a piece of this stock."""
        return NOTHING if stock.own else self.trim


@dataclass(frozen=True, slots=True)
class Placement:
    """A part on its sheet: `length` runs along the sheet's length, from the lower left corner.

    `order` is its place in its `block` and its `sequence`.
    """

    part: str
    x: Mm
    y: Mm
    length: Mm
    width: Mm | None
    turned: bool
    grain: Side | None = None
    block: str | None = None
    order: int = 0
    sequence: str | None = None


@dataclass(frozen=True, slots=True)
class Offcut:
    """What is left over; `usable` where no side is under the safe width."""

    x: Mm
    y: Mm
    length: Mm
    width: Mm | None
    usable: bool


@dataclass(frozen=True, slots=True)
class Cut:
    """One cut right across `piece`.

    `at` is the edge of what lies below it (or left of it), the kerf follows from there; `fence` is
    the size that the fence or stop is set to; `falls` is the name of what falls off, None for
    waste narrower than the saw; `hold` says how to hold what must not be held by hand.
    """

    number: int
    kind: Literal["trim", "rip", "cross", "block"]
    along: Side
    at: Mm
    start: Mm
    end: Mm
    piece: str
    fence: Mm
    keeps: str
    falls: str | None
    hold: str | None


@dataclass(frozen=True, slots=True)
class Layout:
    """One way of cutting a sheet or stick, and how many are cut so."""

    stock: StockSize
    count: int
    placed: tuple[Placement, ...]
    cuts: tuple[Cut, ...]
    offcuts: tuple[Offcut, ...]


@dataclass(frozen=True, slots=True)
class Plan:
    """The plan and what is proved of it.

    `lower_bound` counts sheets: no plan of edge-to-edge cuts takes fewer, beside the offcuts that
    the shop has. `proved` says that this
    plan is the least: by count, or by `cost` where stock has prices (`cost_bound` is then proven).
    `cannot_all_fit` is a proof that the stock does not hold all the parts.
    """

    request: Request
    layouts: tuple[Layout, ...]
    unplaced: tuple[tuple[str, int], ...]
    lower_bound: int
    proved: bool
    cost: Fraction | None
    cost_bound: Fraction | None
    cannot_all_fit: bool
    seconds: float

    @property
    def sheets_used(self) -> int:
        """How many pieces of stock are cut."""
        return sum(layout.count for layout in self.layouts)

    @property
    def sheets_taken(self) -> int:
        """How many pieces of stock are cut, the shop's own offcuts apart."""
        return sum(layout.count for layout in self.layouts if not layout.stock.own)

    @property
    def yielded(self) -> Fraction:
        """The share of the stock cut that becomes parts."""
        bought = sum(layout.count * _area(layout.stock) for layout in self.layouts)
        made = sum(
            layout.count * sum(_area(placed) for placed in layout.placed) for layout in self.layouts
        )
        return Fraction(made) / bought if bought else Fraction(0)


def _area(thing: StockSize | Placement) -> Fraction:
    return thing.length * (Fraction(1) if thing.width is None else thing.width)
