"""Pages of a job's kitchen: request to form, to one service, to one template."""
