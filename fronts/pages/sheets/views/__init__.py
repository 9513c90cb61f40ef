"""Sheets of the kitchen, and sheets for the saw."""
