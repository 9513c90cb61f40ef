"""The forms of this page."""
