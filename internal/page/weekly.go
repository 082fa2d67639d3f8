package page

import "homebuild/internal/phrase"

// Weekly is the link a teacher shares: pick your language.
type Weekly struct {
	Layout           // Language is the class's
	Week      string // its first day: "2026-09-14"
	Target    phrase.Line
	Languages []Version // the week's page in each
}
