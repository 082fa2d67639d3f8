package desk

// State is how a week stands.
type State string

const (
	StateShown    State = "shown"    // families have it
	StateWaits    State = "waits"    // until its day
	StateProposed State = "proposed" // in pencil: it has no file
	StateEmpty    State = "empty"    // later than the proposed one
	StateOff      State = "off"      // no school
)

// Year is the line of Mondays.
type Year struct {
	Name      string      `json:"name"`
	Settings  Settings    `json:"settings"`
	Grade     int         `json:"grade"`
	Languages []Language  `json:"languages"` // of the families, the largest first
	Class     string      `json:"class"`     // the tag of the class's own
	Weeks     []YearWeek  `json:"weeks"`
	Words     []ClassWord `json:"words"`    // ways and pictures of the grade
	Met       []Target    `json:"met"`      // of the grade
	NotYet    []Target    `json:"notYet"`   // of the grade
	Lacks     []string    `json:"lacks"`    // in words
	Newest    string      `json:"newest"`   // the week that families see first; empty for none
	Next      string      `json:"next"`     // the Monday that is proposed
	Wrong     []Finding   `json:"wrong"`    // of the settings, or of files that are no week
	HeldBack  []Finding   `json:"heldBack"` // what families of a language get otherwise than the others
	Unread    []string    `json:"unread"`   // paths that nothing here reads
}

// ClassWord is a way or a picture, and what the class calls it.
type ClassWord struct {
	ID   string `json:"id"`
	Name string `json:"name"` // in the desk's language
	Own  string `json:"own"`  // in the class's language; empty where it has no word of its own
}

// YearWeek is a Monday.
type YearWeek struct {
	Date     string `json:"date"`
	State    State  `json:"state"`
	Can      string `json:"can"`      // "I can add past ten."
	ShowFrom string `json:"showFrom"` // the day from which families see it
	Mend     int    `json:"mend"`     // how many things are to mend
}

// Settings hold all year. Setting writes them by the names that they have here.
type Settings struct {
	Name      string   `json:"name"`
	Class     string   `json:"class"`
	Address   string   `json:"address"` // where the pages are; empty for nowhere
	Languages []string `json:"languages"`
	Look      string   `json:"look"`
	Answers   string   `json:"answers"` // "foot" of the paper, or a "link" on it
	Index     bool     `json:"index"`   // search engines are welcome
	DaysOff   []string `json:"daysOff"` // "2026-11-26", "2026-12-21 to 2027-01-01"
}

// Setting is one of Settings.
type Setting struct {
	Key   string `json:"key"`
	Value string `json:"value"` // lists: one a line; true or false
}

// Search looks for a sentence.
type Search struct {
	Words string `json:"words"` // words, a grade, a published code; empty for all of the grade
	Grade int    `json:"grade"`
}

// Target is a sentence that a week can be about.
type Target struct {
	ID    string   `json:"id"`
	Can   string   `json:"can"`
	About string   `json:"about"`
	Grade int      `json:"grade"`
	Codes []string `json:"codes"` // of published standards
	Met   string   `json:"met"`   // the newest Monday that was about it; empty for not yet
}

// CalendarWish is an act on a week.
type CalendarWish struct {
	Date string `json:"date"`
	Do   string `json:"do"` // "take", "remove", "off", "open", "move", "again"
	To   string `json:"to"` // the other Monday of move and again
}
