package main

import (
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"homebuild/internal/cards"
	"homebuild/internal/story"
)

// Pages collect nothing and name nobody: no address but the site's own and
// those that the teacher allowed, no form, cookie, storage or script, and no
// person but the invented ones and whom the teacher wrote of.
func TestPrivacy(t *testing.T) {
	t.Parallel()
	dir := ownSchool(t, 10, "en", "ar")
	const allowed = "https://library.example/stories"
	putFile(t, dir+"/weeks/2026-09-14.toml", "# ours\ntarget = \"add-within-20\"\nallow = [\""+allowed+"\"]\n[note]\nen = \"\"\"\nDear families,\n\n[stories]("+allowed+") await you. Oluwaseun\n\"\"\"\n")
	homebuild(t, "build", dir, "--quiet")
	const own = "https://pebblelane.example/home/"
	pages, links := 0, 0
	for name, page := range tree(t, dir) {
		if path.Ext(name) != ".html" {
			continue
		}
		pages++
		doc, err := html.Parse(strings.NewReader(page))
		if err != nil {
			t.Fatal(err)
		}
		for n := range doc.Descendants() {
			if n.Type != html.ElementNode {
				continue
			}
			if slices.Contains(takers, n.Data) {
				t.Errorf("%s: there is a <%s>", name, n.Data)
			}
			for _, a := range n.Attr {
				if slices.Contains([]string{"src", "srcset", "action", "ping", "data", "poster", "background", "manifest"}, a.Key) || strings.HasPrefix(a.Key, "on") {
					t.Errorf("%s: <%s %s=%q>", name, n.Data, a.Key, a.Val)
				}
				if a.Key == "href" && strings.Contains(a.Val, ":") {
					links++
					if !strings.HasPrefix(a.Val, own) && (a.Val != allowed || !strings.Contains(name, "2026-09-14")) {
						t.Errorf("%s: a link to %q", name, a.Val)
					}
				}
			}
		}
		for _, address := range anAddress.FindAllString(page, -1) {
			if !strings.HasPrefix(address, own) && address != allowed && !slices.Contains(standards, address) {
				t.Errorf("%s: the address %q", name, address)
			}
		}
		for _, word := range []string{"set-cookie", "localstorage", "sessionstorage", "indexeddb", "navigator.", "document."} {
			if strings.Contains(strings.ToLower(page), word) {
				t.Errorf("%s: the word %q", name, word)
			}
		}
	}
	if pages < 120 || links < 120 {
		t.Errorf("only %d pages with %d full links were looked at", pages, links)
	}
}

// takers are elements that send, keep or fetch something.
var takers = []string{"script", "form", "iframe", "object", "embed", "img", "video", "audio", "source", "applet", "frame", "portal", "base", "button", "select", "textarea"}

var anAddress = regexp.MustCompile(`[a-zA-Z][a-zA-Z0-9+.-]*://[^\s"'<>)]+`)

// standards are names that look like addresses; nothing is fetched from them.
var standards = []string{"http://www.w3.org/2000/svg", "http://www.w3.org/1999/xlink"}

// The stories are those of the town's characters, and of nobody else: no event
// has anybody in it but those whom the cards draw.
func TestPeopleAreInvented(t *testing.T) {
	places, err := story.LoadPlaces()
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range places.Events() {
		for _, id := range e.Cast {
			if !slices.Contains(cards.Characters(), id) {
				t.Errorf("%s has %s in it, who is not of the town", e.ID, id)
			}
		}
	}
}
