"""Formulas of the trade, one module a subject: numbers in, numbers out."""
