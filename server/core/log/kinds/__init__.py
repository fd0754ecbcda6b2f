"""What can happen, its one total order, and how it is filed."""
