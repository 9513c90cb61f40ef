"""Services write rows in one way, so that history misses nothing."""

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
WRITES = frozenset({
    "save", "delete", "create", "update", "bulk_create", "bulk_update", "get_or_create",
    "update_or_create", "create_user",
})  # fmt: skip
SERVICES = (
    *(ROOT / "fronts" / "services").glob("*.py"),
    *(ROOT / "shopjobs" / "services" / f"{name}.py" for name in ("jobs", "people", "shops")),
)
NO_FACTS = {
    "calendar_feeds": "whose calendar is read where is nobody's to read back or bring back",
    "cutting": "a plan's state is no fact of the job; that it was begun and called off is noted",
    "cutting_task": "the same",
    "sheet_sets": "files that were printed are no fact of the job; that they were is noted",
    "work_ticks": "a step that is done is no fact of the kitchen; who did it and when is its own",
    "printed_sheets": "what paper shows that was printed is no fact of the job",
    "jobs: revisions.update": "history itself, of a job long gone",
    "jobs: jobs.delete": "what was deleted a month ago",
    "people: Person.objects.create_user": "a password is never kept in history; it is noted",
    "people: person.save": "a password is never kept in history; it is noted",
    "shops: Shop.objects.create": "a shop begins with nothing before it",
}
"""What is written past history, each with its reason."""


def writes() -> Iterator[str]:
    """Every call in a service that writes to the database by itself."""
    for file in SERVICES:
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            called = node.func if isinstance(node, ast.Call) else None
            if isinstance(called, ast.Attribute) and called.attr in WRITES:
                yield f"{file.stem}: {ast.unparse(called)}"


def test_services_write_through_recording() -> None:
    """`saved`, `made` and `deleted` are the only ways to the database."""
    assert [
        call for call in writes() if call not in NO_FACTS and call.split(":")[0] not in NO_FACTS
    ] == []
