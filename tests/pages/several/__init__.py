"""Several rows at once, in a browser as the test client is one."""
