package wordserver

import (
	"crypto/sha256"
	"fmt"
	"html/template"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
	"homebuild/internal/school"
	"homebuild/internal/translate"
)

// view is all that the page shows.
type view struct {
	Tag, Name, Dir, File, Token string
	Script                      template.JS

	Left  *school.Layer // what is worked at; nil when all is written
	Done  string        // the layer that has just become whole
	Pages []pageLink
	Page  string // that is shown; empty for none
	Frame string // its address

	Mend []mend // what keeps pages from being made

	Question  *question
	Wrong     diag.Diagnostics // why the text was not saved
	Meanwhile bool             // the file has another text now than the form was made with
	Saved     string           // what was saved last
	Notes     diag.Diagnostics // to look at in it
	SavedAt   string           // its address
	Next      string           // the address of the text after this one
	Written   bool             // this one is no longer waited for
}

// question is the form of one message.
type question struct {
	translate.Question
	Fields  []field
	Context string // the sentence of the page that it stands in
	Heard   bool   // nobody sees it there
	Was     string
	Forms   bool // the things in it may take forms
}

// field is one text of a form.
type field struct {
	translate.Ask
	ID, Typed, Others, Example string
	Long, First                bool
}

// pageLink leads to one of the week's pages.
type pageLink struct {
	Name, Href string
	Here       bool
}

// mend is something to mend, with the address of its text if that is known.
type mend struct {
	diag.Diagnostic
	Href string
}

// view is the page at an address.
func (h *handler) view(q url.Values) view {
	v := view{Tag: h.Tag, File: h.File, Token: h.Token, Script: template.JS(script), Dir: "auto"}
	b := h.bench
	if b == nil {
		_, problems := h.Open()
		v.Mend = each(problems, func(d diag.Diagnostic) mend { return mend{Diagnostic: d} })
		return v
	}
	v.Name, v.Dir = b.Draft.Language.Name(), string(i18n.Direction(b.Draft.Language.RightToLeft()))
	v.Mend = each(b.Draft.Problems, h.mend)
	v.Left = left(b)
	v.Done = done(b, q.Get("done"))
	if v.Left != nil {
		h.learnOrder(v.Left.Wanted[0].Page)
	}
	wanted := h.wanted(b)
	id := q.Get("at")
	if id == "" {
		id = h.first(wanted, q.Get("page"))
	}
	context, heard := h.pages(&v, id, q.Get("page"))
	if ask, known := b.Draft.Ask(id); known {
		v.Question = h.question(ask, q)
		v.Question.Context, v.Question.Heard = context, heard
	}
	v.Written = !slices.Contains(wanted, id)
	if i := slices.Index(wanted, id); len(wanted) > 1 || len(wanted) == 1 && i < 0 {
		v.Next = h.link(wanted[(i+1)%len(wanted)], "")
	}
	if saved, known := b.Draft.Ask(q.Get("saved")); known && q.Get("saved") != translate.Head {
		v.Saved = strings.Join(each(saved.Asks, func(a translate.Ask) string { return a.Text }), " · ")
		v.SavedAt = h.link(saved.ID, q.Get("page"))
		v.Notes = each(b.Draft.Notes(saved.ID), func(d diag.Diagnostic) diag.Diagnostic { return ofThis(d, saved.ID) })
	}
	return v
}

// first is the first text to write, of a page if one is given; empty for none.
func (h *handler) first(wanted []string, path string) string {
	p := h.preview(path, "")
	for _, id := range wanted {
		if p == nil {
			return id
		}
		if _, says := p.context[id]; says {
			return id
		}
	}
	return ""
}

// question makes the form of a question, once the page that says it was made.
func (h *handler) question(ask translate.Question, q url.Values) *question {
	form := &question{Question: ask, Was: was(ask)}
	for i, a := range ask.Asks {
		f := field{Ask: a, ID: "text-" + strconv.Itoa(i), Typed: a.Text, First: i == 0, Long: len(a.English) > 48}
		if typed := q["text."+a.Name]; len(typed) == 1 {
			f.Typed = typed[0]
		}
		if len(a.Numbers) > 0 {
			f.Others, f.Example = numbers(a.Numbers), strconv.Itoa(a.Shown())
		}
		form.Fields = append(form.Fields, f)
	}
	form.Places = slices.Clone(ask.Places)
	for i, p := range form.Places {
		if value := h.value(ask.ID, p.Write); value != "" {
			form.Places[i].Means = value
		}
	}
	form.Forms = slices.ContainsFunc(ask.Places, func(p translate.Placeholder) bool { return strings.HasSuffix(p.Write, ".number}}") })
	return form
}

// value is what stands on the page in the place that a text writes, without a form;
// empty where that is not known.
func (h *handler) value(id, place string) string {
	if h.bench.Marks == nil {
		return ""
	}
	name, alone := strings.CutSuffix(strings.Trim(place, "{.}"), ".number")
	value := h.bench.Marks.Value(id, name)
	if alone {
		if value = aNumber().FindString(value); value == "" {
			return ""
		}
		return value + ", the number alone"
	}
	return value
}

// aNumber is the number of a thing, or the line to write it on.
var aNumber = pattern.Of(`[\d,]*\d|_+`)

// numbers lists the first numbers that a text is for.
func numbers(all []int) string {
	text := strings.Join(each(all, strconv.Itoa), ", ")
	if len(all) > 6 {
		text = strings.Join(each(all[:6], strconv.Itoa), ", ") + " …"
	}
	return text
}

// pages finds the page that says a message, and leads to the others of its week. It
// gives the sentence in which the page says it, and whether that is only heard.
func (h *handler) pages(v *view, id, path string) (context string, heard bool) {
	at, p := h.find(id, path)
	if p == nil {
		if p = h.preview(path, ""); p != nil {
			at = path
		} else if len(h.bench.Pages) > 0 {
			at = h.bench.Pages[0].Path
		}
	}
	if p != nil {
		context, heard = p.context[id], !p.shown[id]
	}
	if v.Page = at; at == "" {
		return context, heard
	}
	v.Frame = "/page?" + url.Values{"token": {h.Token}, "page": {at}, "at": {id}}.Encode() + "#m-" + id
	for _, f := range h.bench.Pages {
		if name := nameOf(f.Path, h.bench.Pages[0].Path); name != "" {
			v.Pages = append(v.Pages, pageLink{name, h.link("", f.Path), f.Path == at})
		}
	}
	return context, heard
}

// nameOf is what a page of the first week is called; empty for one of another week.
func nameOf(path, first string) string {
	week := strings.TrimSuffix(first, ".html")
	kind, n := strings.TrimPrefix(strings.TrimSuffix(path, ".html"), week), ""
	if !strings.HasPrefix(path, week) {
		return ""
	}
	parts := strings.Split(kind+"-", "-")
	if len(parts) > 2 {
		n = " " + strings.TrimSpace(strings.Join(parts[2:], " "))
	}
	names := map[string]string{"try": "stories to try", "steps": "easier and harder", "story": "a story of one's own", "print": "the sheet of paper", "check": "check"}
	if kind == "" {
		return "the week's page"
	}
	name := names[parts[1]]
	if name == "" {
		return ""
	}
	return strings.TrimSpace(name + n)
}

// mend leads to the text that is to be mended, where it is named.
func (h *handler) mend(d diag.Diagnostic) mend {
	m := mend{Diagnostic: d}
	if id := strings.TrimRight(strings.Fields(d.Text + " .")[0], ":"); strings.Contains(id, ".") {
		if _, known := h.bench.Draft.Ask(id); known {
			m.Href = h.link(id, "")
		}
	}
	return m
}

// again is the page with what was typed, since it was not saved, or with what was said
// before in its place.
func (h *handler) again(form url.Values) view {
	if use, ok := form["use"]; ok && h.bench != nil {
		if q, known := h.bench.Draft.Ask(form.Get("at")); known && len(q.Asks) == 1 {
			form.Set("text."+q.Asks[0].Name, use[0])
		}
	}
	return h.view(form)
}

// ofThis says a problem of the text that is before one's eyes without its name.
func ofThis(d diag.Diagnostic, id string) diag.Diagnostic {
	if rest, ok := strings.CutPrefix(d.Text, id+": "); ok {
		d.Text = rest
	} else if rest, ok := strings.CutPrefix(d.Text, id+" "); ok {
		d.Text = "this " + rest
	}
	return d
}

// was names the texts that a form was made with.
func was(q translate.Question) string {
	sum := sha256.New()
	for _, a := range q.Asks {
		fmt.Fprintf(sum, "%s\x00%s\x00", a.Name, a.Text)
	}
	return fmt.Sprintf("%x", sum.Sum(nil)[:8])
}

// left is the first layer with something to write.
func left(b *school.Bench) *school.Layer {
	for i := range b.Layers {
		if len(b.Layers[i].Wanted) > 0 {
			return &b.Layers[i]
		}
	}
	return nil
}

// done is a layer of the name that is whole.
func done(b *school.Bench, name string) string {
	for _, l := range b.Layers {
		if l.Name == name && len(l.Wanted) == 0 {
			return name
		}
	}
	return ""
}

// goOn is where one goes on after saving a text: to the forms that it asks for, else
// to the next text of the page; a text that was mended stays before one's eyes.
func (h *handler) goOn(old *school.Bench, id, path string) string {
	values := url.Values{"token": {h.Token}, "saved": {id}}
	to := id
	if h.bench != nil {
		to = h.next(h.wanted(old), h.wanted(h.bench), id)
		if l := left(old); l != nil && done(h.bench, l.Name) != "" {
			values.Set("done", l.Name)
		}
	}
	if path != "" {
		values.Set("page", path)
	}
	values.Set("at", to)
	return "/?" + values.Encode()
}

func each[T, U any](all []T, do func(T) U) []U {
	out := make([]U, len(all))
	for i, x := range all {
		out[i] = do(x)
	}
	return out
}
