"""What is shown of offers, and how files say them."""
