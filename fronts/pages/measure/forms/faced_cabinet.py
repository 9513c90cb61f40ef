"""A cabinet whose face is said in words."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

from django import forms

from fronts.figures.faces import words_of_face
from fronts.notebook import Around, Faces, NotUnderstood, openings_of, read_face, regular_face
from fronts.pages.measure.forms.cabinets import CabinetForm
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.limits import LONGEST_FACE
from fronts.rules.member_width import member_width
from fronts.rules.standards import EMPTY
from fronts.snapshot import job_facts
from shopjobs.models import Job


class FacedCabinetForm(CabinetForm):
    """A cabinet's sizes, and what closes it as a shop would say it: `drawer 6 over pair`."""

    face = forms.CharField(label="Closed by", max_length=LONGEST_FACE, required=False)

    def __init__(
        self,
        *args: Any,
        job: Job,
        cabinet: Cabinet,
        faces: Callable[[], Faces],
        **kwargs: Any,
    ) -> None:
        self.held, self.faces = cabinet, faces
        self.facts_of_job = job_facts(job)
        bare = replace(cabinet, standard=EMPTY, openings=())
        super().__init__(*args, unit=job.unit, cabinet=bare, **kwargs)
        self.initial["face"] = self.words = words_of_face(cabinet, self.facts_of_job)
        self.openings: Sequence[Opening] | None = None

    def clean(self) -> dict[str, Any]:
        """Lay the face out, where another is said."""
        given = super().clean() or {}
        said = given.get("face", "")
        if said and said != self.words and not self.errors:
            try:
                self.openings = self._laid_out(said, given)
            except NotUnderstood as fault:
                self.add_error("face", f"Found {fault.found}; {fault.wanted} may stand there.")
        return given

    def _laid_out(self, said: str, given: dict[str, Any]) -> Sequence[Opening]:
        unit, step = self.facts_of_job.unit, self.facts_of_job.step
        known = regular_face(self.held, unit, step)
        member = known.member if known else member_width(given["build"], unit)
        around = Around(given["width"], given["height"], member, unit, step)
        return openings_of(read_face(said, unit, self.faces()), around)
