"""One invented athlete lives two years with the bot, and the whole file is printed to be read."""
