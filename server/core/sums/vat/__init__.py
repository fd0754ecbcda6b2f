"""The sums of the milk and the vat."""
