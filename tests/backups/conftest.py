"""On each kind of database: an installation at work, and places to bring its backup to."""

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from tests.backups.installations import FURNISH, Installation, installation

New = Callable[[], Installation]


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def vendor(request: pytest.FixtureRequest) -> str:
    """The kind of database."""
    kind: str = request.param
    return kind


@pytest.fixture(scope="module")
def site(vendor: str, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Installation]:
    """An installation with a row in every table and two uploaded files; tests add to it only."""
    with installation(vendor, tmp_path_factory.mktemp("site")) as made:
        made.manage("migrate", "--verbosity", "0")
        made.python(FURNISH)
        (made.uploads / "photos").mkdir(parents=True, exist_ok=True)
        (made.uploads / "photos" / "before planing.jpg").write_bytes(b"\x00\xff photo")
        (made.uploads / "note.txt").write_text("an empty line follows\n\n", encoding="utf-8")
        yield made


@pytest.fixture
def new(vendor: str, tmp_path: Path) -> Iterator[New]:
    """Makes installations without anything in them."""
    with ExitStack() as stack:
        yield lambda: stack.enter_context(installation(vendor, tmp_path))
