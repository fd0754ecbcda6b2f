"""What a make is now: its opening, plan, facts of its steps, curd, timers."""
