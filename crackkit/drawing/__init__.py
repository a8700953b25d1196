"""Drawing: an Outcome becomes a Picture, and painters show the Picture."""
