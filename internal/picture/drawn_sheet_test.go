package picture_test

import (
	"flag"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/internal/picture/svg"
)

var sheet = flag.String("sheet", "", "write a contact sheet of all pictures to this HTML file, to look at")

// say names a line by its id and what fills it, for tests: no language here.
func say(l phrase.Line) string {
	if l.ID == "picture.name" {
		return l.Values[0].ID
	}
	parts := []string{l.ID}
	for _, v := range l.Values {
		switch v.Kind {
		case phrase.KindNumber:
			parts = append(parts, fmt.Sprintf("%s=%d", v.Name, v.N))
		case phrase.KindEquation:
			parts = append(parts, fmt.Sprintf("%s=%v", v.Name, v.Equation))
		default:
			parts = append(parts, v.Name+"="+v.ID)
		}
	}
	return strings.Join(parts, " ")
}

func TestSheet(t *testing.T) {
	if *sheet == "" {
		t.Skip("a tool for the eye: go test -run TestSheet -sheet FILE")
	}
	var b strings.Builder
	theme, err := os.ReadFile("testdata/sheet.css")
	if err != nil {
		t.Fatal(err)
	}
	fmt.Fprintf(&b, "<!doctype html><html lang=en><meta charset=utf-8><meta name=viewport content='width=device-width'><style>%s%s</style>%s", theme, svg.Style(), svg.Defs())
	for i, s := range samples(t) {
		drawing := svg.Draw(s.picture, svg.Options{ID: fmt.Sprint("p", i), Say: say, Number: strconv.Itoa})
		fmt.Fprintf(&b, "<figure><figcaption>%s</figcaption>%s</figure>\n", say(s.picture.Describe()), drawing)
	}
	if err := os.WriteFile(*sheet, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}
