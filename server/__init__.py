"""Vatside: guides a make at the vat and keeps its record."""
