"""What a person at the vat needs to see: steps, drift, view, record, curve."""
