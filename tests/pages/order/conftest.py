"""What the tests of the order's page share."""

import pytest

from shopjobs.models import Job
from tests.factories import door_and_drawer, overlaid


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A job with a door on two hinges, and a drawer."""
    overlaid(job)
    door_and_drawer(job)
    return job
