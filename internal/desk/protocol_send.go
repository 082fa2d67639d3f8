package desk

// PageOf names a page.
type PageOf struct {
	Date string `json:"date"`
	Tag  string `json:"tag"`
	Page string `json:"page"` // "learn", "try", "invent", "paper"; "key" is the teacher's own
	Look string `json:"look"` // empty for the desk's
}

// CheckOf names the pages of a week in a language.
type CheckOf struct {
	Date string `json:"date"`
	Tag  string `json:"tag"`
}

// Page is a page, whole: it asks for nothing, and runs nothing.
type Page struct {
	HTML string `json:"html"`
}

// File is a file to give away or to keep.
type File struct {
	Name  string `json:"name"`
	Type  string `json:"type"`  // such as "text/html"
	Bytes []byte `json:"bytes"` // in base64
}

// SendWish asks for what goes home.
type SendWish struct {
	Date string   `json:"date"`
	Tags []string `json:"tags"` // the languages to make files in; none for the messages alone
}

// Sending is a week ready to be sent. What goes home and what stays are never in
// one list.
type Sending struct {
	Changes Changes    `json:"changes"` // to be put first
	Homes   []Home     `json:"homes"`
	Waits   []YearWeek `json:"waits"` // weeks that the pages do not hold yet
	Key     File       `json:"key"`   // for the teacher alone
	Slips   *File      `json:"slips"` // the link on paper to cut; null without an address
}

// Home is what goes to the families of one language.
type Home struct {
	Language Language  `json:"language"`
	File     *File     `json:"file"`    // the week in one file; null where it was not asked for
	Message  string    `json:"message"` // to go with it
	Texts    int       `json:"texts"`   // how many text messages it takes
	Link     string    `json:"link"`    // empty without an address
	Held     []Finding `json:"held"`    // what holds this language back
}

// Zip is a zip from outside.
type Zip struct {
	Bytes []byte `json:"bytes"` // in base64
}

// LastYear is a copy of an earlier year.
type LastYear struct {
	Files Files `json:"files"`
}

// Copied is what a copy holds.
type Copied struct {
	Files   Files    `json:"files"`
	Weeks   []string `json:"weeks"`   // dates
	LeftOut []string `json:"leftOut"` // paths that are no file of a desk
	Older   bool     `json:"older"`   // brought up to date
	Refused string   `json:"refused"` // "strange", "broken", "large", "newer"; empty for fine
}
