"""What rings, when, and how urgently."""
