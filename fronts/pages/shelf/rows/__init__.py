"""What is in stock, as its pages show it."""
