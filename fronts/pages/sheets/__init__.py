"""A job's sheets, printed."""
