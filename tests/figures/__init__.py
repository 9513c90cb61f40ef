"""What people read of a schedule."""
