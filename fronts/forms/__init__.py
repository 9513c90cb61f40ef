"""Forms of a kitchen: what people type, read and checked."""
