"""The page of the sign-off."""
