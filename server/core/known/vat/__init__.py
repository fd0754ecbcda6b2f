"""What a make knows while its milk and curd are in the vat."""
