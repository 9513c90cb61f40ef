"""What is typed on these pages."""
