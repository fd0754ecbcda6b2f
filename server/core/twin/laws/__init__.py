"""What milk, curd and wheels do by themselves: one mechanism a file."""
