"""Matters: what is known of a make and must act; what it stops, and who decides."""
