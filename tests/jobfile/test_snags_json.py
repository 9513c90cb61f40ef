"""Snags in a job file: each form, and each fault by its path."""

import json
from datetime import UTC, date, datetime
from typing import Any

import pytest

from fronts.jobfile import read_job, write
from fronts.rules.snags import RecordedSnag, SnagDone, SnagFacts
from tests.kitchen_files import faults_of, small

WHEN = datetime(2027, 3, 12, 10, tzinfo=UTC)
LATER = datetime(2027, 3, 13, 10, tzinfo=UTC)
SNAG = {
    "of": "front", "front": "B1.a", "cabinet": "B1", "words": "scratched",
    "at": "2027-03-12T10:00:00Z", "by": "Ines", "who": "Otto", "due": "2027-03-20",
    "changed": "2027-03-13T10:00:00Z",
    "done": {"at": "2027-03-13T10:00:00Z", "by": "Otto", "note": "polished"},
}  # fmt: skip
GONE = {"of": "front", "words": "rubs", "at": "2027-03-12T10:00:00Z", "called": "Z9.a"}
JOB = {"of": "job", "words": "paint on the floor", "at": "2027-03-12T10:00:00Z"}


def file(*snags: dict[str, Any]) -> str:
    """The small kitchen with these snags."""
    return json.dumps(small() | {"version": 2, "snags": list(snags)})


def test_every_form_is_read_and_written_as_it_was() -> None:
    """On a front that is there, on one that has gone, on the whole job; done and open."""
    stated = read_job(file(SNAG, GONE, JOB))
    facts = SnagFacts("front", "scratched", "B1.a", date(2027, 3, 20), "polished")
    assert stated.records.snags == (
        RecordedSnag(facts, WHEN, LATER, "Ines", "B1.a", "B1", "Otto", SnagDone(LATER, "Otto")),
        RecordedSnag(SnagFacts("front", "rubs", "Z9.a"), WHEN, WHEN),
        RecordedSnag(SnagFacts("job", "paint on the floor"), WHEN, WHEN),
    )
    written = json.loads(write(stated.kitchen, stated.records))["snags"]
    assert [list(snag.items()) for snag in written] == [
        list(snag.items()) for snag in (SNAG, GONE, JOB)
    ]


@pytest.mark.parametrize(
    ("said", "line"),
    [
        (SNAG | {"of": "door"}, 'of: found "door", wanted one of front, cabinet, job'),
        (SNAG | {"front": "B1.b"},
         'front: found "B1.b", wanted the label of a front of this kitchen, in its cabinet'),
        (SNAG | {"cabinet": "B2"},
         'cabinet: found "B2", wanted the label of a cabinet of this kitchen'),
        (SNAG | {"words": ""}, 'words: found "", wanted a label of 1 to 400 characters'),
        (SNAG | {"at": None}, "at: found null, wanted when, like 2027-03-12T10:00:00Z"),
        (SNAG | {"due": "soon"}, 'due: found "soon", wanted a date like 2027-03-12'),
        (SNAG | {"done": {"by": "Otto"}},
         "done.at: found nothing, wanted when, like 2027-03-12T10:00:00Z"),
        (SNAG | {"done": {"at": "2027-03-13T10:00:00Z", "how": "?"}},
         "done.how: found an unknown key, wanted one of at, by, note"),
        (SNAG | {"of": "cabinet"}, 'front: found "B1.a", wanted no front of a whole cabinet'),
        (GONE | {"called": None}, "called: found null, wanted what the front was called"),
        (JOB | {"cabinet": "B1"}, 'cabinet: found "B1", wanted no cabinet of the whole job'),
        (JOB | {"mood": "bad"},
         "mood: found an unknown key, wanted one of of, front, cabinet, words, at, by, who, due, "
         "changed, done, called"),
    ],
)  # fmt: skip
def test_one_thing_wrong(said: dict[str, Any], line: str) -> None:
    """One slip is told once, at its key."""
    assert faults_of(file(said)) == [f"snags[0].{line}"]
