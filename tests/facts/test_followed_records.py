"""What people record on a job followed all the way: form, database, file, and back."""

from dataclasses import replace
from datetime import timedelta

from fronts.facts.rows import columns_of
from fronts.jobfile import read_job, write
from fronts.pages.fit.forms import AS_PLANNED, FitForm
from fronts.rules.bought_results import BoughtFront
from fronts.rules.cut_fronts import CutTo, RecordedCut
from fronts.rules.fits import UPRIGHT, FitFacts, Gaps, RecordedFit, end_names
from fronts.rules.front_states import DONE
from fronts.rules.kinds import SIDES
from fronts.rules.labels import front_labels
from fronts.rules.lengths import Mm
from fronts.rules.order_facts import COUNT, FRONT_FACTS, LineFacts
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.rules.records import CheckFacts, RecordedCheck, RecordedTick, Records
from fronts.rules.snags import RecordedSnag, SnagDone, SnagFacts
from fronts.selectors.records import records_of
from fronts.services.imports import job_import
from shopjobs.models import Job, Person, Shop
from tests.factories import NOW
from tests.facts.distinct import Distinct
from tests.facts.test_followed import CABINET, KITCHEN, STACK, typed

AGAINST = LineFacts(4, 1, "ft", {"B1.a": {COUNT: "10/3", **dict.fromkeys(FRONT_FACTS, "7")}})
LATER = NOW + timedelta(hours=2)


def a_fit() -> FitFacts:
    """A record whose every fact has a value of its own, at one end of no side alone."""
    whole = Distinct().thing(FitFacts)
    ends = {end: None for side in ("left", "bottom") for end in end_names(side)}
    both = replace(whole.planned, left=None, right=None, top=None, bottom=None)
    return replace(whole, gaps=replace(whole.gaps, right=None, top=None, **ends), planned=both)


def test_every_fact_of_a_record_that_its_form_asks_for_comes_back_from_it() -> None:
    """The gaps at all sides, or at both ends of the upright ones; how it stands; and the note."""
    whole = Distinct().thing(FitFacts)
    plain = Gaps(*(getattr(whole.gaps, side) for side in SIDES))
    ends = {end: getattr(whole.gaps, end) for side in UPRIGHT for end in end_names(side)}
    for gaps in (plain, replace(plain, left=None, right=None, **ends)):
        record = FitFacts(whole.label, gaps, whole.note, "to-remake")
        shown = FitForm(unit="mm", initial={"front": record.label, **columns_of(record)})
        form = FitForm(typed(shown), unit="mm")

        assert form.is_valid(), form.errors
        assert form.entered(record.label, whole.planned) == record


def test_as_planned_records_every_gap_that_is_planned() -> None:
    """Whatever stands in the fields, and the front is done."""
    planned = Gaps(left=Mm(3), top=Mm(2))
    sent = {"front": "B1.a", "state": AS_PLANNED, "gap_right": "9", "note": "snug"}
    form = FitForm(sent, unit="mm")

    assert form.is_valid(), form.errors
    assert form.entered("B1.a", planned) == FitFacts("B1.a", planned, "snug", DONE.word)


def test_every_fact_that_people_record_comes_back_from_file_and_database(
    shop: Shop, installer: Person
) -> None:
    """Each in a file of its own unit, into the tables, out again, and in a file once more."""
    new = Distinct()
    other = replace(a_fit(), state="to adjust", planned=Gaps())
    front = front_labels(CABINET.label, STACK)[0]
    fits = (
        RecordedFit(front, NOW, "ines", a_fit(), hung="9c2", fingerprint="77-ab"),
        RecordedFit("Z9", NOW, "Nobody Here", replace(other, label="Z9"), gone=True),
    )
    checks = (
        RecordedCheck(new.thing(CheckFacts), NOW, "ines", "77-ab", AGAINST),
        RecordedCheck(CheckFacts("knob")),
    )
    told = new.thing(BoughtFront)
    receipts = (
        RecordedReceipt(front, NOW, "ines", ReceiptFacts(front, told, "by van")),
        RecordedReceipt("Z9", NOW, "Nobody Here", ReceiptFacts("Z8", told), gone=True),
    )
    cuts = (RecordedCut(front, NOW, "Nobody Here", new.thing(CutTo)),)
    ticks = (
        RecordedTick(front, "Hang it.", NOW, "ines"),
        RecordedTick(front, "Adjust it.", LATER, "Nobody Here"),
    )
    records = Records(fits, checks, receipts, cuts=cuts, ticks=ticks)

    stated = read_job(write(KITCHEN, records))
    job = job_import(kitchen=stated.kitchen, records=stated.records, shop=shop, at=NOW)
    kept = records_of(Job.objects.get(pk=job.pk))

    assert stated.records == records
    assert set(kept.fits) == set(fits)
    assert kept.checks == checks
    assert (kept.cuts, kept.ticks) == (cuts, ticks)
    assert set(kept.receipts) == {receipts[0], replace(receipts[1], front="Z8")}


def test_every_fact_of_a_snag_comes_back_from_file_and_database(
    shop: Shop, installer: Person
) -> None:
    """On a front that is there, on a cabinet that has gone, on the whole job."""
    new, front = Distinct(), front_labels(CABINET.label, STACK)[0]
    snags = (
        RecordedSnag(
            replace(new.thing(SnagFacts), of="front"), NOW, LATER, "ines", front, CABINET.label,
            "ines", SnagDone(LATER, "Nobody Here"),
        ),
        RecordedSnag(
            replace(new.thing(SnagFacts), of="cabinet", due=None, done_note=""), NOW, NOW,
            "Nobody Here", who="Nor Here",
        ),
        RecordedSnag(replace(new.thing(SnagFacts), of="job", label="", done_note=""), NOW, NOW),
    )  # fmt: skip

    stated = read_job(write(KITCHEN, Records(snags=snags)))
    job = job_import(kitchen=stated.kitchen, records=stated.records, shop=shop, at=NOW)

    assert stated.records.snags == snags
    assert records_of(Job.objects.get(pk=job.pk)).snags == snags
