"""How often a trial was made, and how often it failed: printed when all tests are through."""

from typing import Any

import pytest

HEAD = "tried and failed"


class Tally:
    """Counts trials of one test, and keeps the words of those that failed."""

    def __init__(self, what: str) -> None:
        self.what, self.tried = what, 0
        self.faults: list[str] = []

    def of(self, *faults: str) -> None:
        """Count one trial, which came out well where nothing is named."""
        self.tried += 1
        if faults:
            self.faults.append(f"trial {self.tried}: {'; '.join(faults)}")

    def check(self) -> None:
        """Fail where a trial did, or none was made."""
        assert self.tried
        assert self.faults == []


@pytest.fixture
def tally(request: pytest.FixtureRequest, record_property: Any) -> Any:
    """The test's own tally; its figures stand in the summary whether or not the test passes."""
    kept = Tally(request.node.name)
    yield kept
    record_property(HEAD, (kept.what, kept.tried, len(kept.faults)))


def pytest_terminal_summary(terminalreporter: Any) -> None:
    """A line for each test that counted its trials."""
    figures = [
        figure
        for reports in terminalreporter.stats.values()
        for report in reports
        for name, figure in getattr(report, "user_properties", [])
        if name == HEAD and report.when == "teardown"
    ]
    if figures:
        terminalreporter.section(HEAD)
    for what, tried, failed in figures:
        terminalreporter.write_line(f"{tried:5} tried, {failed} failed: {what}")
