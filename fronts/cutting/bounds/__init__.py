"""Lower bounds on the cost of every plan."""
