//go:build browser

package browser_test

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// known are messages of the Nu Html Checker that we live with, and why.
var known = map[string]string{
	"CSS: “container-type”: Property “container-type” doesn't exist.": "the checker does not know CSS Containment Level 3; browsers that do not either leave the rule out",
	"CSS: “paint-order”: Property “paint-order” doesn't exist.":       "the checker does not know SVG 2, where the edge of a text may be drawn before its letters; browsers have since 2018 (from memory)",
	"CSS: Unrecognized at-rule “@container”":                          "the same",
}

// nuMessage is a message of the Nu Html Checker in its JSON format.
type nuMessage struct {
	Type    string `json:"type"`
	URL     string `json:"url"`
	Line    int    `json:"lastLine"`
	Message string `json:"message"`
	Extract string `json:"extract"`
}

// validate asks the checker about files, or about all pages of a folder.
func validate(t *testing.T, paths ...string) []nuMessage {
	t.Helper()
	var out bytes.Buffer
	// Its minute is over before Java has learned to run it fast: less is more.
	args := append([]string{"-Xss4m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-jar", "node_modules/vnu-jar/build/dist/vnu.jar", "--format", "json", "--skip-non-html", "--exit-zero-always"}, paths...)
	cmd := exec.Command("java", args...)
	cmd.Stderr = &out
	if err := cmd.Run(); err != nil {
		t.Fatalf("%v: %s; sh browser/setup.sh installs it", err, out.String())
	}
	var report struct{ Messages []nuMessage }
	if err := json.Unmarshal(out.Bytes(), &report); err != nil {
		t.Fatalf("%v: %.300s", err, out.String())
	}
	return report.Messages
}

// guessed reports whether the checker only guesses the language of a page that it
// does not know: it takes Haitian Creole for French.
func guessed(message string) bool {
	return strings.HasPrefix(message, "This document appears to be written in") && strings.Contains(message, `“lang="ht"”`)
}

// pagesToValidate are all kinds of pages, in every language, and in two languages those
// of the weeks that differ most; with -all every page there is.
func pagesToValidate(t *testing.T) []string {
	t.Helper()
	if *all {
		return []string{public}
	}
	var out []string
	patterns := []string{"*.html", "*/index.html", "*/check/7.html", "*/check/index.html", "*/" + week + "*.html"}
	for _, tag := range closely {
		patterns = append(patterns, tag+"/check/1.html", tag+"/"+pairs+"*.html", tag+"/"+heavy+"*.html")
	}
	for _, pattern := range patterns {
		found, err := filepath.Glob(filepath.Join(public, pattern))
		must(t, err)
		out = append(out, found...)
	}
	return out
}

// The pages are valid HTML, SVG and CSS for the checker that the W3C and the
// WHATWG point to (Nu Html Checker, vnu-jar), which finds what is wrong with a page that
// is not.
func TestValidHTML(t *testing.T) {
	t.Parallel()
	used, told := map[string]bool{}, map[string]int{}
	bad := filepath.Join(t.TempDir(), "bad.html")
	html, err := os.ReadFile(filepath.Join(public, "en", week+".html"))
	must(t, err)
	must(t, os.WriteFile(bad, bytes.Replace(html, []byte("<main"), []byte("<main><p><div></div></p><img></main><main"), 1), 0o644))
	found := 0
	for _, m := range validate(t, append(pagesToValidate(t), bad)...) {
		if strings.HasSuffix(m.URL, bad) {
			found++
			continue
		}
		if known[m.Message] != "" {
			used[m.Message] = true
			continue
		}
		if guessed(m.Message) {
			continue
		}
		if told[m.Message]++; told[m.Message] < 4 {
			page, err := filepath.Rel(public, strings.TrimPrefix(m.URL, "file:"))
			if err != nil {
				page = m.URL
			}
			t.Errorf("%s:%d: %s: %s: %q", page, m.Line, m.Type, m.Message, m.Extract)
		}
	}
	if found < 4 { // a p that is not closed, one that is not open, an img without src, two main
		t.Errorf("the checker finds only %d faults in a page that has four", found)
	}
	for message, n := range told {
		t.Errorf("%d times: %s", n, message)
	}
	for message := range known {
		if !used[message] {
			t.Errorf("the known message is not said any more, take it out: %s", message)
		}
	}
}
