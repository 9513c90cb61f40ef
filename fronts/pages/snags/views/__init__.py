"""Views of a job's snags."""
