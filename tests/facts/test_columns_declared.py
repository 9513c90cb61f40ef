"""A column that does not suit its fact is refused when the program starts, by name."""

from collections.abc import Callable

import pytest

from fronts.facts import columns
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kitchen import Cabinet, Opening


@pytest.mark.parametrize(
    ("column", "kind", "path", "says"),
    [
        (columns.size, Opening, "measured.width_top", "is never missing"),
        (columns.maybe_size, Opening, "width", "may be missing"),
        (columns.sizes, Opening, "width", "is not several lengths"),
        (columns.number, Opening, "width", "is no number"),
        (columns.flag, Opening, "width", "is so or is not"),
        (columns.word, Opening, "width", "is no word out of a few"),
        (columns.count, Opening, "width", "is no count"),
        (columns.words, Opening, "width", "is no text"),
        (columns.size, Cabinet, "label", "is no length"),
    ],
)
def test_the_wrong_column_is_refused(
    column: Callable[[type, str], object], kind: type, path: str, says: str
) -> None:
    with pytest.raises(TypeError, match=says):
        column(kind, path)


def test_the_right_columns_keep_the_declared_limits() -> None:
    assert columns.words(JobFacts, "client").max_length == 120
    assert columns.words(Stock, "knob_thread").get_default() == "8-32"
    assert [value for value, _ in columns.word(Opening, "closed_by").choices or ()] == [
        value for value, _ in columns.of_all(Opening)["closed_by"].choices or ()
    ]
