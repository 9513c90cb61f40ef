"""What there is to cut, and a plan for cutting it, in words."""
