package site

import (
	"bytes"
	"fmt"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
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
}

// File is one file of the site, not yet rendered.
type File struct {
	Path   string // slash separated, relative to the published folder
	Index  bool   // leads to other pages, and so is published after them
	Render func() ([]byte, error)
}

// Assemble plans every week and lists the files: pages first, then the indexes
// that link to them. Problems are for the teacher to mend; when there are any,
// no files are returned. Notices do not stop a build.
func Assemble(in Input) (files []File, notices, problems diag.Problems) {
	lessons, notices, problems := plan(in)
	if len(problems) > 0 {
		return nil, notices, problems
	}
	b := newBuilder(in, lessons)
	for _, lang := range b.languages {
		for _, l := range b.lessons {
			b.weekPages(lang, l)
		}
		b.checkPages(lang)
	}
	for _, l := range b.lessons {
		b.weekly(l)
	}
	for _, lang := range b.languages {
		b.home(lang)
		b.feed(lang)
	}
	b.front()
	return b.files, notices, nil
}

// builder collects the files of one site.
type builder struct {
	Input
	school    *i18n.Language // the language of the class
	languages []*i18n.Language
	lessons   []lesson // oldest first
	files     []File
}

func newBuilder(in Input, lessons []lesson) *builder {
	b := &builder{Input: in, lessons: lessons}
	for _, tag := range in.Site.Languages {
		lang, ok := in.Catalog.Language(tag)
		if !ok {
			panic("site: language " + tag + " was not loaded")
		}
		b.languages = append(b.languages, lang)
		if tag == in.Site.School {
			b.school = lang
		}
	}
	return b
}

// add lists a page. Its view is made only when it is rendered, so that memory
// does not grow with the site.
func (b *builder) add(path string, index bool, view func() page.View) {
	b.files = append(b.files, File{Path: path, Index: index, Render: func() ([]byte, error) {
		var buf bytes.Buffer
		if err := page.Render(&buf, view()); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
		return buf.Bytes(), nil
	}})
}
