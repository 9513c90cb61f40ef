"""The job's main page: its walls, its fronts, and all that was measured and entered."""
