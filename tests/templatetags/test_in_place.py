"""Links and forms that htmx answers in place, from one address."""

import pytest
from django.template import Context, Template

from tests.dom import Answer


def drawn(tag: str, **context: object) -> str:
    """The attributes that a tag writes."""
    return Template("{% load in_place %}{% " + tag + " %}").render(Context(context))


@pytest.mark.parametrize(
    ("tag", "written"),
    [
        (
            'opens "shopjobs:job-list" into="jobs"',
            'href="/jobs/" hx-get="/jobs/" hx-target="#jobs" hx-swap="outerHTML"',
        ),
        (
            'opens "shopjobs:job-settings" 7 into="job-7"',
            'href="/jobs/7/settings/" hx-get="/jobs/7/settings/" '
            'hx-target="#job-7" hx-swap="outerHTML"',
        ),
        (
            'opens "/jobs/" query="?kind=base" into="new"',
            'href="/jobs/?kind=base" hx-get="/jobs/?kind=base" '
            'hx-target="#new" hx-swap="outerHTML"',
        ),
        (
            'opens "/jobs/" anchor="b" into="b"',
            'href="/jobs/#b" hx-get="/jobs/" hx-target="#b" hx-swap="outerHTML"',
        ),
        ('opens "/jobs/" into="b" when=no', 'href="/jobs/"'),
        (
            'sends "/jobs/" into="new-job"',
            'method="post" action="/jobs/" hx-post="/jobs/" '
            'hx-target="#new-job" hx-swap="outerHTML"',
        ),
        ('sends "/jobs/"', 'method="post" action="/jobs/" hx-post="/jobs/"'),
        ('sends "/jobs/" into="new-job" when=no', 'method="post" action="/jobs/"'),
    ],
)
def test_both_ways_have_one_address(tag: str, written: str) -> None:
    """What a browser follows and what htmx asks at differ in the anchor alone."""
    assert drawn(tag, no=False) == written


def test_an_id_that_no_selector_can_name_is_quoted() -> None:
    """An id may hold whatever a front's label holds."""
    written = drawn('sends "/x/" into=id', id="1/2 b")
    form = Answer(f"<form {written}></form>").one("form")

    assert form.attribute("hx-target") == "[id='1/2 b']"


def test_what_people_typed_is_escaped() -> None:
    """A quote in an address ends no attribute."""
    assert 'href="/x/?a=&quot;b"' in drawn('opens "/x/" query=query', query='?a="b')
