package command

// Version is the program's version: shown by the window and the command, and written
// into the packages (app/pack/stage.sh reads this line).
const Version = "0.1.0"
