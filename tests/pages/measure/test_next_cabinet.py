"""What the next cabinet's form already knows."""

import pytest

from fronts.pages.measure.forms.cabinets import NewCabinetForm
from fronts.pages.measure.forms.next_cabinet import Next
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.selectors.kitchens import cabinets_of
from shopjobs.models import Job
from tests.factories import CabinetFactory, OpeningFactory


def upcoming(job: Job, kind: str = "base") -> Next:
    """The next cabinet of this kind."""
    return Next(list(cabinets_of(job)), kind)


def test_an_empty_job_offers_a_label_and_a_wall(job: Job) -> None:
    """Of the first cabinet nothing is known that was not measured."""
    initial = upcoming(job).initial()

    assert initial["label"] == "B1"
    assert initial["wall"] == "A"
    assert "height" not in initial


def test_the_next_is_built_like_the_last_of_its_kind(job: Job) -> None:
    """Height, depth, build and the members of the face come from the last one."""
    OpeningFactory.create(cabinet__job=job, cabinet__build="frameless")
    CabinetFactory.create(
        job=job, label="W1", kind="wall", y=inches(54), height=inches(30), depth=inches(12)
    )

    initial = upcoming(job).initial()

    assert initial["label"] == "B2"
    assert (initial["height"], initial["depth"]) == (inches(61, 2), inches(24))
    assert initial["build"] == "frameless"
    assert (initial["sides"], initial["below"], initial["above"]) == (
        inches(3, 2), inches(3, 2), inches(3, 2),
    )  # fmt: skip
    assert upcoming(job, "wall").initial()["depth"] == inches(12)


@pytest.mark.parametrize(("kind", "end"), [("base", 54), ("wall", 36), ("tall", 54)])
def test_a_run_goes_on_where_it_ended(job: Job, kind: str, end: int) -> None:
    """Standing cabinets run by themselves and hung ones by themselves; tall ones end both."""
    CabinetFactory.create(job=job)
    CabinetFactory.create(job=job, label="T1", kind="tall", x=inches(18))
    CabinetFactory.create(job=job, label="B2", x=inches(36))
    CabinetFactory.create(job=job, label="B3", wall="South", x=inches(100))

    assert upcoming(job).run_end("North", kind) == inches(end)


def test_labels_count_on_and_miss_those_that_are_taken(job: Job) -> None:
    """A label goes on counting from the last, past labels that there are."""
    CabinetFactory.create(job=job, label="B2")
    CabinetFactory.create(job=job, label="B3", x=inches(18))
    CabinetFactory.create(job=job, label="B1", x=inches(36))

    assert upcoming(job).label() == "B4"
    assert upcoming(job).label("Sink") == "Sink2"


def test_a_drawer_over_a_door_is_offered_again(job: Job) -> None:
    """The face of the last cabinet is offered with its members and the drawer's height."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, height=inches(20))
    OpeningFactory.create(
        cabinet=cabinet, label="b", y=inches(23), height=inches(6), closed_by="drawer"
    )

    initial = upcoming(job).initial()

    assert initial["face"] == "drawer+door"
    assert (initial["between"], initial["drawer_height"]) == (inches(3, 2), inches(6))


def test_the_first_hung_cabinet_is_asked_how_high(job: Job) -> None:
    """Nothing tells how high the first wall cabinet hangs, so it must be entered."""
    typed = {
        "label": "W1", "width": "30", "height": "30", "depth": "12", "kind": "wall",
        "build": "frameless", "wall": "A", "face": "pair",
    }  # fmt: skip

    form = NewCabinetForm(typed, unit="in", cabinets=[], kind="wall")

    assert form.errors == {"y": ["Enter how far above the floor it hangs."]}
    high: Mm = (
        NewCabinetForm({**typed, "y": "54"}, unit="in", cabinets=[], kind="wall")
        .fields["y"]
        .clean("54")
    )
    assert high == inches(54)
