"""Whole notebooks: what holds on from line to line, and how it stands in the kitchen."""

import json

import pytest

from fronts.jobfile import read, write
from fronts.notebook import read_face
from fronts.rules.kinds import Unit
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import inches
from fronts.rules.runs import runs_of
from tests.notebook.reading import HEAD, kitchen

UPPERS = "wall cabinets 30 high 12 deep 54 up\n"


def test_a_kitchen_is_read_whole() -> None:
    """A wall with its length, cabinets of a kind, and things that follow what was before them."""
    read_so = kitchen(
        HEAD.replace("North", "North 150 1/4")
        + "B1 18 door left\nB2 36 fixed 6 over pair\nappliance 24 dishwasher\n"
        + "B3 18 4 drawers 5, , 7, 8\nB4 36 drawer 6 beside drawer over pair\nfiller 3"
    )

    assert [(wall.label, wall.length) for wall in read_so.walls] == [("North", inches(601, 4))]
    assert [(one.label, one.width) for one in read_so.cabinets] == [
        ("B1", inches(18)), ("B2", inches(36)), ("B3", inches(18)), ("B4", inches(36)),
    ]  # fmt: skip
    assert {
        (one.kind, one.build, one.y, one.height, one.depth, one.x) for one in read_so.cabinets
    } == {("base", "face-frame", 4 * INCH, inches(61, 2), 24 * INCH, None)}
    assert [(one.label, one.kind, one.after, one.name) for one in read_so.others] == [
        ("A1", "appliance", "B2", "dishwasher"), ("F1", "filler", "B4", ""),
    ]  # fmt: skip
    floor = runs_of(read_so)["North"]["floor"]
    assert [(placed.what.label, int(placed.x / INCH)) for placed in floor] == [
        ("B1", 0), ("B2", 18), ("A1", 54), ("B3", 78), ("B4", 96), ("F1", 132),
    ]  # fmt: skip


SIZES = [
    # lines; label, height, depth, y and x of the last cabinet
    ("B1 18 pair", ("30.5", "24", "4", None)),
    ("B1 18 34 high 22 deep pair", ("34", "22", "4", None)),
    ("B1 18 0 up at 0 pair", ("30.5", "24", "0", "0")),
    ("B1 18 at -6 1/2 pair", ("30.5", "24", "4", "-6.5")),
    ("base 34 1/2 high\nB1 18 pair", ("34.5", "24", "4", None)),
    ("tall 84 high 24 deep 0 up\nT1 18 pair", ("84", "24", "0", None)),
    ("tall 84 high 24 deep 0 up\nbase\nB1 18 pair", ("30.5", "24", "4", None)),
    ("base 20 deep\nwall South\nB1 18 pair", ("30.5", "20", "4", None)),
    ("base 18 1/2+12 high\nB1 18 at 54+24 pair", ("30.5", "24", "4", "78")),
    (UPPERS + "W1 30 pair", ("30", "12", "54", None)),
    (UPPERS + "W1 30 18 high pair", ("18", "12", "66", None)),
    (UPPERS + "W1 30 18 high at 60 pair", ("18", "12", "66", "60")),
    (UPPERS + "W1 30 18 high 50 up pair", ("18", "12", "50", None)),
    (UPPERS + "W1 30 42 high pair", ("42", "12", "42", None)),
    (UPPERS + "wall cabinets 36 high\nW1 30 18 high pair", ("18", "12", "72", None)),
    ("B1 18 20 high pair", ("20", "24", "4", None)),
]


@pytest.mark.parametrize(("lines", "sizes"), SIZES, ids=[lines for lines, _ in SIZES])
def test_sizes_hold_on_until_they_are_told_anew(lines: str, sizes: tuple[str | None, ...]) -> None:
    """By kind, over walls; a hung cabinet with a height of its own keeps its kind's top line."""
    *_, last = kitchen(HEAD + lines).cabinets

    assert (last.height, last.depth, last.y, last.x) == tuple(
        None if size is None else Mm(size) * INCH for size in sizes
    )


BUILDS: list[tuple[Unit, str, str, Mm]] = [
    ("in", "", "face-frame", inches(3, 2)),
    ("in", "face frame 1 3/4", "face-frame", inches(7, 4)),
    ("in", "face frame 2\nface frame", "face-frame", inches(3, 2)),
    ("in", "frameless 3/4", "frameless", inches(3, 4)),
    ("in", "FRAMELESS", "frameless", inches(3, 4)),
    ("in", "face frame 2\nwall South", "face-frame", inches(2)),
    ("mm", "", "frameless", Mm(18)),
    ("mm", "face frame", "face-frame", Mm(40)),
    ("mm", "frameless 16", "frameless", Mm(16)),
]


@pytest.mark.parametrize(("unit", "line", "build", "member"), BUILDS)
def test_how_cabinets_are_built_holds_on(unit: Unit, line: str, build: str, member: Mm) -> None:
    """With members as wide as was said, or as is usual in the unit."""
    sizes = {"in": "30 high 24 deep 4 up", "mm": "720 high 560 deep 100 up"}[unit]
    width = {"in": "18", "mm": "600"}[unit]
    told = kitchen(f"wall A\nbase {sizes}\n{line}\nB1 {width} pair", unit)

    assert (told.cabinets[0].build, told.cabinets[0].openings[0].x) == (build, member)


def test_a_wall_goes_on_where_it_is_named_again() -> None:
    """What follows stands after what came last on it, and its length may be told later."""
    told = kitchen(
        "wall North\nbase 30 high 24 deep 4 up\nB1 18 pair\nwall East 90\nB2 18 pair\n"
        "wall North 120\nfiller 3\nB3 18 pair\nend panel 3/4"
    )

    assert [(wall.label, wall.length) for wall in told.walls] == [
        ("North", inches(120)), ("East", 90 * INCH),
    ]  # fmt: skip
    assert [cabinet.wall for cabinet in told.cabinets] == ["North", "East", "North"]
    assert [(one.label, one.wall, one.after) for one in told.others] == [
        ("F1", "North", "B1"), ("E1", "North", "B3"),
    ]  # fmt: skip


THINGS = [
    # a line; kind, run, width, height, depth, x in inches, name
    ("filler 3", ("filler", None, 3, None, None, None, "")),
    ("End Panel 3/4", ("end-panel", None, 0.75, None, None, None, "")),
    ("end panel 3/4 34 1/2 high 24 deep", ("end-panel", None, 0.75, 34.5, 24, None, "")),
    ("gap 30 window", ("gap", None, 30, None, None, None, "window")),
    ("gap 30 at 12 Window, left", ("gap", None, 30, None, None, 12, "Window left")),
    ("appliance 24, dishwasher", ("appliance", None, 24, None, None, None, "dishwasher")),
    ("appliance 24 34 1/2 high 25 deep", ("appliance", None, 24, 34.5, 25, None, "")),
    ("appliance 24 oven 2 34 high", ("appliance", None, 24, 34, None, None, "oven 2")),
    ("UPPER appliance 30 hood", ("appliance", "upper", 30, None, None, None, "hood")),
    ("upper filler 1+1/2", ("filler", "upper", 1.5, None, None, None, "")),
    ("filler 3 # by the door", ("filler", None, 3, None, None, None, "")),
]


@pytest.mark.parametrize(("line", "facts"), THINGS, ids=[line for line, _ in THINGS])
def test_things_stand_beside_cabinets(line: str, facts: tuple[object, ...]) -> None:
    """With their sizes and place before or behind their name; `upper` before any of them."""
    (thing,) = kitchen(HEAD + line).others
    sizes = [thing.width, thing.height, thing.depth, thing.x]
    in_inches = [None if size is None else size / INCH for size in sizes]

    assert (thing.kind, thing.run, *in_inches, thing.name) == facts


def test_labels_are_counted_on_past_those_taken() -> None:
    """Over walls, each kind by itself; also past a label that a later line gives a cabinet."""
    told = kitchen(
        f"{HEAD}F2 18 pair\nfiller 3\nfiller 3\nappliance 24\nwall South\nfiller 3\nf4 18 pair\n"
        "filler 3\ngap 30\nend panel 3/4"
    )

    assert [thing.label for thing in told.others] == ["F1", "F3", "A1", "F5", "F6", "G1", "E1"]
    assert [cabinet.label for cabinet in told.cabinets] == ["F2", "f4"]


def test_a_saved_face_closes_a_cabinet() -> None:
    """By its name, behind the cabinet's own sizes."""
    saved = {"Sink front": read_face("fixed 6 over pair", "in")}
    named, said = kitchen(
        f"{HEAD}B1 36 34 high sink front # under the window\nB2 36 34 high fixed 6 over pair",
        saved=saved,
    ).cabinets

    assert named.openings == said.openings


def test_nothing_is_a_kitchen_without_anything() -> None:
    """Empty lines and remarks are nothing."""
    told = kitchen("\n  \n# only a remark\n\t#\n")

    assert (told.cabinets, told.others, told.walls) == ((), (), ())


def test_the_job_file_is_in_its_own_unit() -> None:
    """What was said in another unit is written in the file's, exactly, and reads back the same."""
    told = kitchen(f"{HEAD}B1 600 mm pair\nwall South 3 m\nfiller 2 cm")
    text = write(told, of_no_shop=True)
    said = json.loads(text)

    assert said["cabinets"][0]["width"] == "23 79/127"
    assert said["walls"] == [{"label": "North"}, {"label": "South", "length": "118 14/127"}]
    assert said["job"] == {"number": "NOTEBOOK", "unit": "in", "step": "1/16"}
    assert "stock" not in said
    assert "mm" not in text
    assert read(text) == told
