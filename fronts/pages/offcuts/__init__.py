"""What the shop has of its own: offcuts on the rack, and doors that no front is made of."""
