"""What to do with a front that was cut, in words."""

from collections.abc import Iterator, Mapping

from fronts.models import FrontCut
from fronts.rules.cut_fronts import AfterCut, CutTo, after_cut
from fronts.rules.kinds import FRONT_BUILDS, GRAIN_WAYS, SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.results import Front
from fronts.selectors.cuts import cut_to_of

_LACKING = {"width": "too narrow", "height": "too low", "thickness": "off in its thickness"}
_MEMBERS: Mapping[Side, str] = {
    "left": "left stile", "right": "right stile", "top": "top rail", "bottom": "bottom rail",
}  # fmt: skip


def cut_todo(cut: FrontCut | None, front: Front, kitchen: Kitchen) -> str:
    """What is to be done with a front that was cut; "" where it holds, or was not cut."""
    if cut is None:
        return ""
    return after_cut_words(after_cut(cut_to_of(cut), front, kitchen), kitchen.job.unit)


def after_cut_words(after: AfterCut, unit: str) -> str:
    """`trim 1/16 off the right`, or `make again: cut in maple, now birch`; "" where it holds."""
    trims = ", ".join(f"{show(by, unit)} off the {side}" for side, by in after.trims.items())
    if after.too_far:
        return f"make again: {trims} is more than may be trimmed"
    if after.make_again:
        lacks = ", ".join(f"{show(by, unit)} {_LACKING[name]}" for name, by in after.lacks.items())
        return f"make again: {'; '.join(filter(None, [*_made(after, unit), lacks]))}"
    todo = [f"trim {trims}"] if trims else []
    if after.rehung:
        todo.append(_rehung(after.was, after.now))
    return "; ".join(todo)


def _made(after: AfterCut, unit: str) -> Iterator[str]:
    """What it was cut as, and what it is to be made as now."""
    was, now = after.was, after.now
    for name in after.otherwise:
        match name:
            case "on_hand":
                made = "from a door on hand", "made new"
                yield "cut {}, now {}".format(*(made if was.on_hand else reversed(made)))
            case "build":
                yield f"cut as {_build(was)}, now {_build(now)}"
            case "material":
                yield f"cut in {was.material}, now {now.material}"
            case "grain":
                yield f"cut with its grain {_grain(was)}, now {_grain(now)}"
            case "glass":
                yield "cut {}, now {}".format(*_glass(was, now))
            case "frame":
                yield from _frame(was, now, unit)


def _build(cut: CutTo) -> str:
    return FRONT_BUILDS[cut.build].says.lower() if cut.build else ""


def _grain(cut: CutTo) -> str:
    return GRAIN_WAYS[cut.grain].lower() if cut.grain else ""


def _glass(was: CutTo, now: CutTo) -> tuple[str, str]:
    said = {True: "for glass", False: "with a panel"}
    return said[was.glass], said[now.glass]


def _frame(was: CutTo, now: CutTo, unit: str) -> Iterator[str]:
    """Stiles and rails; all of them as one where all are alike."""
    if was.frame is None or now.frame is None:
        return
    pairs = {side: (was.frame[side], now.frame[side]) for side in SIDES}
    alike = len(set(pairs.values())) == 1
    for side, (before, after) in pairs.items():
        if before == after or (alike and side != SIDES[0]):
            continue
        what = "stiles and rails" if alike else f"its {_MEMBERS[side]}"
        yield f"cut with {what} {show(before, unit)} wide, now {show(after, unit)}"


def _rehung(was: CutTo, now: CutTo) -> str:
    """Cups that were bored on one side do not serve at another."""
    if now.hinged is None:
        return f"hinged at the {was.hinged} when it was cut, now not: plug its cups"
    return (
        f"hinged at the {was.hinged} when it was cut, now at the {now.hinged}: where it is "
        "bored, plug the cups and bore anew, or make it again"
    )
