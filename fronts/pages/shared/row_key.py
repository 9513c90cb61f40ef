"""A row's key, as an address or a form says it."""

LONGEST_KEY = 18
"""Every number of so many digits is one that a table may hold."""


def row_key(said: str) -> int | None:
    """The key; None where it can be none."""
    is_one = said.isascii() and said.isdigit() and len(said) <= LONGEST_KEY
    return int(said) if is_one else None
