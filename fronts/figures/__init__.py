"""Words and rows that pages and paper share, each written once."""
