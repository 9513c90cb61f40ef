"""Records of fit and order checks in a job file: each form, and each fault by its path."""

import json
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from fronts.jobfile import read_job, write
from fronts.rules.bought_results import CALLED, BoughtFront
from fronts.rules.cut_fronts import CutTo, RecordedCut
from fronts.rules.fits import FitFacts, Gaps, RecordedFit, end_names
from fronts.rules.kinds import SIDES
from fronts.rules.lengths import Mm, exact
from fronts.rules.order_facts import COUNT, LineFacts
from fronts.rules.practice import inches
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.rules.records import NO_RECORDS, CheckFacts, RecordedCheck, RecordedTick, Records
from fronts.rules.standard_keys import Sides
from tests.kitchen_files import faults_of, small

WHEN = datetime(2027, 3, 12, 10, tzinfo=UTC)
FIT = {
    "front": "B1.a", "at": "2027-03-12T10:00:00Z", "by": "Ines", "state": "done",
    "gaps": {"left": "1/16", "right": {"top": "3/16", "bottom": "1/8"}, "top": "1/8"},
    "planned": {"left": "1/8", "bottom": {"left": "0", "right": "1/8"}}, "note": "planed",
}  # fmt: skip
CHECK = {"item": "hinge", "need": 2, "at": "2027-03-12T10:00:00Z", "by": "Otto", "note": "ordered"}
SIZE = "a length of zero or more, like 23 5/8"
TIME = "a time like 2027-03-12T10:00:00Z"


def file(**said: Any) -> str:
    """The small kitchen as version 2, with these keys beside."""
    return json.dumps(small() | {"version": 2, **said})


def with_fit(**said: Any) -> list[str]:
    """What is wrong with a record of fit that is changed so."""
    return faults_of(file(fits=[FIT | said]))


def with_check(**said: Any) -> list[str]:
    """What is wrong with an order check that is changed so."""
    return faults_of(file(checks=[CHECK | said]))


def test_every_form_is_read() -> None:
    """A side in one figure, or at both its ends."""
    facts = FitFacts(
        "B1.a",
        Gaps(
            left=inches(1, 16), right_top=inches(3, 16), right_bottom=inches(1, 8), top=inches(1, 8)
        ),
        "planed",
        planned=Gaps(left=inches(1, 8), bottom_left=inches(0), bottom_right=inches(1, 8)),
    )

    stated = read_job(file(fits=[FIT], checks=[CHECK, {"item": "knob"}]))

    assert stated.records == Records(
        fits=(RecordedFit("B1.a", WHEN, "Ines", facts),),
        checks=(
            RecordedCheck(CheckFacts("hinge", 2, "ordered"), WHEN, "Otto"),
            RecordedCheck(CheckFacts("knob")),
        ),
    )


def test_they_are_written_as_they_were_read() -> None:
    """In the words and the order of the file; a file without any has neither key."""
    called = FIT | {"called": "B1.old", "gone": True, "hung": "9c2", "fingerprint": "77-ab"}
    checks = [CHECK | {"fingerprint": "77-ab"}, {"item": "knob"}]

    stated = read_job(file(fits=[FIT, called], checks=checks))
    tree = json.loads(write(stated.kitchen, stated.records))

    assert [list(fit.items()) for fit in tree["fits"]] == [
        list(FIT.items()), list(called.items()),
    ]  # fmt: skip
    assert tree["checks"] == checks
    assert not {"fits", "checks"} & json.loads(write(stated.kitchen)).keys()


def test_what_may_be_left_out() -> None:
    """Of a record of fit only which front and when are needed: done it is, and by nobody named."""
    stated = read_job(file(fits=[{"front": "B1.a", "at": "2027-03-12T11:30:00+01:30"}]))
    (fit,) = stated.records.fits

    assert fit == RecordedFit("B1.a", WHEN, "", FitFacts("B1.a"))
    assert fit.facts.state == "done"
    assert read_job(file()).records == NO_RECORDS


@pytest.mark.parametrize(
    ("said", "line"),
    [
        ({"front": "B1.b"}, 'front: found "B1.b", wanted the label of a front of this kitchen, '
         "or gone: true"),
        ({"front": None}, "front: found null, wanted the front's label"),
        ({"at": None}, "at: found null, wanted when, like 2027-03-12T10:00:00Z"),
        ({"at": "2027-03-12"}, f'at: found "2027-03-12", wanted {TIME}'),
        ({"at": "2027-03-12T10:00:00"}, f'at: found "2027-03-12T10:00:00", wanted {TIME}'),
        ({"at": "2027-02-30T10:00:00Z"}, f'at: found "2027-02-30T10:00:00Z", wanted {TIME}'),
        ({"at": "0001-01-01T00:00:00+23:00"}, 'at: found "0001-01-01T00:00:00+23:00", wanted '
         f"{TIME}"),
        ({"by": "a\nb"}, 'by: found "a\\u000ab", wanted text without control characters'),
        ({"state": ""}, 'state: found "", wanted a label of 1 to 20 characters'),
        ({"gaps": {"left": "-1/8"}}, f'gaps.left: found "-1/8", wanted {SIZE}'),
        ({"gaps": {"left": {"top": "1/8"}}}, "gaps.left.bottom: found nothing, wanted a length of "
         "zero or more"),
        ({"planned": {"top": {"left": "1/8", "right": "?"}}}, 'planned.top.right: found "?" (is '
         f"not a length), wanted {SIZE}"),
        ({"planned": {"top": {"left": "1/8", "right": "1/8", "bottom": "1"}}}, "planned.top.bottom:"
         " found an unknown key, wanted one of left, right"),
        ({"gaps": []}, "gaps: found an empty list, wanted an object with keys in braces"),
        ({"gone": "yes"}, 'gone: found "yes", wanted true or false'),
        ({"mood": "good"}, "mood: found an unknown key, wanted one of front, at, by, state, gaps, "
         "planned, was, note, called, gone, hung, fingerprint"),
    ],
)  # fmt: skip
def test_one_thing_wrong_with_a_record_of_fit(said: dict[str, Any], line: str) -> None:
    """One slip is told once, at its key."""
    assert with_fit(**said) == [f"fits[0].{line}"]


@pytest.mark.parametrize(
    ("said", "line"),
    [
        ({"item": ""}, 'item: found "", wanted a label of 1 to 200 characters'),
        ({"need": -1}, "need: found -1, wanted a whole number from 0 to 1000000"),
        ({"need": None}, "need: found nothing, wanted how many were needed"),
        ({"at": None}, "at: found nothing, wanted when, like 2027-03-12T10:00:00Z"),
        ({"at": None, "by": None, "need": None}, "note: found \"ordered\", wanted no note without "
         "need, at and by"),
        ({"price": "3"}, "price: found an unknown key, wanted one of item, need, note, open, at, "
         "by, fingerprint, against"),
    ],
)  # fmt: skip
def test_one_thing_wrong_with_an_order_check(said: dict[str, Any], line: str) -> None:
    """One slip is told once, at its key."""
    assert with_check(**said) == [f"checks[0].{line}"]


CUT = {
    "front": "B1.a", "at": "2027-03-12T10:00:00Z", "by": "Ines", "width": "16", "height": "29",
    "thickness": "3/4", "left": "-1/16", "bottom": "1", "build": "five-piece",
    "material": "hard maple", "grain": "upright",
    "frame": {"left": "2 1/4", "right": "2 1/4", "top": "2 1/4", "bottom": "3"},
    "glass": True, "hinged": "left", "on_hand": True,
}  # fmt: skip
SIZES = ("width", "height", "thickness", "left", "bottom")
TICK = {"front": "B1.a", "step": "Hang it.", "at": "2027-03-12T10:00:00Z", "by": "Ines"}


def test_cuts_and_ticks_are_written_as_they_were_read() -> None:
    """In the words and the order of the file; of a cut only its size and place are needed."""
    older = {name: CUT[name] for name in ("front", "at", *SIZES)}

    for cut in (CUT, older):
        stated = read_job(file(cuts=[cut], ticks=[TICK]))
        tree = json.loads(write(stated.kitchen, stated.records))

        assert list(tree["cuts"][0].items()) == list(cut.items())
        assert tree["ticks"] == [TICK]
    assert stated.records.cuts[0].facts.build is None


@pytest.mark.parametrize(
    ("said", "line"),
    [
        ({"front": "B1.b"}, 'front: found "B1.b", wanted the label of a front of this kitchen'),
        ({"width": "0"}, 'width: found "0", wanted a length above zero, like 23 5/8'),
        ({"width": None}, "width: found null, wanted a length above zero"),
        ({"build": "solid"}, 'build: found "solid", wanted one of slab, five-piece'),
        ({"hinged": "there"}, 'hinged: found "there", wanted one of left, right, top, bottom'),
        ({"frame": {"left": "2"}}, "frame.right: found nothing, wanted a length above zero"),
        ({"mood": "good"}, "mood: found an unknown key, wanted one of front, at, by, width, "
         "height, thickness, left, bottom, build, material, grain, frame, glass, hinged, on_hand"),
    ],
)  # fmt: skip
def test_what_is_wrong_with_a_cut(said: dict[str, Any], line: str) -> None:
    """One slip is told at its key."""
    assert faults_of(file(cuts=[CUT | said]))[0] == f"cuts[0].{line}"


def test_a_front_is_cut_once_and_a_step_is_ticked_once() -> None:
    """A second of either is refused at its own place; so is a step without words."""
    assert faults_of(file(cuts=[CUT, CUT], ticks=[TICK, TICK, TICK | {"step": ""}])) == [
        'cuts[1].front: found "B1.a", wanted a front that no other cut has',
        'ticks[1].step: found "Hang it.", wanted a step that no other tick is of',
        'ticks[2].step: found "", wanted a label of 1 to 400 characters',
    ]


def test_an_item_is_checked_once() -> None:
    """A second line of it is refused at its own place."""
    assert faults_of(file(checks=[CHECK, {"item": "hinge"}])) == [
        'checks[1].item: found "hinge", wanted an item that no other check has'
    ]


def test_a_slip_in_the_kitchen_does_not_make_the_records_wrong() -> None:
    """Which fronts there should be, nobody can tell."""
    tree = small() | {"version": 2, "fits": [FIT | {"front": "B1.b"}]}
    tree["cabinets"][0]["openings"][0]["closed_by"] = "flap"

    (fault,) = faults_of(json.dumps(tree))

    assert fault.startswith("cabinets[0].openings[0].closed_by: ")


@pytest.mark.parametrize("key", ["fits", "checks", "cuts", "ticks"])
def test_version_1_knows_none_of_them(key: str) -> None:
    """It is read as ever."""
    (fault,) = faults_of(json.dumps(small() | {key: []}))

    assert fault.startswith(f"{key}: found an unknown key, wanted one of ")


LENGTHS = st.fractions(min_value=0, max_value=80, max_denominator=640)
WORDS = st.text(st.characters(categories=("L", "N", "P")), min_size=1, max_size=20)
TIMES = st.datetimes(datetime(2000, 1, 1), datetime(2100, 1, 1), timezones=st.just(UTC))  # noqa: DTZ001


@st.composite
def any_gaps(draw: st.DrawFn) -> Gaps:
    """Each side in one figure, at both its ends, or not at all."""
    said: dict[str, Mm] = {}
    for side in SIDES:
        one: tuple[str, ...] = (side,)
        names = draw(st.sampled_from([(), one, end_names(side)]))
        said |= {name: draw(LENGTHS) for name in names}
    return Gaps(**said)


FITS = st.builds(
    RecordedFit, front=st.just("B1.a"), at=TIMES, by=WORDS, hung=WORDS, gone=st.booleans(),
    facts=st.builds(FitFacts, label=WORDS, gaps=any_gaps(), note=WORDS, state=WORDS,
                    planned=any_gaps()),
)  # fmt: skip
AGAINST = st.builds(
    LineFacts, need=st.integers(0, 1_000_000), spares=st.integers(0, 1_000_000),
    unit=st.sampled_from(("", "ft", "m")),
    fronts=st.dictionaries(WORDS, st.fixed_dictionaries(
        {COUNT: LENGTHS.map(exact)}, optional={"overlay": LENGTHS.map(exact), "hinge": WORDS}
    ), max_size=3),
)  # fmt: skip
CHECKS = st.builds(
    RecordedCheck, at=TIMES, by=WORDS, fingerprint=WORDS,
    facts=st.builds(CheckFacts, item=WORDS, need=st.integers(0, 1_000_000), note=WORDS,
                    open=st.booleans()),
    against=st.none() | AGAINST,
) | st.builds(RecordedCheck, facts=st.builds(CheckFacts, item=WORDS))  # fmt: skip
TOLD = st.builds(
    BoughtFront, kind=st.sampled_from(tuple(CALLED)), width=LENGTHS.filter(bool),
    height=LENGTHS.filter(bool), thickness=LENGTHS.filter(bool), build=st.just("five-piece"),
    hand=st.sampled_from((None, "left", "top")), style=WORDS, glass=st.booleans(),
    bores=st.lists(LENGTHS.filter(bool), max_size=3).map(tuple),
    bore_from_edge=st.none() | LENGTHS.filter(bool),
)  # fmt: skip
RECEIPTS = st.builds(
    RecordedReceipt, front=st.just("B1.a"), at=TIMES, by=WORDS, gone=st.booleans(),
    facts=st.builds(ReceiptFacts, label=WORDS, front=TOLD, note=WORDS),
)  # fmt: skip
ABOVE = LENGTHS.filter(bool)
CUTS = st.builds(
    RecordedCut, front=st.just("B1.a"), at=TIMES, by=WORDS,
    facts=st.builds(
        CutTo, width=ABOVE, height=ABOVE, thickness=ABOVE, left=LENGTHS.map(lambda at: -at),
        bottom=LENGTHS, build=st.sampled_from((None, "slab", "five-piece")), material=WORDS,
        grain=st.sampled_from((None, "upright")), glass=st.booleans(), on_hand=st.booleans(),
        frame=st.none() | st.builds(Sides, ABOVE, ABOVE, ABOVE, ABOVE),
        hinged=st.sampled_from((None, "left", "bottom")),
    ),
)  # fmt: skip
TICKS = st.builds(RecordedTick, front=st.just("B1.a"), at=TIMES, by=WORDS, step=WORDS)
RECORDS = st.builds(
    Records, cuts=st.lists(CUTS, max_size=1).map(tuple),
    ticks=st.lists(TICKS, max_size=2, unique_by=lambda tick: tick.step).map(tuple),
    fits=st.lists(FITS, max_size=3).map(tuple),
    receipts=st.lists(RECEIPTS, max_size=2).map(tuple),
    checks=st.lists(CHECKS, max_size=3, unique_by=lambda check: check.facts.item).map(tuple),
)  # fmt: skip


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(RECORDS, st.sampled_from(["in", "mm"]))
def test_what_is_written_reads_back_exactly(records: Records, unit: str) -> None:
    """Thirds of a millimetre and microseconds too, in either unit."""
    tree = small() | {"version": 2}
    tree["job"]["unit"] = unit
    kitchen = read_job(json.dumps(tree)).kitchen

    assert read_job(write(kitchen, records)).records == records
