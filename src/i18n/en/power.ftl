# Battery and what charges it.
