"""Snags as a job file gives them, since version 2.

An entry of `snags` says `of` (`front`, `cabinet` or `job`), `words`, `at` and `by`; beside that,
where it is so: `cabinet` and `front` (what they are called now; without them they have gone),
`called` (what it was called then, where that is no more), `who` (is to settle it), `due`,
`changed` (where that is later than `at`), and `done`: `at`, `by` and `note`. Its photos stay
where they are.
"""

from typing import TypeAlias

from fronts.jobfile import values
from fronts.jobfile.reader import Record
from fronts.jobfile.stated import stated
from fronts.rules.kitchen import Kitchen
from fronts.rules.labels import front_labels_in
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NAME, LONGEST_NOTE, MOST_SNAGS
from fronts.rules.snags import OF, RecordedSnag, SnagDone, SnagFacts

Json: TypeAlias = bool | int | str | list["Json"] | dict[str, "Json"] | None
_KEYS = (
    "of", "front", "cabinet", "words", "at", "by", "who", "due", "changed", "done", "called",
)  # fmt: skip
_DONE_KEYS = ("at", "by", "note")
_label = values.label(LONGEST_FRONT_LABEL)
_name = values.text(LONGEST_NAME)


def snags(root: Record, kitchen: Kitchen) -> tuple[RecordedSnag, ...]:
    """What the key `snags` says, held against the kitchen that the file states."""
    whole = None if root.place.page.faults.any else kitchen
    return tuple(_snag(Record(place, _KEYS), whole) for place in root.entries("snags", MOST_SNAGS))


def _snag(record: Record, kitchen: Kitchen | None) -> RecordedSnag:
    """`kitchen` is None where that is at fault itself."""
    front, cabinet = record.take("front", _label) or "", record.take("cabinet", _label) or ""
    if kitchen is not None:
        _refuse_unknown(record, kitchen, front, cabinet)
    called = record.take("called", _label) or front or cabinet
    _refuse_unplaced(record, called)
    at = record.need("at", values.moment, values.SOME_TIME, values.WHEN)
    done, note = _done(record)
    facts = stated(
        SnagFacts,
        record,
        label=called,
        done_note=note,
    )
    return RecordedSnag(
        facts=facts,
        at=at,
        changed=record.take("changed", values.moment) or at,
        by=record.take("by", _name) or "",
        front=front,
        cabinet=cabinet,
        who=record.take("who", _name) or "",
        done=done,
    )


def _refuse_unplaced(record: Record, called: str) -> None:
    """What it is on must be said, and nothing else."""
    of = record.at("of").value
    if of == "job":
        for key in ("front", "cabinet", "called"):
            if record.has(key):
                record.fault(key, f"no {key} of the whole job")
    elif of == "cabinet" and record.has("front"):
        record.fault("front", "no front of a whole cabinet")
    elif of in OF and not called and record.sound("front", "cabinet", "called"):
        record.fault("called", f"what the {of} was called")


def _refuse_unknown(record: Record, kitchen: Kitchen, front: str, cabinet: str) -> None:
    found = next((each for each in kitchen.cabinets if each.label == cabinet), None)
    if cabinet and found is None:
        record.fault("cabinet", "the label of a cabinet of this kitchen")
    inside = kitchen.cabinets if found is None else (found,)
    if front and front not in front_labels_in(inside):
        record.fault("front", "the label of a front of this kitchen, in its cabinet")


def _done(record: Record) -> tuple[SnagDone | None, str]:
    """When and by whom it was settled, and what was done."""
    if not record.has("done"):
        return None, ""
    said = Record(record.at("done"), _DONE_KEYS)
    done = SnagDone(
        said.need("at", values.moment, values.SOME_TIME, values.WHEN), said.take("by", _name) or ""
    )
    return done, said.take("note", values.text(LONGEST_NOTE)) or ""


def snag_said(snag: RecordedSnag) -> Json:
    """A snag as a file says it; what says nothing is left out."""
    facts, now = snag.facts, snag.front or snag.cabinet
    said: dict[str, Json] = {
        "of": facts.of,
        "front": snag.front,
        "cabinet": snag.cabinet,
        "words": facts.words,
        "at": values.moment_said(snag.at),
        "by": snag.by,
        "who": snag.who,
        "due": facts.due.isoformat() if facts.due else None,
        "changed": values.moment_said(snag.changed) if snag.changed != snag.at else None,
        "done": _done_said(snag),
        "called": facts.label if facts.label != now else None,
    }
    return {key: value for key, value in said.items() if value}


def _done_said(snag: RecordedSnag) -> Json:
    if snag.done is None:
        return None
    said: dict[str, Json] = {
        "at": values.moment_said(snag.done.at),
        "by": snag.done.by,
        "note": snag.facts.done_note,
    }
    return {key: value for key, value in said.items() if value}
