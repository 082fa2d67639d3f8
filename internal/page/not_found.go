package page

// NotFound is shown for an address that does not exist.
type NotFound struct {
	Layout
	Languages []Version // the index of each
}
