"""Forms of offcuts and of doors on hand."""
