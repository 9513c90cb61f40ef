"""What is shown of items."""
