"""What is needed at a cabinet, and what is done."""
