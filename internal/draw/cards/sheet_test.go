package cards

import (
	"flag"
	"os"
	"strings"
	"testing"
)

// TestContactSheet writes all cards and all scenes to a page to look at:
//
//	go test ./internal/draw/cards -run ContactSheet -sheet cards.html
//
// Looking is the check; without the flag it is skipped.
func TestContactSheet(t *testing.T) {
	if *sheet == "" {
		t.Skip("no -sheet file named")
	}
	css, err := os.ReadFile("testdata/cards.css")
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	b.WriteString("<!DOCTYPE html><meta charset=utf-8><title>Cards</title><style>\n" + string(css) +
		"body { margin: 8px; background: #f7f1e3 } @media (prefers-color-scheme: dark) { body { background: #211d1a } }\n" +
		"svg { border-radius: 10px; margin: 2px }</style>\n" + must(t)(Symbols()))
	show := func(width string, ids []string) {
		for _, id := range ids {
			b.WriteString(strings.Replace(must(t)(Use(id)), "<svg", `<svg width="`+width+`"`, 1))
		}
		b.WriteString("<br>")
	}
	show("100", Characters())
	show("150", Settings())
	show("230", Characters())
	show("310", Settings())
	for _, c := range Characters() {
		for _, s := range Settings() {
			b.WriteString(strings.Replace(must(t)(Scene(c, s, "", "")), "<svg", `<svg width="230"`, 1))
		}
	}
	if err := os.WriteFile(*sheet, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}

var sheet = flag.String("sheet", "", "file to write the contact sheet to")
