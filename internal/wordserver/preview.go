package wordserver

import (
	"bytes"
	"fmt"
	"html"
	"io"
	"slices"
	"strings"

	xhtml "golang.org/x/net/html"

	"homebuild/internal/i18n"
)

// preview makes of a page for families one to write on: its messages lead to where
// each is written, all of it shows at once, and nothing else on it can be pressed.
type preview struct {
	marks *i18n.Marks
	link  func(id string) string
	now   string // the message that is being written

	out     strings.Builder
	ends    []string          // what ends the elements that stand for others
	open    []i18n.Mark       // messages that have begun
	quiet   int               // elements around whose text is no place for a link
	heard   []heard           // what the page says and does not show
	context map[string]string // by id: the whole sentence that first says it
	shown   map[string]bool   // messages that stand on the page for all to see
	order   []string          // the messages as they come; those of the head last
	inHead  []string
	said    strings.Builder // the sentence that has begun
}

// heard is a message that only people who listen, or other programs, meet.
type heard struct {
	i18n.Mark
	text string
}

// blank is what people who listen hear for a line to write on.
const blank = "page.blank"

// quietElements hold text that cannot have links in it.
var quietElements = []string{"title", "desc", "option"}

// turned are the elements that could be pressed, and what stands for them.
var turned = map[string]string{"a": "span", "label": "span", "button": "span", "details": "div", "summary": "div"}

// leading are attributes that would lead somewhere, or name what is no longer there.
var leading = []string{"href", "for", "hreflang", "xlink:href", "tabindex"}

// make writes the page.
func (p *preview) make(page []byte) string {
	p.context, p.shown = map[string]string{}, map[string]bool{}
	z := xhtml.NewTokenizer(bytes.NewReader(page))
	inStyle := false
	for {
		kind := z.Next()
		if kind == xhtml.ErrorToken {
			if z.Err() != io.EOF {
				panic(z.Err()) // from memory
			}
			return p.out.String()
		}
		raw := string(z.Raw())
		t := z.Token()
		switch {
		case kind == xhtml.TextToken && inStyle:
			p.out.WriteString(strings.ReplaceAll(raw, "selector(:has(a))", "selector(:all-at-once)"))
		case kind == xhtml.TextToken:
			p.text(html.UnescapeString(raw))
		case kind == xhtml.StartTagToken || kind == xhtml.SelfClosingTagToken:
			inStyle = t.Data == "style"
			p.start(t, kind)
		case kind == xhtml.EndTagToken:
			inStyle = false
			p.end(t)
		default:
			p.out.WriteString(raw)
		}
	}
}

func (p *preview) start(t xhtml.Token, kind xhtml.TokenType) {
	isPolicy := t.Data == "meta" && slices.ContainsFunc(t.Attr, func(a xhtml.Attribute) bool { return a.Key == "http-equiv" })
	if isPolicy || t.Data == "input" || t.Data == "link" {
		p.attributes(t) // what they say is heard
		return
	}
	if slices.Contains(quietElements, t.Data) && kind == xhtml.StartTagToken {
		p.quiet++
	}
	attributes := p.attributes(t)
	name := t.Data
	if other := turned[name]; other != "" {
		if name = other; strings.Contains(attributes, `class="skip"`) {
			name = "nav" // it stands beside the landmarks of the page
		}
		p.ends = append(p.ends, name)
	}
	p.out.WriteString("<" + name + attributes)
	if kind == xhtml.SelfClosingTagToken {
		p.out.WriteString("/")
	}
	p.out.WriteString(">")
}

// attributes writes those of an element without marks.
func (p *preview) attributes(t xhtml.Token) string {
	var b strings.Builder
	for _, a := range t.Attr {
		plain, ids := p.plain(a.Val)
		for _, id := range ids {
			p.hears(id, plain)
		}
		if !slices.Contains(leading, a.Key) || t.Data == "use" {
			fmt.Fprintf(&b, ` %s="%s"`, a.Key, html.EscapeString(plain))
		}
	}
	return b.String()
}

func (p *preview) end(t xhtml.Token) {
	switch {
	case t.Data == "head":
		p.inHead, p.order = p.order, nil
		p.out.WriteString("<style>" + previewCSS + "</style>")
	case t.Data == "body":
		p.order = append(p.order, p.inHead...)
		p.listHeard()
	case slices.Contains(quietElements, t.Data):
		p.quiet--
	}
	name := t.Data
	if last := len(p.ends) - 1; turned[name] != "" && last >= 0 {
		name, p.ends = p.ends[last], p.ends[:last]
	}
	p.out.WriteString("</" + name + ">")
}

// plain is a text without marks, with the messages that it says.
func (p *preview) plain(text string) (plain string, ids []i18n.Mark) {
	return strings.Map(func(c rune) rune {
		m, ok := p.marks.Read(c)
		if !ok {
			return c
		}
		if m.ID != "" {
			ids = append(ids, m)
		}
		return -1
	}, text), ids
}

func (p *preview) hears(m i18n.Mark, text string) {
	if _, known := p.context[m.ID]; !known {
		p.context[m.ID] = text
		p.heard = append(p.heard, heard{m, text})
		p.order = append(p.order, m.ID)
	}
}

// text writes words, each message as a link to where it is written.
func (p *preview) text(text string) {
	if p.quiet > 0 {
		plain, ids := p.plain(text)
		for _, m := range ids {
			p.hears(m, plain)
		}
		p.out.WriteString(html.EscapeString(plain))
		return
	}
	for _, c := range text {
		m, ok := p.marks.Read(c)
		switch {
		case !ok:
			p.out.WriteString(html.EscapeString(string(c)))
			if n := len(p.open); n > 0 && p.open[n-1].ID != blank {
				p.said.WriteRune(c)
			}
		case m.ID != "":
			p.begin(m)
		case len(p.open) > 0:
			p.finish()
		}
	}
}

func (p *preview) begin(m i18n.Mark) {
	known := p.shown[m.ID]
	p.open = append(p.open, m)
	if !known {
		p.shown[m.ID], p.order = true, append(p.order, m.ID)
		p.context[m.ID] = "" // until the whole sentence is known
		p.heard = slices.DeleteFunc(p.heard, func(h heard) bool { return h.ID == m.ID })
	}
	classes, anchor := p.class(m), ""
	if !known {
		anchor = ` id="m-` + m.ID + `"`
	}
	if m.ID == blank {
		p.said.WriteString("____")
	}
	if len(p.open) == 1 { // a link that is led to would take the focus away from the form
		fmt.Fprintf(&p.out, `<a class="%s" href="%s" target="_top"><span%s></span>`, classes, html.EscapeString(p.link(m.ID)), anchor)
	} else {
		fmt.Fprintf(&p.out, `<span class="%s"%s>`, classes, anchor)
	}
}

func (p *preview) finish() {
	last := len(p.open) - 1
	if last > 0 {
		p.open = p.open[:last]
		p.out.WriteString("</span>")
		return
	}
	p.out.WriteString("</a>")
	sentence := strings.Join(strings.Fields(p.said.String()), " ")
	for id, text := range p.context {
		if text == "" {
			p.context[id] = sentence
		}
	}
	p.said.Reset()
	p.open = p.open[:0]
}

// class is how a message looks.
func (p *preview) class(m i18n.Mark) string {
	class := "hb-text"
	if m.Pencil {
		class += " hb-pencil"
	}
	if m.ID == p.now {
		class += " hb-now"
	}
	return class
}

// listHeard shows what the page says and does not show, below it.
func (p *preview) listHeard() {
	if len(p.heard) == 0 {
		return
	}
	p.out.WriteString(`<section class="hb-heard" aria-label="Heard, not seen" lang="en" dir="ltr"><h2>Heard, not seen</h2><p>The page says these to people who listen to it, or shows them elsewhere: as its title, in a list of finds.</p><ul>`)
	for _, h := range p.heard {
		fmt.Fprintf(&p.out, `<li id="m-%s"><a class="%s" href="%s" target="_top">%s</a></li>`, h.ID, p.class(h.Mark), html.EscapeString(p.link(h.ID)), html.EscapeString(h.text))
	}
	p.out.WriteString("</ul></section>")
}

// previewCSS shows what is written in ink, what is missing in pencil, and what is at
// hand marked; in the colors of the page around it.
const previewCSS = `
html{scroll-behavior:auto!important}
[id^="m-"]{scroll-margin-block:30vh}
.hb-text{color:inherit;text-decoration:none;font:inherit}
a.hb-text{border-bottom:1px dotted currentcolor;cursor:pointer}
a.hb-text:is(:hover,:focus-visible){outline:2px solid currentcolor;outline-offset:2px}
.hb-pencil{color:#5c5c66!important;font-style:italic}
.hb-now{background:#ffe9a8!important;color:#24211c!important;box-shadow:.2em 0 #ffe9a8,-.2em 0 #ffe9a8}
.btn .hb-pencil{color:inherit!important}
.go{position:static!important}
.look{display:block!important}
.hide:has([id^="m-"]),.skip{position:static!important;clip-path:none!important;inline-size:auto!important;block-size:auto!important;white-space:normal!important}
.hb-heard{margin:2rem 0;padding:1rem;border-top:1px dashed currentcolor;font-size:.9rem}
@media (prefers-color-scheme:dark){.hb-pencil{color:#b9b6ad!important}}
`
