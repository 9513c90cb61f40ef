"""A kitchen's things as the page shows them."""
