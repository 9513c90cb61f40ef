"""What the shop buys for one job or several together, by supplier."""
