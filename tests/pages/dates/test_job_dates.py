"""A job's dates: stage by stage, marked in a tap; its fitting moved once what that does is seen."""

from datetime import date

import pytest
from django.test import Client
from django.utils import timezone

from fronts.models import StageMark
from fronts.selectors.dates import job_dates_of
from fronts.services.dates import stage_finish
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.pages.dates.conftest import TODAY, SignIn, send
from tests.shopjobs.kitchens import fitted, kitchen


def dates(job: Job, rest: str = "") -> str:
    """The address of the job's dates."""
    return f"/jobs/{job.pk}/dates/{rest}"


def stage(client: Client, job: Job, name: str) -> str:
    """What the page says of a stage."""
    return dom(client.get(dates(job))).one(f"#stage-{name}").words


def test_latest_and_planned_days(
    fitted_first: Job, fitted_next: Job, owner: Person, signed_in: SignIn
) -> None:
    """The latest days, and earlier ones where another job needs these, with the reason."""
    client = signed_in(owner)

    finishing = stage(client, fitted_first, "finish")

    assert "Planned Wed 24 Mar to Tue 30 Mar 2027" in finishing
    assert "3 working days earlier: K-2 has the later ones" in finishing
    assert "At the latest Mon 29 Mar to Fri 2 Apr 2027" in finishing
    assert "Wed 31 Mar to Tue 6 Apr 2027" in stage(client, fitted_next, "finish")
    assert "Agreed Mon 5 Apr to Tue 6 Apr 2027" in stage(client, fitted_first, "fit")


def test_a_stage_is_begun_and_done_in_a_tap(
    fitted_first: Job, office: Person, signed_in: SignIn
) -> None:
    """Who said so and when stands there; the next stage is the one that is on; Undo takes back."""
    client = signed_in(office)

    client.post(dates(fitted_first, "mark/measure/"), {"mark": "begun"})
    assert "Begun Monday, 1 Mar 2027 said by otto" in stage(client, fitted_first, "measure")
    client.post(dates(fitted_first, "mark/measure/"), {"mark": "done"})
    assert "Done Monday, 1 Mar 2027 said by otto" in stage(client, fitted_first, "measure")
    assert "now" in stage(client, fitted_first, "order")
    client.post(dates(fitted_first, "mark/cut/"), {"mark": "done", "on": "2027-02-26"})
    assert "Done Friday, 26 Feb 2027" in stage(client, fitted_first, "cut")
    assert "Passed: a later stage is done." in stage(client, fitted_first, "order")

    client.post(dates(fitted_first, "mark/cut/"), {"mark": "back"})
    assert not StageMark.objects.filter(stage="cut").exists()
    undone = Revision.objects.filter(job=fitted_first, can_undo=True).latest("pk")
    client.post(f"/jobs/{fitted_first.pk}/undo/", {"revision": undone.pk})
    assert StageMark.objects.get(stage="cut").done_on == date(2027, 2, 26)


def test_a_mark_answers_htmx_in_its_place(
    fitted_first: Job, office: Person, signed_in: SignIn
) -> None:
    """The stages alone, with what is late by now."""
    answer = signed_in(office).post(
        dates(fitted_first, "mark/measure/"), {"mark": "done"}, headers={"HX-Request": "true"}
    )

    assert answer.text.lstrip().startswith('<div id="stages">')
    assert "job-changed" in answer.headers["HX-Trigger-After-Settle"]


@pytest.mark.parametrize(
    "on", ["2027-03-15", "1999-01-01", "tomorrow", "0001-01-01", "9999-12-31", "\0", "1" * 5000]
)
def test_a_day_that_can_not_be_is_refused_at_its_field(
    on: str, fitted_first: Job, office: Person, signed_in: SignIn
) -> None:
    """With what was typed still there."""
    answer = signed_in(office).post(dates(fitted_first, "mark/cut/"), {"mark": "done", "on": on})

    assert answer.status_code == 422
    assert "Enter a day" in dom(answer).one("#mark-cut-why").words
    assert dom(answer).one("#stage-cut input[name=on]").attribute("aria-invalid") == "true"
    assert not StageMark.objects.exists()


def test_what_was_recorded_is_told_where_nobody_marked_it(
    fitted_first: Job, owner: Person, signed_in: SignIn
) -> None:
    """Entered, then all of it fitted; no stage waits for a mark then."""
    client = signed_in(owner)
    fronts = kitchen(fitted_first)
    assert "Passed: its fronts are entered." in stage(client, fitted_first, "measure")
    assert "now" in stage(client, fitted_first, "order")

    for front in fronts:
        fitted(front, owner)

    assert "Passed: a later stage is done." in stage(client, fitted_first, "finish")
    assert "Passed: all fronts are fitted." in stage(client, fitted_first, "fit")


def test_late_is_said_in_words(fitted_first: Job, owner: Person, signed_in: SignIn) -> None:
    """What should have begun, when, and why."""
    fitted_first.fit_on = date(2027, 3, 11)
    fitted_first.save()
    stage_finish(job=fitted_first, stage="order", on=TODAY, by=owner, at=timezone.now())

    page = dom(signed_in(owner).get(dates(fitted_first)))

    assert page.one(".is-late").words == (
        "Late Cutting should have begun on 26 February: 4 working days for cutting and 5 for "
        "finishing before fitting on 11 March."
    )


def test_another_fitting_date_shows_what_it_does_before_it_is_kept(
    fitted_first: Job, fitted_next: Job, office: Person, signed_in: SignIn
) -> None:
    """Job by job, before and after; nothing is kept until that is said, and of that date alone."""
    client = signed_in(office)
    page = dom(send(client, dates(fitted_next), "fit-day", fit_on="2027-04-05"))

    assert "Too many on one day" in page.one("#fit-day").words
    assert "5 April: 2 jobs at fitting (K-1, K-2), 1 at once" in page.one("#fit-day .over").words
    assert "K-1" in page.one("#fit-day .other").words
    assert "finishing" in page.one("#fit-day .other").words.lower()
    fitted_next.refresh_from_db()
    assert fitted_next.fit_on == date(2027, 4, 7)

    # Another date than the one that was looked at is shown first.
    again = {"fit_on": "2027-05-05", "tried": "2027-04-05", "keep": "1"}
    assert send(client, dates(fitted_next), "fit-day", **again).status_code == 200
    fitted_next.refresh_from_db()
    assert fitted_next.fit_on == date(2027, 4, 7)

    kept = {"fit_on": "2027-05-05", "tried": "2027-05-05", "keep": "1"}
    assert send(client, dates(fitted_next), "fit-day", **kept).status_code == 302
    fitted_next.refresh_from_db()
    assert fitted_next.fit_on == date(2027, 5, 5)
    assert Revision.objects.latest("pk").job == fitted_next


@pytest.mark.parametrize("typed", ["soon", "0001-01-01", "9999-12-31", "2027-02-30", "\0"])
def test_no_fitting_date(typed: str, fitted_first: Job, office: Person, signed_in: SignIn) -> None:
    """What is no day is refused at the field; an empty one takes the date away."""
    client = signed_in(office)
    address = dates(fitted_first)

    refused = send(client, address, "fit-day", fit_on=typed, tried=typed, keep="1")
    assert refused.status_code == 422
    assert dom(refused).one("#fit-day-fit_on").attribute("aria-invalid") == "true"
    assert send(client, address, "fit-day", fit_on="", tried="", keep="1").status_code == 302
    fitted_first.refresh_from_db()
    assert fitted_first.fit_on is None
    assert "Once a day for fitting is set" in client.get(address).text


def test_somebody_else_moved_it_meanwhile(
    fitted_first: Job, office: Person, signed_in: SignIn
) -> None:
    """Both days are shown, and nothing is kept."""
    client = signed_in(office)
    seen = dom(client.get(dates(fitted_first))).one("#fit-day [name=seen]").attribute("value")
    fitted_first.fit_on = date(2027, 6, 1)
    fitted_first.save()

    mine = {"fit_on": "2027-05-05", "tried": "2027-05-05", "keep": "1", "seen": seen}
    answer = client.post(dates(fitted_first), mine)

    assert answer.status_code == 409
    assert "2027-06-01" in dom(answer).one("#fit-day").words
    fitted_first.refresh_from_db()
    assert fitted_first.fit_on == date(2027, 6, 1)


def test_a_job_takes_its_own_days(fitted_first: Job, office: Person, signed_in: SignIn) -> None:
    """What is empty is as usual; what is too much is refused."""
    client = signed_in(office)
    address = dates(fitted_first)

    assert send(client, address, "job-days", cut_days="9").status_code == 302
    assert "9 working days" in stage(client, fitted_first, "cut")
    assert "5 working days" in stage(client, fitted_first, "finish")
    refused = send(client, address, "job-days", cut_days="251")
    assert refused.status_code == 422
    assert "Give 250 at most." in dom(refused).one("#job-days-cut_days_error").words
    assert job_dates_of(fitted_first).cut_days == 9


def test_who_fits_sees_all_and_marks_the_fitting_alone(
    fitted_first: Job, installer: Person, signed_in: SignIn
) -> None:
    """No date is moved, no other stage marked, nothing offered that would be refused."""
    client = signed_in(installer)
    page = dom(client.get(dates(fitted_first)))

    assert [form.attribute("action") for form in page.all("main form.marks")] == [
        dates(fitted_first, "mark/fit/")
    ]
    assert not page.all("#fit-day")
    assert client.post(dates(fitted_first), {"fit_on": "2027-05-05"}).status_code == 403
    assert client.post(dates(fitted_first, "days/"), {"cut_days": "9"}).status_code == 403
    assert client.post(dates(fitted_first, "mark/cut/"), {"mark": "done"}).status_code == 403
    assert client.post(dates(fitted_first, "mark/fit/"), {"mark": "done"}).status_code == 302
    assert StageMark.objects.get().stage == "fit"


def test_another_shops_job_does_not_exist(
    fitted_first: Job, stranger: Person, signed_in: SignIn
) -> None:
    """Nor does a stage that there is none of."""
    client = signed_in(stranger)

    assert client.get(dates(fitted_first)).status_code == 404
    for rest in ("mark/fit/", "days/", "mark/sleep/"):
        assert client.post(dates(fitted_first, rest), {"mark": "done"}).status_code == 404
