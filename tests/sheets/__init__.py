"""Tests of the printed sheets."""
