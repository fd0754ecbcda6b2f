"""What goes wrong, as data, and how it acts on the work."""
