"""The hardware order, gone through line by line."""
