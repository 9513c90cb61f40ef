"""The pages themselves."""
