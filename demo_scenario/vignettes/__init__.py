"""Vignettes of pain: what an athlete said before and says now, run through the true acts."""
