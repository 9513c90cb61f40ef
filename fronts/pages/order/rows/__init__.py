"""The order's lines, on the page and as a file."""
