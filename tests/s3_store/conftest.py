"""The store, started once for the tests here."""

from collections.abc import Iterator

import pytest

from tests.s3_store.store import Store, running_store


@pytest.fixture(scope="session")
def server() -> Iterator[Store]:
    """A server that speaks S3."""
    with running_store() as store:
        yield store


@pytest.fixture
def store(server: Store) -> Store:
    """The same with an empty bucket."""
    server.empty_bucket()
    return server
