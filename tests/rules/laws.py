"""How often a law is tried: often enough to find a slip, seldom enough to wait for."""

from hypothesis import HealthCheck, settings

_SLOW = [HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much]

LAW = settings(max_examples=150, deadline=None)
"""For a law of one rule."""
KITCHEN_LAW = settings(max_examples=30, deadline=None, suppress_health_check=_SLOW)
"""For a law of a whole kitchen, which takes longer to think up and to work out."""
