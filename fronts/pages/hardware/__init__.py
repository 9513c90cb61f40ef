"""The list of hardware of a shop, or a job's own."""
