"""The sums of the press, the brine, the store and the laboratory."""
