"""What an item of hardware can't be by itself; by the names of its facts."""

from collections.abc import Container, Iterator

from fronts.rules.items import (
    BY_RULE,
    EDGE_WORDS,
    BandItem,
    HandleItem,
    HingeItem,
    LiftItem,
    SlideItem,
)
from fronts.rules.kinds import is_inset
from fronts.rules.screws import A_THREAD, is_thread


def hinge_faults(hinge: HingeItem) -> dict[str, str]:
    """A hinge says what it makes in one way: the overlays (gaps), or FD with plates and B."""
    return _word_faults(hinge.code, (BY_RULE,)) | dict(_hinge_faults(hinge))


def _hinge_faults(hinge: HingeItem) -> Iterator[tuple[str, str]]:
    made = "gaps" if is_inset(hinge.mount) else "overlays"
    other = "overlays" if made == "gaps" else "gaps"
    said = {
        "overlays": bool(hinge.overlays) or hinge.overlay_span is not None,
        "gaps": bool(hinge.gaps) or hinge.gap_span is not None,
    }
    if said[other]:
        yield other, f"a hinge for fronts that are {hinge.mount} says its {made}"
    elif said[made] == (hinge.fixed_distance is not None):
        yield made, f"give its {made}, or its fixed distance with plates and B"
    for key, span in (
        ("overlays", hinge.overlay_span), ("gaps", hinge.gap_span), ("bore", hinge.bore),
    ):  # fmt: skip
        if span is not None and span.least > span.most:
            yield key, "give the least first, then the most"
    usual, bore = hinge.usual_bore, hinge.bore
    if usual is not None and bore is not None and usual not in bore:
        yield "usual_bore", "give one between the least and the most"


def slide_faults(slide: SlideItem) -> dict[str, str]:
    """A slide has lengths."""
    return {} if slide.lengths else {"lengths": "give at least one length"}


def handle_faults(handle: HandleItem) -> dict[str, str]:
    """A thread must be one that screws have."""
    faults = _word_faults(handle.code, (BY_RULE,))
    if handle.thread is not None and not is_thread(handle.thread):
        faults["thread"] = f"enter {A_THREAD}"
    return faults


def lift_faults(lift: LiftItem) -> dict[str, str]:
    """The least comes first."""
    return {} if lift.least <= lift.most else {"most": "give at least as much as the least"}


def band_faults(band: BandItem) -> dict[str, str]:
    """The words that stand in place of a code are none."""
    return _word_faults(band.code, EDGE_WORDS)


def _word_faults(code: str, words: Container[str]) -> dict[str, str]:
    if code.casefold() not in words:
        return {}
    return {"code": f"“{code}” has a meaning of its own; call it otherwise"}
