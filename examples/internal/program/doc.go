// Package program runs an example program that reads a file of readings and
// writes a sheet: the flags such programs share, the messages, the exit status.
//
// A main package fills in a [Program] and calls [Program.Run]:
//
//	-in FILE    what to read; - is standard input, nothing the file inside
//	-template   an empty file to fill in
//	-json       the sheet for programs
//	-html FILE  the sheet as one page; - is standard output
//	-svg FILE   the drawings of the sheet, if the program has this flag
//	-h          help, on standard output
//
// Exit status: 0 done, 1 could not write, 2 the file or the flags are wrong. A
// message is one line on standard error; with status 2 nothing stands on
// standard output, and no file has been written.
package program
