"""Forms of a kitchen: what a person types becomes exact values, or a message at the field."""
