"""Tests of the pages of dates."""
