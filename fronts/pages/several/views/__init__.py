"""The views of this page."""
