"""All texts: facts in, sentences out. Only here are numbers rounded and words chosen."""
