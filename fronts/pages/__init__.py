"""Pages, each a folder named like its tab: addresses, views, and their forms and rows."""
