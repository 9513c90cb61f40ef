"""Writes: each does one thing that a person asks for, or refuses with a `Refused`."""
