"""What is asked of each kind of item."""
