"""What the form of a new cabinet offers, and what it still asks for."""

from fronts.pages.measure.forms.cabinets import CopyForm
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.rules.kinds import CabinetKind
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.snapshot import kitchen_of
from shopjobs.models import Job
from tests.factories import CabinetFactory, OpeningFactory


def new_form(job: Job, kind: CabinetKind = "base") -> NewCabinetForm:
    """The form of the job's next cabinet of this kind."""
    return NewCabinetForm(unit="in", cabinets=kitchen_of(job).cabinets, kind=kind)


def test_a_drawer_over_a_door_is_offered_again(job: Job) -> None:
    """The last cabinet's sizes, face and members stand in the form of the next."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, height=inches(20))
    OpeningFactory.create(
        cabinet=cabinet, label="b", y=inches(23), height=inches(6), closed_by="drawer"
    )

    initial = new_form(job).initial

    assert (initial["label"], initial["height"]) == ("B2", inches(61, 2))
    assert (initial["face"], initial["hinged"]) == ("drawer+door", "left")
    assert (initial["between"], initial["drawer_height"]) == (inches(3, 2), inches(6))


def test_what_is_not_known_is_left_empty(job: Job) -> None:
    """Of the first cabinet nothing stands in the form that was not measured."""
    initial = new_form(job).initial

    assert initial == {
        "kind": "base", "label": "B1", "wall": "A", "build": "face-frame", "face": "door",
    }  # fmt: skip


def test_a_copy_goes_to_the_end_of_its_run(job: Job) -> None:
    """Its label counts on from the one that is copied, past those that are taken."""
    first = CabinetFactory.create(job=job, label="Sink")
    CabinetFactory.create(job=job, label="Sink2", x=inches(18))

    form = CopyForm(unit="in", cabinet=first, cabinets=kitchen_of(job).cabinets)

    assert form.initial == {"label": "Sink3"}
    assert form.fields["x"].widget.attrs["placeholder"] == "next: 36"


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
