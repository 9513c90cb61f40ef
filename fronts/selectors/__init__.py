"""Reads: what pages ask of a job, each starting from the job."""
