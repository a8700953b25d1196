"""Learning: what a learner is asked, how answers are marked, what is remembered. No widgets."""
