"""Panels: controls, live pictures, predictions, tasks and questions on the page."""
