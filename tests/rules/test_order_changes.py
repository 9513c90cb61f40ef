"""What a line of the order depends on, and what has changed of it (common practice, no source)."""

from dataclasses import replace

import pytest

from fronts.figures.order_words import change_words
from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import Kitchen
from fronts.rules.order_changes import line_changes
from fronts.rules.order_facts import COUNT, LineFacts, line_facts_from, order_facts
from fronts.rules.order_states import OrderState, what_is_waited_for
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import all_round, cabinet, kitchen, opening

TWO = LineFacts(4, 1, "", {"B1.a": {COUNT: "2"}, "B5.a.1": {COUNT: "2"}})


def doors(overlay: str, closed_by: ClosedBy = "pair") -> dict[str, LineFacts]:
    """What the order of a cabinet with doors of this overlay depends on."""
    made: Kitchen = replace(
        kitchen(cabinet(opening(closed_by))), standard=Standard(overlay=all_round(overlay))
    )
    return order_facts(schedule(made))


@pytest.mark.parametrize(
    ("then", "now", "words"),
    [
        (TWO, TWO, []),
        (LineFacts(0), TWO, ["order 4 for B1.a, B5.a.1", "spares 0 → 1"]),
        (TWO, replace(TWO, need=6, fronts={**TWO.fronts, "B5.a.1": {COUNT: "4"}}),
         ["order 2 more for B5.a.1"]),
        (TWO, replace(TWO, need=2, fronts={"B1.a": {COUNT: "2"}}), ["2 over: fewer for B5.a.1"]),
        (TWO, LineFacts(0), ["4 over: no longer needed", "spares 1 → 0"]),
        (TWO, replace(TWO, fronts={"B1.a": {COUNT: "2"}, "B6.a": {COUNT: "2"}}),
         ["as many, for B6.a in place of B5.a.1"]),
        (TWO, replace(TWO, spares=2), ["spares 1 → 2"]),
        (TWO, replace(TWO, unit="m"), ["counted in m, no more in pieces"]),
    ],
)  # fmt: skip
def test_what_changed_is_said_in_figures(then: LineFacts, now: LineFacts, words: list[str]) -> None:
    """How many more or over, and for which fronts."""
    assert change_words(line_changes(then, now), "in") == words


def test_another_overlay_is_another_hinge() -> None:
    """The same number of the same plain hinge, for doors that lap less."""
    before, after = doors("1/2"), doors("3/8")
    hinge = next(item for item in before if item.startswith("hinge"))
    assert hinge in after
    assert before[hinge].need == after[hinge].need

    words = change_words(line_changes(before[hinge], after[hinge]), "in")

    assert "another hinge for B1.a.1, B1.a.2: 1/2 → 3/8 overlay" in words
    assert not line_changes(before["bumper"], after["bumper"])


@pytest.mark.parametrize(
    ("fact", "was", "now", "unit", "words"),
    [
        ("mount", "overlay", "inset", "in", "another hinge for B1.a: overlay → inset"),
        ("plate", "0", "3", "in", "another hinge for B1.a: 0 → 3 mm plate"),
        ("long", "508", "457.2", "in", "another slide for B1.a: 20 → 18 long"),
        ("long", "500", "450", "mm", "another slide for B1.a: 500 → 450 long"),
        ("carries", "34", "45", "mm", "another slide for B1.a: 34.0 kg → 45.0 kg load class"),
        ("handle", "K-1", "", "in", "another handle for B1.a: K-1 → none"),
    ],
)
def test_each_fact_is_named(fact: str, was: str, now: str, unit: str, words: str) -> None:
    """In the job's unit; what is metric wherever it is sold stays so."""

    def line(value: str) -> LineFacts:
        return LineFacts(1, 0, "", {"B1.a": {COUNT: "1", **({fact: value} if value else {})}})

    (said,) = change_words(line_changes(line(was), line(now)), unit)  # type: ignore[arg-type]
    assert said == words


def test_a_line_is_kept_and_read_again() -> None:
    """Its name is the same for the same facts alone."""
    for facts in doors("1/2", "drawers").values():
        assert line_facts_from(facts.as_json) == facts
        assert facts.short_name != replace(facts, spares=facts.spares + 1).short_name


@pytest.mark.parametrize(
    ("state", "stage", "waits"),
    [
        (OrderState(), "", ()),
        (OrderState(3, 1, stops=1), "to check", ("1 stop to settle", "2 lines to check")),
        (OrderState(3, 3, stops=1), "to check", ("1 stop to settle",)),
        (OrderState(3, 3), "to check", ("to approve",)),
        (OrderState(3, 3, approved=True, to_send=3), "approved", ("3 lines to send",)),
        (OrderState(3, 3, approved=True, changed=1, to_send=1, sent=True, to_come={"Ash": 9}),
         "sent in part", ("1 change to decide on", "1 line to send", "9 items from Ash")),
        (OrderState(3, 3, approved=True, sent=True, to_come={"Ash": 1}), "sent",
         ("1 item from Ash",)),
        (OrderState(3, 3, approved=True, sent=True, to_come={"Ash": 1}, came=True),
         "received in part", ("1 item from Ash",)),
        (OrderState(3, 3, approved=True, sent=True, came=True), "received", ()),
        (OrderState(3, 3, 1, approved=True, sent=True, came=True), "received",
         ("1 stop to settle",)),
    ],
)  # fmt: skip
def test_what_an_order_waits_for(state: OrderState, stage: str, waits: tuple[str, ...]) -> None:
    """Nothing is left only where no stop stands either."""
    assert (state.stage, what_is_waited_for(state)) == (stage, waits)
    assert state.is_through == (stage == "received" and not waits)
