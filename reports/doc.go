// Package reports writes a finished comparison for people and for programs: as
// text for a terminal, as CSV, as JSON and as one HTML page. What is said and
// how numbers are rounded is decided in package view; here it is only placed.
//
// The same view.Study gives the same bytes in every form.
package reports
