"""What the numbers of the shop's standard mean: a drawing for each of its short pages."""
