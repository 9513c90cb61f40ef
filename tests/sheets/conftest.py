"""Sheets are printed once for all processes of a run."""

import os

import pytest

from tests.sheets import printed


@pytest.fixture(scope="session", autouse=True)
def _printed_once(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Let the processes of one run find what another has printed."""
    if "PYTEST_XDIST_WORKER" in os.environ:
        folder = tmp_path_factory.getbasetemp().parent / "sheets"
        folder.mkdir(exist_ok=True)
        printed.SHARED.append(folder)
