"""The shop's numbers and tables as forms."""
