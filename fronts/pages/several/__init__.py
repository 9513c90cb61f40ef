"""Several rows of a job's walls changed, copied, mirrored or deleted at once."""
