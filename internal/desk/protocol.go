package desk

// Calls are what the page can ask. Each takes one value and gives one value, or
// what is wrong with what was asked ([Reply]). An act changes nothing by itself:
// it gives the files as they should be, and the page, which keeps the files and
// the way back, lays them down with put. Days are written 2026-09-14; a language
// is its tag; a picture is an <svg> element.
type Calls interface {
	// Open takes up a desk. Over loopback the files are those of the folder, and
	// what is sent is passed over.
	Open(Open) (Opened, error)
	// Begin makes the files of a new desk from four answers. They are not laid
	// down yet.
	Begin(Begin) (Act, error)
	// Put lays files down. Everything after it is answered from them.
	Put(Put) (None, error)
	// Year is the line of Mondays and what the class has met.
	Year(None) (Year, error)
	// Targets are the sentences that a week can be about: those that a search
	// finds, the likeliest first, or all of a grade.
	Targets(Search) ([]Target, error)

	// Week is the sheet of a Monday. One without a file is laid out in pencil.
	Week(Monday) (Week, error)
	// Choices are what can be chosen on a line of the sheet.
	Choices(LineOf) ([]Choice, error)
	// Set writes a value on a line, in ink; an empty value rubs it out, and the
	// line is in pencil again.
	Set(Set) (Act, error)
	// Story does something to one story.
	Story(StoryWish) (Act, error)
	// Steps are the sizes of the stories that easier and harder lead to.
	Steps(StoryOf) (Steps, error)
	// Kinds are the other kinds of story that one could be, each with a picture.
	Kinds(StoryOf) ([]Reading, error)
	// Own says what a story of her own could mean.
	Own(OwnStory) (Offer, error)
	// Use lays her own story into the week, in the place of one or as the next.
	Use(UseOwn) (Act, error)
	// Calendar does something to a whole week.
	Calendar(CalendarWish) (Act, error)
	// Settings writes something that holds all year; see [Settings].
	Settings(Setting) (Act, error)

	// Page is one page as families get it.
	Page(PageOf) (Page, error)
	// Check says which pages of a week take long to arrive in a language: all that a
	// check knows and the sheet and the year do not. It makes every page.
	Check(CheckOf) ([]Finding, error)
	// Send is what it takes to send a week home in some languages. Its changes
	// are to be put before anything is given away: families' stories are kept.
	Send(SendWish) (Sending, error)
	// Site is the zip of all pages for the web; it takes seconds.
	Site(None) (File, error)
	// Copy is the zip of all files of the desk.
	Copy(None) (File, error)
	// OpenCopy looks into the zip of a copy. Nothing is laid down yet.
	OpenCopy(Zip) (Copied, error)
	// LastYear lays the weeks of a copy on new Mondays, in their order.
	LastYear(LastYear) (Act, error)
}

// Request is a call as a message.
type Request struct {
	ID   int    `json:"id"`
	Call string `json:"call"` // the name of a call, its first letter small: "openCopy"
	Args any    `json:"args"`
}

// Reply answers the request of its number, with one of the three.
type Reply struct {
	ID    int       `json:"id"`
	Value any       `json:"value,omitempty"`
	Wrong []Finding `json:"wrong,omitempty"` // what to mend first
	Fault string    `json:"fault,omitempty"` // a bug of ours: the engine is to be started again
}

// None is no value.
type None struct{}

// Files are texts by their path: "site.toml", "weeks/2026-09-14.toml".
type Files map[string]string

// Changes are files that are to be laid down; null takes one away.
type Changes map[string]*string

// Open is a desk as the page keeps it.
type Open struct {
	Files Files  `json:"files"`
	Today string `json:"today"` // the page knows the clock
	Words string `json:"words"` // the language of the desk itself, such as "es"
}

// Opened is a desk that was taken up.
type Opened struct {
	Files     Files      `json:"files"`     // as they are kept
	New       bool       `json:"new"`       // there is nothing yet: begin
	Folder    string     `json:"folder"`    // what the folder is called; empty in a browser
	Style     string     `json:"style"`     // CSS that pictures need, and the colors of the plain look
	Patterns  string     `json:"patterns"`  // a hidden <svg>, needed once before the first picture
	Languages []Language `json:"languages"` // those that families can have
	Looks     []Choice   `json:"looks"`
}

// Language is one that pages can be in.
type Language struct {
	Tag         string `json:"tag"`
	Name        string `json:"name"` // its own: "español"
	RightToLeft bool   `json:"rightToLeft"`
}

// Begin is a new desk.
type Begin struct {
	Name      string   `json:"name"`
	Grade     int      `json:"grade"`     // 0 is kindergarten, up to 3
	Languages []string `json:"languages"` // the class's own first
	Monday    string   `json:"monday"`    // empty for the next one
}

// Put lays files down.
type Put struct {
	Changes Changes `json:"changes"`
	// Before are the files as the page believes them to be, by path: over
	// loopback a file that is another by now is not written over ("changed").
	// Without it whatever is there makes room.
	Before Changes `json:"before,omitempty"`
}

// Act is what an act comes to.
type Act struct {
	Changes Changes `json:"changes"`
	Monday  string  `json:"monday,omitempty"` // the week that it is about
	Moved   Moved   `json:"moved"`
}

// Moved says what of a week is another one now.
type Moved struct {
	Lines   []string `json:"lines"`   // keys
	Stories []int    `json:"stories"` // numbers; 0 is the worked one
	Kept    []int    `json:"kept"`    // in ink, so that they did not follow
}

// Monday names a week.
type Monday struct {
	Date string `json:"date"`
}

// LineOf names a line of a week.
type LineOf struct {
	Date string `json:"date"`
	Key  string `json:"key"`
}

// StoryOf names a story of a week.
type StoryOf struct {
	Date  string `json:"date"`
	Story int    `json:"story"` // 0 is the worked one
}
