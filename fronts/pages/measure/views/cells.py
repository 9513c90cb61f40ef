"""The cells of a wall's table: each saved as it is left, a block of them in one step."""

import json
from collections.abc import Mapping

from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django_htmx.http import reswap

from fronts.models import DoorOnHand
from fronts.pages.measure.rows.cells import COLUMNS, SAYS, Typed
from fronts.pages.measure.things.cells import RowForm, row_form, typed_cells
from fronts.pages.measure.things.door_cells import DOOR_CELLS
from fronts.pages.measure.views.doors import doors_page
from fronts.pages.measure.views.page import drawn_at_once, measure_page
from fronts.pages.measure.views.parts import PAGE
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.job_view import found_or_404, job_view, who
from fronts.pages.shared.wall_addresses import WALL
from fronts.rules.limits import MOST_CABINETS
from fronts.services.cells import CellsRefused, RowChange, rows_change
from shopjobs.access import SignedInRequest
from shopjobs.forms.house import sentence
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, wants_part

SEEN = "seen"
"""What the cells showed before they were typed in, as JSON by their keys."""
_CALLED = {
    **{name: says.lower() for name, says in {**DOOR_CELLS, **SAYS}.items()},
    "face": "what closes it",
}
MOST_ROWS = 4 * MOST_CABINETS


@job_view("edit_kitchen", "POST")
def cells_save(request: SignedInRequest, job: Job) -> HttpResponse:
    """Save what was typed into cells: all of it, or nothing where a cell is refused."""
    typed = dict(list(typed_cells(request.POST).items())[:MOST_ROWS])
    seen = _seen(request.POST.get(SEEN, ""))
    rows = [
        found_or_404(row_form, job, key, cells, seen.get(key, {})) for key, cells in typed.items()
    ]
    names = {row.key: str(row.row) for row in rows}  # As they were before anything is entered.
    faults = {key: fault for row in rows for key, fault in _faults(row, names).items()}
    if not faults:
        changes = [RowChange(row.key, row.row, row.entered(), row.face()) for row in rows]
        try:
            rows_change(job=job, changes=changes, **who(request))
        except CellsRefused as refused:
            row = next(row for row in rows if row.key == refused.key)
            row.form.refuse_all(refused.error)
            faults = _faults(row, names)
    return _refused(request, job, faults, rows) if faults else _saved(request, job, rows)


def _seen(said: str) -> Mapping[str, Mapping[str, str]]:
    """What each row's cells showed; nothing where that was not sent, or is not ours."""
    try:
        cells = json.loads(said or "{}")
    except (ValueError, RecursionError):
        return {}
    whole = isinstance(cells, dict) and all(isinstance(value, str) for value in cells.values())
    return typed_cells(cells) if whole else {}


def _faults(row: RowForm, names: Mapping[str, str]) -> dict[str, str]:
    """What is wrong with a row, by the keys of its cells; what has none stands at the first."""
    told: dict[str, str] = {}
    for name, messages in row.form.errors.items():
        known = name if name in _CALLED else COLUMNS[0]
        words = " ".join(str(message) for message in messages)
        where = f"{names[row.key]}, {_CALLED[known]}"
        told[f"{row.key}-{known}"] = sentence(f"{where}: {words[0].lower()}{words[1:]}")
    return told


def _saved(request: SignedInRequest, job: Job, rows: list[RowForm]) -> HttpResponse:
    said = f"{rows[0].row} is saved." if len(rows) == 1 else f"{len(rows)} rows are saved."
    if _are_doors(rows):
        return _doors_saved(request, job, said)
    if not wants_part(request):
        wall = request.POST.get(WALL, "")
        return redirect(f"{reverse('fronts:job-measure', args=[job.pk])}?{WALL}={wall}")
    parts = (f"{PAGE}#said", f"{PAGE}#cell-faults")
    response = drawn_at_once(request, job, None, parts, {"said": said, "faults": {}})
    return reswap(response, "none")


def _are_doors(rows: list[RowForm]) -> bool:
    return bool(rows) and all(isinstance(row.row, DoorOnHand) for row in rows)


def _doors_saved(request: SignedInRequest, job: Job, said: str) -> HttpResponse:
    """What follows a door asks for itself: it stands in a table of its own."""
    if not wants_part(request):
        return redirect("fronts:job-doors", job.pk)
    context = {"job": job, "said": said, "faults": {}}
    response = PartsResponse(request, (f"{PAGE}#said", f"{PAGE}#cell-faults"), context)
    return announce_change(reswap(response, "none"))


def _refused(
    request: SignedInRequest, job: Job, faults: Mapping[str, str], rows: list[RowForm]
) -> HttpResponse:
    if not wants_part(request):
        page = doors_page if _are_doors(rows) else measure_page
        return page(request, job, Typed(request.POST, faults), status=422)
    context = {"job": job, "faults": faults, "theirs": json.dumps(_theirs(rows))}
    parts = [f"{PAGE}#cell-faults"]
    if len(rows) > 1:
        context["said"] = f"None of the {len(rows)} rows is saved: something in them is marked."
        parts.append(f"{PAGE}#said")
    response = PartsResponse(request, tuple(parts), context)
    response.status_code = 422
    return reswap(response, "none")


def _theirs(rows: list[RowForm]) -> dict[str, str]:
    """What others saved meanwhile where somebody typed, by the keys of the cells."""
    return {
        f"{row.key}-{name}": vars(field)["theirs"] or ""
        for row in rows
        for name, field in row.form.fields.items()
        if name in _CALLED and "theirs" in vars(field)
    }
