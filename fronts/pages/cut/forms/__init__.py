"""What is typed on the cut pages: the stock and the saw, sets of fronts."""
