"""The set-up sheet: what is on it agrees with the schedule and with the other sheets."""

import re
from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.figures.set_ups import off_by, spared_jigs, supports
from fronts.figures.what_follows import what_follows
from fronts.rules.kitchen import Kitchen
from fronts.rules.order_of_cabinets import changes_along, least_changes
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.set_ups import set_ups, tools_used
from fronts.rules.standard_keys import Standard
from fronts.sheets import fitting, jigs, set_up, templates
from fronts.sheets.pdf import PAPERS, Paper, render
from fronts.sheets.sheet_page import SheetSource, source_of
from tests.dom import Answer
from tests.drawings.kitchens import demo, hostile
from tests.rules.pull_outs import apart, pull_out
from tests.rules.small_kitchens import all_round, inch, kitchen
from tests.sheets.printed import PRINTED, demo_pages, demo_source, pages_of


def merging() -> SheetSource:
    """Two pull-outs, each on a wall of its own, whose jigs differ by 1/64 in."""
    return source_of(apart("1/2", "33/64"), PRINTED)


def on_walls(*walls: str) -> Kitchen:
    """Two pull-outs on these walls."""
    first, last = walls
    return kitchen(
        pull_out("B1", first, "1/2"), pull_out("B2", last, "1/2", x=inch("18")),
    )  # fmt: skip


def text_of(source: SheetSource) -> str:
    """The sheet in words."""
    return " ".join(Answer(set_up.content(source)).words.split())


def test_screws_are_those_of_the_hardware_sheet() -> None:
    """Every item that is a screw, with the same count and the same spares."""
    sheet, order = (" ".join(" ".join(demo_pages(name)).split()) for name in ("set-up", "hardware"))
    screws = [need for need in demo()[1].hardware if need.is_screw]
    assert {need.item for need in screws} == {
        need.item for need in demo()[1].hardware if re.search(r"\bscrew\b", need.item)
    }
    for need in screws:
        assert f" {need.need} {need.spares} {need.item}" in sheet
        assert f" {need.need} {need.spares} {need.item}" in order


def test_every_jig_and_shim_that_is_used_is_taken_along() -> None:
    """The demo merges none: its jigs are the schedule's; shims stand only beside jigs there."""
    source = demo_source()
    used = tools_used(source.schedule, source.kitchen, source.jig_plan)
    taken = supports(used, source.schedule, source.jig_plan)
    assert [each.fronts[0].front for each in taken if each.what == "jig"] == [
        jig.fronts[0] for jig in source.schedule.jigs
    ]
    assert {(each.what, each.count, each.size) for each in taken if each.what != "jig"} == {
        ("side shims", 2, "1/8"), ("side shims", 2, "3/32"),
    }  # fmt: skip
    text = " ".join(" ".join(demo_pages("set-up")).split())
    for each in taken:
        assert f"{each.count} {each.what} {each.size}" in text


def test_a_merged_jig_says_what_it_moves_and_what_it_spares() -> None:
    """The front that sits off, by how much and which way; the jig that is not made."""
    text = text_of(merging())
    assert "1 jig 1 × 14 B1.a, B2.a sits 1/64 higher" in text
    assert "1 of the schedule’s jigs is not made (1 1/64 × 14)" in text
    assert "half of its holes’ play is left" in text
    more = replace(PRACTICE, jig_play=Fraction(70))
    other = source_of(apart("1/2", "33/64", practice=more), PRINTED)
    assert "30 % of its holes’ play is left" in text_of(other)


def test_fitting_sheets_name_the_jig_that_is_made() -> None:
    """With how far its front sits off; no sheet draws one that nobody makes."""
    source = merging()
    first, other = (
        " ".join(Answer(fitting.content(source, [label])).words.split()) for label in ("B1", "B2")
    )
    assert "Jig 1 thick, 14 long" in first
    assert "sits" not in first
    assert "Jig 1 thick, 14 long; sits 1/64 higher" in other
    assert "1 1/64" not in other


def test_what_follows_of_a_jig_that_is_another_now() -> None:
    """A front that is as it was is told where its jig is made for another too."""
    alone, merged = ((of, schedule(of)) for of in (apart("1/2", "1"), apart("1/2", "31/64")))
    told = {each.label: each.figures for each in what_follows(alone, merged).fronts}
    assert ("jig", "1", "63/64") in {(each.name, each.was, each.now) for each in told["B1.a"]}


def test_lower_is_said_too() -> None:
    """Two stay where they are planned, the third stands on a thicker jig than its own."""
    source = source_of(apart("1/2", "33/64", "33/64"), PRINTED)
    assert off_by(source.jig_plan, "B1.a", "in") == "sits 1/64 lower"
    assert off_by(source.jig_plan, "B2.a", "in") == ""
    assert spared_jigs(source.jig_plan, "in") == ["1 × 14"]


def test_without_a_merged_jig_notool_is_said_of_it() -> None:
    """Neither here nor on the sheet of jigs."""
    source = source_of(apart("1/2", "1"), PRINTED)
    assert "not made" not in text_of(source)
    assert "not made" not in Answer(jigs.content(source)).words


def test_set_up_jigs_and_templates_have_the_same_jigs() -> None:
    """One for both fronts, as thick on each; drawn at true size once, and none is beside it."""
    source = merging()
    assert "1 jig 1 × 14 B1.a, B2.a sits 1/64 higher" in text_of(source)
    to_cut = " ".join(Answer(jigs.content(source)).words.split())
    assert "Jig 1 × 14 no slot; for B1.a, B2.a" in to_cut
    printed = Answer(templates.content(source))
    ends = [row.words for row in printed.all(".templates tr") if " For: " in row.words]
    assert [" ".join(each.split()[1:]) for each in ends] == ["For: B1.a, B2.a"]
    assert "1 1/64" not in printed.words
    spared = "1 of the schedule’s jigs is not made"
    assert (spared in to_cut, spared in printed.words) == (True, True)


def test_the_sheet_of_jigs_has_the_merged_ones_to_cut() -> None:
    """One block instead of two; it says how many are spared and where the rest is said."""
    text = " ".join(Answer(jigs.content(merging())).words.split())
    assert "1 jig block 1 × 14 × 1 1/2" in text
    assert "1 1/64" not in text
    assert "1 of the schedule’s jigs is not made" in text
    assert "set-up sheet" in text


def test_packers_are_cut_and_taken_in_pairs() -> None:
    """Under 1/4 in no jig is made."""
    low = pull_out("B1", "W1", "1/16")
    laps = Standard(overlay=all_round("1/8"))
    source = source_of(kitchen(low, standard=laps), PRINTED)
    assert "2 packers 3/16 B1.a" in text_of(source)
    assert "2 packer 3/16" in " ".join(Answer(jigs.content(source)).words.split())


def test_the_order_has_every_cabinet_once_and_counts_its_changes() -> None:
    """As many tools in bold as are said to change in all; fewer than as the cabinets stand."""
    source = demo_source()
    worked = source.schedule
    page = Answer(set_up.content(source))
    cabinets = [each.words for each in page.all(".order .at .key")]
    having = {front.cabinet for front in worked.fronts}
    assert sorted(cabinets) == sorted(having)
    of = set_ups(worked, tools_used(worked, source.kitchen, source.jig_plan))
    words = r"(\d+) changes of set-up in all; (\d+) as the cabinets stand\. No order needs fewer"
    said = re.search(words, page.words)
    assert said is not None
    assert int(said[1]) == changes_along([of[label] for label in cabinets])
    assert int(said[1]) < int(said[2])


def test_bits_stand_once_each_with_every_stop() -> None:
    """A bit is ticked once, whatever it bores; hinge cups are metric."""
    rows = [
        " ".join(row.words.split())
        for table in Answer(set_up.content(demo_source())).all("table")
        if "Bores" in table.words
        for row in table.all("tbody tr")
    ]
    assert [row.split(" ", 2)[:2] for row in rows if row.startswith("⌀ 1/4")] == [["⌀", "1/4"]]
    assert "⌀ 1/4 9/16 box front, the front behind it B2, B4, B5, B6, P3" in rows
    assert "11/16 box front, the front behind it T1, B7" in rows
    assert any(row.startswith("⌀ 35 mm 12 mm hinge cups") for row in rows)
    assert any(row.startswith("⌀ 3/16 – for knobs and pulls, right through") for row in rows)


def test_cabinets_on_one_wall_need_no_wall_named() -> None:
    """Their labels say enough."""
    pages = [
        Answer(set_up.content(source_of(on_walls("North", last), PRINTED)))
        for last in ("North", "East")
    ]
    walls = [[each.words for each in page.all(".order small")] for page in pages]
    assert walls == [[], ["North", "East"]]


def test_where_no_order_is_proven_best_the_sheet_says_how_far_it_may_be(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A kitchen too large for what its search may take."""
    source = merging()
    found = least_changes(set_ups(source.schedule, tools_used(
        source.schedule, source.kitchen, source.jig_plan
    )))  # fmt: skip
    monkeypatch.setattr(
        "fronts.sheets.set_up.least_changes", lambda _: replace(found, least=found.changes - 2)
    )
    assert "At most 2 fewer could be reached by another order" in text_of(source)


@pytest.mark.parametrize("paper", PAPERS)
def test_long_names_stay_on_the_paper(paper: Paper) -> None:
    """Labels as bad as they may come break nothing, and are all there."""
    source = source_of(hostile(), PRINTED)
    text = "".join("".join(pages_of(render(set_up.content(source), paper))).split())
    for cabinet in source.kitchen.cabinets:
        assert "".join(cabinet.label.split())[:20] in text
