"""A wrong parts file is refused with a line per fault: path, what was found, what is wanted."""

import json
from typing import Any

import pytest

from fronts.jobfile.faults import Refused
from fronts.jobfile.parts_file import read_request

GOOD: dict[str, Any] = {
    "unit": "mm", "kerf": "3.2", "trim": "10",
    "stock": [{"label": "sheet", "length": "2440", "width": "1220", "count": None,
               "grain": "length"}],
    "parts": [{"label": "P1", "length": "720", "width": "396", "count": 12, "grain": "length"}],
}  # fmt: skip


def faults(data: bytes) -> list[str]:
    """The lines that refuse it."""
    with pytest.raises(Refused) as caught:
        read_request(data)
    return [str(fault) for fault in caught.value.faults]


def changed(path: str, value: object) -> bytes:
    """The good file with one value replaced (or removed, for Ellipsis)."""
    file = json.loads(json.dumps(GOOD))
    place: Any = file
    *steps, last = path.split(".")
    for step in steps:
        place = place[int(step)] if step.isdigit() else place[step]
    if value is ...:
        del place[last]
    else:
        place[last] = value
    return json.dumps(file).encode()


@pytest.mark.parametrize(
    ("path", "value", "line"),
    [
        ("unit", ..., "unit: found nothing"),
        ("unit", "yard", 'unit: found "yard", wanted one of mm, cm, m, in, ft'),
        ("kerf", ..., "kerf: found nothing"),
        ("kerf", "-1", 'kerf: found "-1"'),
        ("kerf", "40", 'kerf: found "40", wanted at most 26 mm'),
        ("trim", "1220", "stock[0].length: found 2440 mm, wanted more than twice the trim"),
        ("trim", 10, "trim: found 10, wanted a length as text"),
        ("stock", [], "stock: found an empty list, wanted a list of 1 to 2,000 objects"),
        ("parts", [], "parts: found an empty list"),
        ("parts", {}, "parts: found an object, wanted a list"),
        ("parts", ["P1"], 'parts[0]: found "P1", wanted an object'),
        ("colour", "red", "colour: found an unknown key, wanted one of unit, kerf, trim"),
        ("parts.0.colour", "red", "parts[0].colour: found an unknown key"),
        ("parts.0.length", ..., "parts[0].length: found nothing, wanted this key"),
        ("parts.0.length", "0", 'parts[0].length: found "0", wanted at least'),
        ("parts.0.length", "-5", 'parts[0].length: found "-5"'),
        ("parts.0.length", "1e400", 'parts[0].length: found "1e400"'),
        ("parts.0.length", "1/0", 'parts[0].length: found "1/0"'),
        ("parts.0.length", "nan", 'parts[0].length: found "nan"'),
        ("parts.0.length", "21 m", 'parts[0].length: found "21 m"'),
        ("parts.0.length", 720, "parts[0].length: found 720, wanted a length as text"),
        ("parts.0.length", None, "parts[0].length: found null"),
        ("parts.0.length", "2421", "parts[0]: found P1, 2421 x 396 mm, wanted no larger than some"),
        ("parts.0.grain", "width", None),
        (
            "parts.0.length",
            "720.00000000000001",
            "parts[0]: found 720.00000000000001 mm, wanted a length no",
        ),
        ("parts.0.width", ..., "parts[0].width: found none, wanted a width"),
        ("parts.0.count", 0, "parts[0].count: found 0, wanted a whole number from 1"),
        ("parts.0.count", 1.5, "parts[0].count: found 1.5"),
        ("parts.0.count", True, "parts[0].count: found true"),
        ("parts.0.count", 10**9, "parts[0].count: found 1000000000"),
        ("parts.0.grain", "up", 'parts[0].grain: found "up", wanted one of length, width'),
        ("parts.0.label", "", 'parts[0].label: found ""'),
        ("parts.0.order", "1", 'parts[0].order: found "1", wanted a whole number'),
        ("stock.0.count", 0, "stock[0].count: found 0"),
        ("stock.0.price", 12.5, "stock[0].price: found 12.5, wanted a price as decimal text"),
    ],
)
def test_one_wrong_value(path: str, value: object, line: str | None) -> None:
    """Each fault names its path, what stands there and what is wanted."""
    if line is None:
        read_request(changed(path, value))
        return
    assert any(found.startswith(line) for found in faults(changed(path, value)))


def test_a_part_that_only_fits_across_its_grain_is_refused() -> None:
    """Turning would make it fit; its grain forbids that, so it is named."""
    assert faults(changed("parts.0.width", "1300"))[0].startswith("parts[0]: found P1, 720 x 1300")
    row = {"label": "P1", "length": "720", "width": "1300", "grain": None}
    assert read_request(changed("parts", [row])).parts[0].grain is None


def test_every_fault_at_once() -> None:
    """A file with three faults is refused with three lines."""
    file = GOOD | {"kerf": "x", "parts": [{"label": "A", "length": "0", "width": "9", "count": -1}]}
    assert len(faults(json.dumps(file).encode())) == 3


@pytest.mark.parametrize(
    "data",
    [b"", b"{", b"[]", b"null", b"\xff\xfe", b"{" * 100_000, b'{"unit": "mm", "unit": "in"}',
     b'{"unit": NaN}', b'{"unit": ' + b"9" * 5_000 + b"}"],
)  # fmt: skip
def test_what_is_no_parts_file(data: bytes) -> None:
    """Anything else is refused with at least one line, never an error of the program."""
    assert faults(data)


def test_blocks_agree_with_themselves() -> None:
    """Parts of one block have the same count and grain."""
    rows = [{"label": "A", "length": "100", "width": "100", "block": "b", "grain": "length"},
            {"label": "B", "length": "100", "width": "100", "block": "b", "count": 2}]  # fmt: skip
    lines = faults(changed("parts", rows))
    assert [line.split(":")[0] for line in lines] == ["parts[1].count", "parts[1].grain"]


def test_lengths_as_people_write_them() -> None:
    """Inches as fractions, and other units where they are named, are read exactly."""
    rows = [{"label": "A", "length": "23 5/8", "width": "300 mm"}]
    file = json.loads(changed("parts", rows)) | {"unit": "in", "kerf": "1/8", "trim": "0"}
    file["stock"] = [{"label": "s", "length": "96", "width": "48"}]
    (part,) = read_request(json.dumps(file).encode()).parts
    assert (str(part.length), str(part.width)) == ("24003/40", "300")
