"""The only room that knows the messaging library: receive, edge, send, faults."""
