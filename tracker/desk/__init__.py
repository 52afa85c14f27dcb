"""What a user does, one module a task. Both faces, the window and the commands, call these."""
