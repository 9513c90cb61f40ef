"""Words in which pages speak of what a table keeps in short, beside those of `rules.kinds`."""

HAND = {"left": "left", "right": "right", "top": "at the top", "bottom": "at the bottom"}
"""After `hinged`."""
