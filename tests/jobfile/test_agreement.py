"""What must agree across a file: labels, named doors; and all of it told at once."""

import json

from fronts.jobfile import read
from fronts.rules.schedule import schedule
from tests.kitchen_files import faults_of, small, without

FIRST = "cabinets[0].openings[0]"


def test_every_fault_is_told_at_once() -> None:
    """Nobody wants to mend a file fault by fault."""
    tree = small()
    tree["job"]["unit"] = "yd"
    tree["standard"]["overlay"]["left"] = None
    tree["cabinets"][0]["width"] = "wide"
    tree["cabinets"][0]["openings"][0] |= {"closed_by": "hatch", "height": 0}
    assert [each.partition(": ")[0] for each in faults_of(json.dumps(tree))] == [
        "job.unit",
        "standard.overlay.left",
        "cabinets[0].width",
        f"{FIRST}.closed_by",
        f"{FIRST}.height",
    ]


def test_an_overlay_that_nobody_gave_is_for_the_schedule_to_say() -> None:
    """A half-entered kitchen can be kept as a file: its schedule stops where a rule is missing."""
    found = schedule(read(without("standard")))

    assert {each.code for each in found.findings if each.level == "stop"} == {"no-overlay-rule"}


def test_labels_that_would_name_two_fronts() -> None:
    """`B1` with `a.1` and `B1.a` with `1` would both be front `B1.a.1`."""
    tree = small()
    other = json.loads(json.dumps(tree["cabinets"][0])) | {"label": "B1.a"}
    other["openings"][0]["label"] = "1"
    tree["cabinets"][0]["openings"][0]["label"] = "a.1"
    tree["cabinets"].append(other)
    assert faults_of(json.dumps(tree)) == [
        'cabinets[1].openings[0].label: found "1", wanted a label that no other opening has; '
        "“B1.a.1” is taken"
    ]


def test_two_cabinets_of_one_name() -> None:
    """A sheet is found by its cabinet's label."""
    tree = small()
    tree["cabinets"].append(tree["cabinets"][0] | {"openings": []})
    assert faults_of(json.dumps(tree)) == [
        'cabinets[1].label: found "B1", wanted a label that no other cabinet has'
    ]


def test_too_many_fronts() -> None:
    """Cabinets within bounds can still add up to more fronts than there are kitchens."""
    stack = small()["cabinets"][0]["openings"][0] | {"closed_by": "drawers", "count": 20}
    several = [stack | {"label": str(index)} for index in range(60)]
    cabinet = small()["cabinets"][0]
    tree = small() | {
        "cabinets": [cabinet | {"label": f"B{n}", "openings": several} for n in range(20)]
    }
    assert [each for each in faults_of(json.dumps(tree)) if "20,000" in each] == [
        "cabinets[15].openings[52].label: found more, wanted at most 20,000 fronts in a kitchen"
    ]
