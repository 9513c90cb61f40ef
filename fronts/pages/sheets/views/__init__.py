"""A job's sheets: one at a time while one waits, or all of them by a worker."""
