"""Does a test notice when one operator or number of the code is another? Tried in samples."""
