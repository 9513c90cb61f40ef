"""What can't be read whole is refused, with its line, what was found and what may stand there."""

import re

import pytest

from tests.notebook.reading import HEAD, faults

LINES = [
    # a line after the two of HEAD; what is found; a piece of what may stand there
    ("B1 18 dor left", "“dor”", "door left"),
    ("B1 18 door", "nothing more", "door right"),
    ("B1 18 door 6", "“6”", "the side of its hinges"),
    ("B1 18 door middle", "“middle”", "door bottom"),
    ("B1 18", "nothing more", "30 high"),
    ("B1", "nothing more", "the width of cabinet “B1”"),
    ("B1 door left", "“door”", "the width of cabinet “B1”"),
    ("B1 18door left", "“18door”", "the width of cabinet “B1”"),
    ("B1 24x30 door left", "“24x30”", "the width of cabinet “B1”"),
    ("36 1/2 door left", "“36 1/2 door”", "a cabinet's label"),
    ("pair 6 fixed", "“pair”", "a cabinet's label"),
    ("bsae 30 high 24 deep 4 up", "“high”", "“bsae” is taken for a cabinet's label"),
    ("x" * 41 + " 18 pair", "“" + "x" * 39 + "…”", "at most 40 characters"),
    ("B1 1/0 pair", "“1/0” .divides by zero.", "a size, like 23 5/8"),
    ("B1 -18 pair", "“-18” .is negative.", "a size"),
    ("B1 0 pair", "“0” .is nothing.", "a size"),
    ("B1 900 m pair", "“900 m” .is more than 20 m", "a size"),
    ("B1 36,5 pair", "“5 pair”", "door left"),
    ("B1 18 - 4 drawers", "“drawers”", "3 drawers"),
    ("B1 18 at 3 - over pair", "“-”", "door left"),
    ("B1 18 34 hihg pair", "“34 hihg”", "30 high, 24 deep, 4 up, at 60, or door left"),
    ("B1 18 34 high 33 high pair", "“33 high”", "each once"),
    ("B1 18 0 high pair", "“0” .is nothing.", "a size"),
    ("B1 18 -3 high pair", "“high”", "door left"),
    ("B1 18 at pair", "“pair”", "where it is pinned"),
    ("B1 18 pair at 60", "“at”", "over, beside"),
    ("B1 18 pair 34 deep", "“deep”", "over, beside"),
    ("B1 18 pair over", "nothing more", "door left"),
    ("B1 18 over pair", "“over”", "door left"),
    ("B1 18 open over over pair", "“over”", "door left"),
    ("B1 18 open pair", "“pair”", "over, beside"),
    ("B1 18 pull out", "“pull”", "pull-out"),
    ("B1 18 appliance-panel", "“appliance-panel”", "door left"),
    ("B1 18 drawer 6 5 over pair", "“5 over”", "the height of its row is said already"),
    ("B1 18 drawer 6 beside open 6 over pair", "“6 over”", "the height of its row"),
    ("B1 36 drawer 6 wide 7 wide beside open", "“7 wide”", "its width is said already"),
    ("B1 18 3 drawer", "“3 drawer”", "3 drawers"),
    ("B1 18 drawers", "“drawers”", "3 drawers"),
    ("B1 18 0 drawers", "“0 drawers”", "1 to 20 drawers"),
    ("B1 18 21 drawers", "“21 drawers”", "1 to 20 drawers"),
    ("B1 18 3 drawers 5", "“5”", "3 heights with 2 commas"),
    ("B1 18 3 drawers 5, 6", "“5, 6”", "3 heights with 2 commas"),
    ("B1 18 3 drawers 5, 6, 7, 8", "“5, 6, 7, 8”", "3 heights with 2 commas"),
    ("B1 18 3 drawers , , , 8", "“, , , 8”", "3 heights with 2 commas"),
    ("B1 18 3 drawers , 5, , over pair", "“, 5, ,”", "3 heights with 2 commas"),
    ("B1 18 3 drawers,", "“,”", "3 heights with 2 commas"),
    ("B1 18 3 drawers 6 high", "“6”", "3 heights"),
    ("B1 18 3 drawers 12 wide", "“12”", "3 heights"),
    ("B1 18 3 drawers 5, 6, 7 12 wide", "“12 wide”", "heights of its fronts"),
    ("B1 18 pair,", "“,”", "over, beside"),
    ("B1 18,, pair", "“,”", "door left"),
    (", B1 18 pair", "“,”", "a cabinet's label"),
    ("B1 18 drawer 30 over pair", "rows of which one is -4 in high", "1 in at least"),
    ("B1 18 drawer 25 3/4 over pair", "rows of which one is 1/4 in high", "1 in at least"),
    ("B1 18 drawer 15/16 over pair", "rows of which one is 15/16 in high", "1 in at least"),
    ("B1 3 pair", "openings beside each other of which one is 0 in wide", "1 in at least"),
    ("B1 18 drawer 6 over open 6", "rows 12 in high in all", "26 in, which is what"),
    ("B1 18 open 12 wide", "openings beside each other 12 in wide", "15 in, which is what"),
    ("B1 18 open 20 wide", "openings beside each other 20 in wide", "15 in, which is what"),
    ("B1 18 open 1/2 wide beside open", "openings beside each other of which one is", "1 in"),
    ("B1 99 " + " over ".join(["open beside open"] * 31), "more openings", "at most 60"),
    ("wall", "nothing more", "the wall's name"),
    ("wall 150 1/4", "“150 1/4”", "the wall's name"),
    ("wall East side", "“side”", "the wall's length"),
    ("wall East 150 150", "“150”", "nothing more"),
    ("wall north", "“north”", "“North”, as that wall is written"),
    ("wall cabinets", "the first wall cabinets without high and deep and up", "30 high"),
    ("wall cabinets 30 high 12 deep", "the first wall cabinets without up", "4 up"),
    ("tall 84 high 24 deep 0 up 3 wide", "“3 wide”", "nothing more"),
    ("base 30", "“30”", "30 high"),
    ("base cabinets 30 high", "“cabinets”", "30 high"),
    ("base at 6", "“at”", "30 high"),
    ("face 2", "“2”", "“frame”"),
    ("face frame wide", "“wide”", "the width of its members"),
    ("frameless 0", "“0” .is nothing.", "a size"),
    ("frameless 3/4 birch", "“birch”", "nothing more"),
    ("filler", "nothing more", "its width"),
    ("filler three", "“three”", "its width"),
    ("filler 3 4", "“4”", "30 high, 24 deep, at 60"),
    ("filler 3 high", "“high”", "30 high"),
    ("end 3/4", "“3/4”", "“panel”"),
    ("gap 30 54 up", "“54 up”", "30 high, 24 deep, at 60"),
    ("gap 30 at window", "“window”", "where it is pinned"),
    ("appliance 24 dishwasher 34 1/2", "“34 1/2”", "30 high"),
    ("appliance 24 oven 30 high white", "“white”", "nothing more"),
    ("appliance 24 " + "very " * 30 + "wide", "“very very", "at most 120 characters"),
    ("appliance 24 oven,", "“,”", "its name"),
    ("upper", "nothing more", "filler"),
    ("upper B1 18 pair", "“B1”", "filler"),
    ("B1\u200b 18 pair", "the unseen character U.200B", "plain text"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("line", "found", "wanted"), LINES, ids=[line[:40] or "empty" for line, _, _ in LINES]
)
def test_a_line_that_is_not_understood_is_refused(line: str, found: str, wanted: str) -> None:
    """It alone is at fault, by its number."""
    (said,) = faults(f"{HEAD}{line}\nB2 18 pair")

    assert re.match(f"line 3: found {found}.*, wanted .*(?:{wanted})", said), said


WHOLE = [
    # a whole notebook; the lines that are refused, each with a piece of what is said of it
    ("B1 18 pair", {1: "a wall in a line before it"}),
    ("filler 3", {1: "a wall in a line before it"}),
    ("wall North\nB1 18 pair\nB2 18 pair", {2: "its kind and sizes", 3: "its kind and sizes"}),
    ("wall 150 1/4\nbase 30 high 24 deep 4 up\nB1 18 pair", {1: "the wall's name"}),
    ("wall A\nbase 30 hihg 24 deep 4 up\nB1 18 pair\nB2 18 par", {2: "hihg", 4: "“par”"}),
    ("base 30 hihg\nB1 18 pair", {1: "hihg", 2: "a wall in a line before it"}),
    ("wall A\nbase 30 high 24 deep\nB1 18 pair\nfiller 3", {2: "4 up too"}),
    (f"{HEAD}B1 18 pair\nB1 18 pair", {4: "line 3 has “B1”"}),
    (f"{HEAD}B1 18 pair\n\n# again\nb1 18 pair", {6: "line 3 has “B1”"}),
    (f"{HEAD}B1 18 pair\nwall South\nB1 18 pair", {5: "line 3 has “B1”"}),
    ("wall A 150\nwall B\nwall A 151", {3: "150 in, as it had"}),
    (f"{HEAD}B1 18 par\nB2 18 pair over\nfiler 3", {3: "“par”", 4: "nothing more", 5: "“filer”"}),
    ("wall North\r\nbase 30 high 24 deep 4 up\r\nB1 18 par", {3: "“par”"}),
    ("wall North\rbase 30 high 24 deep 4 up\rB1 18 par", {3: "“par”"}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "refused"), WHOLE, ids=range(len(WHOLE)))
def test_every_fault_has_its_line(text: str, refused: dict[int, str]) -> None:
    """And no line is blamed for what another lacks."""
    said = faults(text)

    assert [int(line.split(":")[0].removeprefix("line ")) for line in said] == [*refused]
    assert [piece for line, piece in zip(said, refused.values(), strict=True)
            if piece not in line] == []  # fmt: skip
