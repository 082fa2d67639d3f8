package page

import "homebuild/internal/phrase"

// Sheets is a week's sheet of paper in every language of the class, one after the
// other, to be printed in one go.
type Sheets struct {
	Layout
	Sheets []*Print
}

var sheetsKind = &kind{class: "sheets", css: append(printKind.css, "sheets.css")}

// pagesOfSheet are those of a sheet: its two sides.
const pagesOfSheet = 2

// place tells which pages are the i-th sheet.
func (v *Sheets) place(i int) phrase.Line {
	first := pagesOfSheet*i + 1
	return phrase.Say("desk.sheets.pages", phrase.Text("Language", v.Sheets[i].Language.Name()),
		phrase.Number("First", first), phrase.Number("Second", first+1))
}

// scenes are those of all sheets.
func (v *Sheets) scenes() (all []Scene) {
	for _, sheet := range v.Sheets {
		all = append(all, sheet.Scene)
	}
	return all
}
