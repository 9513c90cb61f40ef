"""What has changed of a front since it was fitted, said beside how it was."""

from dataclasses import replace

from fronts.figures.fit_changes import fit_change_words
from fronts.rules.fit_changes import fit_changes
from fronts.rules.fits import FitFacts, Gaps, front_then
from fronts.rules.planned_gap import planned_gaps
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening


def test_nothing_is_told_of_a_front_that_is_as_it_was() -> None:
    """Nor of one of which nobody noted anything."""
    of = kitchen(cabinet(opening("door", hinged="left")))
    front = only_front(of)
    planned = planned_gaps(front, of)

    noted = FitFacts("B1.a", planned=planned, was=front_then(front))

    assert list(fit_changes(noted, front, planned)) == []
    assert list(fit_changes(FitFacts("B1.a"), front, planned)) == []


def test_sizes_hand_and_planned_gaps_are_told_with_what_they_were() -> None:
    """Each once, in words."""
    of = kitchen(cabinet(opening("door", hinged="right")))
    front, planned = only_front(of), Gaps(left=inch("3/32"), top=inch("1/8"))
    was = replace(
        front_then(front),
        width=front.width - inch("1/16"), height=front.height + inch("1/8"),
        thickness=front.thickness - inch("1/16"), hinged="left",
    )  # fmt: skip
    facts = FitFacts("B1.a", planned=Gaps(left=inch("1/8"), right=inch("1/4")), was=was)

    told = fit_change_words(fit_changes(facts, front, planned), "in")

    assert told == [
        "1/16 wider", "1/8 lower", "1/16 thicker", "hinged right, was hinged left",
        "the left gap planned 3/32, was 1/8", "the right gap no longer planned, was 1/4",
    ]  # fmt: skip
