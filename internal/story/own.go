package story

// OwnWords are a story in a teacher's words, which take the place of Sentences.
type OwnWords struct {
	By     map[string]OwnText // by language tag; at least that of the class
	Class  string             // the tag of the class's language
	Answer OwnText            // in the class's language; no runs for none
}

// OwnText is a text in one language, its numbers apart.
type OwnText struct {
	Tag         string
	RightToLeft bool
	Runs        []OwnRun
}

// OwnRun is a piece of an OwnText.
type OwnRun struct {
	Text   string
	Number bool // a number, perhaps in words
	Asked  bool // the number that the story asks for: a line to write on until it is known
}

// In is the text for a page in a language: its own, or that of the class.
func (w *OwnWords) In(tag string) OwnText {
	if t, ok := w.By[tag]; ok {
		return t
	}
	return w.By[w.Class]
}
