package site

import (
	"bytes"
	"fmt"
	"sync"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/page"
	"homebuild/internal/story"
	"homebuild/internal/week"
)

// Input is everything a site is made from.
type Input struct {
	Site    week.Site
	Catalog *i18n.Catalog
	Targets []activity.Target
	Stock   story.Stock
	Theme   *page.Theme
	WarmUps []WarmUp
	// Program names the bytes of the program, which every page depends on;
	// without it files have no keys.
	Program string
}

// File is one file of the site, not yet rendered.
type File = output.File

// Planned is a site whose weeks are worked out, not yet listed as files.
type Planned struct {
	in      Input
	lessons []lesson // oldest first
}

// Plan works out every week. Problems are for the teacher to mend; when there
// are any, nothing is planned. Notices do not stop a build.
func Plan(in Input) (p *Planned, notices, problems diag.Problems) {
	lessons, notices, problems := plan(in)
	if len(problems) > 0 {
		return nil, notices, problems
	}
	return &Planned{in, lessons}, notices, nil
}

// Assemble plans a site and lists its pages.
func Assemble(in Input) (files []File, notices, problems diag.Problems) {
	p, notices, problems := Plan(in)
	if len(problems) > 0 {
		return nil, notices, problems
	}
	return p.Pages(), notices, nil
}

// Pages lists the files to publish: pages first, then the indexes that link to
// them.
func (p *Planned) Pages() []File {
	b := p.builder()
	for _, lang := range b.languages {
		for i := range b.lessons {
			b.weekPages(lang, &b.lessons[i])
		}
		b.checkPages(lang)
	}
	for i := range b.lessons {
		b.weekly(&b.lessons[i])
	}
	for _, lang := range b.languages {
		b.home(lang)
		b.feed(lang)
	}
	b.front()
	b.sitemap()
	return b.files
}

// builder collects the files of one site.
type builder struct {
	Input
	school    *i18n.Language // the language of the class
	languages []*i18n.Language
	lessons   []lesson // oldest first
	ids       ids
	checks    [checkLargest + 1]func() []page.CheckPair
	buffers   sync.Pool // of *bytes.Buffer, to render into
	files     []File
}

func (p *Planned) builder() *builder {
	b := &builder{Input: p.in, lessons: p.lessons, checks: newChecks()}
	for _, tag := range b.Site.Languages {
		lang, ok := b.Catalog.Language(tag)
		if !ok {
			panic("site: language " + tag + " was not loaded")
		}
		b.languages = append(b.languages, lang)
		if tag == b.Site.School {
			b.school = lang
		}
	}
	b.ids = b.newIDs()
	return b
}

// add lists a page. Its view is made only when it is rendered, so that memory
// does not grow with the site.
func (b *builder) add(path string, index bool, from madeFrom, view func() page.View) {
	b.file(path, index, append(from, b.ids.frame), func() ([]byte, error) {
		buf, _ := b.buffers.Get().(*bytes.Buffer)
		if buf == nil {
			buf = new(bytes.Buffer)
		}
		defer b.buffers.Put(buf)
		buf.Reset()
		if err := page.Render(buf, view()); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
		return bytes.Clone(buf.Bytes()), nil
	})
}

// file lists a file.
func (b *builder) file(path string, index bool, from madeFrom, render func() ([]byte, error)) {
	b.files = append(b.files, File{Path: path, Index: index, Key: b.key(path, from), Render: render})
}
