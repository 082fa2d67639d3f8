package site

import "homebuild/internal/page"

// sheetsPage is the week's sheet of paper in every language of the class.
type sheetsPage struct {
	Date   string
	Sheets []printPage
}

// SheetsPath is where the sheets to print stand on the desk.
func SheetsPath(date string) string { return date + "/sheets.html" }

func (p sheetsPage) path() string { return SheetsPath(p.Date) }

func (p sheetsPage) view(c *common) page.View {
	v := &page.Sheets{Layout: c.deskLayout(p.path())}
	for _, sheet := range p.Sheets {
		one := sheet.view(c).(*page.Print)
		one.Layout = page.Layout{Language: sheet.Language.Language, Theme: c.theme, Path: sheet.path(), School: sheet.Language.school}
		one.Links = page.Links{} // it leads nowhere
		one.Ladder = nil         // a third page would bring the next language onto its back
		v.Sheets = append(v.Sheets, one)
	}
	return v
}
