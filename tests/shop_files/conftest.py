"""Two shops, each with a row in every table."""

import pytest

from shopjobs.models import Shop
from tests.shop_files.whole_shop import OURS, THEIRS, whole_shop


@pytest.fixture
def ours(db: None) -> Shop:
    """The shop that moves."""
    return whole_shop("Alder Row Cabinets", OURS)


@pytest.fixture
def theirs(db: None) -> Shop:
    """A shop beside it, with a job of the same number and other values."""
    return whole_shop("Birch Lane Joiners", THEIRS)
