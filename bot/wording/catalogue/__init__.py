"""The catalogue of messages: every text of the bot in the languages that it speaks."""
