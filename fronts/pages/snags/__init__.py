"""Snags of a job: written down, settled, each with its photos."""
