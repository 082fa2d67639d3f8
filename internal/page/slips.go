package page

import "homebuild/internal/i18n"

// Slips is a sheet of paper slips to cut, a page for each language.
type Slips struct {
	Layout
	Link      string // full address of the weekly link
	Languages []*i18n.Language
}

// slipsAPage is how many slips are cut from one sheet of paper.
const slipsAPage = 10
