package desk

import (
	"bytes"
	"path"
	"slices"

	"homebuild/internal/archive"
	"homebuild/internal/output"
	"homebuild/internal/school"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// Send is what it takes to send a week home: see [Calls].
func (d *Desk) Send(wish SendWish) (Sending, error) {
	s, err := d.open(wish.Date)
	if err != nil {
		return Sending{}, err
	}
	out := Sending{Changes: Changes{}}
	if len(wish.Tags) > 0 {
		d.keep(s, out.Changes)
	}
	held := of(s.findings(), wish.Date)
	for _, f := range s.findings() {
		if f.Date == "" {
			held = append(held, f)
		}
	}
	for _, tag := range s.Site.Languages {
		home, err := d.home(s, tag, slices.Contains(wish.Tags, tag), held)
		if err != nil {
			return Sending{}, err
		}
		out.Homes = append(out.Homes, home)
	}
	for _, w := range s.Site.Waiting(d.today) {
		if w.Date != wish.Date || s.laid {
			out.Waits = append(out.Waits, d.yearWeek(s.sheets, w))
		}
	}
	if key, ok := s.plan.Key(wish.Date); ok {
		if out.Key, err = give(key, "TEACHER-ONLY-key-"+wish.Date+".html"); err != nil {
			return Sending{}, err
		}
	}
	if slips, ok := s.plan.Slips(wish.Date); ok {
		file, err := give(slips, "link-"+wish.Date+".html")
		if err != nil {
			return Sending{}, err
		}
		out.Slips = &file
	}
	return out, nil
}

// give renders a page to give away or to keep.
func give(f output.File, name string) (File, error) {
	data, err := f.Render()
	return File{Name: name, Type: "text/html", Bytes: data}, err
}

// home is what goes to the families of one language. What is to mend there holds
// it back, and no other language.
func (d *Desk) home(s *sheet, tag string, file bool, found []Finding) (Home, error) {
	lang, _ := s.language(tag)
	out := Home{Language: lang, Held: []Finding{}}
	for _, f := range found {
		if f.Mend && (f.Tag == "" || f.Tag == tag || f.Key == LineNote+"."+s.reads(tag)) {
			out.Held = append(out.Held, f)
		}
	}
	if len(s.exercises()) == 0 { // it could not be worked out
		return out, nil
	}
	for _, m := range s.plan.Messages(s.Date) {
		if m.Tag == tag {
			out.Message, out.Texts = m.Text, m.SMS.Parts
		}
	}
	if s.Site.Address != "" {
		out.Link = s.Site.Address + s.Date + ".html"
	}
	whole, ok := s.plan.Whole(s.Date, tag)
	if !file || !ok || len(out.Held) > 0 {
		return out, nil
	}
	given, err := give(whole, path.Base(whole.Path))
	out.File = &given
	return out, err
}

// reads is the language of the letter that families of a language read; empty for
// none of hers.
func (s *sheet) reads(tag string) string {
	for _, of := range append([]string{tag, s.Site.School}, s.Site.Languages...) {
		if s.Notes[of] != "" {
			return of
		}
	}
	return ""
}

// keep writes into ink what families have from now on: the week that is sent, and
// the stories of all weeks that they see.
func (d *Desk) keep(sent *sheet, into Changes) {
	weeks := sent.Site.Showing(d.today)
	if !slices.ContainsFunc(weeks, func(w week.Week) bool { return w.Date == sent.Date }) {
		weeks = append(weeks, sent.Week)
	}
	for _, w := range weeks {
		text := d.text(week.Path(w.Date))
		if w.Date == sent.Date {
			text = sent.text
		}
		if text = tomlfile.Remove(text, "proposed"); text != d.text(week.Path(w.Date)) {
			into[week.Path(w.Date)] = &text
		}
		stories := sent.plan.Choices(w.Date)
		if len(stories) == 0 {
			continue
		}
		kept := w.StoriesText(stories)
		if len(w.Kept) > 0 && !slices.ContainsFunc(w.Kept, func(k week.KeptStory) bool { return k.Proposed }) {
			if kept = w.WithLadder(stories); kept == "" {
				continue // kept before: the file may have words of hers
			}
		}
		into[week.StoriesPath(w.Date)] = &kept
	}
}

// Site is the zip of all pages for the web: see [Calls].
func (d *Desk) Site(None) (File, error) {
	s := d.read()
	if len(s.problems) > 0 || s.plan == nil {
		return File{}, wrong(s.findings())
	}
	if len(s.Site.Showing(d.today)) == 0 {
		return File{}, wrong{{Story: -1, Text: "families see no week yet", Hint: "the first one shows from its day", Code: "waits", Mend: true}}
	}
	var zip bytes.Buffer
	if err := archive.Write(&zip, "public", s.plan.Pages()); err != nil {
		return File{}, err
	}
	return File{Name: school.PlainName(s.Site.Name.In(s.Site.School, s.Site.School), "families") + "-pages.zip", Type: "application/zip", Bytes: zip.Bytes()}, nil
}
