"""The conversation and the composition: what people write and tap, and what they are sent."""
