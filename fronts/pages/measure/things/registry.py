"""Which kinds of thing a job has beside its cabinets, in the order in which a page shows them."""

from collections.abc import Mapping

from fronts.pages.measure.things.doors import DOORS
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.thing_page import ThingPage
from fronts.pages.measure.things.walls import WALLS

THING_PAGES: Mapping[str, ThingPage] = {page.path: page for page in (WALLS, OTHERS, DOORS)}


class ThingConverter:
    """A kind of thing in an address, by its word."""

    regex = "|".join(THING_PAGES)

    def to_python(self, value: str) -> ThingPage:
        """The kind whose word stands in the address."""
        return THING_PAGES[value]

    def to_url(self, value: ThingPage | str) -> str:
        """The word of a kind."""
        return value if isinstance(value, str) else value.path
