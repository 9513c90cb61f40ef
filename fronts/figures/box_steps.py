"""How boxes to be made are built, step by step, with a caution where the hand is."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from fronts.rules.box_kinds import BoxKind
from fronts.rules.item_kinds import Joint
from fronts.rules.kinds import SlideKind
from fronts.rules.lengths import Mm, show, write


@dataclass(frozen=True, slots=True)
class BoxStep:
    """What is done, and what to take care of while doing it."""

    words: str
    care: str = ""


def box_steps(kind: BoxKind, unit: str) -> tuple[BoxStep, ...]:
    """All of the work on boxes of one kind, in its order."""
    return tuple(_steps(kind, unit))


def tongue(kind: BoxKind) -> Mm:
    """How thick the tongue is that a dado takes: half the stock (common practice, no source)."""
    return kind.stock.side / 2


def _steps(kind: BoxKind, unit: str) -> Iterator[BoxStep]:
    yield BoxStep(
        "Cut the pieces; mark on each its box, its lower edge and its inside.",
        "Short or narrow: stop block, sled, push stick; never by hand.",
    )
    yield _groove(kind, unit)
    yield from _tier_grooves(kind, unit)
    yield _JOINTS[kind.joint](kind, unit)
    yield from _open_behind(kind, unit)
    yield BoxStep(
        f"Dry fit, bottom in: A, or up to {show(kind.needs.tolerance, unit)} less, at front and "
        "back; never more."
    )
    yield from _glue(kind)
    yield BoxStep("Square: both diagonals X, alike; squeeze the longer. Let it set flat.")
    yield BoxStep(_SLIDES[kind.slide])


def _groove(kind: BoxKind, unit: str) -> BoxStep:
    stock, pieces = kind.stock, "sides and front" if kind.open_behind else "sides, front and back"
    words = (
        f"Groove {pieces} inside, end to end: {show(stock.bottom, unit)} wide (try the bottom in "
        f"it), {show(stock.groove, unit)} deep, {write(kind.needs.recess, unit)} above the lower "
        "edge; lower edges to one fence."
    )
    if kind.joint == "through-dovetail":
        words += " Lay the lowest tail over it: it hides the groove’s ends."
    return BoxStep(
        words,
        "Unplug to set the cutter; guard, feather boards, push blocks. Groove short pieces while "
        "they are one strip.",
    )


def _tier_grooves(kind: BoxKind, unit: str) -> Iterator[BoxStep]:
    if not kind.shelves:
        return
    up = f"{write(kind.needs.recess, unit)} + K" + (", + 2 K …" if kind.shelves > 1 else "")
    words = f"Front and back: the same groove for each shelf, {up} above the box’s lower edge"
    if kind.open_behind:
        less = write(kind.needs.recess + kind.stock.bottom, unit)
        words += f"; above the back’s own, {less} less"
    yield BoxStep(f"{words}. Another K is as good, where sides and shelf move together.")


def _butt(kind: BoxKind, unit: str) -> BoxStep:
    del kind, unit
    return BoxStep("No joint to cut: front and back between the sides, glued and screwed.")


def _rabbet(kind: BoxKind, unit: str) -> BoxStep:
    cut = f"{show(kind.stock.side, unit)} wide, {show(kind.stock.joint, unit)} deep"
    return BoxStep(
        f"Rabbet both ends of the sides inside, {cut}; front and back go in flush.",
        _ACROSS,
    )


def _dado(kind: BoxKind, unit: str) -> BoxStep:
    near, deep = show(kind.stock.side - tongue(kind), unit), show(kind.stock.joint, unit)
    wide = show(tongue(kind), unit)
    return BoxStep(
        f"Dado both ends of the sides inside: {wide} wide, {deep} deep, {near} from the end. "
        f"Rabbet front and back outside to tongues {wide} thick, {deep} long.",
        _ACROSS,
    )


def _dovetail(kind: BoxKind, unit: str) -> BoxStep:
    thick = show(kind.stock.side, unit)
    return BoxStep(
        f"Dovetails: tails on the sides, pins on front and back, base lines {thick} from the "
        "ends; half a pin at each edge.",
        "Router and jig: work clamped; let the bit stop before you lift it.",
    )


_ACROSS = "Sled or miter gauge with a stop; hands clear."
_JOINTS: Mapping[Joint, Callable[[BoxKind, str], BoxStep]] = {
    "butt": _butt, "rabbet": _rabbet, "dado": _dado, "through-dovetail": _dovetail,
}  # fmt: skip


def _open_behind(kind: BoxKind, unit: str) -> Iterator[BoxStep]:
    if not kind.open_behind:
        return
    low = write(kind.needs.recess + kind.stock.bottom, unit)
    yield BoxStep(
        f"Back: G high, its lower edge {low} above the sides’. It stands on the bottom and the "
        "slides pass below: that is their notch. Bore for their hooks by their maker’s sheet."
    )


def _glue(kind: BoxKind) -> Iterator[BoxStep]:
    tiers = " Shelves and their sides with it, from the floor up." if kind.shelves else ""
    if kind.open_behind:
        yield BoxStep(
            f"Glue and clamp the corners, the bottom in dry.{tiers} Once set, screw the bottom "
            "up into the back."
        )
        return
    yield BoxStep(f"Glue front and back to one side, bottom in dry, other side on; clamp.{tiers}")


_SLIDES: Mapping[SlideKind, str] = {
    "side": "Slides: middle line half the side’s height up, front end flush with the box’s front; "
    "screws in slots first, the rest when it runs true.",
    "under": "Clips under the bottom, into the corners behind the front; slides in the recess, "
    "along the sides. Screws by their maker’s sheet, none through the bottom.",
    "bottom": "Slide under the bottom, in the middle of A, front end flush with the box’s front; "
    "no screw through the bottom.",
}
"""Where the makers' sheets say nothing else (common practice, no source)."""
