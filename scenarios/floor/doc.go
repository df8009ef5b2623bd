// Package floor reads the shop as it is this morning from the files that a shop
// keeps anyway: a mold log, a traveler, an order book, and lists of who is out,
// what is down and which days are different. Sheets are read as people keep
// them; every row is used, or dropped with a reason, and whatever is assumed in
// place of something that is not written is told with what it does to the
// answer.
//
//	Read    a folder and a plan become a Reading: a Floor, the fate of each row, notices
//	Files   what can be in the folder: files, columns, other names of them, what a gap does
//
// Files are only ever read, and only those in the folder that was named.
//
// A Moment is civil time of the shop; the clock of a run is made from it where
// the run starts.
package floor
