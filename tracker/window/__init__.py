"""What a person sees: Qt Widgets over arrays. No SQL, no arithmetic on prices, no parsing."""
