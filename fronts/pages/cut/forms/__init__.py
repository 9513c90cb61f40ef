"""What a cutting plan is made from."""
