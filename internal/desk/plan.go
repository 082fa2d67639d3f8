package desk

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing/fstest"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/school"
	"homebuild/internal/site"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// planned is the year worked out, from the files of a moment.
type planned struct {
	from    string // names the files, without letters
	plan    *site.Planned
	weeks   []week.Week // as they were planned
	notices diag.Diagnostics
	next    *proposal
	skipped diag.Diagnostics // what kept stories, or whole weeks, from being worked out
	left    []string         // dates of the weeks that were left out
}

// proposal is the next week by the plan, once it was asked for.
type proposal struct {
	asked bool
	*school.Proposal
}

// sheets are the files as they are now, read and worked out as far as can be.
type sheets struct {
	site.Input
	*planned
	text     func(path string) string
	problems diag.Diagnostics // all that keeps pages from being made
}

// reading is what files of a moment come to.
type reading struct {
	on    string // the day
	files fstest.MapFS
	sheets
}

// mostKept is how many years are kept in memory: the one that lies there, and
// weeks that are laid out in pencil.
const mostKept = 4

// read works out what lies on the desk; with a week that is not laid down yet,
// that one too.
func (d *Desk) read(laid ...fileText) sheets {
	back := d.lay(laid)
	defer back()
	at := slices.IndexFunc(d.known, func(r reading) bool { return r.on == d.today && maps.EqualFunc(r.files, d.files, sameText) })
	var r reading
	if at >= 0 {
		r = d.known[at]
		d.known = slices.Delete(d.known, at, at+1)
	} else {
		r = reading{d.today, maps.Clone(d.files), d.readFiles()}
	}
	d.known = append([]reading{r}, d.known[:min(mostKept-1, len(d.known))]...)
	return r.sheets
}

func sameText(a, b *fstest.MapFile) bool { return a == b || bytes.Equal(a.Data, b.Data) }

// readFiles works out the files as they lie there.
func (d *Desk) readFiles() sheets {
	in, problems := d.school.Read()
	in.Planner = &d.planner
	problems = slices.DeleteFunc(problems, week.OnlyNoWeek)
	texts := maps.Clone(d.files)
	out := sheets{Input: in, problems: problems, text: func(path string) string { return textOf(texts, path) }}
	if in.Theme == nil { // what is wrong with hers is told
		in.Theme, _ = d.school.Theme("")
		out.Input = in
	}
	if in.Catalog == nil || len(in.Site.Languages) == 0 || len(in.Catalog.Languages()) < len(in.Site.Languages) {
		out.planned = &planned{next: &proposal{}}
		return out
	}
	out.planned = d.plan(in)
	out.Site.Weeks = out.kept(in.Site.Weeks)
	for _, p := range out.skipped {
		if p.Line > 0 || !slices.ContainsFunc(problems, func(read diag.Diagnostic) bool { return read.File == p.File }) {
			out.problems = append(out.problems, p) // the others follow from what could not be read
		}
	}
	out.problems.Sort()
	return out
}

type fileText struct{ path, text string }

// lay puts files down for a moment; one without a text is taken away.
func (d *Desk) lay(files []fileText) (back func()) {
	before := maps.Clone(d.files)
	for _, f := range files {
		if f.text == "" {
			delete(d.files, f.path)
			continue
		}
		d.files[f.path] = &fstest.MapFile{Data: []byte(f.text)}
	}
	return func() {
		for _, f := range files {
			delete(d.files, f.path)
			if was, ok := before[f.path]; ok {
				d.files[f.path] = was
			}
		}
	}
}

// plan works the year out, or finds it worked out: letters do not change it.
func (d *Desk) plan(in site.Input) *planned {
	from := d.sum()
	at := slices.IndexFunc(d.planned, func(p *planned) bool { return p.from == from })
	var p *planned
	if at >= 0 {
		p = d.planned[at]
		d.planned = slices.Delete(d.planned, at, at+1)
	} else {
		p = planLeniently(in)
		p.from = from
	}
	d.planned = append([]*planned{p}, d.planned...)
	d.planned = d.planned[:min(mostKept, len(d.planned))]
	now := *p
	if now.plan != nil {
		in.Site.Weeks = without(in.Site.Weeks, p.left)
		now.plan = p.plan.With(in)
	}
	return &now
}

// sum names all files, but for the letters in them.
func (d *Desk) sum() string {
	sum := sha256.New()
	for _, path := range slices.Sorted(maps.Keys(d.files)) {
		text := string(d.files[path].Data)
		if rest := strings.TrimRight(tomlfile.Remove(text, "note"), "\n"); week.IsWeek(path) && strings.HasPrefix(text, rest) {
			text = rest // what stands below letters has other lines with others
		}
		fmt.Fprintf(sum, "%s %d\n%s", path, len(text), text)
	}
	return string(sum.Sum(nil))
}

// planLeniently works out what can be: a week that cannot be told is left out,
// and so are a story of hers that says nothing yet, and kept stories that do not
// fit any more. What was left out is told.
func planLeniently(in site.Input) *planned {
	p := &planned{next: &proposal{}}
	for range 2 * (len(in.Site.Weeks) + 1) {
		plan, notices, problems := site.Plan(in)
		if len(problems) == 0 {
			p.plan, p.notices, p.weeks = plan, notices, in.Site.Weeks
			return p
		}
		p.skipped = append(p.skipped, problems...)
		before := len(in.Site.Weeks)
		in.Site.Weeks = slices.Clone(in.Site.Weeks)
		if !p.leave(&in, problems) && len(in.Site.Weeks) == before {
			return p
		}
	}
	return p
}

// leave takes out what the problems are about; false where nothing is.
func (p *planned) leave(in *site.Input, problems diag.Diagnostics) bool {
	left, s := false, &in.Site
	for i := range s.Weeks {
		w := &s.Weeks[i]
		for _, wrong := range problems {
			switch wrong.File {
			case week.StoriesPath(w.Date):
				left = left || len(w.Kept) > 0
				w.Kept = fitting(in, w.Kept)
			case week.Path(w.Date):
				left = true
				if len(w.OwnStories) > 0 {
					w.OwnStories = nil
				} else {
					p.left = append(p.left, w.Date)
				}
			}
		}
	}
	s.Weeks = without(s.Weeks, p.left)
	return left
}

// fitting are the kept stories that can be told; none where something else is wrong
// with them.
func fitting(in *site.Input, kept []week.KeptStory) []week.KeptStory {
	events := in.SharedEvents()
	fit := slices.DeleteFunc(slices.Clone(kept), func(k week.KeptStory) bool { return events.Check(k.Choice) != nil })
	if len(fit) == len(kept) {
		return nil
	}
	return fit
}

// kept gives weeks the kept stories that they were planned with.
func (p *planned) kept(weeks []week.Week) []week.Week {
	out := slices.Clone(weeks)
	for i := range out {
		if at := slices.IndexFunc(p.weeks, func(w week.Week) bool { return w.Date == out[i].Date }); at >= 0 {
			out[i].Kept = p.weeks[at].Kept
		}
	}
	return out
}

func without(weeks []week.Week, dates []string) []week.Week {
	return slices.DeleteFunc(slices.Clone(weeks), func(w week.Week) bool { return slices.Contains(dates, w.Date) })
}

// class is the class's own language.
func (s sheets) class() *i18n.Language {
	lang, _ := s.Catalog.Language(s.Site.School)
	return lang
}

// spoken is the language of the desk's own words: one that comes with the program,
// or English.
func (d *Desk) spoken() *i18n.Language {
	if d.say == nil {
		words, ok := d.school.Words(d.words)
		if !ok {
			words = school.English()
		}
		d.say = words
	}
	return d.say
}

// text is a file as it lies there; empty for none.
func (d *Desk) text(path string) string { return textOf(d.files, path) }

func textOf(files fstest.MapFS, path string) string {
	if f := files[path]; f != nil {
		return string(f.Data)
	}
	return ""
}
