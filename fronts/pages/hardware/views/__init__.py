"""What is asked for and answered."""
