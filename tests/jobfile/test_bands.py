"""Edge bands in a job file, and in the schedule that comes of it."""

import json
from typing import Any

import pytest

from fronts.jobfile.faults import Refused
from fronts.jobfile.read import read
from fronts.jobfile.schedule_json import schedule_json
from fronts.jobfile.write import write
from fronts.rules.schedule import schedule

BAND = {"left": "E-1", "right": "E-1", "top": "none", "bottom": "none"}


def job(band: Any = BAND, *, version: int = 2) -> str:
    """A door 400 × 700 mm with 1 mm on its upright edges, half of it milled off first."""
    lap = dict.fromkeys(("left", "right", "top", "bottom"), "10")
    standard = {"overlay": lap, "band": band, "premill": dict.fromkeys(lap, "0.5")}
    opening = {
        "label": "a", "x": "18", "y": "18", "width": "380", "height": "680",
        "closed_by": "door", "hinged": "left",
    }  # fmt: skip
    cabinet = {
        "label": "B1", "kind": "base", "build": "frameless", "wall": "A", "x": "0", "y": "0",
        "width": "416", "height": "716", "depth": "560", "openings": [opening],
    }  # fmt: skip
    bands = {"hardware": {"bands": [{"code": "E-1", "thickness": "1", "width": "23"}]}}
    said = {"job": {"number": "K-1", "unit": "mm"}, "standard": standard, "cabinets": [cabinet]}
    return json.dumps({"version": version, **said, **(bands if version == 2 else {})})


def test_a_file_names_a_band_for_each_edge() -> None:
    """What is cut, what it measures then, and what is ordered; out and in again it is the same."""
    kitchen = read(job())
    found: Any = schedule_json(schedule(kitchen))
    (part,), (band,) = found["parts"], [each for each in found["hardware"] if each["unit"]]

    assert (part["length"], part["width"]) == ("700", "399")
    assert (part["finished_length"], part["finished_width"]) == ("700", "400")
    assert part["banded"] == {side: {"code": "E-1", "thickness": "1"} for side in ("left", "right")}
    assert (band["item"], band["code"], band["need"], band["unit"]) == ("edge band", "E-1", 2, "m")
    assert band["per_front"] == {"B1.a": "1.400"}
    assert read(write(kitchen)) == kitchen


@pytest.mark.parametrize(
    ("band", "path"),
    [
        ("E-1", "standard.band"),
        ({**BAND, "left": ""}, "standard.band.left"),
        ({**BAND, "left": 1}, "standard.band.left"),
        ({"left": "E-1"}, "standard.band.right"),
        ({**BAND, "back": "E-1"}, "standard.band.back"),
    ],
)
def test_what_names_no_band_is_refused(band: Any, path: str) -> None:
    """With its path."""
    with pytest.raises(Refused) as refused:
        read(job(band))

    assert path in str(refused.value)


def test_the_word_for_a_bare_edge_is_no_code() -> None:
    """A band can't be called so."""
    with pytest.raises(Refused, match=r"hardware\.bands"):
        read(job().replace('"code": "E-1"', '"code": "None"'))


def test_the_first_version_knows_no_bands() -> None:
    """The key is refused, like any that nobody knows."""
    with pytest.raises(Refused, match=r"standard\.band"):
        read(job(version=1))
