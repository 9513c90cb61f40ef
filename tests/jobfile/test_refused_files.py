"""Files that are no job file at all, or too much of one."""

import json

import pytest

from fronts.jobfile import Refused, read_bytes
from tests.kitchen_files import changed, faults_of, small

SIZE = "a length above zero, like 23 5/8"


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("", "file: found nothing, wanted a job file"),
        ("  \n", "file: found nothing, wanted a job file"),
        ("[]", "file: found an empty list, wanted an object with keys in braces"),
        ("null", "file: found null, wanted an object with keys in braces"),
        ("{", "file: found “Expecting property name enclosed in double quotes” at line 1, "
         "column 2, wanted a job file as it was written"),
        ("{} {}", "file: found “Extra data” at line 1, column 4, wanted a job file as it was "
         "written"),
        ("[" * 200_000, "file: found lists or objects nested without end, wanted a job file"),
        ('{"version":' * 200_000, "file: found lists or objects nested without end, wanted a job "
         "file"),
    ],
)  # fmt: skip
def test_what_is_no_job_file_at_all(text: str, line: str) -> None:
    """Text that can't be read as JSON is one fault of the file."""
    assert faults_of(text) == [line]


@pytest.mark.parametrize("word", ["NaN", "Infinity", "-Infinity", "1e400", "1e-999999999"])
def test_numbers_that_are_none(word: str) -> None:
    """What JSON readers let through as a number is refused at its key."""
    text = json.dumps(small()).replace('"16"', word, 1)
    assert faults_of(text) == [f"doors_on_hand[0].width: found {word}, wanted {SIZE}"]


def test_a_whole_number_without_end() -> None:
    """Thousands of digits are shown short."""
    (line,) = faults_of(json.dumps(small()).replace('"16"', "7" * 100_000, 1))
    assert line == f"doors_on_hand[0].width: found {'7' * 39}…, wanted {SIZE}"


def test_a_key_given_twice() -> None:
    """Which of the two is meant, nobody can tell."""
    text = json.dumps(small()).replace('"depth": "24"', '"depth": "24", "depth": "12"')
    assert faults_of(text) == [
        "cabinets[0].depth: found the key more than once, wanted each key once"
    ]


def test_bytes_that_are_not_text() -> None:
    """A picture or a file in another encoding is told from a job file."""
    with pytest.raises(Refused, match="byte 0xff at offset 1, which is not UTF-8"):
        read_bytes(b"{\xff}")


def test_a_file_that_is_too_large() -> None:
    """Twenty megabytes are a hundred kitchens."""
    with pytest.raises(Refused, match="found more than 20 MB"):
        read_bytes(b" " * (20 * 1024 * 1024 + 1))


def test_too_many_cabinets() -> None:
    """A list beyond reason is one fault, however many entries it has."""
    assert faults_of(changed("cabinets", [{}] * 5001)) == [
        "cabinets: found a list of 5,001, wanted at most 5,000 entries"
    ]


def test_a_thousand_faults_are_enough() -> None:
    """The rest is counted, not told."""
    found = faults_of(changed("cabinets", [{}] * 400))
    assert len(found) == 1001
    assert found[-1] == "file: found 2,600 faults more, wanted none"


def test_many_unknown_keys_are_counted() -> None:
    """A list of some other kind doesn't drown what matters."""
    found = faults_of(
        changed("job", {f"k{n}": n for n in range(90)} | {"number": "1", "unit": "in"})
    )
    assert len(found) == 21
    assert found[-1] == "job: found 70 unknown keys more, wanted known keys only"
