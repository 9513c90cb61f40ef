"""The sample job files that tests feed, and small ones to change."""

import json
from pathlib import Path
from typing import Any

from django.conf import settings as site

from fronts.jobfile import Refused, read
from fronts.rules.kitchen import Kitchen

FOLDER = Path(__file__).parent / "data" / "kitchens"
SAMPLES = sorted(FOLDER.glob("*.job.json"))
OLDER = sorted(FOLDER.glob("version-1/*.job.json"))
"""The same kitchens as an older program wrote them."""


def small() -> dict[str, Any]:
    """A job of one cabinet with a door, as it stands in a file; every part may be changed."""
    opening = {
        "label": "a", "x": "1 1/2", "y": "1 1/2", "width": "15", "height": "26",
        "closed_by": "door", "hinged": "left",
    }  # fmt: skip
    cabinet = {
        "label": "B1", "kind": "base", "build": "face-frame", "wall": "North",
        "x": "0", "y": "4", "width": "18", "height": "30 1/2", "depth": "24",
        "openings": [opening],
    }  # fmt: skip
    overlay = {"left": "1/2", "right": "1/2", "top": "1/2", "bottom": "1/2"}
    return {
        "version": 1,
        "job": {"number": "T-1", "unit": "in"},
        "standard": {"overlay": overlay},
        "doors_on_hand": [{"label": "D1", "width": "16", "height": "27"}],
        "cabinets": [cabinet],
    }


def changed(path: str, value: object) -> str:
    """The text of `small()` with the value at a dotted path put in its place."""
    tree: Any = small()
    *way, last = [int(each) if each.isdigit() else each for each in path.split(".")]
    at = tree
    for step in way:
        at = at[step]
    if isinstance(at, list) and last == len(at):
        at.append(value)
    else:
        at[last] = value
    return json.dumps(tree)


def without(path: str) -> str:
    """The text of `small()` without the key at a dotted path."""
    tree: Any = small()
    *way, last = [int(each) if each.isdigit() else each for each in path.split(".")]
    at = tree
    for step in way:
        at = at[step]
    del at[last]
    return json.dumps(tree)


def faults_of(text: str) -> list[str]:
    """What is wrong with the file, a line each; nothing where it is taken."""
    try:
        read(text)
    except Refused as refused:
        return [str(each) for each in refused.faults]
    return []


def demo_kitchen() -> Kitchen:
    """The kitchen of the demo shop."""
    return _fixture("demo")


def metric_kitchen() -> Kitchen:
    """The metric one beside it."""
    return _fixture("demo-metric")


def _fixture(name: str) -> Kitchen:
    file = Path(site.BASE_DIR) / "fixtures" / f"{name}.job.json"
    return read(file.read_text(encoding="utf-8"))
