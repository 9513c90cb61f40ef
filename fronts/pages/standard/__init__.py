"""The shop's own page of habits: its standard, stock, numbers and tables."""
