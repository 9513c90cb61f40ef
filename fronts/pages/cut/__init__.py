"""What there is to cut, and the plan for cutting it."""
