"""Reading and checking recipes; the figures that they hold."""
