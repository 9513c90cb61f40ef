"""What a spreadsheet could make of the cells of a file."""

import pytest

from fronts.pages.shared.csv_cells import plain


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
