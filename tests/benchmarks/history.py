"""What history costs: an edit with it and with a plain line, an undo beside an edit, and bytes.

    python3 manage.py bench history

The edit is one of the demo kitchen's, twice over so that it has 40 cabinets, posted through
the whole site. Without history it leaves a line that says who did what, as a diary would.
"""

import json
from collections.abc import Iterator
from functools import partial
from unittest.mock import patch

from django.test import Client, override_settings

from fronts.services.demo import load_demo
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Role
from shopjobs.services.notes import note
from shopjobs.services.recording import Recording
from tests.benchmarks.edit import Edit, edits
from tests.benchmarks.figures import Figure, best_ms, database
from tests.benchmarks.larger import times_over
from tests.factories import NOW

ROUNDS = 60
MOST_TIMES = 1.3


def figures() -> Iterator[Figure]:
    """Times in milliseconds and in each other, and bytes of the database."""
    urls = override_settings(ROOT_URLCONF="tests.benchmarks.edit", ALLOWED_HOSTS=["localhost"])
    with urls, database():
        job, owner = _forty_cabinets()
        client = Client(SERVER_NAME="localhost")
        client.force_login(owner)
        for what, edit in edits(client, job):
            yield from _beside_a_line(what, edit)
        yield from _undo(client, job, edit)
        yield from _bytes(job)


def _forty_cabinets() -> tuple[Job, Person]:
    """The demo kitchen and its like on walls of its own."""
    demo = load_demo()
    if demo is None:
        raise RuntimeError("the demo kitchen is there already")
    twice = times_over(kitchen_of(demo), 2)
    owner = Person.objects.get(shop=demo.shop, role=Role.OWNER)
    return job_import(kitchen=twice, shop=demo.shop, at=NOW, by=owner), owner


def _plain_line(recording: Recording) -> None:
    """What a diary keeps of a change."""
    told = recording.told
    if recording.changes and told is not None:
        note(shop=told.shop, job=told.job, text=told.text, at=told.at, person=told.by)


def _beside_a_line(what: str, edit: Edit) -> Iterator[Figure]:
    times: dict[bool, list[float]] = {True: [], False: []}
    for _ in range(ROUNDS):
        times[True].append(best_ms(edit.post, 1))
        with patch("shopjobs.services.recording._keep", _plain_line):
            times[False].append(best_ms(edit.post, 1))
            edit.post()
        edit.post()
    kept, line = min(times[True]), min(times[False])
    yield Figure(f"{what}: an edit that leaves a line", line, "ms")
    yield Figure(f"{what}: an edit that can be undone", kept, "ms", MOST_TIMES * line)
    yield Figure("  in times of the plain line", kept / line, "times", MOST_TIMES)


def _undo(client: Client, job: Job, edit: Edit) -> Iterator[Figure]:
    """Undo and Redo in turn, beside an edit that a browser without scripts posts."""
    last = Revision.objects.filter(job=job, can_undo=True).order_by("-pk")
    undone: list[float] = []
    edited: list[float] = []
    for _ in range(ROUNDS):
        edited.append(best_ms(edit.post, 1))
        undo = partial(client.post, f"/jobs/{job.pk}/undo/", {"revision": last[0].pk})
        undone.append(best_ms(undo, 1))
        edit.post()
    yield Figure("an undo", min(undone), "ms", min(edited))
    yield Figure("  in times of an edit", min(undone) / min(edited), "times", 1)


def _bytes(job: Job) -> Iterator[Figure]:
    """What one edit of 40 cabinets leaves, and what an import of all of them does."""
    rows = Revision.objects.filter(job=job, can_undo=True, undoes=None)
    sizes = [len(json.dumps(row.changes)) + len(row.text) for row in rows.order_by("pk")]
    edits_alone = sorted(sizes[1:])
    yield Figure(
        "bytes that an edit leaves, in the middle", edits_alone[len(edits_alone) // 2], "B"
    )
    yield Figure("bytes that an import of 40 cabinets leaves", sizes[0], "B")
