"""What the pages of the sheets show: the printed set, a sheet by its code."""
