"""What a spreadsheet could make of the cells of a file."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.pages.shared.csv_cells import plain, said


@pytest.mark.parametrize(
    ("cell", "written"),
    [
        ("=1+1", "'=1+1"),
        ("@SUM(A1)", "'@SUM(A1)"),
        ("  =1+1", "'  =1+1"),
        ("\n=1+1", "'\n'=1+1"),
        ("\ufeff=1+1", "'\ufeff=1+1"),
        ("\N{NO-BREAK SPACE}-1", "'\N{NO-BREAK SPACE}-1"),
        ("＝1+1", "'＝1+1"),
        ("＠SUM(A1)", "'＠SUM(A1)"),
        ("\tB1", "'\tB1"),
        ("\rB1", "'\rB1"),
        ("two;=1+1", "two;'=1+1"),
        ('two; "=1+1"', 'two; "\'=1+1"'),
        ("two\t+1", "two\t'+1"),
        ("B1.a: 2", "B1.a: 2"),
        ("B1.a; B2.b, 3 - 4 = 5", "B1.a; B2.b, 3 - 4 = 5"),
    ],
)
def test_no_cell_is_a_formula(cell: str, written: str) -> None:
    """What a spreadsheet could work out is text; other text is left alone."""
    assert plain(cell) == written


@given(st.text(alphabet="=+-@\uff1d'\" ;\tab\n\ufeff"))
def test_what_was_made_plain_is_read_back_as_it_was(cell: str) -> None:
    """Apostrophes of its own included."""
    assert said(plain(cell)) == cell
