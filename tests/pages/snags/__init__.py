"""The pages of a job's snags."""
