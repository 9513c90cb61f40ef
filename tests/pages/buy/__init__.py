"""What the shop buys for its jobs."""
