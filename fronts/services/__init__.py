"""Writes: enter, change, copy, import, check, record; one file a thing."""
