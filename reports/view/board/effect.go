package board

// Effect is what changes do to the orders.
type Effect struct{}
