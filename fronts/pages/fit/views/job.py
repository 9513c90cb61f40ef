"""The job's cabinets by wall, and how their fronts stand."""

from django.http import HttpResponse

from fronts.pages.fit.rows.at_cabinet import cabinet_numbers
from fronts.pages.fit.rows.walls import walls_of, where_to_go_on
from fronts.pages.shared.job_view import job_view
from fronts.rules.front_states import A_PROBLEM, DONE, NOT_HUNG, TO_ADJUST
from fronts.selectors.fits import fit_records_of
from fronts.selectors.schedules import worked_out
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page


@job_view("measure", "GET", "HEAD")
def job_fit(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the job's cabinets by wall, and how their fronts stand."""
    (kitchen, schedule), records = worked_out(job), fit_records_of(job)
    walls = walls_of(job, kitchen, schedule, cabinet_numbers(job), records)
    next_front, next_address = where_to_go_on(job, walls)
    rows = [row for wall in walls for row in wall.cabinets]
    context = {
        "job": job,
        "step": "fit",
        "walls": walls,
        "next_front": next_front,
        "next_address": next_address,
        "states": (NOT_HUNG, TO_ADJUST, DONE, A_PROBLEM),
        "done": sum(row.done for row in rows),
        "problems": sum(row.problems for row in rows),
        "fronts": sum(row.wanted for row in rows),
    }
    return render_page(request, "fronts/fit/page.html", context)
