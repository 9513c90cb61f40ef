"""The sign-off: what a client signs, or what is missing until then."""
