package desk

// Week is a sheet.
type Week struct {
	Date     string    `json:"date"`
	State    State     `json:"state"`
	Can      string    `json:"can"`
	About    string    `json:"about"` // what the child learns, for a parent
	Grade    int       `json:"grade"`
	Usual    string    `json:"usual"` // the day from which families would see it
	Lines    []Line    `json:"lines"` // in the order of the sheet
	Letters  []Letter  `json:"letters"`
	Stories  []Story   `json:"stories"` // the worked one first; none while something is to mend
	Findings []Finding `json:"findings"`
}

// The lines of a sheet, by their keys in the week's file.
const (
	LineTarget   = "target"
	LineWay      = "focus"
	LinePicture  = "picture"
	LinePlace    = "place"
	LineStories  = "stories"        // how many to try
	LineExtra    = "extra-sentence" // "true" or "false"
	LineReview   = "review"         // a story of an earlier week comes back: "true" or "false"
	LineLadder   = "ladder"         // two easier and two harder beside them: "true" or "false"
	LineWords    = "number-words"   // "true" or "false"
	LineWarmUp   = "warm-up"
	LineMinutes  = "minutes"
	LineShowFrom = "show-from"
	LineNote     = "note" // with its language: "note.es"
)

// Line is a line of a sheet that holds one choice.
type Line struct {
	Key    string `json:"key"`
	Value  string `json:"value"`  // as Set takes it; empty for none
	Words  string `json:"words"`  // the value in words; empty for the page to word numbers, days and switches
	Ink    bool   `json:"ink"`    // she chose it
	Misfit string `json:"misfit"` // why it does not fit what stands above it; empty where it does
}

// Choice is something to choose on a line.
type Choice struct {
	Value   string `json:"value"`
	Words   string `json:"words"`
	About   string `json:"about"`   // one sentence, or a sum done this way
	Picture string `json:"picture"` // empty for none
	Fits    bool   `json:"fits"`
	Why     string `json:"why"` // why it does not fit
	Met     string `json:"met"` // of a sentence: the newest Monday that was about it
	Grade   int    `json:"grade"`
}

// Letter is what the teacher writes to families, in one language.
type Letter struct {
	Tag     string `json:"tag"`
	Text    string `json:"text"`
	Ink     bool   `json:"ink"`
	Starter string `json:"starter"` // what families read while nobody wrote a letter
}

// Set writes a value on a line.
type Set struct {
	Date  string `json:"date"`
	Key   string `json:"key"`   // of a line, "note.es", or "allow" with a text that may be shown
	Value string `json:"value"` // empty rubs it out
}

// Story is a story of a week as the desk shows it, in the class's language.
type Story struct {
	Number   int      `json:"number"` // as on the page to try; 0 is the worked one
	Event    string   `json:"event"`  // "harbour.board"; empty for her own
	Text     []string `json:"text"`   // sentence by sentence
	Picture  string   `json:"picture"`
	Equation string   `json:"equation"` // "8 + ? = 14"
	Answer   string   `json:"answer"`
	Kind     Kind     `json:"kind"`
	Size     Size     `json:"size"`
	Extra    int      `json:"extra"`   // a number that nobody needs; 0 for none
	Returns  string   `json:"returns"` // the sentence of the earlier week that it brings back
	Ink      bool     `json:"ink"`
	Own      *OwnText `json:"own"` // null for a story of ours
}

// Kind is what happens in a story and what is asked.
type Kind struct {
	ID      string `json:"id"`
	Happens string `json:"happens"` // "joins", "leaves", "parts", "compared", "steps"
	Asks    string `json:"asks"`    // "result", "change", "start", "total", "part", "difference", "bigger", "smaller", "pairs"
	Words   string `json:"words"`   // its name in the desk's language
}

// Size is what numbers a story has.
type Size struct {
	Within  int  `json:"within"` // 10, 20, 100 or 1000
	PastTen bool `json:"pastTen"`
	Steps   int  `json:"steps"` // 1 or 2
}

// Steps are one step in each direction from a story; null where there is none.
type Steps struct {
	Easier *Size `json:"easier"`
	Harder *Size `json:"harder"`
}

// StoryWish is an act on a story.
type StoryWish struct {
	Date  string `json:"date"`
	Story int    `json:"story"`
	Do    string `json:"do"`   // "numbers", "tale", "kind", "easier", "harder", "up", "down", "keep", "release", "remove"
	Kind  string `json:"kind"` // of kind: its id
}

// OwnText is a story of her own, by language.
type OwnText struct {
	Texts   map[string]string `json:"texts"`
	Answer  string            `json:"answer"` // in the class's language; may be empty
	Reading string            `json:"reading"`
}

// OwnStory is a text of her own, to be read.
type OwnStory struct {
	Date    string            `json:"date"`
	Texts   map[string]string `json:"texts"`   // the class's language is needed
	Numbers []OwnNumber       `json:"numbers"` // as shown before, with those that she put aside; null the first time
}

// OwnNumber is a number in her text.
type OwnNumber struct {
	Words  string `json:"words"` // as it stands there
	Value  int    `json:"value"`
	Counts bool   `json:"counts"`
}

// Offer is what a text could mean.
type Offer struct {
	Numbers  []OwnNumber `json:"numbers"`
	Readings []Reading   `json:"readings"` // none: it can be drawn in no way
	Findings []Finding   `json:"findings"` // other languages that tell other numbers, and what may not be shown
}

// Reading is one meaning.
type Reading struct {
	Line     string `json:"line"` // as Use takes it; of Kinds, the id of the kind
	Kind     Kind   `json:"kind"`
	Equation string `json:"equation"`
	Picture  string `json:"picture"`
	Answer   string `json:"answer"` // "22"; empty where any pair is right
}

// UseOwn lays a story of her own into the week.
type UseOwn struct {
	OwnStory
	Story  int    `json:"story"`  // whose place it takes; 0 for the next place
	Line   string `json:"line"`   // of the reading that she chose
	Answer string `json:"answer"` // in her words; may be empty
}

// Finding is something to mend, or to know, at the place that it is about.
type Finding struct {
	Date  string `json:"date"`  // of the week; empty for what holds all year
	Key   string `json:"key"`   // of the line, such as "note.es"; empty for all of it
	Story int    `json:"story"` // the number of a story; -1 for none
	Tag   string `json:"tag"`   // of the language that alone is held back; empty for all
	Text  string `json:"text"`  // in English
	Hint  string `json:"hint"`
	Code  string `json:"code"`  // "private", "odd-date", ...: see the codes of diag; empty for those without
	Quote string `json:"quote"` // the words, the number or the setting that it is about
	File  string `json:"file"`
	Line  int    `json:"line"`
	Mend  bool   `json:"mend"` // it keeps pages from being made
}
