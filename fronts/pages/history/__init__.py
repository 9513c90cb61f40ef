"""What was done to a job or a shop: read, taken back, looked at as it was."""
