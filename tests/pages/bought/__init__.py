"""Tests of the door maker's list."""
