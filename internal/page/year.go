package page

// Year is the weeks of a year that is long past.
type Year struct {
	Layout
	Year  int
	Weeks []WeekLink // newest first
}

// YearLink leads to the weeks of a year.
type YearLink struct {
	Year int
	Href string
}
