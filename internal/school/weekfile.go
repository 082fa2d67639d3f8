package school

import (
	"bytes"
	"cmp"
	"embed"
	"slices"
	"strings"
	"text/template"

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
	Date, ShowFrom, Usual, Can, Target, Focus, Picture, SomeWarmUp, Place string
	Focuses, Pictures, WarmUps, Places                                    string // remarks
	OddDate, UsualReview                                                  bool
	Habits
	MostStories, UsualMinutes int
	Tag, Language, Greeting   string   // of the class
	Others                    []string // tags of the site's other languages
}

func (w weekText) String() string {
	w.MostStories, w.UsualMinutes = week.MaxStories, week.DefaultMinutes
	w.SomeWarmUp = cmp.Or(w.Habits.WarmUp, w.SomeWarmUp)
	return strings.TrimRight(fill("week.toml.tmpl", w), "\n") + "\n"
}

// WeekFile is the file of a new week, with a remark above each setting.
func (y *Year) WeekFile(p Proposal) output.File {
	warmUps := each(y.WarmUps, func(m site.WarmUp) string { return m.ID })
	places := each(y.Places, func(p story.Place) string { return p.ID })
	class, _ := y.Catalog.Language(y.Site.School) // it was loaded with the site
	text := weekText{
		Date: p.Date, ShowFrom: p.showFrom, Usual: week.FridayBefore(p.Date), OddDate: p.OddDate, Can: y.Catalog.Source().Plain(p.Target.CanLine()), Target: p.Target.ID, Focus: p.Focus, Picture: p.Picture,
		Habits: p.Habits, UsualReview: y.Site.Review, SomeWarmUp: warmUps[0], Place: places[0],
		Focuses:  remark(each(p.Target.Strategies, strategy.Name.String)),
		Pictures: remark(each(p.Target.Pictures, picture.Kind.String)),
		WarmUps:  remark(warmUps), Places: remark(places),
		Tag: y.Site.School, Language: week.LanguageName(y.Site.School), Greeting: inRemark(strings.Fields(class.Word("learn.note.greeting"))),
	}
	for _, tag := range y.Site.Languages {
		if tag != y.Site.School {
			text.Others = append(text.Others, tag)
		}
	}
	return output.Text(week.Path(p.Date), text.String())
}

// remark lists words on lines of a remark.
func remark(words []string) string {
	listed := slices.Clone(words)
	for i := range listed[:max(0, len(listed)-1)] {
		listed[i] += ","
	}
	return inRemark(listed)
}

// inRemark sets words on lines of a remark, 80 letters wide.
func inRemark(words []string) string {
	const wide = 80
	lines := []string{"#  "}
	for _, w := range words {
		if last := &lines[len(lines)-1]; len(*last)+1+len(w) <= wide {
			*last += " " + w
		} else {
			lines = append(lines, "#   "+w)
		}
	}
	return strings.Join(lines, "\n")
}
