"""What the tests of every page share."""

from tests.plans_to_look_at import no_search_for_offcuts

__all__ = ["no_search_for_offcuts"]
