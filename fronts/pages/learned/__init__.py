"""What is learned: the shop's real errors, from how its fronts fitted."""
