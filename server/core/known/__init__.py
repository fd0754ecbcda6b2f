"""What a make knows already, for the sums that its steps ask."""
