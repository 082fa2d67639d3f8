//go:build browser

package browser_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"homebuild/internal/diag"
	"homebuild/internal/loopback"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/translate"
	"homebuild/internal/wordserver"
	"homebuild/locales"
)

// A translator writes a sentence with the keyboard and sees it in its place, on a wide
// screen and on a small phone with large letters; nothing breaks a rule of axe-core.
func TestTranslatorsEvening(t *testing.T) {
	t.Parallel()
	engine, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	must(t, err)
	b := openTab(t)
	b.trusted()
	b.size(1280, 800)
	address, file := servedEvening(t)
	b.visit(address)
	at := func(id string) string { return address + "&at=" + id }
	faultless := func(name string) {
		t.Helper()
		eval[bool](b, string(engine)+";true")
		for _, r := range b.axe() {
			t.Errorf("%s: %s: %s: %v", name, r.Rule, r.Help, r.Places)
		}
	}
	b.visit(at("learn.start"))
	b.wait(`document.activeElement.matches("[data-text]")`, "the field to have the focus, before and after the page in the frame is there")
	b.wait(`document.querySelector("iframe").contentDocument?.querySelector(".hb-now")`, "the page in the frame")
	b.press("Zaczynamy")
	b.press(kb.Enter)
	b.wait(`document.querySelector("[role=status] a, p[role=status]") && !location.search.includes("at=learn.start&")`, "the next text")
	b.visit(at("learn.start"))
	b.wait(`document.querySelector("iframe").contentDocument?.querySelector(".hb-now")?.textContent == "Zaczynamy"`, "the sentence in its place")
	text, err := os.ReadFile(file)
	must(t, err)
	if !strings.Contains(string(text), "other = \"Zaczynamy\"\n") {
		t.Error("the sentence is not in the file")
	}
	b.size(320, 740)
	b.visit(at("thing.letter.count"))
	eval[bool](b, `!!(document.documentElement.style.fontSize = "200%")`)
	for _, fault := range eval[[]string](b, wide) {
		t.Errorf("320 pixels, letters twice as large: %s", fault)
	}
	b.scheme("dark")
	faultless("a thing, dark")
	frame := eval[string](b, `document.querySelector("iframe").src`)
	b.visit(frame)
	faultless("the family's page, dark")
}

// servedEvening serves a file of Polish that was just begun.
func servedEvening(t *testing.T) (address, file string) {
	t.Helper()
	folder := t.TempDir()
	put := func(name, text string) {
		must(t, os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o755))
		must(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644))
	}
	data, err := translate.NewFile("pl", locales.Files)
	must(t, err)
	put("site.toml", "name = \"Pebble Lane School\"\nlanguages = [\"en\"]\n")
	put("weeks/2026-09-14.toml", "target = \"add-within-20\"\n")
	put("locales/pl.toml", string(data))
	listener, err := loopback.Listen(0)
	must(t, err)
	opened := school.Open("class", os.DirFS(folder))
	file = filepath.Join(folder, "locales", "pl.toml")
	go func() {
		_ = wordserver.Run(t.Context(), wordserver.Options{
			Listener: listener, Token: "T", Tag: "pl", File: file,
			Open: func() (*school.Bench, diag.Diagnostics) { return school.OpenBench(opened, "pl") },
			Save: func(before, after []byte) error { return publish.Replace(file, before, after) },
		})
	}()
	return wordserver.Address(listener, "T"), file
}
