// Package page writes one HTML file that needs nothing else: styles, the chart
// script and the data are inside, and a policy in the head forbids the browser
// to load or run anything more.
//
// A Page is sections of blocks: text, remarks, key figures, tables, charts.
// Everything a caller gives is text. There is no way to pass HTML, script or
// style through this package, whatever the text holds: names come from files
// that somebody else may have written.
//
// Chart options travel as JSON in a data block, which the browser does not run.
// The boot script, fixed at build time, reads them and adds functions from its
// own list, chosen by Chart.Kind. The policy allows exactly the two scripts of
// the page by their hashes.
//
// The same Page gives the same bytes: no dates, no random ids.
package page
