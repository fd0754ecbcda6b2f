"""Ageing, the air of the store, curing days."""
