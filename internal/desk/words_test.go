package desk

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/diag"
)

// TestEveryCodeHasWords holds each code of a finding, those of diag and the desk's own,
// against the words of the page in both languages.
func TestEveryCodeHasWords(t *testing.T) {
	elsewhere := map[string]string{ // what the letter's field says by itself
		diag.NoNote: "letter.starter", diag.NoNoteIn: "letter.others",
	}
	parts := map[string]string{diag.Unmet: "place extra-sentence review target focus picture stories ladder"}
	codes := append(constants(t, "../diag/diag.go"), constants(t, "findings.go")...)
	codes = append(codes, "unwritten", "unreadable", "changed", "waits") // of the folder and of sending
	for act := range changes {
		codes = append(codes, act) // where there is no such story
	}
	if len(codes) < 40 {
		t.Fatalf("only %d codes were found", len(codes))
	}
	for _, tag := range []string{"en", "es"} {
		data, err := os.ReadFile("page/words." + tag + ".json")
		if err != nil {
			t.Fatal(err)
		}
		words := map[string]string{}
		if err := json.Unmarshal(data, &words); err != nil {
			t.Fatal(err)
		}
		for _, code := range codes {
			asked := []string{"finding." + code}
			if word, ok := elsewhere[code]; ok {
				asked = []string{word}
			}
			if of, ok := parts[code]; ok {
				asked = nil
				for part := range strings.FieldsSeq(of) {
					asked = append(asked, "finding."+code+"."+part)
				}
			}
			for _, word := range asked {
				if words[word] == "" {
					t.Errorf("%s has no words for %s", tag, word)
				}
			}
		}
	}
}

// constants are the texts that a file gives names to.
func constants(t *testing.T, file string) []string {
	t.Helper()
	parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, decl := range parsed.Decls {
		group, ok := decl.(*ast.GenDecl)
		if !ok || group.Tok != token.CONST {
			continue
		}
		for _, spec := range group.Specs {
			for _, value := range spec.(*ast.ValueSpec).Values {
				if lit, ok := value.(*ast.BasicLit); ok && lit.Kind == token.STRING {
					text, err := strconv.Unquote(lit.Value)
					if err != nil {
						t.Fatal(err)
					}
					out = append(out, text)
				}
			}
		}
	}
	return out
}

// TestLetterFindings writes what a letter cannot show: each has its code, at the letter
// it is in, and no other language waits for it.
func TestLetterFindings(t *testing.T) {
	d := newDesk(t, "en", "es")
	for _, c := range []struct{ text, code, quote string }{
		{"Write to office@school.example", diag.PrivateMail, "office@school.example"},
		{"Call 555-867-5309", diag.PrivatePhone, "555-867-5309"},
		{"Her number is 123-45-6789", diag.PrivateID, "123-45-6789"},
		{"Ask for 4711082", diag.PrivateNumber, "4711082"},
		{strings.Repeat("Dear families. ", 300), diag.Long, "4000"},
		{"We <b>add</b>.", diag.NoteMarkup, "<b>"},
		{"![us](us.jpg)", diag.NotePicture, "![us](us.jpg)"},
		{"- - - - - - - - deep", diag.NoteNested, ""},
		{"See https://maps.example/school", diag.LinkOutside, "https://maps.example/school"},
		{"See http://maps.example", diag.LinkPlain, "http://maps.example"},
		{"See www.maps.example", diag.LinkShort, "www.maps.example"},
		{"[call](tel:1)", diag.LinkStrange, "tel:1"},
		{"[here](2026-09-14.html)", diag.LinkInside, "2026-09-14.html"},
	} {
		set(t, d, "note.es", c.text)
		found := sheetOf(t, d).Findings
		if len(found) == 0 || found[0].Code != c.code || found[0].Quote != c.quote || found[0].Key != "note.es" || found[0].Tag != "es" || !found[0].Mend {
			t.Errorf("%.40q: want %s %q, got %+v", c.text, c.code, c.quote, found)
		}
	}
}

// TestHeldBack says at each language what its families get otherwise.
func TestHeldBack(t *testing.T) {
	d := newDesk(t, "en", "es", "vi")
	want := map[string]string{}
	for _, lang := range d.read().Catalog.Languages() {
		switch {
		case lang.Draft():
			want[lang.Tag()] = diag.Draft
		case lang.PartlyRead():
			want[lang.Tag()] = diag.Newer
		}
	}
	got := map[string]string{}
	for _, f := range ask[Year](t, d, "year", None{}).HeldBack {
		if f.Code == diag.Draft || f.Code == diag.Newer {
			got[f.Tag] = f.Code
		}
		if f.Mend || f.Quote == "" {
			t.Errorf("it keeps no page from being made: %+v", f)
		}
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// TestHeavy weighs the pages of a week whose letter is as long as a letter can be, and
// names what takes long to arrive.
func TestHeavy(t *testing.T) {
	d := newDesk(t, "en", "es")
	check := CheckOf{first, "en"}
	if found := ask[[]Finding](t, d, "check", check); len(found) != 0 {
		t.Errorf("a usual week: %+v", found)
	}
	var long strings.Builder // 3900 letters of three bytes, in no order: they cannot be packed
	for i := range 3900 {
		long.WriteRune(rune(0x4e00 + (i*i*7919+i*104729)%20000))
	}
	set(t, d, "note.en", long.String())
	set(t, d, LineStories, "8")
	heavy := ask[[]Finding](t, d, "check", check)
	if len(heavy) == 0 {
		t.Error("a heavy week is not told")
	}
	for _, f := range heavy {
		if f.Tag != "en" || f.Key != LineStories || f.Mend || f.Code != diag.HeavyPage && f.Code != diag.HeavyWeek {
			t.Errorf("a heavy week: %+v", f)
		}
	}
}
