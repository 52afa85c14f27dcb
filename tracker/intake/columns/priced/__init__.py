"""Which columns hold prices, and which of these are offered: not last year's, not a step on the way, not another's."""
