"""Measurements of the project, run by hand."""
