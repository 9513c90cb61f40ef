"""The schedule as JSON: the keys that others rely on, and lengths to the last digit."""

import json
import re
from decimal import Decimal
from typing import Any

from hypothesis import HealthCheck, given, settings

from fronts.jobfile import read, schedule_json
from fronts.jobfile.schedule_json import kilograms
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from tests.kitchen_files import FOLDER
from tests.strategies import kitchens

LENGTH = re.compile(r"-?[0-9]+(?:\.[0-9]*[1-9]|/[0-9]+)?")
KEYS = {
    "fronts": {"label", "cabinet", "opening", "kind", "hinged", "width", "height", "thickness",
               "x", "y", "edges", "door_on_hand", "hinges", "hinge", "handles", "weight_kg"},
    "boxes": {"front", "made", "width", "height", "depth", "side_thickness", "rise", "slide",
              "slide_length", "load_kg", "class_kg"},
    "fittings": {"front", "method", "side_offset", "side_offset_right", "jig_thickness",
                 "jig_length", "ledges", "shims", "holes", "screw", "knob_screw"},
    "jigs": {"thickness", "length", "fronts"},
    "shims": {"thickness", "side", "bottom", "fronts"},
    "doors_on_hand": {"door", "front", "trim_width", "trim_height", "trim"},
    "hardware": {"item", "code", "need", "fronts"},
    "parts": {"label", "front", "part", "length", "width", "thickness", "material", "count"},
    "findings": {"level", "code", "where", "message"},
}  # fmt: skip
LENGTHS = {
    "width", "height", "thickness", "x", "y", "length", "side_offset", "side_offset_right",
    "rise", "jig_thickness", "jig_length", "box_x", "box_y", "front_x", "front_y", "diameter",
    "trim_width", "trim_height",
}  # fmt: skip


def scheduled(name: str) -> dict[str, Any]:
    """A sample's schedule after a way through JSON text."""
    kitchen = read((FOLDER / name).read_text(encoding="utf-8"))
    found: dict[str, Any] = json.loads(json.dumps(schedule_json(schedule(kitchen))))
    return found


def test_a_pull_out_behind_an_old_door() -> None:
    """The door's laps, its jig and its screws, reckoned by hand from the galley's file.

    14 x 22 1/4 in on 13 1/2 x 21 3/4 in laps 1/4 in; beside the box 9/16 + 1/4, below it
    5/8 + 1/4; 1/2 + 3/4 in of wood take a 1 in screw, and a 1 1/2 in one for the knob.
    """
    found = scheduled("boathouse-galley.job.json")
    front = next(each for each in found["fronts"] if each["label"] == "G1.low")
    fitting = next(each for each in found["fittings"] if each["front"] == "G1.low")
    assert (front["width"], front["height"]) == ("355.6", "565.15")
    assert (front["x"], front["y"]) == ("31.75", "152.4")
    assert front["edges"]["left"] == {"overlay": "6.35", "gap": None, "faces": None}
    assert (front["kind"], front["hinged"], front["door_on_hand"]) == (
        "pull-out", None, "old sink door",
    )  # fmt: skip
    assert fitting["method"] == "jig"
    assert (fitting["side_offset"], fitting["jig_thickness"]) == ("20.6375", "22.225")
    assert (fitting["jig_length"], fitting["shims"]) == ("317.5", None)
    assert fitting["screw"] == {"length": "25.4", "count": 4}
    knob = fitting["knob_screw"]
    assert (knob["length"], knob["through_box"], knob["recess"]) == ("38.1", True, None)
    assert found["doors_on_hand"] == [
        {
            "door": "old sink door", "front": "G1.low", "trim_width": "0", "trim_height": "0",
            "trim": {"left": "0", "right": "0", "top": "0", "bottom": "0"},
        }
    ]  # fmt: skip


def test_a_tall_door_by_reveal() -> None:
    """Half of a shared member less 3 mm, an end's member less its reveal; by hand, in mm."""
    front = scheduled("attic-flat.job.json")["fronts"][0]
    assert (front["label"], front["hinged"]) == ("A1.door", "right")
    assert (front["width"], front["height"]) == ("447", "1225.5")
    assert (front["x"], front["y"]) == ("-38.5", "0")
    overlays = {side: edge["overlay"] for side, edge in front["edges"].items()}
    assert overlays == {"left": "16.5", "right": "16.5", "top": "7.5", "bottom": "18"}


def test_the_hinge_of_a_door() -> None:
    """16.5 mm of overlay: 11 + 5.5 - 0 on the invented hinge for frameless cabinets."""
    front = scheduled("attic-flat.job.json")["fronts"][0]
    hinge = front["hinge"]
    assert (hinge["code"], hinge["plate"], hinge["bore_from_edge"]) == ("H-SIDE", "0", "5.5")
    assert (hinge["shift"], hinge["cup_diameter"]) == ("0", "35")
    assert hinge["centres"] == front["hinge_centres"]


def test_leaves_of_a_pair_lap_nothing_where_they_meet() -> None:
    """Towards a front of the same opening there is a gap, and no overlay."""
    fronts = {each["label"]: each for each in scheduled("attic-flat.job.json")["fronts"]}
    meeting = fronts["A2.a.1"]["edges"]["right"]
    assert meeting == {"overlay": None, "gap": "3", "faces": "A2.a.2"}


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(kitchens())
def test_every_schedule_holds_the_keys_that_others_read(kitchen: Kitchen) -> None:
    """Whatever the kitchen: all keys are there, all lengths exact, all names known."""
    found = json.loads(json.dumps(schedule_json(schedule(kitchen))))
    labels = {each["label"] for each in found["fronts"]}
    openings = {f"{one.label}.{two.label}" for one in kitchen.cabinets for two in one.openings}
    for table, keys in KEYS.items():
        for row in found[table]:
            assert keys <= set(row)
            assert all(LENGTH.fullmatch(row[key]) for key in LENGTHS & set(row) if row[key])
    for front in found["fronts"]:
        assert all({"overlay", "gap", "faces"} == set(edge) for edge in front["edges"].values())
    assert {each["front"] for each in found["fittings"]} <= labels
    for need in found["hardware"]:
        assert set(need["fronts"]) <= labels
    for finding in found["findings"]:
        assert finding["level"] in ("stop", "check", "note")
        assert set(finding["where"]) <= labels | openings | _others(kitchen)


def _others(kitchen: Kitchen) -> set[str]:
    """What else a finding may point at."""
    cabinets = {each.label for each in kitchen.cabinets}
    return cabinets | {each.label for each in kitchen.doors_on_hand}


def test_the_fingerprint_tells_schedules_apart() -> None:
    """The same kitchen has the same fingerprint, a changed one another."""
    text = (FOLDER / "attic-flat.job.json").read_text(encoding="utf-8")
    one, again = (schedule_json(schedule(read(text)))["fingerprint"] for _ in range(2))
    other = schedule_json(schedule(read(text.replace('"1200"', '"1199"'))))["fingerprint"]
    assert one == again != other


def test_weights_are_told_to_the_gram() -> None:
    """Three decimals, also where they are noughts."""
    assert kilograms(Mm(19, 5)) == "3.800"
    assert kilograms(Mm(2, 3)) == "0.667"
    assert Decimal(kilograms(Mm(0))) == 0


def test_how_far_off_a_front_is_to_be_expected() -> None:
    """A pull-out from a door that keeps its size: two errors of 1/64 in, and none of cutting.

    0.396875 mm · √2 = 0.5612660075…, up to 10⁻⁹ mm; (6.35 − 4.1656)/2 = 1.0922 mm of play.
    """
    found = scheduled("boathouse-galley.job.json")["errors_to_expect"]
    (pull_out,) = (each for each in found if each["front"] == "G1.low")
    way = {
        "measuring": "0.396875", "cutting": "0", "setting": "0.396875", "out_of_true": "0",
        "expected": "0.561266008", "worst": "0.79375", "play": "1.0922",
    }  # fmt: skip

    assert pull_out == {"front": "G1.low", "sideways": way, "upright": way, "outlook": "goes"}
