"""The sign-off on paper: gaps as fitted beside planned, and lines to sign; or what is missing."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from fronts.rules.fits import FitFacts, Gaps, RecordedFit, hung_as
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.practice import inches
from fronts.rules.records import NO_RECORDS, Records
from fronts.rules.snags import RecordedSnag, SnagFacts
from fronts.sheets import sign_off
from fronts.sheets.pdf import PAPERS, Paper, render
from fronts.sheets.sheet_page import SheetSource, source_of
from tests.drawings.kitchens import HOSTILE, demo, hostile
from tests.rules.small_kitchens import kitchen
from tests.sheets.printed import PRINTED, pages_of

WHEN = datetime(2027, 3, 12, 10, tzinfo=UTC)
OPEN = RecordedSnag(SnagFacts("front", "scratched", "B1.a"), WHEN, WHEN, front="B1.a")


def fitted(source: SheetSource, by: str = "Ines Marsh") -> SheetSource:
    """All as planned but the first front, which was measured at two ends."""
    fits = []
    for front in source.schedule.fronts:
        planned = planned_gaps(front, source.kitchen)
        fits.append(
            RecordedFit(
                front.label,
                WHEN,
                by,
                FitFacts(front.label, planned, planned=planned),
                hung=hung_as(front),
            )
        )
    ends = Gaps(left_top=inches(3, 16), left_bottom=inches(7, 64))
    fits[0] = replace(fits[0], facts=replace(fits[0].facts, gaps=ends))
    return replace(source, records=Records(fits=tuple(fits)))


def words(source: SheetSource, paper: Paper = "letter") -> str:
    """What is printed, as it is read."""
    return " ".join(" ".join(pages_of(render(sign_off.content(source), paper))).split())


@pytest.mark.slow
@pytest.mark.parametrize("paper", PAPERS)
def test_every_front_with_its_gaps_who_and_when(paper: Paper) -> None:
    """And at the end the client's name under a line, with another for the day."""
    source = fitted(source_of(demo()[0], PRINTED))
    text = words(source, paper)
    for front in source.schedule.fronts:
        assert front.label in text
    assert text.count("Ines Marsh 2027-03-12") == len(source.schedule.fronts)
    assert "top 3/16 bottom 7/64" in text
    assert "Wood moves with the seasons" in text
    client = source.kitchen.job.client
    assert f"{client} Date For the shop Date" in text


def test_what_is_missing_is_named_instead() -> None:
    """Fronts by name and why, snags in words; no line to sign."""
    source = fitted(source_of(demo()[0], PRINTED))
    first, second, *others = source.records.fits
    adjusted = replace(second, facts=replace(second.facts, state="to-adjust"))
    records = Records(fits=(replace(first, hung="another"), adjusted, *others[1:]), snags=(OPEN,))
    text = words(replace(source, records=records))
    assert "Sign-off: not yet" in text
    for missing in (
        f"{first.front} changed since it was fitted",
        f"{second.front} hung, to adjust",
        f"{others[0].front} not fitted",
        "Front B1.a scratched",
    ):
        assert missing in text
    assert "For the shop" not in text


def test_nothing_to_sign() -> None:
    """A job without fronts says so."""
    assert "no fronts yet" in words(source_of(kitchen(), PRINTED))
    assert source_of(kitchen(), PRINTED).records == NO_RECORDS


@pytest.mark.slow
def test_no_name_is_markup_or_leaves_the_page() -> None:
    """Whatever people call things, and themselves."""
    source = fitted(source_of(hostile(), PRINTED), by="Ö" * 301)
    html = sign_off.content(source)
    assert "<script" not in html
    snag = replace(OPEN, facts=replace(OPEN.facts, words=HOSTILE * 3))
    for each in (source, replace(source, records=Records(snags=(snag,)))):
        assert render(sign_off.content(each), "a4")
