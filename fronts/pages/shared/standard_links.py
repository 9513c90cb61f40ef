"""Which short page of the shop's standard says what a finding goes by."""

from collections.abc import Mapping

from django.urls import reverse

_PAGES: Mapping[str, tuple[str, ...]] = {
    "lap": ("no-overlay-rule", "mixed-overlay-and-inset", "lap-runs-out", "laps-next-opening"),
    "gaps": ("gap-too-small", "gap-closes", "fronts-too-close"),
    "wall": ("lines-miss", "corner-blocks", "appliance-blocks"),
    "errors": ("may-not-come-true",),
    "hinges": (
        "too-heavy", "too-tall", "no-hinge-makes-overlay", "no-place-for-hinge",
        "hinges-close-for-width", "hinge-adjusted",
    ),
    "slides": ("no-slide-fits", "box-too-long", "box-wants-guide"),
    "mounting-holes": ("no-place-for-hole", "two-mounting-holes"),
    "screws": ("no-screw-fits", "no-knob-screw-fits"),
    "knobs": ("knobs-out-of-line", "knob-in-thin-panel"),
    "trimming": ("no-door-serves",),
    "five-piece": ("too-little-panel", "middle-rail", "no-room-for-panel"),
    "edge-bands": ("band-unknown", "no-room-for-bands"),
    "bought": ("no-door-style",),
    "fixed": ("no-room-for-tray",),
}  # fmt: skip
PAGE_OF: Mapping[str, str] = {code: page for page, codes in _PAGES.items() for code in codes}
"""The page by the finding's code."""


def standard_address(code: str) -> str | None:
    """The address of the page that says what the finding goes by, where one does."""
    page = PAGE_OF.get(code)
    return None if page is None else reverse("fronts:shop-standard-page", args=[page])
