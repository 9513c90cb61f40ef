"""What holds of every face and every notebook."""

from hypothesis import given
from hypothesis import strategies as st

from fronts.jobfile import read, write
from fronts.notebook import Face, face_words, openings_of, read_face, regular_face
from fronts.notebook.openings import LEAST, Around
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from tests.notebook.reading import STEPS, faults, kitchen
from tests.notebook.strategies import UNITS, faces, notebooks
from tests.rules.laws import KITCHEN_LAW, LAW

FACES = UNITS.flatmap(lambda unit: st.tuples(st.just(unit), faces(unit)))
NOTEBOOKS = UNITS.flatmap(lambda unit: st.tuples(st.just(unit), notebooks(unit)))


@LAW
@given(FACES)
def test_a_face_in_words_reads_back_the_same(drawn: tuple[Unit, Face]) -> None:
    """Every height, width, hand and count of it."""
    unit, face = drawn

    assert read_face(face_words(face, unit), unit) == face


@LAW
@given(FACES, st.integers(2400, 3000), st.integers(1250, 2000))
def test_openings_fill_their_cabinet_and_are_the_face_again(
    drawn: tuple[Unit, Face], width: int, height: int
) -> None:
    """Rows and members add up to the height, each row's cells to the width, exactly."""
    unit, face = drawn
    around = Around(Mm(width), Mm(height), Mm(38), unit, STEPS[unit])
    openings = openings_of(face, around)

    tops = dict.fromkeys(opening.y for opening in openings)
    rows = [[opening for opening in openings if opening.y == y] for y in tops]
    assert [len(row) for row in rows] == [len(row.cells) for row in face]
    assert sum(row[0].height + 38 for row in rows) + 38 == height
    assert all(sum(one.width + 38 for one in row) + 38 == width for row in rows)
    assert min(min(one.width, one.height) for one in openings) >= LEAST[unit]
    cabinet = Cabinet(
        "B1", "base", "face-frame", "A", None, Mm(0), Mm(width), Mm(height), Mm(600), openings
    )
    said = regular_face(cabinet, unit, STEPS[unit])
    assert said is not None or _speechless(face)
    if said is not None:
        assert said.member == 38
        assert openings_of(said.face, around) == openings
        assert read_face(face_words(said.face, unit), unit) == said.face


def _speechless(face: Face) -> bool:
    """Whether several rows, or cells of one, are stacks: of their own size no words say any."""
    rows = [[cell.takes_sizes for cell in row.cells] for row in face]
    return sum(not any(row) for row in rows) > 1 or any(row.count(False) > 1 for row in rows)


@KITCHEN_LAW
@given(NOTEBOOKS)
def test_a_notebook_becomes_a_job_file_that_is_read(drawn: tuple[Unit, str]) -> None:
    """To the same kitchen, of which there is a schedule."""
    unit, text = drawn
    told = kitchen(text, unit)

    assert read(write(told, of_no_shop=True)) == told
    assert len(schedule(told).cabinets) == len(told.cabinets)


SLIPS = ("xyz", "over", "beside", "pair", "6", "1/0", "at", "up", "3 drawers", "6 high", "?", "(")


@KITCHEN_LAW
@given(NOTEBOOKS, st.data())
def test_no_word_is_passed_over(drawn: tuple[Unit, str], data: st.DataObject) -> None:
    """One word too many: its line is refused by its number, or the kitchen is another one."""
    unit, text = drawn
    as_meant = kitchen(text, unit)
    lines = text.split("\n")
    written = [number for number, line in enumerate(lines) if line]
    at = data.draw(st.sampled_from(written))
    words = lines[at].partition("#")[0].split(" ")
    place = data.draw(st.integers(0, len(words)))
    for slip in SLIPS:
        lines[at] = " ".join([*words[:place], slip, *words[place:]])
        spoilt = "\n".join(lines)
        said = faults(spoilt, unit)
        assert said or kitchen(spoilt, unit) != as_meant, lines[at]
        assert all(1 <= int(line.split(":")[0][5:]) <= len(lines) for line in said)


@KITCHEN_LAW
@given(NOTEBOOKS, st.data())
def test_no_word_can_be_missing_unnoticed(drawn: tuple[Unit, str], data: st.DataObject) -> None:
    """One word too few: the same."""
    unit, text = drawn
    as_meant = kitchen(text, unit)
    lines = text.split("\n")
    written = [number for number, line in enumerate(lines) if " " in line]
    at = data.draw(st.sampled_from(written))
    words = lines[at].partition("#")[0].split()
    for place in range(len(words)):
        lines[at] = " ".join([*words[:place], *words[place + 1 :]])
        spoilt = "\n".join(lines)
        assert faults(spoilt, unit) or kitchen(spoilt, unit) != as_meant, lines[at]


@LAW
@given(st.text(max_size=80), UNITS)
def test_any_text_is_a_notebook_or_refused(text: str, unit: Unit) -> None:
    """Nothing that can be written does anything else; what is read is worth a job file."""
    if not faults(text, unit):
        told = kitchen(text, unit)
        assert read(write(told, of_no_shop=True)) == told
