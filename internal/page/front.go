package page

// Front is the first page of the site.
type Front struct {
	Layout               // Language is the class's
	Languages []Version  // the index of each
	Weeks     []WeekLink // weekly links, newest first
}
