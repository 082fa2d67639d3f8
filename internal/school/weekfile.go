package school

import (
	"bytes"
	"embed"
	"path"
	"strings"
	"text/template"

	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/picture"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// starter holds the files that are written for a teacher to change.
//
//go:embed starter
var starter embed.FS

// fill writes one of the starter's files.
func fill(name string, data any) string {
	t := template.Must(template.New(name).Option("missingkey=error").ParseFS(starter, "starter/"+name))
	var b bytes.Buffer
	if err := t.Execute(&b, data); err != nil {
		panic(err) // the file and the data are ours
	}
	return b.String()
}

// weekText is what goes into a week file.
type weekText struct {
	Date, Can, Target, Focus, Picture, WarmUp, Place string
	Focuses, Pictures, WarmUps, Places               string // remarks
	Stories, MostStories, Minutes                    int
	Language, Note                                   string
	Others                                           []otherNote
}

// otherNote is the note in another language of the site.
type otherNote struct{ Name, File string }

func (w weekText) String() string {
	w.Stories, w.MostStories, w.Minutes = week.DefaultStories, week.MaxStories, week.DefaultMinutes
	return strings.TrimRight(fill("week.md.tmpl", w), "\n") + "\n"
}

// WeekPath is where the week of a date stands in a school's folder.
func WeekPath(date string) string { return path.Join(week.Folder, date+".md") }

// WeekFile is the file of a new week, with a remark above each setting.
func (y *Year) WeekFile(p Proposal) output.File {
	warmUps := each(y.WarmUps, func(m site.WarmUp) string { return m.ID })
	places := each(y.Places, func(p story.Place) string { return p.ID })
	text := weekText{
		Date: p.Date, Can: y.Catalog.Source().Plain(p.Target.CanLine()), Target: p.Target.ID, Focus: p.Focus, Picture: p.Picture,
		WarmUp: warmUps[0], Place: places[0],
		Focuses:  remark(each(p.Target.Strategies, strategy.Name.String)),
		Pictures: remark(each(p.Target.Pictures, picture.Kind.String)),
		WarmUps:  remark(warmUps), Places: remark(places),
		Language: week.LanguageName(y.Site.School),
	}
	// A sample note only where the class's language is the one it is written in.
	if y.Site.School == i18n.SourceTag {
		text.Note = strings.TrimSpace(fill("note.en.tmpl", text))
	}
	for _, tag := range y.Site.Languages {
		if tag != y.Site.School {
			text.Others = append(text.Others, otherNote{week.LanguageName(tag), path.Join(week.Folder, p.Date+"."+tag+".md")})
		}
	}
	return output.Text(WeekPath(p.Date), text.String())
}

// remark lists words on lines of a remark, 80 letters wide.
func remark(words []string) string {
	const wide = 80
	lines := []string{"#  "}
	for i, w := range words {
		if i+1 < len(words) {
			w += ","
		}
		if last := &lines[len(lines)-1]; len(*last)+1+len(w) <= wide {
			*last += " " + w
		} else {
			lines = append(lines, "#   "+w)
		}
	}
	return strings.Join(lines, "\n")
}
